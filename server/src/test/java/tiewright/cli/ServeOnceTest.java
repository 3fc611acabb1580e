package tiewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The service in this process, on loopback, to its first page and out again. */
class ServeOnceTest {
    @TempDir
    private Path folder;

    @Test
    void starts_shows_its_first_page_and_stops() {
        Commands.Ran ran = Commands.run("serve", "--demo", "--port", "0", "--once", "--data", folder.resolve("day"));
        assertThat(ran.err()).isEmpty();
        assertThat(ran.status()).isZero();
        assertThat(ran.out())
                .startsWith("Tiewright is at http://")
                .contains("The first page came after ")
                .containsPattern(
                        "Phones close sheets for the key ([0-9a-f]{4} ){7}[0-9a-f]{4}\\. The same key is on captains' slips")
                .contains("--once");
        Commands.Ran again = Commands.run("serve", "--port", "0", "--once", "--data", folder.resolve("day"));
        assertThat(again.status()).as("the folder was let go").isZero();
    }

    @Test
    void asks_on_this_machine_over_plain_http_only() {
        Commands.Ran tls =
                Commands.run("serve", "--demo", "--port", "0", "--once", "--tls-cert", "a.pem", "--tls-key", "b.pem");
        assertThat(tls.status()).isEqualTo(2);
        assertThat(tls.err()).contains("leave --public-url, --tls-cert and --tls-key out");
        assertThat(Commands.run("serve", "--demo", "--port", "0", "--once", "--public-url", "http://hall.example")
                        .status())
                .isEqualTo(2);
    }
}
