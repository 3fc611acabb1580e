package tiewright.standings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Conditions;
import tiewright.conditions.Preset;
import tiewright.event.ClubId;
import tiewright.event.How;
import tiewright.event.RubberNo;
import tiewright.event.RubberScore;
import tiewright.event.TieId;
import tiewright.event.TieScore;
import tiewright.scoring.Score;

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

    /** In thousandths, so that a third is one. */
    private static Map<ThroughChances.End, Long> first(Pool pool, TableRules rules, int through) {
        return thousandths(ThroughChances.of(pool.input(rules), A, TieId.of("T1"), through, 800, 7));
    }

    private static Map<ThroughChances.End, Long> thousandths(Map<ThroughChances.End, Double> chances) {
        Map<ThroughChances.End, Long> rounded = new HashMap<>();
        chances.forEach((end, chance) -> rounded.put(end, Math.round(chance * 1000)));
        return rounded;
    }

    private static ThroughChances.End end(int own, int other) {
        return new ThroughChances.End(own, other);
    }

    /** A circle of wins: B by two rubbers over C, C by two over A; A needs more than two over B, and two leave all three level. */
    private static Pool circle(String won, String lost) {
        return Pool.of("A", "B", "C")
                .unfinished("A", "B")
                .tie("B", "C", won, won, won, lost)
                .tie("C", "A", won, won, won, lost);
    }

    @Test
    void an_end_counts_rubber_for_rubber_and_a_lot_is_shared_by_those_it_parts() {
        TableRules rules = Rules.of("rubbers-difference>lots");
        assertThat(first(circle("11-0", "0-11"), rules, 1))
                .containsExactlyInAnyOrderEntriesOf(Map.of(
                        end(0, 4), 0L, end(1, 3), 0L, end(2, 3), 0L, end(3, 2), 0L, end(3, 1), 333L, end(4, 0), 1000L));
        assertThat(first(circle("11-0", "0-11"), rules, 2))
                .containsExactlyInAnyOrderEntriesOf(Map.of(
                        end(0, 4), 0L, end(1, 3), 0L, end(2, 3), 0L, end(3, 2), 0L, end(3, 1), 667L, end(4, 0), 1000L));
    }

    @Test
    void a_rubber_of_the_end_has_just_the_games_that_win_it() {
        TableRules rules = Rules.of("games-difference>lots", "1/0/0", Rules.shape(4, true, 2, 11));
        Map<ThroughChances.End, Long> chances = first(circle("11-0/11-0", "0-11/0-11"), rules, 1);
        assertThat(chances).containsEntry(end(3, 2), 0L).containsEntry(end(3, 1), 333L);
        assertThat(chances).containsEntry(end(4, 0), 1000L);
    }

    /** B and C stand level after all their rubbers: in half of all plays C wins the decider, and then a lot parts all three. */
    @Test
    void a_tie_that_stands_level_goes_on_to_its_decider() {
        Pool pool = Pool.of("A", "B", "C")
                .unfinished("A", "B")
                .rubbers("A", "C", 4, 0)
                .unfinished("B", "C", "11-0", "11-0", "0-11", "0-11");
        long lost = first(pool, Rules.of("lots"), 1).get(end(2, 3));
        assertThat(lost).isCloseTo(167L, within(20L)); // three standard errors of 800 plays, a third of each
    }

    /** B leads by a rubber of four: C wins with none of the other three lost, or in the decider after one: 1/8 + 3/8 * 1/2. */
    @Test
    void a_tie_that_has_begun_is_played_on_from_where_it_stands() {
        Pool pool = Pool.of("A", "B", "C")
                .unfinished("A", "B")
                .rubbers("A", "C", 4, 0)
                .unfinished("B", "C", "11-0");
        long lost = first(pool, Rules.of("lots"), 1).get(end(2, 3));
        assertThat(lost).isCloseTo(104L, within(20L)); // a third of 5/16; three standard errors of 800 plays are 17
    }

    @Test
    void a_decider_that_was_played_is_not_played_again() {
        TieScore met = Pool.of("B", "C")
                .tie("B", "C", "11-0", "11-0", "0-11", "0-11")
                .input(RULES)
                .ties()
                .get(0);
        List<RubberScore> rubbers = new ArrayList<>(met.rubbers());
        rubbers.add(new RubberScore(RubberNo.DECIDER, List.of(Score.of(3, 11)), How.PLAYED));
        TieScore held = new TieScore(TieId.of("3"), B, C, rubbers, false);
        TieScore won =
                Pool.of("A", "C").rubbers("A", "C", 4, 0).input(RULES).ties().get(0);
        TableInput input = TableInput.of(List.of(A, B, C), List.of(open("1", A, B), won, held), Rules.of("lots"));
        assertThat(thousandths(chances(input, 1))).containsEntry(end(2, 3), 333L);
    }

    @Test
    void where_ties_are_drawn_nobody_plays_a_decider() {
        TableRules rules = Rules.of("lots", "2/1/0", Rules.shape(2, false, 1, 11));
        Pool pool = Pool.of("A", "B", "C")
                .unfinished("A", "B")
                .rubbers("A", "C", 1, 1)
                .unfinished("B", "C", "11-0", "0-11");
        assertThat(first(pool, rules, 1))
                .containsExactlyInAnyOrderEntriesOf(Map.of(end(0, 2), 0L, end(1, 1), 333L, end(2, 0), 1000L));
    }

    @Test
    void a_seed_gives_the_same_plays_again_and_another_seed_others() {
        TableInput input =
                TableInput.of(List.of(A, B, C), List.of(open("1", A, B), open("2", A, C), open("3", B, C)), RULES);
        TieId one = TieId.of("1");
        assertThat(ThroughChances.of(input, A, one, 1, 100, 7)).isEqualTo(ThroughChances.of(input, A, one, 1, 100, 7));
        assertThat(ThroughChances.of(input, A, one, 1, 100, 8))
                .isNotEqualTo(ThroughChances.of(input, A, one, 1, 100, 7));
    }
}
