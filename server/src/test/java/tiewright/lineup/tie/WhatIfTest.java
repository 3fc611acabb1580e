package tiewright.lineup.tie;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.conditions.DeciderKind;
import tiewright.conditions.OrderOfStrength;
import tiewright.event.PlayerId;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Squad;
import tiewright.lineup.Ties;
import tiewright.lineup.Wish;

/** What fewer players are worth, beside every way to leave players out, each laid out anew and its sheets tried by themselves. */
class WhatIfTest {
    /** What is left out by stopping early lies within a thousandth, of a chance or of a rubber. */
    private static final double CLOSE = 0.001;

    private static LineupProblem problem(Random random, int number) {
        DeciderKind kind = DeciderKind.values()[number % DeciderKind.values().length];
        LineupProblem.Against against = LineupProblem.Against.values()[number % 2];
        int rubbers = 2 + number % 3;
        LineupProblem problem = LineupProblem.of(
                Ties.rules(rubbers, 1 + number / 2 % 2, OrderOfStrength.NONE, kind),
                Ties.squad("a", 7),
                Ties.squad("b", 8),
                Ties.doubted(random, 8),
                against,
                1);
        return number % 3 == 0 ? problem.wishing(Wish.mustPlay(PlayerId.of("a5"))) : problem;
    }

    private static Optional<Double> best(LineupProblem problem) {
        Board board = new Board(problem);
        return board.seating().count() == 0
                ? Optional.empty()
                : Ranking.of(board, board.orderMatters(), 1).best().stream()
                        .findFirst()
                        .map(best -> board.worth().of(best.line()));
    }

    /** By how many come. */
    private static Map<Integer, Double> everyChoice(LineupProblem problem) {
        List<PlayerId> all =
                problem.ours().present().stream().map(Squad.Member::id).toList();
        Map<Integer, Double> best = new HashMap<>();
        for (int bits = 0; bits < 1 << all.size(); bits++) {
            List<PlayerId> here = new ArrayList<>();
            for (int i = 0; i < all.size(); i++) {
                if ((bits & 1 << i) != 0) {
                    here.add(all.get(i));
                }
            }
            best(problem.withOnly(here::contains)).ifPresent(worth -> best.merge(here.size(), worth, Math::max));
        }
        return best;
    }

    @Test
    void says_what_trying_every_choice_finds() {
        Seed seed = Seed.fresh();
        Random random = seed.random();
        for (int i = 0; i < 8; i++) {
            int number = i;
            LineupProblem problem = problem(random, number);
            Map<Integer, Double> judge = everyChoice(problem);
            WhatIf what = WhatIf.of(problem).orElseThrow();
            double all = judge.get(7);
            for (WhatIf.Size size : what.sizes()) {
                assertThat(size.worth())
                        .as("%s, problem %d, %d players", seed, number, size.players())
                        .isCloseTo(judge.get(size.players()), within(CLOSE));
                assertThat(size.cost()).isCloseTo(Math.max(0, all - size.worth()), within(1e-9));
                assertThat(best(problem.withOnly(id -> !size.without().contains(id)))
                                .orElseThrow())
                        .as("%s, problem %d, without %s", seed, number, size.without())
                        .isCloseTo(size.worth(), within(CLOSE));
            }
            assertThat(what.absences())
                    .allSatisfy(one -> assertThat(one.cost())
                            .as("%s, problem %d, %s", seed, number, one)
                            .isCloseTo(
                                    Math.max(
                                            0,
                                            all
                                                    - best(problem.withOnly(id -> !id.equals(one.player())))
                                                            .orElseThrow()),
                                    within(1e-9)));
        }
    }

    /** Nobody can be away who must play, and a size that only leaves such a player out is not shown. */
    @Test
    void who_must_play_is_not_left_out() {
        LineupProblem problem = Ties.problem(3, 6, Ties.even()).wishing(Wish.mustPlay(PlayerId.of("a1")));
        WhatIf what = WhatIf.of(problem).orElseThrow();
        assertThat(what.sizes()).allSatisfy(size -> assertThat(size.without()).doesNotContain(PlayerId.of("a1")));
        assertThat(what.absences())
                .extracting(WhatIf.Absence::player)
                .hasSize(5)
                .doesNotContain(PlayerId.of("a1"));
    }
}
