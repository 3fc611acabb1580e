package tiewright.lineup.tie;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.Seed;
import tiewright.conditions.DeciderKind;
import tiewright.conditions.OrderOfStrength;
import tiewright.lineup.Aim;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Ties;

class RankingTest {
    /** Every sheet by all draws, which takes its time, as the judge of a look that stops early. */
    @Test
    void the_best_sheets_under_doubt_are_those_of_all() {
        Seed seed = Seed.fresh();
        Random random = seed.random();
        for (int i = 0; i < 24; i++) {
            LineupProblem problem = LineupProblem.of(
                            Ties.rules(
                                    4, 1, OrderOfStrength.NONE, DeciderKind.values()[i % DeciderKind.values().length]),
                            Ties.squad("a", 8),
                            Ties.squad("b", 8),
                            Ties.doubted(random, 8),
                            LineupProblem.Against.STRAIGHT,
                            1)
                    .aimingAt(i % 3 == 0 ? Aim.RUBBERS : Aim.WIN);
            Board board = new Board(problem);
            List<Long> all = new ArrayList<>();
            SheetSearch.run(
                    board,
                    true,
                    Ranking.MOST_STEPS,
                    line -> all.add(Merit.of(board, line).worth()));
            all.sort(Comparator.reverseOrder());
            assertThat(Ranking.of(board, true, 3).best().stream()
                            .map(ranked -> ranked.merit().worth())
                            .toList())
                    .as("%s, problem %d", seed, i)
                    .isEqualTo(all.subList(0, 3));
        }
    }

    /** Perfect matchings (2n-1)!!, On-Line Encyclopedia of Integer Sequences A001147: each pairing of a squad is tried once. */
    @ParameterizedTest
    @CsvSource({"2, 1", "4, 3", "6, 15", "8, 105", "10, 945", "12, 10395"})
    void tries_every_pairing_once(int players, long pairings) {
        Ranking ranking = Ranking.of(new Board(Ties.problem(players / 2, players, Ties.even())), false, 1);
        assertThat(ranking.complete()).isTrue();
        assertThat(ranking.tried()).isEqualTo(pairings);
    }

    /** 8!/2!^4 = 2520 and 8!/(2!^3 2!) = 2520, 6!/2!^3 = 90: multinomial coefficients. */
    @ParameterizedTest
    @CsvSource({"8, 4, 2520", "8, 3, 2520", "6, 3, 90"})
    void tries_every_ordered_sheet_once(int players, int rubbers, long sheets) {
        assertThat(Ranking.of(new Board(Ties.problem(rubbers, players, Ties.even())), true, 1)
                        .tried())
                .isEqualTo(sheets);
    }
}
