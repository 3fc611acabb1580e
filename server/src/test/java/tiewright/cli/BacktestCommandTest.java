package tiewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Forecasts of earlier games from those before them; what is expected follows from the rules of the command alone. */
class BacktestCommandTest {
    private static final String HEADER = "date,home_1,home_2,away_1,away_2,home,away,format,match,best_of\n";

    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeEach
    void event() throws IOException {
        file("event.csv", "key,value\nname,Try\ndate,2026-09-05\nvenue,Hall\ntime_zone,Europe/London\nstarts,09:30\n");
        file("conditions.csv", "setting,value\npreset,Club day\n");
        file("clubs.csv", "club,name\nE,Elmstow\n");
    }

    private void file(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    private int run(String... more) {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        String[] args = new String[3 + more.length];
        args[0] = "backtest";
        args[1] = folder.toString();
        args[2] = "--csv";
        System.arraycopy(more, 0, args, 3, more.length);
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    private List<String[]> rows() {
        return out.toString().lines().skip(1).map(line -> line.split(",", -1)).toList();
    }

    private static String game(String date, String players, String score, String rubber) {
        return date + "," + players + "," + score + ",rally-11," + rubber + "\n";
    }

    @Test
    void a_game_is_forecast_from_earlier_stretches_only_and_strangers_are_even() throws IOException {
        file(
                "past-results.csv",
                HEADER
                        + game("2026-03-01", "a,b,c,d", "11,2", ",")
                        + game("2026-05-20", "x,y,z,w", "3,11", ",")
                        + game("2026-05-20", "a,b,c,d", "11,5", ",")
                        + game("2026-05-21", "x,y,z,w", "3,11", ",")
                        + game("2026-08-01", "x,y,z,w", "11,9", ","));
        assertThat(run("--from", "2026-05-20")).isZero();
        assertThat(out.toString())
                .startsWith("date,home_1,home_2,away_1,away_2,format,chance,won,match,match_chance,match_won\n");
        assertThat(rows().stream().map(row -> row[0]).toList())
                .containsExactly("2026-05-20", "2026-05-20", "2026-05-21", "2026-08-01");
        assertThat(Double.parseDouble(rows().get(0)[6])).isCloseTo(0.5, within(1e-9));
        assertThat(Double.parseDouble(rows().get(1)[6])).isBetween(0.55, 0.95);
        assertThat(Double.parseDouble(rows().get(2)[6]))
                .as("of the same stretch")
                .isCloseTo(0.5, within(1e-9));
        assertThat(Double.parseDouble(rows().get(3)[6])).isLessThan(0.4);
        assertThat(rows().stream().map(row -> row[7]).toList()).containsExactly("0", "1", "0", "1");
        assertThat(err.toString())
                .contains("serve=0.44", "form-spread=9.0", "extra-spread=1.5", "drift=2.5", "shared=3.5")
                .contains("4 games", "too few");
    }

    @Test
    void what_came_after_changes_nothing() throws IOException {
        String known = HEADER + game("2026-03-01", "a,b,c,d", "11,2", ",") + game("2026-03-02", "c,d,a,e", "11,8", ",");
        file("past-results.csv", known + game("2026-05-20", "a,b,c,d", "11,5", ","));
        run("--from", "2026-05-20");
        String chance = rows().get(0)[6];
        file(
                "past-results.csv",
                known + game("2026-05-20", "a,b,c,d", "3,11", ",") + game("2026-05-25", "a,b,c,d", "0,11", ","));
        run("--from", "2026-05-20");
        assertThat(rows().get(0)[6]).isEqualTo(chance);
        assertThat(rows().get(1)[6]).as("carried some days on").isNotEqualTo("");
    }

    /** Best of three: more likely than one game for who is ahead, and never both at once in one row but the last. */
    @Test
    void a_rubber_is_forecast_in_the_row_of_its_last_game() throws IOException {
        file(
                "past-results.csv",
                HEADER
                        + game("2026-03-01", "a,b,c,d", "11,2", ",")
                        + game("2026-03-02", "a,b,c,d", "11,6", ",")
                        + game("2026-05-20", "a,b,c,d", "11,5", "m1,3")
                        + game("2026-05-20", "c,d,a,b", "11,9", "m1,3")
                        + game("2026-05-20", "c,d,a,b", "7,11", "m1,3"));
        assertThat(run("--from", "2026-05-20")).isZero();
        assertThat(rows()).hasSize(3);
        assertThat(rows().get(0)[8] + rows().get(1)[8]).isEmpty();
        assertThat(rows().get(2)[8]).isEqualTo("m1");
        assertThat(rows().get(2)[10]).as("c and d stand first and lost it").isEqualTo("0");
        double game = Double.parseDouble(rows().get(0)[6]);
        double whole = 1 - Double.parseDouble(rows().get(2)[9]);
        assertThat(whole).isGreaterThan(game);
        assertThat(Double.parseDouble(rows().get(1)[6])).isCloseTo(1 - game, within(1e-9));
        run("--from", "2026-05-20", "--shared", "0");
        assertThat(1 - Double.parseDouble(rows().get(2)[9]))
                .as("nothing shared: surer")
                .isGreaterThan(whole);
    }

    @Test
    void says_what_cannot_be_asked() throws IOException {
        file("past-results.csv", HEADER + game("2026-03-01", "a,b,c,d", "11,2", ","));
        assertThat(run()).isEqualTo(4);
        assertThat(run("--from", "2027-01-01")).isEqualTo(4);
        assertThat(run("--from", "soon")).isEqualTo(2);
        assertThat(run("--every", "0")).isEqualTo(2);
        assertThat(run("--serve", "1")).isEqualTo(2);
        assertThat(run("--form-spread", "-1")).isEqualTo(2);
        file("past-results.csv", HEADER + game("2026-03-01", "a,b,c,d", "10,2", ","));
        assertThat(run()).isEqualTo(2);
        assertThat(err.toString()).contains("past-results.csv:2");
        Files.delete(folder.resolve("past-results.csv"));
        assertThat(run()).isEqualTo(2);
    }
}
