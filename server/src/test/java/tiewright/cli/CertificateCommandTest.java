package tiewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CertificateCommandTest {
    @TempDir
    private Path folder;

    @Test
    void says_how_to_start_with_it_what_phones_ask_and_what_to_compare() {
        Commands.Ran ran = Commands.run("certificate", folder.resolve("made").toString(), "--name", "192.0.2.7");
        assertThat(ran.status()).isZero();
        assertThat(ran.out())
                .contains("is valid for 192.0.2.7, localhost, 127.0.0.1")
                .contains("--public-url https://192.0.2.7:7070 --tls-cert")
                .contains("warn once")
                .containsPattern("([0-9A-F]{2}:){31}[0-9A-F]{2}");
        assertThat(folder.resolve("made/service.key")).exists();
        assertThat(ran.out()).doesNotContain("PRIVATE KEY");
    }

    @Test
    void the_laptops_own_addresses_are_taken_where_no_name_is_given() {
        assertThat(Commands.run("certificate", folder.resolve("made").toString())
                        .out())
                .contains("localhost, 127.0.0.1");
    }

    @ParameterizedTest
    @CsvSource({
        "--days, 0, --days is a whole number from 1 to 397.",
        "--days, 398, --days is a whole number from 1 to 397.",
        "--name, two words, neither the name nor the address",
        "--name, 0.0.0.0, neither the name nor the address"
    })
    void refuses_what_no_phone_would_take(String option, String value, String words) {
        Commands.Ran ran = Commands.run("certificate", folder.resolve("made").toString(), option, value);
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).contains(words);
        assertThat(folder.resolve("made")).doesNotExist();
    }

    @Test
    void one_that_is_there_stays() {
        Commands.run("certificate", folder.resolve("made").toString());
        Commands.Ran again = Commands.run("certificate", folder.resolve("made").toString());
        assertThat(again.status()).isEqualTo(2);
        assertThat(again.err()).contains("is there already and stays as it is: give a new folder.");
    }
}
