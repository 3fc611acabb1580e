package tiewright.standings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.event.ClubId;
import tiewright.event.TieScore;
import tiewright.wording.NeedsWords;

/** What each club needs, by hand. */
class NeedsCasesTest {
    private static final TableRules RULES = Rules.of("overall-difference");

    /** One round left, A-B and C-D; two go through. A has 2 wins, B and C one each, D none. */
    private static Pool lastRound() {
        return Pool.of("A", "B", "C", "D")
                .rubbers("A", "C", 3, 1)
                .rubbers("B", "D", 3, 1)
                .rubbers("A", "D", 3, 1)
                .rubbers("C", "B", 3, 1)
                .unfinished("A", "B")
                .unfinished("C", "D");
    }

    private static NeedsReport needs(Pool pool, String club, int through) {
        return Needs.of(pool.input(RULES), ClubId.of(club), OptionalInt.of(through))
                .orElseThrow();
    }

    @Test
    void a_win_settles_it_and_after_a_loss_another_tie_matters() {
        NeedsReport report = needs(lastRound(), "B", 2);
        assertThat(report.places()).isEqualTo(new PlaceRange(1, 4));
        assertThat(report.prospect()).contains(Prospect.OPEN);
        assertThat(report.cases())
                .extracting(NeedsCase::results)
                .extracting(own -> own.get(0).result())
                .containsExactly(Result.WON, Result.LOST);
        NeedsCase lost = report.cases().get(1);
        // After a loss B has one win. If C beats D, A has 3 and C 2, and B is out; if D wins, B, C and D are level on
        // one.
        assertThat(lost.helps())
                .extracting(Help::winner, Help::prospect)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(Optional.of(ClubId.of("C")), Prospect.OUT));
    }

    /** The same pool in words; C is through with a win unless A and B leave three clubs level on two. */
    @Test
    void the_cases_read_as_sentences() {
        List<String> words = NeedsWords.withCodes().all(needs(lastRound(), "B", 2));
        assertThat(words).hasSize(3);
        assertThat(words.get(0)).isEqualTo("places 1-4, a lot may decide, through or not depends on the rest");
        assertThat(words.get(1))
                .isEqualTo(
                        "if it beats A: places 1-3, a lot may decide, through or not depends on the rest; through if D beats C");
        assertThat(words.get(2)).startsWith("if it loses to A: places 2-4, ").endsWith("; out if C beats D");
    }

    @Test
    void a_club_that_cannot_be_caught_is_through_whatever_else_happens() {
        Pool pool = Pool.of("A", "B", "C", "D")
                .rubbers("A", "C", 3, 1)
                .rubbers("A", "D", 3, 1)
                .rubbers("B", "D", 3, 1)
                .rubbers("B", "C", 3, 1)
                .unfinished("A", "B")
                .unfinished("C", "D");
        NeedsReport report = needs(pool, "A", 2);
        assertThat(report.places()).isEqualTo(new PlaceRange(1, 2));
        assertThat(report.prospect()).contains(Prospect.THROUGH);
        assertThat(report.exact()).isTrue();
        assertThat(needs(pool, "C", 2).prospect()).contains(Prospect.OUT);
        assertThat(NeedsWords.withCodes().all(needs(pool, "A", 2)))
                .containsExactly(
                        "places 1-2, through whatever else happens",
                        "if it beats B: place 1, through whatever else happens",
                        "if it loses to B: place 2, through whatever else happens");
    }

    @Test
    void a_club_with_no_tie_left_hears_what_the_others_can_do() {
        Pool pool = Pool.of("A", "B", "C")
                .rubbers("A", "B", 3, 1)
                .rubbers("C", "A", 3, 1)
                .unfinished("B", "C");
        NeedsReport report = needs(pool, "A", 1);
        assertThat(report.cases()).hasSize(1);
        assertThat(report.cases().get(0).results()).isEmpty();
        assertThat(report.cases().get(0).helps()).extracting(Help::prospect).containsExactly(Prospect.OUT);
        assertThat(NeedsWords.withCodes().statement(report.cases().get(0)))
                .startsWith("no tie of its own left: places 1-")
                .endsWith("; out if C beats B");
    }

    @Test
    void with_three_ties_left_only_all_won_and_all_lost_are_told() {
        Pool pool = Pool.of("A", "B", "C", "D")
                .unfinished("A", "B")
                .unfinished("C", "A")
                .unfinished("A", "D")
                .rubbers("B", "C", 3, 1);
        NeedsReport report = needs(pool, "A", 1);
        assertThat(report.cases())
                .extracting(one -> one.results().stream().map(OwnResult::result).toList())
                .containsExactly(
                        List.of(Result.WON, Result.WON, Result.WON), List.of(Result.LOST, Result.LOST, Result.LOST));
        assertThat(report.cases())
                .extracting(NeedsCase::prospect)
                .containsExactly(Optional.of(Prospect.THROUGH), Optional.of(Prospect.OUT));
        assertThat(report.cases().get(0).places()).hasToString("1");
        assertThat(report.cases().get(1).places()).hasToString("4");
        assertThat(NeedsWords.withCodes().statement(report.cases().get(0)))
                .isEqualTo("if it beats B, beats C and beats D: place 1, through whatever else happens");
        assertThat(NeedsWords.withCodes().overall(report))
                .endsWith(
                        "it has 3 ties of its own left: of the ways they can end only all won and all lost are shown");
        assertThat(report.onlyEnds()).isTrue();
    }

    @Test
    void a_lot_that_may_decide_is_foreseen() {
        TieShape draw = Rules.shape(2, false, 1, 11);
        Pool pool = Pool.of("A", "B").unfinished("A", "B");
        NeedsReport report = Needs.of(
                        pool.input(Rules.of("rubbers-difference>lots", "2/1/0", draw)),
                        ClubId.of("A"),
                        OptionalInt.empty())
                .orElseThrow();
        assertThat(report.mayNeedLot()).isTrue();
        assertThat(report.prospect()).isEmpty();
        assertThat(report.cases()).extracting(NeedsCase::mayNeedLot).containsExactly(false, true, false);
        assertThat(NeedsWords.withCodes().all(report)).contains("if it draws with B: places 1-2, a lot may decide");
    }

    @Test
    void a_club_without_a_row_has_no_needs() {
        Pool pool = lastRound().withdrew("D", Treatment.ANNUL);
        assertThat(Needs.of(pool.input(RULES), ClubId.of("D"), OptionalInt.empty()))
                .isEmpty();
        assertThat(Needs.of(pool.input(RULES), ClubId.of("C"), OptionalInt.empty())
                        .orElseThrow()
                        .tiesLeft())
                .isEqualTo(1);
    }

    /** A bound may be wide but never wrong: it holds everything that going through all of it finds. */
    @Test
    void with_too_many_ties_left_the_answer_is_a_bound_that_holds_and_says_so() {
        for (int round = 0; round < 60; round++) {
            boundHolds(Seed.random(round), round, Seed.rerun(round));
        }
    }

    /** Each open tie had one rubber left, so the 8 endings were all gone through where more were expected. */
    @Test
    void seed_9979302_round_44_leaves_only_eight_endings() {
        boundHolds(new Random(9_979_302L * 1_000_003 + 44), 44, "seed 9979302, round 44");
    }

    private static void boundHolds(Random random, int round, String rerun) {
        TieShape shape = Rules.shape(3, false, 1, 11);
        List<ClubId> clubs = RandomPools.clubs(4);
        List<TieScore> ties = new RandomPools(random, shape).ties(clubs, 3);
        TableInput input = TableInput.of(clubs, ties, Rules.of(Rules.NAMED.get(round % 4), "1/0/0", shape));
        ClubId club = clubs.get(random.nextInt(4));
        NeedsReport full = Needs.of(input, club, OptionalInt.of(2)).orElseThrow();
        NeedsReport byResults = Needs.of(input, club, OptionalInt.of(2), 8).orElseThrow();
        NeedsReport bound = Needs.of(input, club, OptionalInt.of(2), 0).orElseThrow();
        assertThat(full.tooMany()).as(rerun).isFalse();
        assertThat(byResults.tooMany()).as(rerun).isEqualTo(endings(ties) > 8);
        assertThat(bound.tooMany()).as(rerun).isTrue();
        assertThat(byResults.cases()).as(rerun).hasSameSizeAs(full.cases());
        assertThat(bound.cases()).as(rerun).isEmpty();
        assertThat(byResults.places().best())
                .as(rerun)
                .isBetween(bound.places().best(), full.places().best());
        assertThat(byResults.places().worst())
                .as(rerun)
                .isBetween(full.places().worst(), bound.places().worst());
        assertThat(NeedsWords.withCodes().overall(bound)).as(rerun).contains("3 ties are left, too many");
    }

    /** An open tie of three single games ends in as many ways as rubbers are left, and one: home wins none, one, all. */
    private static int endings(List<TieScore> ties) {
        return ties.stream()
                .filter(tie -> !tie.finished())
                .mapToInt(tie -> 3 - tie.rubbers().size() + 1)
                .reduce(1, (one, other) -> one * other);
    }

    /** Three ties of three rubbers, none begun: 64 endings by score, 8 by result; below those only the bound is left. */
    @Test
    void goes_through_exactly_as_many_endings_as_it_may() {
        TieShape shape = Rules.shape(3, false, 1, 11);
        Pool pool =
                Pool.of("A", "B", "C").unfinished("A", "B").unfinished("B", "C").unfinished("C", "A");
        TableInput input = pool.input(Rules.of("overall-difference", "1/0/0", shape));
        int all = 4 * 4 * 4; // three rubbers left in each tie
        assertThat(Needs.of(input, ClubId.of("A"), OptionalInt.of(1), all)
                        .orElseThrow()
                        .tooMany())
                .isFalse();
        NeedsReport byResults =
                Needs.of(input, ClubId.of("A"), OptionalInt.of(1), all - 1).orElseThrow();
        assertThat(byResults.tooMany()).isTrue();
        assertThat(byResults.cases()).isNotEmpty();
        assertThat(Needs.of(input, ClubId.of("A"), OptionalInt.of(1), 8)
                        .orElseThrow()
                        .cases())
                .isNotEmpty();
        assertThat(Needs.of(input, ClubId.of("A"), OptionalInt.of(1), 7)
                        .orElseThrow()
                        .cases())
                .isEmpty();
    }

    /** Rubbers of best of three: what is called certain holds in every table that random cards complete. */
    @Test
    void best_of_three_never_leaves_the_range() {
        for (int round = 0; round < 100; round++) {
            Random random = Seed.random(round);
            TieShape shape = Rules.shape(3, false, 2, 5);
            List<ClubId> clubs = RandomPools.clubs(4);
            List<TieScore> ties = new RandomPools(random, shape).ties(clubs, 2);
            TableRules rules = Rules.of(Rules.NAMED.get(round % 4), "1/0/0", shape);
            ClubId club = clubs.get(random.nextInt(4));
            NeedsReport report = Needs.of(TableInput.of(clubs, ties, rules), club, OptionalInt.empty())
                    .orElseThrow();
            for (int i = 0; i < 100; i++) {
                List<TieScore> ended = new RandomPools(random, shape).complete(ties);
                Row row = Standings.of(TableInput.of(clubs, ended, rules))
                        .row(club)
                        .orElseThrow();
                assertThat(row.place())
                        .as(Seed.rerun(round))
                        .isBetween(report.places().best(), report.places().worst());
            }
        }
    }

    /** Nobody has tie points, so all clubs are level while the points of A against B are open; seven are gone through, eight are not. */
    @Test
    void up_to_seven_level_clubs_are_parted_exactly() {
        for (int clubs = 6; clubs <= 8; clubs++) {
            String[] codes = Arrays.copyOf("A B C D E F G H".split(" "), clubs);
            Pool pool = Pool.of(codes).unfinished("A", "B");
            NeedsReport report = Needs.of(
                            pool.input(Rules.of("points-difference>lots", "0/0/0")),
                            ClubId.of("A"),
                            OptionalInt.empty())
                    .orElseThrow();
            assertThat(report.places()).isEqualTo(new PlaceRange(1, clubs));
            assertThat(report.exact()).as("of %d", clubs).isEqualTo(clubs <= 7);
        }
    }
}
