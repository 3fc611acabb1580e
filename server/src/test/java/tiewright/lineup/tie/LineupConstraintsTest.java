package tiewright.lineup.tie;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintFactory;
import org.optaplanner.test.api.score.stream.ConstraintVerifier;
import tiewright.conditions.OrderOfStrength;
import tiewright.conditions.Plays;
import tiewright.conditions.RubberKind;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.lineup.Aim;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.PlayingTime;
import tiewright.lineup.TiePlaces;
import tiewright.lineup.Ties;
import tiewright.lineup.Wish;

/**
 * Two rubbers, six even players against six, an even decider: a full sheet wins 1/2, one rubber given away leaves 1/4, two
 * leave nothing. A test for each constraint, named like it: a match, a near miss, empty seats, and what the whole score
 * makes of it.
 */
class LineupConstraintsTest {
    private static final long HALF = 500_000_000;
    private static final long QUARTER = 250_000_000;

    private final ConstraintVerifier<LineupConstraints, LineupPlan> verifier =
            ConstraintVerifier.build(new LineupConstraints(), LineupPlan.class, Seat.class);

    private static LineupProblem problem(int most, OrderOfStrength order) {
        return LineupProblem.of(
                Ties.rules(2, most, order),
                Ties.squad("a", 6),
                Ties.squad("b", 6),
                Ties.even(),
                LineupProblem.Against.STRAIGHT,
                1);
    }

    private static final LineupProblem PLAIN = problem(1, OrderOfStrength.NONE);

    /** Seats from the top: a player's number, 0 = nobody, below 0 = that player, absent. Then the facts and wishes. */
    private static Object[] given(LineupProblem problem, List<Integer> sitting, Wish... wishes) {
        List<Object> facts = new ArrayList<>(List.of(wishes));
        facts.add(new LineupPlan.TieFacts(new Board(problem)));
        for (int seat = 0; seat < sitting.size(); seat++) {
            int player = sitting.get(seat);
            facts.add(new Seat(
                    seat,
                    seat / 2,
                    player == 0
                            ? null
                            : new SeatPlayer(
                                    PlayerId.of("a" + Math.abs(player)),
                                    Math.abs(player) - 1,
                                    Math.abs(player),
                                    player > 0)));
        }
        return facts.toArray();
    }

    private void breaches(
            BiFunction<LineupConstraints, ConstraintFactory, Constraint> constraint, int times, Object[] given) {
        verifier.verifyThat(constraint).given(given).penalizesBy(times);
    }

    private void scores(long hard, long medium, long soft, Object[] given) {
        verifier.verifyThat().given(given).scores(HardMediumSoftLongScore.of(hard, medium, soft));
    }

    @Test
    void tooOften() {
        breaches(LineupConstraints::tooOften, 1, given(PLAIN, List.of(1, 2, 1, 3)));
        breaches(LineupConstraints::tooOften, 0, given(problem(2, OrderOfStrength.NONE), List.of(1, 2, 1, 3)));
        breaches(LineupConstraints::tooOften, 0, given(PLAIN, List.of(1, 2, 0, 0)));
        scores(-1, HALF, 0, given(PLAIN, List.of(1, 2, 1, 3)));
    }

    @Test
    void besideThemselves() {
        LineupProblem twice = problem(2, OrderOfStrength.NONE);
        breaches(LineupConstraints::besideThemselves, 1, given(twice, List.of(1, 1, 2, 3)));
        breaches(LineupConstraints::besideThemselves, 0, given(twice, List.of(1, 2, 1, 2)));
        breaches(LineupConstraints::besideThemselves, 0, given(twice, List.of(0, 0, 0, 0)));
        scores(-1, QUARTER, 0, given(twice, List.of(1, 1, 2, 3)));
    }

    @Test
    void absent() {
        breaches(LineupConstraints::absent, 1, given(PLAIN, List.of(-1, 2, 3, 4)));
        breaches(LineupConstraints::absent, 0, given(PLAIN, List.of(1, 2, 3, 4)));
        breaches(LineupConstraints::absent, 0, given(PLAIN, List.of(0, 0, 0, 0)));
        scores(-1, QUARTER, 0, given(PLAIN, List.of(-1, 2, 3, 4)));
    }

    /** Rubber 1 for women, rubber 2 mixed; players 1 and 2 state women, 3 and 4 men, 5 and 6 nothing. */
    @Test
    void wrongKind() {
        LineupProblem kinds = LineupProblem.of(
                Ties.withKinds(Ties.rules(2), List.of(RubberKind.WOMEN, RubberKind.MIXED)),
                Ties.squad("a", 6),
                Ties.squad("b", 6),
                Ties.even(),
                LineupProblem.Against.STRAIGHT,
                1);
        breaches(LineupConstraints::wrongKind, 0, stating(kinds, List.of(1, 2, 3, 1)));
        breaches(LineupConstraints::wrongKind, 1, stating(kinds, List.of(1, 3, 2, 4)));
        breaches(LineupConstraints::wrongKind, 2, stating(kinds, List.of(3, 4, 1, 2)));
        breaches(LineupConstraints::wrongKind, 2, stating(kinds, List.of(1, 5, 2, 6)));
        breaches(LineupConstraints::wrongKind, 0, stating(kinds, List.of(0, 3, 4, 0)));
        breaches(LineupConstraints::wrongKind, 0, stating(PLAIN, List.of(1, 3, 5, 6)));
    }

    private static Object[] stating(LineupProblem problem, List<Integer> sitting) {
        Object[] given = given(problem, sitting);
        return Arrays.stream(given)
                .map(fact -> fact instanceof Seat seat && seat.player() != null
                        ? new Seat(seat.id(), seat.rubber(), stating(seat.taken()))
                        : fact)
                .toArray();
    }

    private static SeatPlayer stating(SeatPlayer player) {
        Optional<Plays> plays = player.rank() <= 2
                ? Optional.of(Plays.WOMEN)
                : player.rank() <= 4 ? Optional.of(Plays.MEN) : Optional.empty();
        return new SeatPlayer(player.id(), player.number(), player.rank(), player.present(), plays);
    }

    @Test
    void apart() {
        Wish apart = Wish.apart(Pair.of("a1", "a2"));
        breaches(LineupConstraints::apart, 1, given(PLAIN, List.of(2, 1, 3, 4), apart));
        breaches(LineupConstraints::apart, 0, given(PLAIN, List.of(1, 3, 2, 4), apart));
        breaches(LineupConstraints::apart, 0, given(PLAIN, List.of(1, 0, 0, 0), apart));
        breaches(LineupConstraints::apart, 0, given(PLAIN, List.of(1, 1, 3, 4), apart));
        breaches(LineupConstraints::apart, 0, given(PLAIN, List.of(1, 2, 3, 4), Wish.together(Pair.of("a1", "a2"))));
        scores(-1, HALF, 0, given(PLAIN, List.of(2, 1, 3, 4), apart));
    }

    @Test
    void together() {
        Wish together = Wish.together(Pair.of("a1", "a2"));
        breaches(LineupConstraints::together, 2, given(PLAIN, List.of(1, 3, 2, 4), together));
        breaches(LineupConstraints::together, 1, given(PLAIN, List.of(1, 3, 5, 4), together));
        breaches(LineupConstraints::together, 0, given(PLAIN, List.of(3, 4, 2, 1), together));
        breaches(LineupConstraints::together, 0, given(PLAIN, List.of(3, 4, 5, 6), together));
        breaches(LineupConstraints::together, 0, given(PLAIN, List.of(0, 0, 0, 0), together));
        scores(-2, HALF, 0, given(PLAIN, List.of(1, 3, 2, 4), together));
    }

    @Test
    void mustPlay() {
        Wish play = Wish.mustPlay(PlayerId.of("a1"));
        breaches(LineupConstraints::mustPlay, 1, given(PLAIN, List.of(2, 3, 4, 5), play));
        breaches(LineupConstraints::mustPlay, 0, given(PLAIN, List.of(2, 3, 4, 1), play));
        breaches(LineupConstraints::mustPlay, 1, given(PLAIN, List.of(0, 0, 0, 0), play));
        scores(-1, HALF, 0, given(PLAIN, List.of(2, 3, 4, 5), play));
    }

    @Test
    void mustRest() {
        Wish rest = Wish.mustRest(PlayerId.of("a1"));
        breaches(LineupConstraints::mustRest, 1, given(PLAIN, List.of(2, 3, 4, 1), rest));
        breaches(LineupConstraints::mustRest, 0, given(PLAIN, List.of(2, 3, 4, 5), rest));
        breaches(LineupConstraints::mustRest, 0, given(PLAIN, List.of(0, 0, 0, 0), rest));
        scores(-1, HALF, 0, given(PLAIN, List.of(2, 3, 4, 1), rest));
    }

    @Test
    void orderOfStrength() {
        LineupProblem sums = problem(1, OrderOfStrength.RANK_SUM);
        breaches(LineupConstraints::orderOfStrength, 1, given(sums, List.of(1, 5, 2, 3)));
        breaches(LineupConstraints::orderOfStrength, 0, given(sums, List.of(1, 4, 2, 3)));
        breaches(LineupConstraints::orderOfStrength, 0, given(sums, List.of(6, 5, 1, 0)));
        breaches(LineupConstraints::orderOfStrength, 0, given(PLAIN, List.of(1, 5, 2, 3)));
        scores(-1, HALF, 0, given(sums, List.of(1, 5, 2, 3)));
    }

    @Test
    void strongestFirst() {
        LineupProblem three = LineupProblem.of(
                Ties.rules(3, OrderOfStrength.STRONGEST_FIRST),
                Ties.squad("a", 6),
                Ties.squad("b", 6),
                Ties.even(),
                LineupProblem.Against.STRAIGHT,
                1);
        breaches(LineupConstraints::orderOfStrength, 2, given(three, List.of(5, 6, 1, 2, 3, 4)));
        breaches(LineupConstraints::orderOfStrength, 0, given(three, List.of(1, 2, 5, 6, 3, 4)));
        breaches(LineupConstraints::orderOfStrength, 0, given(three, List.of(0, 0, 5, 6, 3, 4)));
        scores(-2, HALF, 0, given(three, List.of(5, 6, 1, 2, 3, 4)));
    }

    @Test
    void gap() {
        breaches(LineupConstraints::gap, 4, given(PLAIN, List.of(0, 0, 1, 2)));
        breaches(LineupConstraints::gap, 0, given(PLAIN, List.of(1, 2, 0, 0)));
        breaches(LineupConstraints::gap, 0, given(PLAIN, List.of(0, 0, 0, 0)));
        scores(-4 - 2, QUARTER, 0, given(PLAIN, List.of(0, 0, 1, 2))); // and two seats that could be filled
    }

    @Test
    void half() {
        breaches(LineupConstraints::half, 1, given(PLAIN, List.of(1, 2, 3, 0)));
        breaches(LineupConstraints::half, 0, given(PLAIN, List.of(1, 2, 0, 0)));
        breaches(LineupConstraints::half, 0, given(PLAIN, List.of(0, 0, 0, 0)));
        scores(-1 - 1, QUARTER, 0, given(PLAIN, List.of(1, 2, 3, 0)));
    }

    @Test
    void notFull() {
        LineupProblem three = LineupProblem.of(
                Ties.rules(2), Ties.squad("a", 3), Ties.squad("b", 6), Ties.even(), LineupProblem.Against.STRAIGHT, 1);
        breaches(LineupConstraints::notFull, 2, given(PLAIN, List.of(1, 2, 0, 0)));
        breaches(LineupConstraints::notFull, 0, given(three, List.of(1, 2, 0, 0)));
        breaches(LineupConstraints::notFull, 4, given(PLAIN, List.of(0, 0, 0, 0)));
        scores(-2, QUARTER, 0, given(PLAIN, List.of(1, 2, 0, 0)));
    }

    @Test
    void tieChance() {
        LineupProblem rubbers = PLAIN.aimingAt(Aim.RUBBERS);
        scores(-2, QUARTER, 0, given(PLAIN, List.of(1, 2, 0, 0)));
        scores(0, 0, 0, given(rubbers, List.of(1, 2, 3, 4)));
        scores(-2, -1_000_000_000L, 0, given(rubbers, List.of(1, 2, 0, 0))); // one rubber even, one given away
        scores(0, HALF, 0, given(PLAIN, List.of(1, 2, 3, 4)));
    }

    @Test
    void promise() {
        LineupProblem promising =
                PLAIN.promising(new PlayingTime(2, Map.of(PlayerId.of("a1"), 2, PlayerId.of("a5"), 1)));
        // a1 has had two; a2, a3, a4 will have one; a5 has one; a6 none
        breaches(LineupConstraints::promise, 3 + 1 + 2, given(promising, List.of(1, 2, 3, 4)));
        breaches(LineupConstraints::promise, 2 + 1 + 1 + 1, given(promising, List.of(5, 2, 3, 6)));
        breaches(LineupConstraints::promise, 0, given(PLAIN, List.of(1, 2, 3, 4)));
        breaches(LineupConstraints::promise, 3 * 2 + 1 + 2, given(promising, List.of(0, 0, 0, 0)));
        scores(0, HALF, -6_000_000, given(promising, List.of(1, 2, 3, 4)));
    }

    /** a5 and a6 are promised one rubber each by the end of the day, a1 has had the one promised. */
    private static LineupProblem forTheDay(TiePlaces... others) {
        return PLAIN.promising(new PlayingTime(
                0,
                Map.of(PlayerId.of("a1"), 1, PlayerId.of("a5"), 1, PlayerId.of("a6"), 1),
                Map.of(PlayerId.of("a1"), 1),
                List.of(others)));
    }

    @Test
    void a_promise_for_the_day_binds_a_tie_only_as_far_as_the_others_cannot_give_it() {
        TiePlaces full = new TiePlaces(4, 1, Set.of());
        breaches(LineupConstraints::promise, 2, given(forTheDay(), List.of(1, 2, 3, 4)));
        breaches(LineupConstraints::promise, 1, given(forTheDay(), List.of(1, 2, 3, 5)));
        breaches(LineupConstraints::promise, 0, given(forTheDay(), List.of(1, 2, 5, 6)));
        breaches(LineupConstraints::promise, 0, given(forTheDay(full), List.of(1, 2, 3, 4)));
        breaches(
                LineupConstraints::promise,
                1,
                given(forTheDay(new TiePlaces(4, 1, Set.of(PlayerId.of("a6")))), List.of(1, 2, 3, 4)));
        breaches(LineupConstraints::promise, 1, given(forTheDay(new TiePlaces(1, 1, Set.of())), List.of(1, 2, 3, 4)));
        breaches(LineupConstraints::promise, 2, given(forTheDay(), List.of(0, 0, 0, 0)));
        scores(0, HALF, -1_000_000, given(forTheDay(), List.of(1, 2, 3, 5)));
        scores(0, HALF, 0, given(forTheDay(full), List.of(1, 2, 3, 4)));
    }

    @Test
    void of_a_floor_and_a_promise_the_larger_counts() {
        LineupProblem both = PLAIN.promising(
                new PlayingTime(1, Map.of(PlayerId.of("a5"), 3), Map.of(), List.of(new TiePlaces(4, 1, Set.of()))));
        // a6 misses one to the floor; a5 three to the promise, of which the other tie can give one
        breaches(LineupConstraints::promise, 1 + 2, given(both, List.of(1, 2, 3, 4)));
        breaches(LineupConstraints::promise, 1 + 1 + 1, given(both, List.of(1, 2, 3, 5)));
        LineupProblem less = PLAIN.promising(
                new PlayingTime(2, Map.of(PlayerId.of("a5"), 1), Map.of(), List.of(new TiePlaces(4, 1, Set.of()))));
        breaches(LineupConstraints::promise, 4 * 1 + 2 + 2, given(less, List.of(1, 2, 3, 4)));
    }

    @Test
    void learning() {
        LineupProblem learning = PLAIN.learning();
        int bits = Merit.of(
                        new Board(learning),
                        new Board(learning).line(tiewright.event.Sheet.full(Pair.of("a1", "a2"), Pair.of("a3", "a4"))))
                .learning();
        assertThat(bits).isPositive();
        verifier.verifyThat(LineupConstraints::learning)
                .given(given(learning, List.of(1, 2, 3, 4)))
                .rewardsWith(bits);
        // one rubber teaches half of what two do, where everybody is known equally little
        verifier.verifyThat(LineupConstraints::learning)
                .given(given(learning, List.of(1, 2, 0, 0)))
                .rewardsWith(Math.round(bits / 2f));
        verifier.verifyThat(LineupConstraints::learning)
                .given(given(learning, List.of(0, 0, 0, 0)))
                .rewardsWith(0);
        verifier.verifyThat(LineupConstraints::learning)
                .given(given(PLAIN, List.of(1, 2, 3, 4)))
                .rewardsWith(0);
        scores(0, HALF, bits, given(learning, List.of(1, 2, 3, 4)));
    }

    /** A constraint without a test of its name is a rule that nobody has tried. */
    @Test
    void every_constraint_has_its_test() {
        Set<String> tests = Arrays.stream(LineupConstraintsTest.class.getDeclaredMethods())
                .filter(method -> method.isAnnotationPresent(Test.class))
                .map(java.lang.reflect.Method::getName)
                .collect(Collectors.toSet());
        List<String> untested = Arrays.stream(LineupConstraints.class.getDeclaredMethods())
                .filter(method -> method.getReturnType() == Constraint.class && !method.isSynthetic())
                .map(java.lang.reflect.Method::getName)
                .filter(name -> !tests.contains(name))
                .toList();
        assertThat(untested).isEmpty();
        long constraints = Arrays.stream(LineupConstraints.class.getDeclaredMethods())
                .filter(m -> m.getReturnType() == Constraint.class && !m.isSynthetic())
                .count();
        assertThat(constraints).isEqualTo(15);
    }
}
