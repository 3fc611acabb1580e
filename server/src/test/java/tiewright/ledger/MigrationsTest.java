package tiewright.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tiewright.conditions.Plays;
import tiewright.event.Directory;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;

/** What counts as up to date is compared with what Flyway itself wrote into its table. */
class MigrationsTest {
    private static final Path FILES = Path.of("../schema/src/main/resources/tiewright");

    @TempDir
    Path folder;

    @BeforeEach
    void a_folder_of_this_version() {
        Ledger.open(folder, Clock.systemUTC()).close();
    }

    @Test
    void the_list_names_every_migration() throws IOException {
        try (Stream<Path> files = Files.list(FILES.resolve("migrations"))) {
            assertThat(Files.readAllLines(FILES.resolve("migrations.txt")))
                    .containsExactlyInAnyOrderElementsOf(
                            files.map(file -> file.getFileName().toString()).toList());
        }
    }

    @Test
    void what_flyway_has_just_done_is_done() throws SQLException {
        try (Connection owner = owner()) {
            assertThat(Migrations.areDone(owner)).isTrue();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "UPDATE \"flyway_schema_history\" SET \"checksum\" = 1 WHERE \"version\" = '2'",
                "UPDATE \"flyway_schema_history\" SET \"success\" = FALSE WHERE \"version\" = '2'",
                "DELETE FROM \"flyway_schema_history\" WHERE \"version\" = '10'",
                "UPDATE \"flyway_schema_history\" SET \"script\" = 'V900__newer.sql' WHERE \"version\" = '10'",
                "DROP TABLE \"flyway_schema_history\""
            })
    void anything_else_is_left_to_flyway(String change) throws SQLException {
        try (Connection owner = owner();
                var statement = owner.createStatement()) {
            statement.execute(change);
            assertThat(Migrations.areDone(owner)).isFalse();
        }
    }

    /** What this version adds is taken out again, as a folder of the version before had it. */
    @Test
    void names_of_an_older_folder_are_there_and_state_nothing() throws SQLException {
        PlayerId player = PlayerId.of("N1");
        try (Ledger ledger = Ledger.open(folder, Clock.systemUTC())) {
            ledger.decide(
                    Asked.request("name"),
                    Asked.notes(new PrivateNote.PersonNamed(
                            player,
                            new Directory.Person("Ana Vidal", OptionalInt.of(1990), Optional.of(Plays.WOMEN)))));
        }
        try (Connection owner = owner();
                var statement = owner.createStatement()) {
            statement.execute("ALTER TABLE private_person DROP COLUMN plays");
            statement.execute("DELETE FROM \"flyway_schema_history\" WHERE \"version\" = '20'");
        }
        try (Ledger ledger = Ledger.open(folder, Clock.systemUTC())) {
            assertThat(ledger.directory().people())
                    .isEqualTo(Map.of(player, new Directory.Person("Ana Vidal", OptionalInt.of(1990))));
        }
    }

    private Connection owner() throws SQLException {
        return DriverManager.getConnection("jdbc:h2:file:" + folder.resolve("tiewright"), "OWNER", "");
    }
}
