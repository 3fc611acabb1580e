package tiewright.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.event.ClubId;
import tiewright.event.SetUpFact.ClubEntered;

class FolderTest {
    @TempDir
    Path place;

    @Test
    void a_folder_open_in_this_process_is_not_opened_twice() {
        try (Ledger ledger = Ledger.open(place, Asked.CLOCK)) {
            assertInUse(place);
            assertThat(ledger.decide(
                            Asked.request("k"),
                            Asked.facts(new ClubEntered(ClubId.of("A"), "A", Optional.empty(), OptionalInt.empty()))))
                    .as("the first goes on")
                    .isInstanceOf(Answer.Done.class);
        }
        Ledger.open(place, Asked.CLOCK).close();
    }

    static void assertInUse(Path folder) {
        assertThatThrownBy(() -> Ledger.open(folder, Asked.CLOCK))
                .isInstanceOf(LedgerException.class)
                .hasMessage("The folder " + folder.toAbsolutePath()
                        + " is already open in another Tiewright. Stop that one" + " first, or choose another folder.");
    }

    @Test
    void a_folder_that_cannot_be_used_is_told_in_a_sentence() throws IOException {
        Path file = Files.writeString(place.resolve("file"), "x");
        assertThatThrownBy(() -> Ledger.open(file, Asked.CLOCK))
                .isInstanceOf(LedgerException.class)
                .hasMessageStartingWith("The folder " + file + " cannot be used: ");
        assertThatThrownBy(() -> Ledger.open(place.resolve("a;b"), Asked.CLOCK))
                .isInstanceOf(LedgerException.class)
                .hasMessageContaining("has a semicolon in its name");
        assertThat(place.resolve("a;b")).doesNotExist();
    }

    @Test
    void a_folder_may_have_any_other_name() {
        for (String name : List.of("Spring day 2026", "Frühling's \"Tag\" #1 %20 ~", "日")) {
            Path folder = place.resolve(name);
            try (Ledger ledger = Ledger.open(folder, Asked.CLOCK)) {
                ledger.decide(
                        Asked.request("k"),
                        Asked.facts(new ClubEntered(ClubId.of("A"), name, Optional.empty(), OptionalInt.empty())));
                ledger.backUp(folder.resolve("it's a copy.zip"));
            }
            assertThat(folder.resolve("tiewright.mv.db")).exists();
            assertThat(Ledger.restore(folder.resolve("it's a copy.zip"), folder.resolve("second"))
                            .facts())
                    .isEqualTo(1);
        }
    }

    @Test
    void a_folder_of_a_newer_version_is_left_alone() throws Exception {
        Ledger.open(place, Asked.CLOCK).close();
        try (Connection owner = DriverManager.getConnection("jdbc:h2:file:" + place.resolve("tiewright"), "OWNER", "");
                Statement statement = owner.createStatement()) {
            statement.execute(
                    "INSERT INTO \"flyway_schema_history\" SELECT 900, '900', 'newer', \"type\", 'V900__newer.sql',"
                            + " 1, \"installed_by\", \"installed_on\", 1, TRUE FROM \"flyway_schema_history\" WHERE \"version\" = '1'");
        }
        assertThatThrownBy(() -> Ledger.open(place, Asked.CLOCK))
                .isInstanceOf(LedgerException.class)
                .hasMessageContaining("was not written by this version of Tiewright");
    }
}
