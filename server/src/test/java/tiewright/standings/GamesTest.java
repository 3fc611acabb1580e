package tiewright.standings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.scoring.Format;

class GamesTest {
    private static Games games(String format, boolean capped) {
        return Games.of(Format.parse(format).orElseThrow(), 1, capped);
    }

    /** Every margin with which a game of the format can end, from its legal final scores. */
    private static Set<Integer> margins(String code, Games games) {
        Format format = Format.parse(code).orElseThrow();
        Set<Integer> margins = new TreeSet<>();
        for (int loser = 0; loser < format.target() + 20; loser++) {
            if (format.cap().isPresent() && loser >= format.cap().getAsInt()
                    || format.byOne() && loser >= format.target()) {
                break;
            }
            int winner = format.winningScoreAgainst(loser);
            margins.add(games.counted(winner, loser) - games.counted(loser, winner));
        }
        return margins;
    }

    @Test
    void the_margins_are_those_of_the_final_scores_of_the_format() {
        for (String code :
                List.of("rally-11", "side-out-15", "rally-21-cap-30", "rally-15-by-1", "rally-7-serve-last")) {
            for (boolean capped : new boolean[] {false, true}) {
                Games games = games(code, capped);
                Set<Integer> margins = margins(code, games);
                assertThat(margins).as("%s %s", code, capped).contains(games.leastMargin(), games.mostMargin());
                assertThat(margins)
                        .as("%s %s", code, capped)
                        .allMatch(m -> m >= games.leastMargin() && m <= games.mostMargin());
                assertThat(margins)
                        .as("every number between, %s", code)
                        .hasSize(games.mostMargin() - games.leastMargin() + 1);
            }
        }
    }

    @Test
    void overtime_counts_as_played_or_is_capped() {
        assertThat(games("rally-11", false).counted(13, 11)).isEqualTo(13);
        assertThat(games("rally-11", true).counted(13, 11)).isEqualTo(11);
        assertThat(games("rally-11", true).counted(11, 13)).isEqualTo(10);
        assertThat(games("rally-11", true).counted(11, 9)).isEqualTo(11);
        assertThat(games("rally-11", true).counted(9, 11)).isEqualTo(9);
    }

    @Test
    void a_tie_that_may_stop_when_decided_can_also_end_short() {
        Games one = games("rally-11", false);
        Pool pool = Pool.of("A", "B").unfinished("A", "B", "11-0", "11-0");
        assertThat(rubberScores(pool, Rules.tie(4, false, one, Optional.of(one))))
                .containsExactlyInAnyOrder("4-0", "3-1", "3-2", "2-3");
        assertThat(rubberScores(pool, Rules.tie(4, true, one, Optional.of(one))))
                .containsExactlyInAnyOrder("4-0", "3-1", "3-0", "3-2", "2-3");
        assertThat(rubberScores(pool, Rules.tie(4, false, one, Optional.empty())))
                .containsExactlyInAnyOrder("4-0", "3-1", "2-2");
    }

    private static Set<String> rubberScores(Pool pool, TieShape shape) {
        TableRules rules = Rules.of("rubbers-won", "2/1/0", shape);
        Counting counting = Counting.of(pool.input(rules));
        return OpenOutcomes.of(counting.open().get(0), new TieCounter(counting.clubs(), rules), rules).stream()
                .map(outcome -> outcome.tie().forHome().rubbers() + "-"
                        + outcome.tie().forAway().rubbers())
                .collect(Collectors.toSet());
    }

    /** The decider is a rubber everywhere, with its points and to its own target. */
    @Test
    void a_decider_has_its_own_target() {
        Games rubber = games("rally-11", false);
        TieShape shape = Rules.tie(2, false, rubber, Optional.of(games("rally-21", false)));
        Pool pool = Pool.of("A", "B").unfinished("A", "B", "11-3").withdrew("A", Treatment.AWARD);
        Row row = pool.table(Rules.of("rubbers-won", "1/0/0", shape))
                .row(ClubId.of("B"))
                .orElseThrow();
        assertThat(row.pointsFor()).isEqualTo(3 + 11 + 21);
        assertThat(row.rubbersWon()).isEqualTo(2);
        assertThat(Needs.of(pool.input(Rules.of("rubbers-won", "1/0/0", shape)), ClubId.of("B"), OptionalInt.empty())
                        .orElseThrow()
                        .places())
                .hasToString("1");
    }
}
