package tiewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import tiewright.TestClassPath;
import tiewright.ledger.Ledger;

/** The service is told to stop, as Ctrl-C or a machine that is switched off tells it. */
@Timeout(120)
class ServeStopTest {
    @TempDir
    Path folder;

    @Test
    void it_closes_what_is_open_before_it_ends() throws IOException, InterruptedException {
        Path data = folder.resolve("event");
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Process process = new ProcessBuilder(List.of(
                        java,
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        TestClassPath.text(),
                        Main.class.getName(),
                        "serve",
                        "--demo",
                        "--port",
                        "0",
                        "--data",
                        data.toString()))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String last = "";
        try (BufferedReader said = process.inputReader()) {
            for (String line = said.readLine(); line != null; line = said.readLine()) {
                last = line;
                if (line.contains("Ctrl-C")) {
                    // the handle asks it to end and leaves readable what it says; the process itself would close that
                    process.toHandle().destroy();
                }
            }
        } finally {
            process.destroyForcibly().waitFor();
        }
        assertThat(last).isEqualTo("Tiewright has stopped. Everything that was entered is kept.");
        try (Ledger ledger = Ledger.open(data, Clock.systemUTC())) {
            assertThat(ledger.event().ties()).isNotEmpty();
        }
    }
}
