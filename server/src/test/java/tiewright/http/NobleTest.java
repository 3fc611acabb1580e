package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;

/** The one script that is not our own: parts of the noble libraries, as {@code web/noble} makes them from what their makers published. */
class NobleTest {
    private static final Path WEB = Path.of("..", "web");

    @Test
    void the_library_of_the_phones_is_byte_for_byte_what_was_made_of_the_published_one()
            throws IOException, GeneralSecurityException {
        byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(WEB.resolve("static/noble.js")));
        assertThat(HexFormat.of().formatHex(digest))
                .as("made anew by: cd web/noble && npm ci --ignore-scripts && npm run bundle")
                .isEqualTo("d7b588d7648c44eb4c6e0c28d1c985efc353486f9d498cd145f0769620eaa2ab");
    }

    @Test
    void its_licences_go_along_and_its_versions_are_fixed() throws IOException {
        String licence = Files.readString(WEB.resolve("static/noble-license.txt"));
        String lock = Files.readString(WEB.resolve("noble/package-lock.json"));
        assertThat(licence).contains("MIT License", "Paul Miller");
        for (String library : new String[] {"curves", "ciphers", "hashes"}) {
            assertThat(licence).contains("@noble/" + library + " 2.4.0");
            assertThat(lock)
                    .containsPattern("(?s)\"node_modules/@noble/" + library
                            + "\": \\{\\s+\"version\": \"2.4.0\",\\s+\"integrity\": \"sha512-");
        }
    }
}
