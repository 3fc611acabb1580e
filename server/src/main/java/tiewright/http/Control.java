package tiewright.http;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.util.Optional;
import tiewright.http.visit.ClosedDoor;
import tiewright.http.visit.Door;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.ledger.Ledger;

/**
 * The door for commands on the same machine while the service runs. Who can read the data folder can read the token in
 * {@code running.json} there, and nobody else.
 */
final class Control implements Page {
    static final String FILE = "running.json";

    private final Ledger ledger;
    private final String token;

    Control(Ledger ledger, String token) {
        this.ledger = ledger;
        this.token = token;
    }

    @Override
    public void at(Routes routes) {
        routes.get(Door.ANYBODY, "/control/backup", visit -> backUp(visit.ctx()));
    }

    /** Leaves address and token where commands look for them. */
    void announce(Path folder, String url, String local, Optional<Path> certificate) {
        Path file = folder.resolve(FILE);
        try {
            Files.deleteIfExists(file);
            if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
                Files.createFile(
                        file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
            }
            // piece by piece, for a mapper of objects would load four hundred classes before the first page
            try (JsonGenerator json = new JsonFactory().createGenerator(Files.newOutputStream(file))) {
                json.writeStartObject();
                json.writeStringField("url", url);
                json.writeStringField("local", local);
                json.writeStringField("token", token);
                if (certificate.isPresent()) {
                    json.writeStringField(
                            "certificate", certificate.get().toAbsolutePath().toString());
                }
                json.writeEndObject();
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    static void forget(Path folder) {
        try {
            Files.deleteIfExists(folder.resolve(FILE));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private void backUp(Context ctx) {
        String given = String.valueOf(ctx.header("Authorization"));
        if (!MessageDigest.isEqual(
                given.getBytes(StandardCharsets.UTF_8), ("Bearer " + token).getBytes(StandardCharsets.UTF_8))) {
            throw new ClosedDoor(Door.ORGANISER);
        }
        ctx.contentType("application/zip").result(ledger.backedUp());
    }
}
