package tiewright.standings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.conditions.RubberWeights;
import tiewright.event.ClubId;
import tiewright.event.How;
import tiewright.event.RubberNo;
import tiewright.event.RubberScore;
import tiewright.event.Side;
import tiewright.event.TieScore;
import tiewright.scoring.Score;

/** What a club needs, against going through every card that can still be written. */
class NeedsTest {
    private static final int ROUNDS = 48;

    /** Games to 2 by 1 point or more: 2-0, 2-1 and their mirrors are all the games there are. */
    private static final Games ONE_OR_TWO = new Games(1, 2, false, 1, 2, true);

    private static final List<Score> ALL_GAMES =
            List.of(Score.of(2, 0), Score.of(2, 1), Score.of(1, 2), Score.of(0, 2));

    private static TieShape shape(int rubbers, boolean decider) {
        return Rules.tie(rubbers, false, ONE_OR_TWO, decider ? Optional.of(ONE_OR_TWO) : Optional.empty());
    }

    /** What brings table points: the end, rubbers by their weights, games, or both. */
    private static final List<String> POINTS = List.of("2/1/0", "rubbers", "rubbers+2/1/0", "games", "3/1/0");

    private record Seen(int best, int worst, boolean lot) {
        static Seen of(Table table, ClubId club) {
            Row row = table.row(club).orElseThrow();
            int sharing =
                    row.onlyALotParts() ? row.decidedBy().deciding().level().size() : 1;
            return new Seen(row.place(), row.place() + sharing - 1, sharing > 1);
        }

        Seen and(Seen other) {
            return new Seen(Math.min(best, other.best), Math.max(worst, other.worst), lot || other.lot);
        }
    }

    /** Every ending of an open tie, card by card. */
    private static List<TieScore> endings(TieScore tie, TieShape shape) {
        List<TieScore> endings = new ArrayList<>();
        finish(tie, shape, endings);
        return endings;
    }

    private static void finish(TieScore tie, TieShape shape, List<TieScore> endings) {
        for (int number = 1; number <= shape.rubbers(); number++) {
            RubberNo rubber = RubberNo.of(number);
            if (tie.rubbers().stream().noneMatch(score -> score.rubber().equals(rubber))) {
                eachGame(tie, rubber, next -> finish(next, shape, endings));
                return;
            }
        }
        TieScore done = tie.with(tie.rubbers(), true);
        if (shape.decider().isPresent() && done.winner().isEmpty()) {
            eachGame(done, RubberNo.DECIDER, next -> endings.add(next.with(next.rubbers(), true)));
        } else {
            endings.add(done);
        }
    }

    private static void eachGame(TieScore tie, RubberNo rubber, java.util.function.Consumer<TieScore> next) {
        for (Score game : ALL_GAMES) {
            List<RubberScore> rubbers = new ArrayList<>(tie.rubbers());
            rubbers.add(new RubberScore(rubber, List.of(game), How.PLAYED));
            next.accept(tie.with(rubbers, false));
        }
    }

    /** For every club and every set of its own results, in the order of the ties: what can follow. */
    private static Map<ClubId, Map<List<Result>, Seen>> byForce(
            List<ClubId> clubs, List<TieScore> ties, TableRules rules) {
        Map<ClubId, Map<List<Result>, Seen>> seen = new HashMap<>();
        endAll(new ArrayList<>(ties), 0, rules.shape(), all -> {
            Table table = Standings.of(TableInput.of(clubs, all, rules));
            for (ClubId club : clubs) {
                seen.computeIfAbsent(club, c -> new HashMap<>())
                        .merge(ownResults(ties, all, club), Seen.of(table, club), Seen::and);
            }
        });
        return seen;
    }

    private static List<Result> ownResults(List<TieScore> before, List<TieScore> after, ClubId club) {
        List<Result> own = new ArrayList<>();
        for (int i = 0; i < after.size(); i++) {
            if (!before.get(i).finished() && after.get(i).has(club)) {
                Side side = after.get(i).home().equals(club) ? Side.HOME : Side.AWAY;
                own.add(after.get(i)
                        .winner()
                        .map(w -> w == side ? Result.WON : Result.LOST)
                        .orElse(Result.DRAWN));
            }
        }
        return own;
    }

    private static void endAll(
            List<TieScore> ties, int from, TieShape shape, java.util.function.Consumer<List<TieScore>> visit) {
        for (int i = from; i < ties.size(); i++) {
            if (!ties.get(i).finished()) {
                TieScore open = ties.get(i);
                for (TieScore ending : endings(open, shape)) {
                    ties.set(i, ending);
                    endAll(ties, i + 1, shape, visit);
                }
                ties.set(i, open);
                return;
            }
        }
        visit.accept(List.copyOf(ties));
    }

    @Test
    void the_places_and_each_case_are_those_of_every_card_that_can_be_written() {
        for (int round = 0; round < ROUNDS; round++) {
            Random random = Seed.random(round);
            TieShape shape = shapeOf(round);
            List<ClubId> clubs = RandomPools.clubs(3 + round % 3);
            List<TieScore> ties = new RandomPools(random, shape).ties(clubs, 1 + random.nextInt(2));
            for (String procedure : Rules.NAMED) {
                TableRules rules = Rules.of(procedure, POINTS.get(round % POINTS.size()), shape);
                Map<ClubId, Map<List<Result>, Seen>> force = byForce(clubs, ties, rules);
                for (ClubId club : clubs) {
                    String as = procedure + ", club " + club + ", " + Seed.rerun(round);
                    NeedsReport report = Needs.of(TableInput.of(clubs, ties, rules), club, OptionalInt.empty())
                            .orElseThrow();
                    Map<List<Result>, Seen> seen = force.get(club);
                    Seen all = seen.values().stream().reduce(Seen::and).orElseThrow();
                    check(as, report.places(), report.exact(), report.mayNeedLot(), all);
                    assertThat(report.cases()).as(as).hasSameSizeAs(seen.keySet());
                    for (NeedsCase one : report.cases()) {
                        check(
                                as,
                                one.places(),
                                one.exact(),
                                one.mayNeedLot(),
                                seen.get(one.results().stream()
                                        .map(OwnResult::result)
                                        .toList()));
                    }
                }
            }
        }
    }

    /**
     * An answer that is no more than a bound is right as well, so that bounds alone would pass everywhere else. How many are
     * exact depends on the pools; these are always the same, and of them nine in ten are.
     */
    @Test
    void nine_answers_of_ten_are_exact_on_pools_that_stay_the_same() {
        int exact = 0;
        int asked = 0;
        for (int round = 0; round < ROUNDS; round++) {
            Random random = new Random(round);
            TieShape shape = shapeOf(round);
            List<ClubId> clubs = RandomPools.clubs(3 + round % 3);
            List<TieScore> ties = new RandomPools(random, shape).ties(clubs, 1 + random.nextInt(2));
            for (String procedure : Rules.NAMED) {
                TableInput input = TableInput.of(clubs, ties, Rules.of(procedure, "2/1/0", shape));
                for (ClubId club : clubs) {
                    exact += Needs.of(input, club, OptionalInt.empty())
                                    .orElseThrow()
                                    .exact()
                            ? 1
                            : 0;
                    asked++;
                }
            }
        }
        assertThat(exact).as("answers that are exact, of %d", asked).isGreaterThan(asked * 9 / 10);
    }

    /** One or two rubbers, with a decider and without; where there are two, every third time the second weighs more. */
    private static TieShape shapeOf(int round) {
        TieShape shape = shape(1 + round % 2, round % 4 > 1);
        return round % 3 > 0 || shape.rubbers() == 1
                ? shape
                : new TieShape(2, false, ONE_OR_TWO, shape.decider(), new RubberWeights(List.of(1, 2)));
    }

    private static void check(String as, PlaceRange places, boolean exact, boolean lot, Seen seen) {
        assertThat(places.best()).as(as).isLessThanOrEqualTo(seen.best());
        assertThat(places.worst()).as(as).isGreaterThanOrEqualTo(seen.worst());
        if (exact) {
            assertThat(places).as(as).isEqualTo(new PlaceRange(seen.best(), seen.worst()));
        }
        if (seen.lot()) {
            assertThat(lot).as("%s: a lot may decide", as).isTrue();
        }
    }

    /** With differences only, nothing is a mere bound, and a lot is foreseen exactly where one can come. */
    @Test
    void point_differences_are_worked_out_exactly() {
        for (int round = 0; round < 30; round++) {
            Random random = Seed.random(round);
            TieShape shape = shape(2, true);
            List<ClubId> clubs = RandomPools.clubs(4);
            List<TieScore> ties = new RandomPools(random, shape).ties(clubs, 2);
            TableRules rules = Rules.of("head-to-head-points", "1/0/0", shape);
            Map<ClubId, Map<List<Result>, Seen>> force = byForce(clubs, ties, rules);
            for (ClubId club : clubs) {
                NeedsReport report = Needs.of(TableInput.of(clubs, ties, rules), club, OptionalInt.empty())
                        .orElseThrow();
                Seen all = force.get(club).values().stream().reduce(Seen::and).orElseThrow();
                assertThat(report.exact()).as(Seed.rerun(round)).isTrue();
                assertThat(report.places()).as(Seed.rerun(round)).isEqualTo(new PlaceRange(all.best(), all.worst()));
                assertThat(report.mayNeedLot()).as(Seed.rerun(round)).isEqualTo(all.lot());
            }
        }
    }

    /** Points in ties among the level clubs only: what a level club does against another one moves nothing. */
    @Test
    void differences_among_level_clubs_leave_out_what_they_do_against_others() {
        for (int round = 0; round < ROUNDS; round++) {
            Random random = Seed.random(round);
            TieShape shape = shape(1, false);
            List<ClubId> clubs = RandomPools.clubs(4);
            List<TieScore> ties = new RandomPools(random, shape).ties(clubs, 3);
            TableRules rules = Rules.of("points-difference-among>lots", "1/0/0", shape);
            Map<ClubId, Map<List<Result>, Seen>> force = byForce(clubs, ties, rules);
            for (ClubId club : clubs) {
                NeedsReport report = Needs.of(TableInput.of(clubs, ties, rules), club, OptionalInt.empty())
                        .orElseThrow();
                Seen all = force.get(club).values().stream().reduce(Seen::and).orElseThrow();
                check(Seed.rerun(round), report.places(), report.exact(), report.mayNeedLot(), all);
                assertThat(report.exact()).as(Seed.rerun(round)).isTrue();
            }
        }
    }
}
