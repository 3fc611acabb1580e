package tiewright.lineup.tie;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.event.PlayerId;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.PlayingTime;
import tiewright.lineup.TiePlaces;
import tiewright.lineup.Ties;
import tiewright.lineup.TiesAhead;

/** What is still owed after a sheet, against sharing out the places of the other ties in every way. */
class OwedTest {
    private static PlayerId player(int number) {
        return PlayerId.of("a" + number);
    }

    /** The most rubbers that can be given from tie number {@code tie} on, by trying for each player every number of rubbers. */
    private static int given(
            List<TiePlaces> ties, int tie, List<PlayerId> players, int player, int places, int[] wanted) {
        if (tie == ties.size()) {
            return 0;
        }
        if (player == players.size()) {
            return given(
                    ties,
                    tie + 1,
                    players,
                    0,
                    tie + 1 < ties.size() ? ties.get(tie + 1).all() : 0,
                    wanted);
        }
        int best = 0;
        int most = Math.min(Math.min(wanted[player], places), ties.get(tie).most(players.get(player)));
        for (int rubbers = 0; rubbers <= most; rubbers++) {
            wanted[player] -= rubbers;
            best = Math.max(best, rubbers + given(ties, tie, players, player + 1, places - rubbers, wanted));
            wanted[player] += rubbers;
        }
        return best;
    }

    private static List<TiePlaces> randomTies(Random random, List<PlayerId> players) {
        List<TiePlaces> ties = new ArrayList<>();
        for (int tie = random.nextInt(4); tie > 0; tie--) {
            Set<PlayerId> out = new HashSet<>(players);
            out.removeIf(player -> random.nextInt(3) > 0);
            ties.add(
                    random.nextInt(3) == 0 && !ties.isEmpty()
                            ? ties.get(0)
                            : new TiePlaces(random.nextInt(5), 1 + random.nextInt(2), out));
        }
        return ties;
    }

    @Test
    void what_ties_can_give_is_what_the_best_way_to_share_out_their_places_gives() {
        Seed seed = Seed.fresh();
        Random random = seed.random();
        for (int round = 0; round < 400; round++) {
            List<PlayerId> players = IntStream.rangeClosed(1, 1 + random.nextInt(4))
                    .mapToObj(OwedTest::player)
                    .toList();
            List<TiePlaces> ties = randomTies(random, players);
            int[] wanted =
                    players.stream().mapToInt(player -> random.nextInt(4)).toArray();
            int most =
                    given(ties, 0, players, 0, ties.isEmpty() ? 0 : ties.get(0).all(), wanted.clone());
            assertThat(new TiesAhead(ties, players).lost(wanted))
                    .as(
                            "%s, round %d: %s %s",
                            seed, round, ties, IntStream.of(wanted).boxed().toList())
                    .isEqualTo(IntStream.of(wanted).sum() - most);
        }
    }

    /** Naming somebody who is promised something never leaves more unkept, and what one sheet gives lowers it by no more. */
    @Test
    void a_place_on_the_sheet_keeps_at_most_one_promised_rubber_and_never_breaks_one() {
        Seed seed = Seed.fresh();
        Random random = seed.random();
        for (int round = 0; round < 300; round++) {
            LineupProblem problem =
                    Ties.problem(3, 6, Ties.even()).promising(LineupSolverTest.randomPromises(random, 6));
            Board board = new Board(problem);
            int[] line = {random.nextInt(board.pairs().size()), Board.EMPTY, Board.EMPTY};
            int none = board.owed().missing(new int[0]);
            int one = board.owed().missing(line);
            assertThat(one)
                    .as("%s, round %d: %s", seed, round, problem.purpose().playingTime())
                    .isBetween(none - 2, none);
            int alone = board.owed().lost(line).values().stream()
                            .mapToInt(lost -> lost)
                            .sum()
                    + board.owed().hopeless().values().stream()
                            .mapToInt(lost -> lost)
                            .sum();
            if (problem.purpose().playingTime().floor() == 0) {
                assertThat(board.owed().lostTogether(line))
                        .as("%s, round %d", seed, round)
                        .isEqualTo(one - alone)
                        .isNotNegative();
            }
        }
    }

    @Test
    void a_promise_that_no_sheet_can_change_leaves_the_aim_in_billionths() {
        PlayerId gone = PlayerId.of("away");
        PlayingTime absent = new PlayingTime(0, Map.of(gone, 1), Map.of(), List.of());
        assertThat(new Board(Ties.problem(2, 6, Ties.even()).promising(absent)).isCoarse())
                .isFalse();
        PlayingTime kept = new PlayingTime(0, Map.of(player(1), 1), Map.of(player(1), 1), List.of());
        assertThat(new Board(Ties.problem(2, 6, Ties.even()).promising(kept)).isCoarse())
                .isFalse();
        PlayingTime due = new PlayingTime(0, Map.of(player(1), 1), Map.of(), List.of());
        assertThat(new Board(Ties.problem(2, 6, Ties.even()).promising(due)).isCoarse())
                .isTrue();
    }

    @Test
    void promises_below_nothing_are_refused() {
        assertThatThrownBy(() -> new PlayingTime(0, Map.of(player(1), -1), Map.of(), List.of()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new TiePlaces(-1, 1, Set.of())).isInstanceOf(IllegalArgumentException.class);
    }
}
