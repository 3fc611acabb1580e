package tiewright.standings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Conditions;
import tiewright.conditions.Preset;
import tiewright.event.ClubId;
import tiewright.event.TieId;
import tiewright.event.TieScore;

/** The chance to go through after each end of a tie, by hand and beside what is certain. */
class ThroughChancesTest {
    private static final ClubId A = ClubId.of("A");
    private static final ClubId B = ClubId.of("B");
    private static final ClubId C = ClubId.of("C");
    private static final TableRules RULES = PoolTables.rules(Conditions.of(Preset.CLUB_DAY));

    private static TieScore open(String tie, ClubId home, ClubId away) {
        return new TieScore(TieId.of(tie), home, away, List.of(), false);
    }

    private static Map<ThroughChances.End, Double> chances(TableInput input, int through) {
        return ThroughChances.of(input, A, TieId.of("1"), through, 800, 7);
    }

    @Test
    void the_only_tie_decides_who_goes_through() {
        Map<ThroughChances.End, Double> chances =
                chances(TableInput.of(List.of(A, B), List.of(open("1", B, A)), RULES), 1);
        assertThat(chances).hasSize(6);
        chances.forEach(
                (end, chance) -> assertThat(chance).as("%s", end).isEqualTo(end.own() > end.other() ? 1.0 : 0.0));
    }

    @Test
    void two_of_two_go_through_whatever_happens() {
        assertThat(chances(TableInput.of(List.of(A, B), List.of(open("1", A, B)), RULES), 2)
                        .values())
                .containsOnly(1.0);
    }

    /** By hand: after a win, A is through unless B beats C and C beats A by more; it stays ahead of one of them whatever comes. */
    @Test
    void what_is_certain_is_certain_here_too() {
        TableInput input =
                TableInput.of(List.of(A, B, C), List.of(open("1", A, B), open("2", A, C), open("3", B, C)), RULES);
        Map<ThroughChances.End, Double> chances = chances(input, 1);
        assertThat(chances.get(new ThroughChances.End(4, 0))).isGreaterThan(chances.get(new ThroughChances.End(3, 2)));
        assertThat(chances.get(new ThroughChances.End(3, 2))).isGreaterThan(chances.get(new ThroughChances.End(2, 3)));
        NeedsReport needs = Needs.of(input, A, OptionalInt.of(3)).orElseThrow();
        assertThat(needs.prospect()).isEqualTo(Optional.of(Prospect.THROUGH));
        assertThat(chances(input, 3).values()).containsOnly(1.0);
    }

    /** By symmetry: three even clubs, one place, before anything is played. */
    @Test
    void even_clubs_share_the_places_evenly() {
        TableInput input =
                TableInput.of(List.of(A, B, C), List.of(open("1", A, B), open("2", A, C), open("3", B, C)), RULES);
        double[] ways = {1, 4, 3, 3, 4, 1}; // of 16, from 0-4 to 4-0, the level 6 halved by the decider
        double mean = 0;
        int end = 0;
        for (double chance : chances(input, 1).values()) {
            mean += ways[end++] * chance / 16;
        }
        assertThat(mean).isCloseTo(1.0 / 3, within(0.05)); // three standard errors of 800 plays
    }

    @Test
    void a_tie_that_is_over_or_of_others_has_no_ends() {
        TableInput input = TableInput.of(List.of(A, B, C), List.of(open("2", A, C), open("3", B, C)), RULES);
        assertThat(chances(input, 1)).isEmpty();
        assertThat(ThroughChances.of(input, A, TieId.of("3"), 1, 10, 1)).isEmpty();
    }

    /** C leads 3-0 of four in both its ties, so it wins both whatever comes, and A goes through behind it alone never. */
    @Test
    void what_has_been_played_of_a_tie_stays() {
        TableInput input = Pool.of("A", "B", "C")
                .unfinished("A", "B")
                .unfinished("A", "C", "0-11", "0-11", "0-11")
                .unfinished("B", "C", "0-11", "0-11", "0-11")
                .input(RULES);
        assertThat(ThroughChances.of(input, A, TieId.of("T1"), 1, 200, 7))
                .hasSize(6)
                .allSatisfy((end, chance) -> assertThat(chance).isZero());
    }
}
