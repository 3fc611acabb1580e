package tiewright.standings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.event.TieId;

/** Ratios and sums of points that are still open: by hand, and beside every score that can be written. */
class LooseSplitsTest {
    private static final int OWN = 0;
    private static final int OTHER = 1;
    private static final int OUTSIDER = 2;
    /** To 11, two ahead, no end. */
    private static final Games TO_11 = new Games(1, 11, false, 2, 11, true);

    private static Value ratio(long won, long lost) {
        return new Value(Form.RATIO, won, lost);
    }

    /** A game still to be played, its winner given. */
    private static OpenOutcome game(int home, int away, boolean homeWins) {
        return game(TO_11, home, away, homeWins);
    }

    private static OpenOutcome game(Games games, int home, int away, boolean homeWins) {
        SideCount nothing = new SideCount(0, 0, 0, 0, 0);
        return new OpenOutcome(
                new CountedTie(TieId.of("T"), home, away, homeWins ? Result.WON : Result.LOST, nothing, nothing),
                OpenPoints.of(games, homeWins ? 1 : 0, homeWins ? 0 : 1));
    }

    /** Where the other club can be, seen from the first: {@code A} ahead, {@code B} behind, {@code L} level. */
    private static String ways(Value own, Value other, boolean among, OpenOutcome... open) {
        int[] level = {OWN, OTHER};
        StringBuilder ways = new StringBuilder();
        for (Split split : new LooseSplits(level, 0, new Value[] {own, other}, among, List.of(open)).possible()) {
            ways.append(split.ahead() == 1 ? 'A' : split.level().length == 2 ? 'L' : 'B');
        }
        return ways.chars()
                .sorted()
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    /** By hand: 60-50 and a game won is at best 71-50, 30-60 and a game won at worst 41-69. */
    @Test
    void a_game_won_to_nothing_or_narrowly_sets_the_limits_of_a_ratio() {
        OpenOutcome won = game(OWN, OUTSIDER, true);
        assertThat(ways(ratio(60, 50), ratio(72, 50), false, won)).isEqualTo("A");
        assertThat(ways(ratio(60, 50), ratio(71, 50), false, won)).isEqualTo("AL");
        assertThat(ways(ratio(60, 50), ratio(70, 50), false, won)).isEqualTo("ABL");
        assertThat(ways(ratio(30, 60), ratio(42, 69), false, won)).isEqualTo("ABL");
        assertThat(ways(ratio(30, 60), ratio(41, 69), false, won)).isEqualTo("BL");
        assertThat(ways(ratio(30, 60), ratio(40, 69), false, won)).isEqualTo("B");
    }

    /** By hand: 90-50 and a game lost is at best 99-61, 50-60 and a game lost at worst 50-71. */
    @Test
    void so_does_a_game_lost() {
        OpenOutcome lost = game(OUTSIDER, OWN, true);
        assertThat(ways(ratio(90, 50), ratio(100, 61), false, lost)).isEqualTo("A");
        assertThat(ways(ratio(90, 50), ratio(99, 61), false, lost)).isEqualTo("AL");
        assertThat(ways(ratio(50, 60), ratio(50, 71), false, lost)).isEqualTo("BL");
        assertThat(ways(ratio(50, 60), ratio(49, 71), false, lost)).isEqualTo("B");
    }

    @Test
    void the_other_clubs_open_game_counts_as_well() {
        OpenOutcome theirs = game(OTHER, OUTSIDER, true);
        assertThat(ways(ratio(72, 50), ratio(60, 50), false, theirs)).isEqualTo("B");
        assertThat(ways(ratio(71, 50), ratio(60, 50), false, theirs)).isEqualTo("BL");
        assertThat(ways(ratio(41, 69), ratio(30, 60), false, theirs)).isEqualTo("AL");
        assertThat(ways(ratio(40, 69), ratio(30, 60), false, theirs)).isEqualTo("A");
    }

    /** 100-50 and a lost game that ends 200-202 is 300-252, and near 1 when it never ends. */
    @Test
    void a_game_without_end_draws_a_ratio_towards_one_and_not_beyond() {
        OpenOutcome lost = game(OWN, OUTSIDER, false);
        assertThat(ways(ratio(100, 50), ratio(101, 100), false, lost)).contains("A");
        assertThat(ways(ratio(100, 50), ratio(99, 100), false, lost)).isEqualTo("B");
        OpenOutcome won = game(OWN, OUTSIDER, true);
        assertThat(ways(ratio(50, 100), ratio(99, 100), false, won)).contains("B");
        assertThat(ways(ratio(50, 100), ratio(101, 100), false, won)).isEqualTo("A");
    }

    /** By hand: 60 points and 11 more at least. */
    @Test
    void a_sum_has_a_least_and_no_most() {
        OpenOutcome won = game(OWN, OUTSIDER, true);
        assertThat(ways(sum(60), sum(70), false, won)).isEqualTo("B");
        assertThat(ways(sum(60), sum(71), false, won)).isEqualTo("BL");
        assertThat(ways(sum(60), sum(5_000), false, won)).isEqualTo("ABL");
    }

    private static Value sum(long won) {
        return new Value(Form.WON, won, 0);
    }

    @Test
    void where_time_ends_a_game_nothing_is_certain() {
        OpenOutcome won = game(TO_11.stoppedByTime(), OWN, OUTSIDER, true);
        assertThat(ways(ratio(60, 50), ratio(99, 1), false, won)).isEqualTo("ABL");
        assertThat(ways(ratio(60, 50), ratio(1, 99), false, won)).isEqualTo("ABL");
        assertThat(ways(sum(60), sum(1), false, won)).isEqualTo("ABL");
    }

    @Test
    void among_level_clubs_a_game_against_an_outsider_changes_nothing() {
        for (OpenOutcome against : List.of(game(OWN, OUTSIDER, true), game(OUTSIDER, OWN, true))) {
            assertThat(ways(ratio(60, 50), ratio(61, 50), true, against)).isEqualTo("A");
        }
        assertThat(ways(ratio(60, 50), ratio(61, 50), true, game(OWN, OTHER, true)))
                .contains("B");
        assertThat(ways(ratio(60, 50), ratio(61, 50), false, game(OUTSIDER, 3, true)))
                .isEqualTo("A");
    }

    /** Three level clubs with games among them and against others: whatever can be written on a card is among the answers. */
    @Test
    void every_split_that_a_card_can_bring_is_among_the_answers() {
        for (int round = 0; round < 300; round++) {
            Random random = Seed.random(round);
            Form form = random.nextBoolean() ? Form.RATIO : Form.WON;
            long[][] known = new long[3][];
            Arrays.setAll(known, i -> new long[] {1 + random.nextInt(9), 1 + random.nextInt(9)});
            int[][] games = IntStream.range(0, 2)
                    .mapToObj(i -> new int[] {random.nextInt(2), 2 + random.nextInt(2), random.nextInt(2)})
                    .toArray(int[][]::new);
            Set<String> seen = new TreeSet<>();
            play(form, known, games, 0, seen);
            assertThat(answers(form, known, games)).as(Seed.rerun(round)).containsAll(seen);
        }
    }

    private static final Games TO_3 = new Games(1, 3, false, 2, 3, true);

    private static void play(Form form, long[][] sums, int[][] games, int from, Set<String> seen) {
        if (from == games.length) {
            seen.add(standing(form, sums));
            return;
        }
        for (int[] score :
                List.of(new int[] {3, 0}, new int[] {3, 1}, new int[] {4, 2}, new int[] {5, 3}, new int[] {60, 58})) {
            int home = games[from][0];
            int away = games[from][1];
            boolean homeWins = games[from][2] == 0;
            long[][] after = Arrays.stream(sums).map(long[]::clone).toArray(long[][]::new);
            add(after, home, score[homeWins ? 0 : 1], score[homeWins ? 1 : 0]);
            add(after, away, score[homeWins ? 1 : 0], score[homeWins ? 0 : 1]);
            play(form, after, games, from + 1, seen);
        }
    }

    private static void add(long[][] sums, int club, int won, int lost) {
        if (club < sums.length) {
            sums[club][0] += won;
            sums[club][1] += lost;
        }
    }

    private static String standing(Form form, long[][] sums) {
        Value own = new Value(form, sums[OWN][0], sums[OWN][1]);
        int ahead = 0;
        List<Integer> level = new ArrayList<>();
        for (int i = 0; i < sums.length; i++) {
            int compared = new Value(form, sums[i][0], sums[i][1]).compareTo(own);
            ahead += compared > 0 ? 1 : 0;
            if (compared == 0) {
                level.add(i);
            }
        }
        return ahead + " " + level;
    }

    private static Set<String> answers(Form form, long[][] known, int[][] games) {
        Value[] values =
                Arrays.stream(known).map(one -> new Value(form, one[0], one[1])).toArray(Value[]::new);
        List<OpenOutcome> open = Arrays.stream(games)
                .map(one -> game(TO_3, one[0], one[1], one[2] == 0))
                .toList();
        Set<String> answers = new TreeSet<>();
        for (Split split : new LooseSplits(new int[] {0, 1, 2}, OWN, values, false, open).possible()) {
            answers.add(
                    split.ahead() + " " + Arrays.stream(split.level()).boxed().toList());
        }
        return answers;
    }
}
