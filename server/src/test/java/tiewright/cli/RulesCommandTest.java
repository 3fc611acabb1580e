package tiewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.conditions.Setting;

/** {@code rules}: the conditions out, and the same file back in. */
class RulesCommandTest {
    @TempDir
    private Path folder;

    @Test
    void lists_every_setting_under_the_33_headings_in_order() {
        Commands.event(folder, "rubbers,3", "rubber_weights,6/4/3", "tie_points,games+2/1/0");
        Commands.Ran ran = Commands.run("rules", folder, "--csv");
        assertThat(ran.status()).isZero();
        assertThat(ran.csv().get(0)).containsExactly("heading", "setting", "value", "default", "words");
        List<List<String>> rows = ran.rows();
        assertThat(rows).hasSize(Setting.values().length);
        assertThat(rows.stream().map(row -> Integer.valueOf(row.get(0))).distinct())
                .containsExactlyElementsOf(IntStream.rangeClosed(1, 33).boxed().toList());
        assertThat(rows)
                .extracting(row -> row.subList(0, 4))
                .contains(
                        List.of("1", "rubbers", "3", "4"),
                        List.of("1", "rubber_weights", "6/4/3", "1/1/1"),
                        List.of("16", "tie_points", "games+2/1/0", "1/0/0"));
        assertThat(rows).allSatisfy(row -> assertThat(row.get(4)).endsWith("."));
    }

    /** Placing ties come in, go out, and have their sources checked. */
    @Test
    void ties_for_the_other_places_travel_with_their_sources() throws Exception {
        Commands.event(folder);
        Commands.write(folder, "clubs.csv", "club,name", "A,Aa", "B,Bb", "C,Cc", "D,Dd");
        Commands.write(
                folder,
                "ties.csv",
                "tie,stage,round,home,away,home_from,away_from",
                "QF1,knockout,1,A,B,,",
                "QF2,knockout,1,C,D,,",
                "P3,placing,2,,,loser-QF1,loser-QF2");
        assertThat(Commands.run("check", folder).err()).isEmpty();
        Path data = folder.resolve("data");
        Path out = folder.resolve("out");
        assertThat(Commands.run("import", folder, "--data", data).status()).isZero();
        assertThat(Commands.run("export", out, "--data", data).status()).isZero();
        assertThat(Files.readString(out.resolve("ties.csv")))
                .contains("P3,placing,")
                .contains("loser-QF1,loser-QF2");
        Commands.write(folder, "ties.csv", "tie,stage,pool,round,home,away", "X,placing,P,1,A,B", "Y,plate,,1,C,D");
        assertThat(Commands.run("check", folder).err())
                .contains("ties.csv:2: pool")
                .contains("is not one of pool, knockout, placing");
    }

    @Test
    void the_file_given_back_as_conditions_says_the_same() throws Exception {
        Commands.event(folder, "rubbers,3", "unplayed_tie,2/0", "walkover_score,0-0", "decider,none");
        Commands.Ran first = Commands.run("rules", folder, "--csv");
        Files.writeString(folder.resolve("conditions.csv"), first.out());
        Commands.Ran second = Commands.run("rules", folder, "--csv");
        assertThat(second.err()).isEmpty();
        assertThat(second.status()).isZero();
        assertThat(second.rows())
                .extracting(row -> row.subList(0, 3))
                .isEqualTo(first.rows().stream().map(row -> row.subList(0, 3)).toList());
        assertThat(second.out()).contains("1/1/1").contains("unplayed_tie,2/0");
    }
}
