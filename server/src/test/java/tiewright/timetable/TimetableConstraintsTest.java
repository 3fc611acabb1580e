package tiewright.timetable;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;
import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintFactory;
import org.optaplanner.test.api.score.stream.ConstraintVerifier;
import tiewright.event.ClubId;
import tiewright.event.TieId;

/**
 * A test for each constraint, named like it: a match, a near miss, a piece without a place, and what the whole score makes of it.
 * Slots of 20 minutes from 09:00; a place is written slot.lane, both counted from 0, "-" is nowhere.
 */
class TimetableConstraintsTest {
    private final ConstraintVerifier<TimetableConstraints, DayPlan> verifier =
            ConstraintVerifier.build(new TimetableConstraints(), DayPlan.class, PlacedPiece.class, Duty.class);

    private static final PlanProblem TWO_LANES = Problems.sideBySide(2, 1, Problems.rounds("A-B C-D", 1));

    private static Object[] given(PlanProblem problem, String... places) {
        Board board = new Board(problem);
        List<Object> facts = new ArrayList<>(board.links());
        for (Piece piece : board.pieces()) {
            facts.add(new PlacedPiece(board, piece, List.of(), spot(board, piece, places[piece.number()])));
        }
        return facts.toArray();
    }

    private static Spot spot(Board board, Piece piece, String place) {
        if (place.equals("-")) {
            return null;
        }
        if (piece.pin().isPresent()) {
            return board.pinned(piece.pin().get());
        }
        String[] at = place.split("\\.");
        return board.spots(Integer.parseInt(at[0]), piece.width(), piece.minutes())
                .get(Integer.parseInt(at[1]));
    }

    private static Object[] with(Object[] given, Object... more) {
        List<Object> all = new ArrayList<>(List.of(given));
        all.addAll(List.of(more));
        return all.toArray();
    }

    private void costs(
            BiFunction<TimetableConstraints, ConstraintFactory, Constraint> constraint, int much, Object[] given) {
        verifier.verifyThat(constraint).given(given).penalizesBy(much);
    }

    /** Overrun, length, wait, back to back, unequal rest, same courts, duties. */
    private void scores(long breaches, long[] parts, Object[] given) {
        verifier.verifyThat()
                .given(given)
                .scores(BendableLongScore.of(
                        new long[] {-breaches},
                        Arrays.stream(parts).map(part -> -part).toArray()));
    }

    private static long[] parts(long... parts) {
        return parts;
    }

    @Test
    void courtTaken() {
        costs(TimetableConstraints::courtTaken, 1, given(TWO_LANES, "0.0", "0.0"));
        costs(TimetableConstraints::courtTaken, 0, given(TWO_LANES, "0.0", "0.1"));
        costs(TimetableConstraints::courtTaken, 0, given(TWO_LANES, "0.0", "1.0"));
        costs(TimetableConstraints::courtTaken, 0, given(TWO_LANES, "0.0", "-"));
        scores(1, parts(0, 20, 0, 0, 0, 0, 0), given(TWO_LANES, "0.0", "0.0"));
    }

    @Test
    void courtClosed() {
        Pin early = new Pin(
                TieId.of("A-B"),
                Optional.empty(),
                LocalTime.of(9, 0),
                LocalTime.of(9, 20),
                List.of("1"),
                Pin.Why.BY_HAND);
        PlanProblem from10 = TWO_LANES
                .withPins(List.of(early))
                .withCourts(List.of(
                        new PlanCourt("1", Optional.of(LocalTime.of(10, 0)), Optional.empty()), PlanCourt.always("2")));
        PlanProblem from9 = from10.withCourts(Problems.courts(2));
        costs(TimetableConstraints::courtClosed, 1, given(from10, "pinned", "0.0"));
        costs(TimetableConstraints::courtClosed, 0, given(from9, "pinned", "0.0"));
        costs(TimetableConstraints::courtClosed, 0, given(from9, "-", "-"));
        scores(1, parts(0, 20, 0, 0, 0, 0, 0), given(from10, "pinned", "0.0"));
    }

    @Test
    void clubNotHere() {
        PlanProblem late = TWO_LANES.withNotBefore(Map.of(ClubId.of("B"), LocalTime.of(9, 30)));
        costs(TimetableConstraints::clubNotHere, 1, given(late, "1.0", "0.1"));
        costs(TimetableConstraints::clubNotHere, 0, given(late, "2.0", "0.1"));
        costs(TimetableConstraints::clubNotHere, 0, given(late, "-", "0.0"));
        scores(1, parts(0, 40, 0, 0, 0, 0, 0), given(late, "1.0", "0.1"));
    }

    private static PlanProblem twice(int rest) {
        return Problems.sideBySide(2, 1, Problems.rounds("A-B / A-C", 1)).withRest(rest);
    }

    @Test
    void clubTwice() {
        costs(TimetableConstraints::clubTwice, 1, given(twice(0), "0.0", "0.1"));
        costs(TimetableConstraints::clubTwice, 0, given(twice(0), "0.0", "1.1"));
        costs(TimetableConstraints::clubTwice, 0, given(TWO_LANES, "0.0", "0.1"));
        costs(TimetableConstraints::clubTwice, 0, given(twice(0), "0.0", "-"));
        scores(1, parts(0, 20, 0, 1, 0, 0, 0), given(twice(0), "0.0", "0.1"));
    }

    @Test
    void rest() {
        costs(TimetableConstraints::rest, 1, given(twice(21), "0.0", "2.0"));
        costs(TimetableConstraints::rest, 0, given(twice(20), "0.0", "2.0"));
        costs(TimetableConstraints::rest, 1, given(twice(1), "0.0", "1.1"));
        costs(TimetableConstraints::rest, 0, given(twice(1), "0.0", "0.1")); // that is the other constraint's
        costs(TimetableConstraints::rest, 0, given(twice(60), "-", "0.0"));
        scores(1, parts(0, 60, 1, 0, 0, 1, 0), given(twice(21), "0.0", "2.0"));
    }

    @Test
    void roundOrder() {
        PlanProblem rounds = Problems.sideBySide(2, 1, Problems.rounds("A-B / C-D", 1));
        costs(TimetableConstraints::roundOrder, 1, given(rounds, "1.0", "0.0"));
        costs(TimetableConstraints::roundOrder, 0, given(rounds, "1.0", "1.1"));
        costs(TimetableConstraints::roundOrder, 0, given(TWO_LANES, "1.0", "0.0"));
        costs(TimetableConstraints::roundOrder, 0, given(rounds, "1.0", "-"));
        scores(1, parts(0, 40, 0, 0, 0, 0, 0), given(rounds, "1.0", "0.0"));
    }

    @Test
    void source() {
        List<PlanTie> ties = List.of(Problems.knockout("SF", 1, 1), Problems.knockout("F", 2, 1, "SF"));
        PlanProblem rested = Problems.sideBySide(2, 1, ties).withRest(20);
        costs(TimetableConstraints::source, 1, given(rested, "0.0", "1.0"));
        costs(TimetableConstraints::source, 0, given(rested, "0.0", "2.0"));
        costs(TimetableConstraints::source, 0, given(rested.withRest(0), "0.0", "1.0"));
        costs(TimetableConstraints::source, 0, given(rested, "-", "0.0"));
        scores(1, parts(0, 40, 0, 0, 0, 0, 0), given(rested, "0.0", "1.0"));
    }

    @Test
    void lastRoundTogether() {
        PlanProblem together = Problems.together(Problems.sideBySide(2, 1, Problems.rounds("A-B C-D / A-C B-D", 1)));
        costs(TimetableConstraints::lastRoundTogether, 1, given(together, "0.0", "0.1", "1.0", "2.0"));
        costs(TimetableConstraints::lastRoundTogether, 0, given(together, "0.0", "1.0", "2.0", "2.1"));
        costs(
                TimetableConstraints::lastRoundTogether,
                0,
                given(together.withCourts(Problems.courts(1)), "0.0", "1.0", "2.0", "3.0"));
        costs(TimetableConstraints::lastRoundTogether, 0, given(together, "0.0", "0.1", "1.0", "-"));
        scores(1, parts(0, 60, 2, 2, 0, 2, 0), given(together, "0.0", "0.1", "1.0", "2.0"));
    }

    @Test
    void rubberOrder() {
        PlanProblem rubbers = Problems.rubberByRubber(2, Problems.rounds("A-B", 2));
        costs(TimetableConstraints::rubberOrder, 1, given(rubbers, "1.0", "0.0"));
        costs(TimetableConstraints::rubberOrder, 0, given(rubbers, "1.0", "1.1"));
        costs(TimetableConstraints::rubberOrder, 0, given(rubbers, "1.0", "-"));
        scores(1, parts(0, 40, 0, 0, 0, 0, 0), given(rubbers, "1.0", "0.0"));
    }

    @Test
    void playerTwice() {
        PlanTie shared = Problems.tie("P", 1, "A-B", 2);
        PlanTie apart = new PlanTie(
                shared.id(),
                shared.stage(),
                shared.pool(),
                1,
                shared.home(),
                shared.away(),
                shared.rubbers(),
                true,
                Set.of());
        PlanProblem one = Problems.rubberByRubber(2, List.of(apart));
        costs(TimetableConstraints::playerTwice, 1, given(one, "0.0", "0.1"));
        costs(TimetableConstraints::playerTwice, 0, given(one, "0.0", "1.1"));
        costs(TimetableConstraints::playerTwice, 0, given(one.withTies(List.of(shared)), "0.0", "0.1"));
        costs(TimetableConstraints::playerTwice, 0, given(one, "0.0", "-"));
        scores(1, parts(0, 20, 0, 0, 0, 0, 0), given(one, "0.0", "0.1"));
    }

    private static Duty duty(int piece, int club) {
        return new Duty(piece, new Duty.OnDuty(club));
    }

    @Test
    void umpirePlays() {
        PlanProblem umpired = Problems.umpires(TWO_LANES); // clubs A, B, C, D are 0 to 3
        costs(TimetableConstraints::umpirePlays, 1, with(given(umpired, "0.0", "0.1"), duty(0, 2)));
        costs(TimetableConstraints::umpirePlays, 1, with(given(umpired, "0.0", "1.0"), duty(0, 0)));
        costs(TimetableConstraints::umpirePlays, 0, with(given(umpired, "0.0", "1.0"), duty(0, 2)));
        costs(TimetableConstraints::umpirePlays, 0, with(given(umpired, "0.0", "0.1"), new Duty(0, null)));
        scores(1, parts(0, 20, 0, 0, 0, 0, 1), with(given(umpired, "0.0", "0.1"), duty(0, 2)));
    }

    @Test
    void umpireTwice() {
        PlanProblem three = Problems.umpires(Problems.sideBySide(3, 1, Problems.rounds("A-B C-D E-F", 1)));
        costs(TimetableConstraints::umpireTwice, 1, with(given(three, "0.0", "0.1", "1.0"), duty(0, 4), duty(1, 4)));
        costs(TimetableConstraints::umpireTwice, 0, with(given(three, "0.0", "0.1", "1.0"), duty(0, 4), duty(1, 5)));
        costs(TimetableConstraints::umpireTwice, 0, with(given(three, "0.0", "2.1", "1.0"), duty(0, 4), duty(1, 4)));
        costs(
                TimetableConstraints::umpireTwice,
                0,
                with(given(three, "0.0", "0.1", "1.0"), duty(0, 4), new Duty(1, null)));
        scores(1, parts(0, 40, 0, 0, 0, 0, 4), with(given(three, "0.0", "0.1", "1.0"), duty(0, 4), duty(1, 4)));
    }

    @Test
    void overrun() {
        PlanProblem closing = Problems.closing(TWO_LANES, "09:30");
        costs(TimetableConstraints::overrun, 10, given(closing, "1.0", "0.0"));
        costs(TimetableConstraints::overrun, 0, given(closing, "0.0", "0.1"));
        costs(TimetableConstraints::overrun, 0, given(TWO_LANES, "5.0", "9.0"));
        costs(TimetableConstraints::overrun, 0, given(closing, "-", "-"));
        scores(0, parts(10, 40, 0, 0, 0, 0, 0), given(closing, "1.0", "0.0"));
    }

    @Test
    void length() {
        costs(TimetableConstraints::length, 60, given(TWO_LANES, "0.0", "2.0"));
        costs(TimetableConstraints::length, 20, given(TWO_LANES, "0.0", "0.1"));
        costs(TimetableConstraints::length, 0, given(TWO_LANES, "-", "-"));
        scores(0, parts(0, 60, 0, 0, 0, 0, 0), given(TWO_LANES, "0.0", "2.0"));
    }

    @Test
    void longestWait() {
        costs(TimetableConstraints::longestWait, 9, given(twice(0), "0.0", "4.0")); // A alone waits, three slots
        costs(TimetableConstraints::longestWait, 0, given(twice(0), "0.0", "1.0"));
        costs(TimetableConstraints::longestWait, 0, given(twice(0), "0.0", "-"));
        PlanProblem three = Problems.sideBySide(1, 1, Problems.rounds("A-B / A-B / A-B", 1));
        costs(
                TimetableConstraints::longestWait,
                4 + 4,
                given(three, "0.0", "2.0", "5.0")); // one slot, then two, for both
        scores(0, parts(0, 100, 9, 0, 0, 1, 0), given(twice(0), "0.0", "4.0"));
    }

    @Test
    void backToBack() {
        costs(TimetableConstraints::backToBack, 1, given(twice(0), "0.0", "1.0"));
        costs(TimetableConstraints::backToBack, 0, given(twice(0), "0.0", "2.0"));
        costs(TimetableConstraints::backToBack, 0, given(twice(0), "-", "1.0"));
        scores(0, parts(0, 40, 0, 1, 0, 0, 0), given(twice(0), "0.0", "1.1"));
    }

    @Test
    void unequalRest() {
        PlanProblem unequal = Problems.sideBySide(2, 1, Problems.rounds("A-B C-D / A-C", 1));
        costs(TimetableConstraints::unequalRest, 20, given(unequal, "0.0", "1.0", "3.0"));
        costs(TimetableConstraints::unequalRest, 0, given(unequal, "0.0", "0.1", "3.0"));
        costs(TimetableConstraints::unequalRest, 0, given(unequal, "0.0", "-", "3.0")); // one side's first tie
        scores(0, parts(0, 80, 4 + 1, 0, 20, 2, 0), given(unequal, "0.0", "1.0", "3.0"));
    }

    @Test
    void sameCourts() {
        costs(TimetableConstraints::sameCourts, 1, given(twice(0), "0.0", "2.0"));
        costs(TimetableConstraints::sameCourts, 0, given(twice(0), "0.0", "2.1"));
        costs(
                TimetableConstraints::sameCourts,
                0,
                given(twice(0).withCourts(Problems.courts(1)), "0.0", "2.0")); // no other court
        costs(TimetableConstraints::sameCourts, 0, given(twice(0), "0.0", "-"));
        scores(0, parts(0, 60, 1, 0, 0, 1, 0), given(twice(0), "0.0", "2.0"));
    }

    @Test
    void sharedDuties() {
        PlanProblem umpired = Problems.umpires(Problems.sideBySide(1, 1, Problems.rounds("A-B C-D E-F", 1)));
        Object[] day = given(umpired, "0.0", "1.0", "2.0");
        costs(TimetableConstraints::sharedDuties, 4 + 1, with(day, duty(0, 4), duty(1, 4), duty(2, 0)));
        costs(TimetableConstraints::sharedDuties, 3, with(day, duty(0, 4), duty(1, 5), duty(2, 0)));
        costs(TimetableConstraints::sharedDuties, 0, with(day, new Duty(0, null)));
        scores(0, parts(0, 60, 0, 0, 0, 0, 5), with(day, duty(0, 4), duty(1, 4), duty(2, 0)));
    }

    /** A constraint without a test of its name is a rule that nobody has tried. */
    @Test
    void every_constraint_has_its_test() {
        Set<String> tests = Arrays.stream(TimetableConstraintsTest.class.getDeclaredMethods())
                .filter(method -> method.isAnnotationPresent(Test.class))
                .map(java.lang.reflect.Method::getName)
                .collect(Collectors.toSet());
        List<String> constraints = Arrays.stream(TimetableConstraints.class.getDeclaredMethods())
                .filter(method -> method.getReturnType() == Constraint.class
                        && method.getParameterCount() == 1
                        && !method.isSynthetic())
                .map(java.lang.reflect.Method::getName)
                .toList();
        assertThat(constraints).hasSize(19).allMatch(tests::contains);
    }
}
