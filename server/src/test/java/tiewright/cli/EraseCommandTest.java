package tiewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Private data counted and deleted without the service. */
class EraseCommandTest {
    @TempDir
    Path temp;

    @Test
    void counts_what_is_held_and_deletes_it_by_the_name_of_the_event() throws Exception {
        Path data = temp.resolve("data");
        Path folder = Path.of("..", "demo-data", "event");
        assertThat(Commands.run("import", folder, "--data", data).status()).isZero();
        assertThat(Commands.run("backup", temp.resolve("kept.zip"), "--data", data)
                        .status())
                .isZero();
        Commands.Ran counted = Commands.run("erase", "--data", data, "--csv");
        assertThat(counted.status()).isZero();
        assertThat(counted.csv().get(0)).containsExactly("kind", "count");
        assertThat(counted.rows())
                .contains(List.of("person", "64"))
                .anyMatch(row -> row.get(0).equals("form") && !row.get(1).equals("0"));
        assertThat(Commands.run("erase", "--data", data).out()).contains("Names and birth years of players");
        Commands.Ran wrong = Commands.run("erase", "--data", data, "--name", "Some other day");
        assertThat(wrong.status()).isEqualTo(4);
        assertThat(wrong.err()).contains("Nothing was deleted");
        assertThat(Commands.run("erase", "--data", data, "--csv").rows())
                .as("and nothing was")
                .isEqualTo(counted.rows());
    }

    @Test
    void once_the_event_is_over_everything_goes_and_its_name_is_in_no_byte() throws Exception {
        Path folder = Files.createDirectories(temp.resolve("folder"));
        Files.writeString(
                folder.resolve("event.csv"),
                "key,value\nname,Old day\ndate,2020-05-09\nvenue,Hall\ntime_zone,Europe/Vilnius\nstarts,09:00\n");
        Files.writeString(folder.resolve("conditions.csv"), "setting,value\npreset,Club day\n");
        Files.writeString(folder.resolve("clubs.csv"), "club,name\nA,Aa\n");
        Files.writeString(folder.resolve("players.csv"), "player,club,name,form\na1,A,Plantedname,3\na2,A,Other,\n");
        Path data = temp.resolve("old");
        assertThat(Commands.run("import", folder, "--data", data).status()).isZero();
        assertThat(Files.readString(data.resolve("tiewright.mv.db"), StandardCharsets.ISO_8859_1))
                .contains("Plantedname");
        assertThat(Commands.run("backup", temp.resolve("kept.zip"), "--data", data)
                        .status())
                .isZero();
        Commands.Ran ran = Commands.run("erase", "--data", data, "--name", "Old day");
        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.err())
                .contains("Private data were deleted on", "A backup still holds what was there then: ", "kept.zip");
        assertThat(Commands.run("erase", "--data", data, "--csv").rows())
                .allMatch(row -> row.get(1).equals("0"));
        assertThat(Files.readString(data.resolve("tiewright.mv.db"), StandardCharsets.ISO_8859_1))
                .doesNotContain("Plantedname")
                .contains("Old day");
        assertThat(Commands.run("erase", "--data", data, "--name", "Old day").err())
                .contains("There is nothing to delete");
    }

    @Test
    void a_folder_that_is_none_is_said() {
        assertThat(Commands.run("erase", "--data", temp.resolve("nothing")).err())
                .contains("There is no folder");
    }
}
