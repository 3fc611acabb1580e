package tiewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code correct} on a folder: a swapped score found after the final was played; worked by hand, no source. */
class CorrectCommandTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void cup() {
        Commands.event(folder, "rubbers,3");
        Commands.write(folder, "clubs.csv", "club,name", "N,North", "S,South", "E,East", "W,West");
        Commands.write(
                folder,
                "ties.csv",
                "tie,stage,pool,round,home,away,home_from,away_from,start",
                "A1,pool,A,1,N,S,,,",
                "B1,pool,B,1,E,W,,,",
                "F,knockout,,1,N,E,A-1,B-1,13:00",
                "P3,knockout,,1,S,W,A-2,B-2,13:00");
        Commands.write(
                folder,
                "results.csv",
                "tie,rubber,home,away,how",
                "A1,1,11,5,played",
                "A1,2,11,6,played",
                "A1,3,4,11,played",
                "B1,1,11,2,played",
                "B1,2,11,3,played",
                "B1,3,11,4,played",
                "F,1,11,3,played",
                "F,2,9,11,played",
                "F,3,11,8,played");
    }

    private Commands.Ran correct(String... more) {
        return Commands.run(
                Stream.concat(Stream.of("correct", folder), Stream.of(more)).toArray());
    }

    @Test
    void lists_every_dependent_item_with_the_promised_columns_and_changes_nothing() throws Exception {
        List<String> before = files();
        Commands.Ran ran = correct("--tie", "A1", "--rubber", "1", "--home", "5", "--away", "11", "--csv");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.status()).isZero();
        assertThat(ran.csv().get(0)).containsExactly("kind", "subject", "before", "after", "state");
        assertThat(ran.rows())
                .containsExactly(
                        List.of("rubber", "A1 1", "11-5", "5-11", "played"),
                        List.of("rubber", "F 1", "11-3", "", "played"),
                        List.of("rubber", "F 2", "9-11", "", "played"),
                        List.of("rubber", "F 3", "11-8", "", "played"),
                        List.of("tie", "A1", "2-1", "1-2", "played"),
                        List.of("tie", "F", "2-1", "0-0", "played"),
                        List.of("place", "N", "1", "2", "played"),
                        List.of("place", "S", "2", "1", "seen"),
                        List.of("slot", "F home", "N", "S", "played"),
                        List.of("slot", "P3 home", "S", "N", "seen"),
                        List.of("time", "F", "13:00", "", "played"),
                        List.of("told", "N F", "13:00", "", "played"),
                        List.of("told", "E F", "13:00", "", "played"),
                        List.of("told", "S P3", "13:00", "", "seen"),
                        List.of("told", "N P3", "", "13:00", "plain"));
        assertThat(files()).isEqualTo(before);
    }

    private List<String> files() throws Exception {
        List<String> texts = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.sorted().toList()) {
                texts.add(file.getFileName() + Files.readString(file));
            }
        }
        return texts;
    }

    @Test
    void says_the_same_to_people() {
        assertThat(correct("--tie", "A1", "--rubber", "1", "--home", "5", "--away", "11")
                        .out())
                .contains("kind", "slot", "F home", "P3 home")
                .doesNotContain(",S,");
    }

    @Test
    void a_score_that_stands_already_changes_nothing() {
        Commands.Ran ran = correct("--tie", "A1", "--rubber", "1", "--home", "11", "--away", "5", "--csv");
        assertThat(ran.status()).isZero();
        assertThat(ran.rows()).isEmpty();
    }

    @Test
    void refuses_in_a_sentence_what_cannot_be() {
        assertThat(correct("--tie", "P3", "--rubber", "1", "--home", "5", "--away", "11"))
                .satisfies(ran -> assertThat(ran.err()).contains("Rubber 1 of tie P3 was never played"))
                .satisfies(ran -> assertThat(ran.status()).isEqualTo(2))
                .satisfies(ran -> assertThat(ran.out()).isEmpty());
        assertThat(correct("--tie", "Z", "--rubber", "1", "--home", "5", "--away", "11")
                        .err())
                .contains("There is no tie Z");
        assertThat(correct("--tie", "A1", "--rubber", "9", "--home", "5", "--away", "11")
                        .err())
                .contains("was never played");
        assertThat(correct("--tie", "A1", "--rubber", "x", "--home", "5", "--away", "11")
                        .err())
                .contains("is not a rubber");
        assertThat(correct("--tie", "A1", "--rubber", "1", "--home", "5", "--away", "10")
                        .err())
                .contains("not finished");
        assertThat(correct("--tie", "A1", "--rubber", "1", "--home", "-5", "--away", "11")
                        .status())
                .isEqualTo(2);
        assertThat(correct("--tie", "A1", "--rubber", "1", "--home", "five", "--away", "11")
                        .status())
                .isEqualTo(2);
        assertThat(correct("--tie", "A1", "--rubber", "1", "--home", "5").status())
                .isEqualTo(2);
        assertThat(correct("--tie", "A1", "--rubber", "1", "--home", "5", "--away", "11", "--home", "5")
                        .err())
                .contains("once for each game");
        assertThat(correct("--tie", "A1", "--rubber", "1", "--home", "5", "--away", "11", "--how", "lost")
                        .err())
                .contains("\"lost\"");
    }

    @Test
    void takes_a_rubber_of_several_games_and_other_ends() {
        Commands.event(folder, "rubbers,3", "best_of,3");
        Commands.write(
                folder, "results.csv", "tie,rubber,game,home,away,how", "A1,1,1,11,5,played", "A1,1,2,11,7,played");
        assertThat(correct(
                                "--tie",
                                "A1",
                                "--rubber",
                                "1",
                                "--home",
                                "11",
                                "--away",
                                "5",
                                "--home",
                                "7",
                                "--away",
                                "11",
                                "--home",
                                "9",
                                "--away",
                                "11",
                                "--csv")
                        .rows())
                .contains(List.of("rubber", "A1 1", "11-5 11-7", "11-5 7-11 9-11", "played"));
        assertThat(correct(
                                "--tie",
                                "A1",
                                "--rubber",
                                "1",
                                "--home",
                                "0",
                                "--away",
                                "0",
                                "--how",
                                "walkover-home",
                                "--csv")
                        .rows())
                .contains(List.of("rubber", "A1 1", "11-5 11-7", "0-11 0-11 walkover-home", "played"));
    }
}
