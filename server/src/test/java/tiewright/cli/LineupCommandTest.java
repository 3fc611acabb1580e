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

/** Club E against club F, eight players each, four rubbers; who is here and what is known changes from test to test. */
class LineupCommandTest {
    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeEach
    void write_the_folder() throws IOException {
        file(
                "event.csv",
                "key,value\nname,Harbour Cup\ndate,2026-06-20\nvenue,Pier Hall\ntime_zone,Europe/Lisbon\nstarts,09:00\n");
        file("conditions.csv", "setting,value\npreset,Club day\n");
        file("clubs.csv", "club,name\nE,Elmstow\nF,Farrow Mill\nG,Gorse End\n");
        file("ties.csv", "tie,stage,pool,round,home,away,start\nT1,pool,A,1,E,F,10:00\nT2,pool,A,2,F,G,11:00\n");
        players(8, "");
    }

    private void file(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    /** The first so many of E are here; {@code form} is what its captain gives each of them. */
    private void players(int here, String form) throws IOException {
        StringBuilder text = new StringBuilder("player,club,name,rank,form,present\n");
        for (int i = 1; i <= 8; i++) {
            text.append("E")
                    .append(i)
                    .append(",E,Player ")
                    .append(i)
                    .append(',')
                    .append(i)
                    .append(',')
                    .append(form)
                    .append(',')
                    .append(i <= here ? "yes" : "no")
                    .append('\n');
            text.append("F")
                    .append(i)
                    .append(",F,Player ")
                    .append(i + 8)
                    .append(',')
                    .append(i)
                    .append(",,yes\n");
        }
        file("players.csv", text.toString());
    }

    private int run(String... args) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    private List<String[]> rows() {
        return out.toString().lines().map(line -> line.split(",", -1)).toList();
    }

    @Test
    void prints_the_promised_columns_a_row_for_each_rubber() {
        assertThat(run("lineup", folder.toString(), "--tie", "T1", "--club", "E", "--top", "2", "--csv"))
                .isZero();
        assertThat(rows().get(0))
                .containsExactly(
                        "rank", "rubber", "player_1", "player_2", "rubber_chance", "tie_chance", "low", "high", "cost");
        assertThat(rows().stream().skip(1).map(row -> row[0] + row[1]).toList())
                .containsExactly("11", "12", "13", "14", "21", "22", "23", "24");
        assertThat(Double.parseDouble(rows().get(1)[5])).isCloseTo(0.5, within(1e-9));
    }

    /** Worked by hand: 1/8 + 3/8 x 1/2. */
    @Test
    void six_of_eight_leave_the_last_rubber_empty() throws IOException {
        players(6, "");
        assertThat(run(
                        "lineup",
                        folder.toString(),
                        "--tie",
                        "T1",
                        "--club",
                        "E",
                        "--top",
                        "1",
                        "--csv",
                        "--best-guess"))
                .isZero();
        assertThat(rows().get(4)).startsWith("1", "4", "", "").endsWith("0.0");
        assertThat(Double.parseDouble(rows().get(4)[5])).isCloseTo(0.3125, within(1e-9));
    }

    /** Level rubbers have cost nobody's partner of the decider a rubber more often than not: their strengths are shared. */
    @Test
    void without_the_best_guess_the_decider_shares_the_doubt_of_the_rubbers() throws IOException {
        players(6, "");
        run("lineup", folder.toString(), "--tie", "T1", "--club", "E", "--top", "1", "--csv");
        assertThat(Double.parseDouble(rows().get(4)[5])).isBetween(0.3126, 0.36);
        assertThat(Double.parseDouble(rows().get(1)[4])).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void a_promise_in_the_file_is_due_in_the_last_tie_and_priced() throws IOException {
        StringBuilder text = new StringBuilder("player,club,name,rank,form,present,promised\n");
        for (int i = 1; i <= 10; i++) {
            text.append("E")
                    .append(i)
                    .append(",E,Player ")
                    .append(i)
                    .append(',')
                    .append(i)
                    .append(',')
                    .append(12 - i)
                    .append(",yes,")
                    .append(i == 10 ? "1" : "")
                    .append('\n');
            text.append("F")
                    .append(i)
                    .append(",F,Player ")
                    .append(i + 10)
                    .append(',')
                    .append(i)
                    .append(",,yes,\n");
        }
        file("players.csv", text.toString());
        assertThat(run("lineup", folder.toString(), "--tie", "T1", "--club", "E"))
                .isZero();
        assertThat(err.toString())
                .contains(
                        "Due in this tie to E10: 1 of 1 missing rubbers",
                        "It leaves your promise to E10 unkept",
                        "The best sheet that keeps all you promised costs ");
        err.getBuffer().setLength(0);
        file(
                "ties.csv",
                "tie,stage,pool,round,home,away,start\nT1,pool,A,1,E,F,10:00\nT2,pool,A,2,F,G,11:00\nT3,pool,A,3,E,G,12:00\n");
        assertThat(run("lineup", folder.toString(), "--tie", "T1", "--club", "E"))
                .isZero();
        assertThat(err.toString())
                .contains("Nothing that you promised has to be played in this tie")
                .doesNotContain("unkept");
    }

    @Test
    void the_same_seed_prints_the_same_rows() {
        run("lineup", folder.toString(), "--tie", "T1", "--club", "E", "--seed", "5", "--against", "unknown", "--csv");
        String first = out.toString();
        out.getBuffer().setLength(0);
        run("lineup", folder.toString(), "--tie", "T1", "--club", "E", "--seed", "5", "--against", "unknown", "--csv");
        assertThat(out.toString()).isEqualTo(first);
        assertThat(err.toString()).contains("seed 5");
    }

    @Test
    void people_hear_what_it_rests_on_and_tables_do_not() throws IOException {
        file(
                "past-results.csv",
                "date,home_1,home_2,away_1,away_2,home,away,format\n2026-06-06,E1,E2,x,y,11,4,side-out-11\n"
                        + "2026-06-06,E1,E2,x,y,11,4,side-out-11\n2026-06-07,E1,E3,x,y,9,11,side-out-11\n");
        for (String command : List.of("lineup", "decider")) {
            err.getBuffer().setLength(0);
            assertThat(run(command, folder.toString(), "--tie", "T1", "--club", "E"))
                    .isZero();
            assertThat(err.toString())
                    .contains(
                            "It rests on what was noted about the squad, on no card of today, 3 earlier games and no film.");
            err.getBuffer().setLength(0);
            assertThat(run(command, folder.toString(), "--tie", "T1", "--club", "E", "--csv"))
                    .isZero();
            assertThat(err.toString()).doesNotContain("rests on");
        }
        assertThat(out.toString()).doesNotContain("rests on");
    }

    @Test
    void wishes_that_cannot_hold_are_named_and_nothing_is_printed() throws IOException {
        file("chemistry.csv", "player_1,player_2,extra,rule\nE1,E2,0,together\nE1,E3,0,together\nE4,E5,0,apart\n");
        assertThat(run("lineup", folder.toString(), "--tie", "T1", "--club", "E", "--csv"))
                .isEqualTo(4);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString())
                .contains("E1 and E2 play together", "E1 and E3 play together")
                .doesNotContain("E4");
    }

    @Test
    void chemistry_of_the_other_club_is_not_looked_at() throws IOException {
        run("lineup", folder.toString(), "--tie", "T1", "--club", "E", "--csv");
        String before = out.toString();
        out.getBuffer().setLength(0);
        file("chemistry.csv", "player_1,player_2,extra,rule\nF1,F2,9,together\n");
        run("lineup", folder.toString(), "--tie", "T1", "--club", "E", "--csv");
        assertThat(out.toString()).isEqualTo(before);
    }

    @Test
    void the_decider_has_a_row_for_each_pair_and_weights_that_add_up() {
        assertThat(run("decider", folder.toString(), "--tie", "T1", "--club", "E", "--csv"))
                .isZero();
        assertThat(rows().get(0))
                .containsExactly("rank", "player_1", "player_2", "weight", "chance", "low", "high", "verdict");
        assertThat(rows()).hasSize(1 + 28);
        assertThat(rows().stream()
                        .skip(1)
                        .mapToDouble(row -> Double.parseDouble(row[3]))
                        .sum())
                .isCloseTo(1, within(1e-9));
        assertThat(rows().get(1)[7]).isEqualTo("either");
    }

    @Test
    void people_read_four_digits_and_tables_have_them_all() throws IOException {
        players(8, "3");
        run("lineup", folder.toString(), "--tie", "T1", "--club", "E", "--top", "1");
        assertThat(out.toString()).containsPattern("0\\.\\d{4} ").doesNotContainPattern("\\.\\d{5}");
        out.getBuffer().setLength(0);
        run("lineup", folder.toString(), "--tie", "T1", "--club", "E", "--top", "1", "--csv");
        assertThat(out.toString()).containsPattern("0\\.\\d{9}");
    }

    @Test
    void before_the_first_ball_nobody_is_short_of_rest() {
        run("lineup", folder.toString(), "--tie", "T1", "--club", "E");
        run("decider", folder.toString(), "--tie", "T1", "--club", "E");
        assertThat(err.toString()).doesNotContain("Short of rest");
    }

    @Test
    void no_decider_no_advice() throws IOException {
        file("conditions.csv", "setting,value\npreset,Club day\ndecider,none\n");
        assertThat(run("decider", folder.toString(), "--tie", "T1", "--club", "E", "--csv"))
                .isEqualTo(4);
        assertThat(err.toString()).contains("none");
    }

    @Test
    void says_what_is_wrong_with_the_question() throws IOException {
        assertThat(run("lineup", folder.toString(), "--tie", "T9", "--club", "E"))
                .isEqualTo(2);
        assertThat(run("lineup", folder.toString(), "--tie", "T2", "--club", "E"))
                .isEqualTo(2);
        assertThat(run("lineup", folder.toString(), "--tie", "T1", "--club", "E", "--against", "crooked"))
                .isEqualTo(2);
        assertThat(run("lineup", folder.toString(), "--tie", "T1", "--club", "E", "--top", "0"))
                .isEqualTo(2);
        Files.delete(folder.resolve("ties.csv"));
        assertThat(run("decider", folder.toString(), "--tie", "T1", "--club", "E"))
                .isEqualTo(2);
        assertThat(err.toString().lines())
                .anyMatch(line -> line.contains("T1, T2"))
                .anyMatch(line -> line.contains("does not play in tie T2"))
                .anyMatch(line -> line.contains("crooked"))
                .anyMatch(line -> line.contains("ties.csv"));
        assertThat(out.toString()).isEmpty();
    }
}
