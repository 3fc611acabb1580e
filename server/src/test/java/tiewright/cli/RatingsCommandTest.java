package tiewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Clubs E and F of four; what was played and filmed changes from test to test. */
class RatingsCommandTest {
    private static final String PAST = "date,home_1,home_2,away_1,away_2,home,away,format";
    private static final String GAMES =
            "game,tie,rubber,format,first_server,right_1,left_1,right_2,left_2,card_1,card_2";
    private static final String RALLIES = "game,rally,ending,player,third";

    @TempDir
    private Path folder;

    @BeforeEach
    void write_the_folder() {
        Commands.event(folder);
        Commands.write(folder, "clubs.csv", "club,name", "E,Elmstow", "F,Farrow Mill");
        Commands.write(
                folder,
                "players.csv",
                "player,club,name,form,form_sd",
                "E1,E,A,3,2",
                "E2,E,B,,",
                "E3,E,C,,",
                "E4,E,D,,",
                "F1,F,E,,",
                "F2,F,F,,",
                "F3,F,G,,",
                "F4,F,H,,");
    }

    private List<List<String>> rows(Object... more) {
        Object[] words = new Object[more.length + 3];
        words[0] = "ratings";
        words[1] = folder;
        words[2] = "--csv";
        System.arraycopy(more, 0, words, 3, more.length);
        Commands.Ran ran = Commands.run(words);
        assertThat(ran.err().lines())
                .as("what it rests on beside the games")
                .hasSize(5)
                .allMatch(line -> line.matches("(serve|form-spread|extra-spread|drift|shared)=[0-9.]+"));
        assertThat(ran.status()).isZero();
        assertThat(ran.csv().get(0))
                .containsExactly("kind", "player_1", "player_2", "estimate", "sd", "low", "high", "rallies", "verdict");
        return ran.rows();
    }

    private static List<String> row(List<List<String>> rows, String one, String other) {
        return rows.stream()
                .filter(row -> row.get(1).equals(one) && row.get(2).equals(other))
                .findFirst()
                .orElseThrow();
    }

    private static double number(List<List<String>> rows, String one, String other, int column) {
        return Double.parseDouble(row(rows, one, other).get(column));
    }

    /** Side E wins so many of so many rallies that E1 and E2 play against F1 and F2. */
    private void film(String tie, String rubber, String card, int rallies, int won) {
        Commands.write(folder, "games.csv", GAMES, "g," + tie + "," + rubber + ",side-out-99,E1,E1,E2,F1,F2," + card);
        List<String> lines = new ArrayList<>(List.of(RALLIES));
        for (int i = 1; i <= rallies; i++) {
            boolean ours = i * won / rallies > (i - 1) * won / rallies;
            lines.add("g," + i + "," + (ours ? "gave,F2" : "earned,F1") + ",");
        }
        lines.add("g," + (rallies + 1) + ",replay,,");
        lines.add("g," + (rallies + 2) + ",unsure,,");
        Commands.write(folder, "rallies.csv", lines.toArray(String[]::new));
    }

    @Test
    void without_any_game_everybody_is_as_the_captain_judged() {
        List<List<String>> rows = rows();
        assertThat(rows).extracting(row -> row.get(1)).containsExactly("E1", "E2", "E3", "E4", "F1", "F2", "F3", "F4");
        assertThat(row(rows, "E1", "").subList(3, 5)).containsExactly("3.0", "2.0");
        assertThat(rows).extracting(row -> row.get(8)).containsOnly("not-enough-film");
    }

    @Test
    void past_results_and_strangers_have_their_rows() {
        Commands.write(
                folder,
                "past-results.csv",
                PAST,
                "2026-09-12,E1,E3,X1,X2,11,2,side-out-11",
                "2026-09-12,E1,E4,X1,X2,15,3,rally-15");
        List<List<String>> rows = rows();
        assertThat(rows)
                .extracting(row -> row.get(0) + row.get(1) + row.get(2))
                .contains("chemistryE1E3", "chemistryE1E4", "chemistryX1X2", "formX1")
                .doesNotContain("chemistryE1E2");
        assertThat(number(rows, "E1", "", 3)).isGreaterThan(3);
        assertThat(number(rows, "X1", "", 3)).isNegative();
        assertThat(number(rows, "E1", "", 5))
                .isLessThan(number(rows, "E1", "", 3))
                .isLessThan(number(rows, "E1", "", 6));
    }

    @Test
    void film_counts_rally_by_rally() {
        film("", "", ",", 60, 45);
        List<List<String>> good = rows();
        assertThat(row(good, "E1", "").get(7)).isEqualTo("60");
        assertThat(row(good, "E1", "E2").get(7)).isEqualTo("60");
        assertThat(row(good, "E1", "").get(8)).isEqualTo("first-look");
        assertThat(number(good, "E2", "", 3)).isGreaterThan(1);
        film("", "", ",", 60, 15);
        assertThat(number(rows(), "E2", "", 3)).isLessThan(-1);
    }

    @Test
    void two_who_only_ever_pair_together_are_said_to_be_inseparable() {
        film("", "", ",", 60, 45);
        assertThat(row(rows(), "E1", "E2").get(8)).isEqualTo("cannot-tell-apart");
        assertThat(Commands.run("ratings", folder).err()).contains("form and chemistry cannot be told apart");
    }

    @Test
    void a_game_that_is_on_a_card_and_on_film_counts_once() {
        Commands.write(folder, "ties.csv", "tie,stage,pool,round,home,away", "T,pool,P,1,E,F");
        Commands.write(
                folder,
                "rubbers.csv",
                "tie,rubber,home_1,home_2,away_1,away_2",
                "T,1,E1,E2,F1,F2",
                "T,2,E3,E4,F3,F4",
                "T,3,,,,",
                "T,4,,,,");
        Commands.write(folder, "results.csv", "tie,rubber,home,away,how", "T,1,11,0,played");
        Commands.Ran card = Commands.run("ratings", folder);
        assertThat(card.err()).contains("All of it rests on 1 game, with 0 rallies on film.");
        film("T", "1", "11,0", 20, 10);
        assertThat(Commands.run("ratings", folder).err())
                .contains("All of it rests on 1 game, with 20 rallies on film.");
        film("T", "2", "11,0", 20, 10);
        assertThat(Commands.run("ratings", folder).err())
                .contains("All of it rests on 2 games, with 20 rallies on film.");
    }

    @Test
    void proposals_rest_on_film_too() {
        Commands.write(folder, "ties.csv", "tie,stage,pool,round,home,away", "T,pool,P,1,E,F");
        double before = Double.parseDouble(Commands.run("decider", folder, "--tie", "T", "--club", "E", "--csv")
                .rows()
                .get(0)
                .get(4));
        film("", "", ",", 60, 50);
        assertThat(Double.parseDouble(Commands.run("decider", folder, "--tie", "T", "--club", "E", "--csv")
                        .rows()
                        .get(0)
                        .get(4)))
                .isGreaterThan(before + 0.05);
    }

    @Test
    void older_games_count_less_when_asked() {
        Commands.write(folder, "past-results.csv", PAST, "2020-01-01,E2,E3,F1,F2,11,0,side-out-11");
        double whole = number(rows(), "E2", "", 3);
        double faded = number(rows("--half-life", "365"), "E2", "", 3);
        assertThat(faded).isPositive().isLessThan(whole / 2);
        assertThat(Commands.run("ratings", folder, "--half-life", "365").err())
                .contains("one that is 365 days old counts half");
        assertThat(Commands.run("ratings", folder).err())
                .contains("A form may have moved since: its doubt grows by about 2.5 rallies in 100 in a year.");
        assertThat(Commands.run("ratings", folder, "--drift", "0").err())
                .contains("Older games count as much as new ones.");
    }

    @Test
    void what_is_stated_is_taken_and_said() {
        Commands.write(folder, "past-results.csv", PAST, "2026-01-01,E2,E3,F1,F2,11,0,rally-11");
        Commands.Ran ran = Commands.run(
                "ratings",
                folder,
                "--serve",
                "0.5",
                "--form-spread",
                "3",
                "--extra-spread",
                "0",
                "--drift",
                "1",
                "--shared",
                "2");
        assertThat(ran.err())
                .contains("serve=0.5", "form-spread=3.0", "extra-spread=0.0", "drift=1.0", "shared=2.0")
                .contains("players are taken to differ by about 3.0 rallies in 100");
        assertThat(number(rows("--form-spread", "3"), "E2", "", 3))
                .isLessThan(number(rows("--form-spread", "12"), "E2", "", 3));
        assertThat(number(rows("--extra-spread", "0"), "E2", "E3", 4)).isCloseTo(0, within(1e-5));
        assertThat(number(rows("--drift", "9"), "E2", "", 4)).isGreaterThan(number(rows("--drift", "0"), "E2", "", 4));
        for (String wrong : List.of("-1", "51", "NaN")) {
            assertThat(Commands.run("ratings", folder, "--drift", wrong).status())
                    .isEqualTo(2);
        }
        assertThat(Commands.run("ratings", folder, "--serve", "0").err())
                .contains("--serve is a chance above 0 and below 1.");
    }

    @Test
    void says_what_is_wrong_with_the_question() {
        for (String days : List.of("0", "-3", "1.5", "soon", "999999")) {
            Commands.Ran ran = Commands.run("ratings", folder, "--half-life", days);
            assertThat(ran.status()).isEqualTo(2);
            assertThat(ran.err()).contains("from 1 to 36500", days);
            assertThat(ran.out()).isEmpty();
        }
        Commands.write(folder, "players.csv", "player,club,name,form,form_sd", "E1,E,A,51,0");
        Commands.Ran ran = Commands.run("ratings", folder, "--csv");
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.errLines())
                .hasSize(2)
                .anyMatch(line -> line.startsWith("players.csv:2: form:"))
                .anyMatch(line -> line.startsWith("players.csv:2: form_sd: the doubt must be more than 0"));
    }
}
