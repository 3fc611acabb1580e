package tiewright.http.visit;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;

/** A file that was chosen in a form. */
public final class Uploads {
    private Uploads() {}

    /** Its bytes; empty where none was chosen, or an empty one. */
    public static Optional<byte[]> bytes(Context ctx, String field) {
        return Optional.ofNullable(ctx.uploadedFile(field)).map(Uploads::read).filter(bytes -> bytes.length > 0);
    }

    private static byte[] read(UploadedFile file) {
        try (InputStream in = file.content()) {
            return in.readAllBytes();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
