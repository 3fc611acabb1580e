package tiewright.http.visit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.Optional;
import tiewright.http.answers.Worked;
import tiewright.ledger.Ledger;

/**
 * What every page of one running service shares.
 *
 * @param address how phones reach the service, without a slash at the end: "http://192.0.2.7:7070"
 */
public record Hall(
        Ledger ledger,
        Clock clock,
        Tokens tokens,
        Templates templates,
        Worked worked,
        EverybodysPages pages,
        Address address) {

    /** The key of the browsers' tokens: made once, kept beside the data so that a restart signs nobody out. */
    public static byte[] sessionKey(Path folder, SecureRandom random) {
        Path file = folder.resolve("session.key");
        try {
            if (Files.exists(file)) {
                return Files.readAllBytes(file);
            }
            byte[] key = new byte[32];
            random.nextBytes(key);
            if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
                Files.createFile(
                        file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
            }
            Files.write(file, key);
            return key;
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** Where the service is found; known only once it listens. */
    public static final class Address {
        private final Optional<String> given;
        private volatile String url = "";

        public Address(Optional<String> given) {
            this.given = given.map(text -> text.endsWith("/") ? text.substring(0, text.length() - 1) : text);
        }

        public void listening(String scheme, String host, int port) {
            String shown = host.contains(":") ? "[" + host + "]" : host;
            url = given.orElse(scheme + "://" + shown + ":" + port);
        }

        public String url() {
            return url;
        }
    }
}
