package tiewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Counts of ordered sheets. Without an order of strength they are multinomial: 8!/2!^4 = 2520 ways to name 4 ordered pairs of
 * 8, and also 8!/(2!^3 2!) = 2520 for 3 of 8; 6!/2!^3 = 90. With rank sums that do not fall they are counted here once more by
 * going through every permutation of the squad.
 */
class SheetsCountCommandTest {
    @TempDir
    private Path folder;

    private void squad(int players, String... settings) {
        Commands.event(folder, settings);
        Commands.write(folder, "clubs.csv", "club,name", "PIER,Pier Road");
        List<String> lines = new ArrayList<>(List.of("player,club,name,rank,present"));
        for (int i = 1; i <= players; i++) {
            lines.add("p" + i + ",PIER,Player " + i + "," + i + ",yes");
        }
        Commands.write(folder, "players.csv", lines.toArray(new String[0]));
    }

    @ParameterizedTest
    @CsvSource({
        "8, 4, none, 2520, 2520", "8, 3, none, 2520, 2520", "6, 3, none, 90, 90", "6, 4, none, 90, 90",
        "8, 4, rank-sum, 199, 2520", "8, 3, rank-sum, 568, 2520", "6, 3, rank-sum, 24, 90", "6, 4, rank-sum, 24, 90"
    })
    void counts_the_ordered_sheets_of_a_squad(int players, int rubbers, String order, int legal, int all) {
        squad(players, "rubbers," + rubbers, "order_of_strength," + order);
        Commands.Ran ran = Commands.run("sheets-count", folder, "--club", "PIER", "--csv");
        assertThat(ran.status()).isZero();
        assertThat(ran.csv())
                .containsExactly(List.of("legal", "all"), List.of(Integer.toString(legal), Integer.toString(all)));
        assertThat(ran.err()).isEmpty();
        assertThat(byPermutations(players, Math.min(rubbers, players / 2), order.equals("rank-sum")))
                .isEqualTo(legal);
    }

    /** Each sheet of n pairs stands for 2^n permutations, times those of the players left out. */
    private static long byPermutations(int players, int pairs, boolean inOrder) {
        long found = permute(new int[players], 0, 0, pairs, inOrder);
        long same = 1L << pairs;
        for (int left = players - 2 * pairs; left > 1; left--) {
            same *= left;
        }
        assertThat(found % same).isZero();
        return found / same;
    }

    private static long permute(int[] order, int at, int used, int pairs, boolean inOrder) {
        if (at == order.length) {
            return !inOrder || isInOrder(order, pairs) ? 1 : 0;
        }
        long found = 0;
        for (int rank = 1; rank <= order.length; rank++) {
            if ((used & 1 << rank) == 0) {
                order[at] = rank;
                found += permute(order, at + 1, used | 1 << rank, pairs, inOrder);
            }
        }
        return found;
    }

    private static boolean isInOrder(int[] order, int pairs) {
        for (int i = 1; i < pairs; i++) {
            if (order[2 * i] + order[2 * i + 1] < order[2 * i - 2] + order[2 * i - 1]) {
                return false;
            }
        }
        return true;
    }

    /** 14!/2!^7; a squad of fourteen in the order of strength is counted too, in seconds. */
    @Test
    void counts_seven_rubbers_of_fourteen_players() {
        squad(14, "rubbers,7", "order_of_strength,rank-sum");
        Commands.Ran ran = Commands.run("sheets-count", folder, "--club", "PIER", "--csv");
        assertThat(ran.rows().get(0).get(1)).isEqualTo("681080400");
        squad(24, "rubbers,12", "order_of_strength,rank-sum");
        Commands.Ran many = Commands.run("sheets-count", folder, "--club", "PIER", "--csv");
        assertThat(many.status()).isEqualTo(4);
        assertThat(many.err()).contains("too many cases to count");
    }

    /** By hand, four and four: 6 women's pairs, 6 men's, 2 x 2 mixed, and one open pair of those left. */
    @Test
    void counts_sheets_of_rubbers_for_women_men_and_mixed_pairs() {
        Commands.event(folder, "rubber_kinds,women;men;mixed;open");
        Commands.write(folder, "clubs.csv", "club,name", "PIER,Pier Road");
        List<String> lines = new ArrayList<>(List.of("player,club,name,plays"));
        for (int i = 1; i <= 8; i++) {
            lines.add("p" + i + ",PIER,Player " + i + "," + (i <= 4 ? "women" : "men"));
        }
        Commands.write(folder, "players.csv", lines.toArray(new String[0]));
        assertThat(Commands.run("check", folder).status()).isZero();
        assertThat(Commands.run("sheets-count", folder, "--club", "PIER", "--csv")
                        .rows())
                .containsExactly(List.of("144", "144"));
        String data = folder.resolve("data").toString();
        assertThat(Commands.run("import", folder, "--data", data).status()).isZero();
        String out = folder.resolve("out").toString();
        assertThat(Commands.run("export", "--data", data, out).status()).isZero();
        assertThat(folder.resolve("out").resolve("players.csv"))
                .content()
                .contains("p4,PIER,Player 4,,,,,,no,women", "p5,PIER,Player 5,,,,,,no,men");
        assertThat(Commands.run("sheets-count", folder.resolve("out"), "--club", "PIER", "--csv")
                        .rows())
                .containsExactly(List.of("144", "144"));
    }

    /** A mixed rubber for a squad that states no women: it stays empty, and the other three are filled. */
    @Test
    void a_rubber_that_nobody_may_fill_stays_empty_without_fault() {
        squad(8, "rubber_kinds,mixed;open;open;open");
        assertThat(Commands.run("sheets-count", folder, "--club", "PIER", "--csv")
                        .rows())
                .containsExactly(List.of("2520", "2520"));
        Commands.event(folder, "rubber_kinds,mixed;open");
        assertThat(Commands.run("check", folder).err())
                .contains("rubber_kinds names 2 rubbers, and a tie has 4; give each rubber its kind");
        Commands.event(folder, "rubber_kinds,ladies;open;open;open");
        assertThat(Commands.run("check", folder).err()).contains("it is one of open, women, men and mixed");
    }

    @Test
    void leaves_out_who_is_not_here() {
        squad(8);
        Commands.write(
                folder,
                "players.csv",
                "player,club,name,present",
                "a,PIER,A,",
                "b,PIER,B,yes",
                "c,PIER,C,yes",
                "d,PIER,D,yes",
                "e,PIER,E,no");
        assertThat(Commands.run("sheets-count", folder, "--club", "PIER", "--csv")
                        .rows())
                .containsExactly(List.of("6", "6"));
    }

    @Test
    void refuses_a_club_without_players_and_an_order_without_ranks() {
        squad(8, "order_of_strength,rank-sum");
        Commands.Ran nobody = Commands.run("sheets-count", folder, "--club", "QUAY");
        assertThat(nobody.status()).isEqualTo(2);
        assertThat(nobody.err()).contains("QUAY");
        assertThat(nobody.out()).isEmpty();
        Commands.write(
                folder, "players.csv", "player,club,name,rank", "a,PIER,A,1", "b,PIER,B,", "c,PIER,C,2", "d,PIER,D,3");
        Commands.Ran unranked = Commands.run("sheets-count", folder, "--club", "PIER");
        assertThat(unranked.status()).isEqualTo(2);
        assertThat(unranked.err()).contains("rank");
    }
}
