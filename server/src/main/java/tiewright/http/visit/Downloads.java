package tiewright.http.visit;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Files that are carried away. */
public final class Downloads {
    private Downloads() {}

    public static void text(Visit visit, String type, String file, String text) {
        send(visit, type + "; charset=utf-8", file, text.getBytes(StandardCharsets.UTF_8));
    }

    /** A folder of texts, packed. */
    public static void folder(Visit visit, String name, Map<String, String> files) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, String> file : files.entrySet()) {
                zip.putNextEntry(new ZipEntry(name + "/" + file.getKey()));
                zip.write(file.getValue().getBytes(StandardCharsets.UTF_8));
                zip.closeEntry();
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        send(visit, "application/zip", name + ".zip", bytes.toByteArray());
    }

    public static void send(Visit visit, String type, String file, byte[] bytes) {
        visit.ctx()
                .contentType(type)
                .header("Content-Disposition", "attachment; filename=\"" + file + "\"")
                .result(bytes);
    }
}
