package tiewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code game}, {@code order-game} and {@code rubber-chance} against published and recomputed numbers. */
class GameCommandsTest {
    @TempDir
    private Path folder;

    private static double number(List<String> row, int column) {
        return Double.parseDouble(row.get(column));
    }

    /** V. Chvatal, Linear Programming, p. 234, as in algs4 (Sedgewick and Wayne): value 4/99. */
    @Test
    void solves_chvatals_game() {
        double[][] payoffs = {
            {0, 2, -3, 0},
            {-2, 0, 0, 3},
            {3, 0, 0, -4},
            {0, -3, 4, 0},
            {0, 0, -3, 3},
            {-2, 2, 0, 0},
            {3, -3, 0, 0},
            {0, 0, 4, -4}
        };
        List<String> lines = new ArrayList<>(List.of("row,w,x,y,z"));
        for (int i = 0; i < payoffs.length; i++) {
            lines.add("r" + i + "," + payoffs[i][0] + "," + payoffs[i][1] + "," + payoffs[i][2] + "," + payoffs[i][3]);
        }
        Commands.Ran ran =
                Commands.run("game", Commands.write(folder, "chvatal.csv", lines.toArray(new String[0])), "--csv");
        assertThat(ran.status()).isZero();
        assertThat(ran.csv().get(0)).containsExactly("kind", "name", "weight");
        assertThat(ran.rows()).hasSize(1 + 8 + 4);
        assertThat(ran.rows())
                .extracting(row -> row.get(0) + " " + row.get(1))
                .containsExactly(
                        "value ",
                        "row r0",
                        "row r1",
                        "row r2",
                        "row r3",
                        "row r4",
                        "row r5",
                        "row r6",
                        "row r7",
                        "column w",
                        "column x",
                        "column y",
                        "column z");
        assertThat(number(ran.rows().get(0), 2)).isCloseTo(4.0 / 99, within(1e-6));
        double[] row = ran.rows().subList(1, 9).stream()
                .mapToDouble(each -> number(each, 2))
                .toArray();
        for (int column = 0; column < 4; column++) {
            double payoff = 0;
            for (int i = 0; i < 8; i++) {
                payoff += row[i] * payoffs[i][column];
            }
            assertThat(payoff).isGreaterThan(4.0 / 99 - 1e-6); // what the mix secures
        }
    }

    @Test
    void refuses_a_matrix_that_is_none() {
        Commands.write(folder, "bad.csv", "row,w,x", "a,1,two", "b,3", "c,NaN,1");
        Commands.Ran ran = Commands.run("game", folder.resolve("bad.csv"));
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.errLines())
                .hasSize(3)
                .anyMatch(line -> line.equals("bad.csv:2: x: \"two\" is not a number"))
                .anyMatch(line -> line.startsWith("bad.csv:3: "))
                .anyMatch(line -> line.startsWith("bad.csv:4: w: "));
        assertThat(Commands.run("game", folder.resolve("none.csv")).status()).isEqualTo(2);
        assertThat(Commands.run("game", Commands.write(folder, "head.csv", "row,w,x"))
                        .status())
                .isEqualTo(2);
    }

    /** Rubbers that count alike: shuffling is optimal and its value is the mean over all orders (Ferguson, Game Theory, II.2.5). */
    @Test
    void the_blind_order_of_like_rubbers_is_worth_the_mean_of_all_orders() {
        double[][] chances = {{0.7, 0.55, 0.6}, {0.4, 0.5, 0.45}, {0.3, 0.25, 0.52}};
        Path file = Commands.write(
                folder, "chances.csv", "ours,X,Y,Z", "A,0.7,0.55,0.6", "B,0.4,0.5,0.45", "C,0.3,0.25,0.52");
        Commands.Ran ran = Commands.run("order-game", file, "--to-win", 2, "--csv");
        assertThat(ran.status()).isZero();
        assertThat(ran.csv().get(0)).containsExactly("kind", "order", "chance", "weight");
        int[][] orders = {{0, 1, 2}, {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}};
        double mean = 0;
        double best = 0;
        for (int[] order : orders) {
            double chance = twoOfThree(chances[order[0]][0], chances[order[1]][1], chances[order[2]][2]);
            mean += chance / orders.length;
            best = Math.max(best, chance);
        }
        assertThat(number(of(ran, "value"), 2)).isCloseTo(mean, within(1e-9));
        assertThat(of(ran, "straight").get(1)).isEqualTo("A-B-C");
        assertThat(number(of(ran, "straight"), 2)).isCloseTo(twoOfThree(0.7, 0.5, 0.52), within(1e-9));
        assertThat(number(of(ran, "best-reply"), 2)).isCloseTo(best, within(1e-9));
    }

    private static List<String> of(Commands.Ran ran, String kind) {
        return ran.rows().stream()
                .filter(row -> row.get(0).equals(kind))
                .findFirst()
                .orElseThrow();
    }

    private static double twoOfThree(double a, double b, double c) {
        return a * b + a * c + b * c - 2 * a * b * c;
    }

    @Test
    void asks_for_the_decider_when_the_rubbers_can_finish_level() {
        Path file = Commands.write(folder, "even.csv", "ours,X,Y", "A,0.6,0.5", "B,0.5,0.4");
        assertThat(Commands.run("order-game", file, "--to-win", 2).status()).isEqualTo(2);
        assertThat(Commands.run("order-game", file, "--to-win", 2).err()).contains("--decider");
        assertThat(Commands.run("order-game", file, "--to-win", 2, "--decider", 0.5, "--csv")
                        .status())
                .isZero();
        assertThat(Commands.run("order-game", file, "--to-win", 2, "--decider", 1.5)
                        .status())
                .isEqualTo(2);
        assertThat(Commands.run("order-game", file, "--to-win", 9, "--decider", 0.5)
                        .status())
                .isEqualTo(2);
    }

    /**
     * D. DeFord and S. Ethier, arXiv 2303.02942: side-out doubles to 11 and 15, the first servers' chance at p = 1/2 and unequal
     * chances, recomputed with exact fractions.
     */
    @ParameterizedTest
    @CsvSource({
        "side-out-11, 0.5, 0.5, 0.499999997522, 34.96066971",
        "side-out-15, 0.5, 0.5, 0.500000000005030, 49.10382682",
        "side-out-11, 0.55, 0.45, 0.7482532107, ",
        "side-out-15, 0.55, 0.45, 0.7821957416, ",
        "side-out-11, 0.51, 0.49, 0.5531762622, ",
        "side-out-11, 0.52, 0.48, 0.6054224051, ",
        "side-out-11, 0.50, 0.45, 0.6345675315, "
    })
    void gives_the_published_chances_of_side_out_games(
            String format, String one, String two, double win, Double rallies) {
        Commands.Ran ran =
                Commands.run("rubber-chance", "--format", format, "--serve-1", one, "--serve-2", two, "--csv");
        assertThat(ran.status()).isZero();
        assertThat(ran.csv().get(0)).containsExactly("first_server", "win_1", "rallies");
        assertThat(ran.rows()).extracting(row -> row.get(0)).containsExactly("1", "2");
        assertThat(number(ran.rows().get(0), 1)).isCloseTo(win, within(1e-10));
        if (rallies != null) {
            assertThat(number(ran.rows().get(0), 2)).isCloseTo(rallies, within(1e-7));
        }
    }

    /** Rally scoring, win by two, p a rally whoever serves: plain recursion. */
    @ParameterizedTest
    @CsvSource({
        "rally-11, 0.686813086",
        "rally-15, 0.713330501",
        "rally-21, 0.745837597",
        "rally-21-cap-30, 0.745828630"
    })
    void gives_the_chances_of_rally_games(String format, double win) {
        Commands.Ran ran =
                Commands.run("rubber-chance", "--format", format, "--serve-1", 0.55, "--serve-2", 0.45, "--csv");
        assertThat(number(ran.rows().get(0), 1)).isCloseTo(win, within(1e-9));
        assertThat(number(ran.rows().get(1), 1)).isCloseTo(win, within(1e-9));
    }

    @Test
    void says_when_a_game_never_ends_and_when_a_chance_is_none() {
        assertThat(Commands.run("rubber-chance", "--format", "side-out-11", "--serve-1", 0, "--serve-2", 0)
                        .status())
                .isEqualTo(4);
        assertThat(Commands.run("rubber-chance", "--format", "side-out-11", "--serve-1", 1.1, "--serve-2", 0.5)
                        .status())
                .isEqualTo(2);
        assertThat(Commands.run("rubber-chance", "--format", "side-out-11", "--serve-1", "NaN", "--serve-2", 0.5)
                        .status())
                .isEqualTo(2);
        assertThat(Commands.run("rubber-chance", "--format", "tennis", "--serve-1", 0.5, "--serve-2", 0.5)
                        .status())
                .isEqualTo(2);
        assertThat(Commands.run("rubber-chance", "--format", "side-out-11", "--serve-1", "half", "--serve-2", 0.5)
                        .status())
                .isEqualTo(2);
    }
}
