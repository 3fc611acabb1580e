package tiewright.lineup.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import org.optaplanner.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintFactory;
import org.optaplanner.test.api.score.stream.ConstraintVerifier;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Sheet;
import tiewright.event.TieId;
import tiewright.lineup.Freshness;
import tiewright.lineup.Ties;

/** Two ties of two rubbers an hour apart, six players a1 to a6; a test for each constraint, named like it. */
class DayConstraintsTest {
    private final ConstraintVerifier<DayConstraints, DayPlanning> verifier =
            ConstraintVerifier.build(new DayConstraints(), DayPlanning.class, PlannedTie.class);

    private static DayProblem day(
            DayProblem.Wanted wanted, Map<PlayerId, DayProblem.Before> before, double... weights) {
        DayProblem plain = DaysAhead.day(2, 2, 6, Ties.even(), wanted);
        List<DayProblem.Ahead> ties = new ArrayList<>();
        for (int tie = 0; tie < 2; tie++) {
            ties.add(new DayProblem.Ahead(
                    TieId.of("T" + tie), plain.ties().get(tie).problem(), weights[tie], 540 + 60 * tie));
        }
        return new DayProblem(ties, before, wanted, new Freshness.Cost(2, 90, 1, 1));
    }

    private static DayProblem plain(DayProblem.Wanted wanted) {
        return day(wanted, Map.of(), 1, 1);
    }

    /** Who plays in a tie; worth a half, teaching two bits, and each player a tenth of a tie for a rally. */
    private static DaySheet sheet(int tie, Integer... playing) {
        List<Integer> rubbers = new ArrayList<>();
        List<Double> slopes = new ArrayList<>();
        for (int player = 1; player <= 6; player++) {
            boolean plays = Arrays.asList(playing).contains(player);
            rubbers.add(plays ? 1 : 0);
            slopes.add(plays ? 0.1 : 0);
        }
        return new DaySheet(
                tie, Arrays.hashCode(playing) & 0xffff, Sheet.full(Pair.of("a1", "a2")), 0.5, 2, rubbers, slopes);
    }

    private static Object[] given(DayProblem day, DaySheet... sheets) {
        List<Object> facts = new ArrayList<>();
        facts.add(new DayPlanning.Facts(new DayScore(day)));
        java.util.stream.IntStream.range(0, 6)
                .mapToObj(DayPlanning.DayPlayer::new)
                .forEach(facts::add);
        for (int tie = 0; tie < 2; tie++) {
            facts.add(new PlannedTie(tie, List.of(sheets), tie < sheets.length ? sheets[tie] : null));
        }
        return facts.toArray();
    }

    private void costs(
            BiFunction<DayConstraints, ConstraintFactory, Constraint> constraint, int times, Object[] given) {
        verifier.verifyThat(constraint).given(given).penalizesBy(times);
    }

    private void scores(long hard, long soft, Object[] given) {
        verifier.verifyThat().given(given).scores(HardSoftLongScore.of(hard, soft));
    }

    private static final DaySheet FIRST = sheet(0, 1, 2, 3, 4);
    private static final DaySheet SAME = sheet(1, 1, 2, 3, 4);
    private static final DaySheet OTHERS = sheet(1, 1, 2, 5, 6);

    @Test
    void missing() {
        DayProblem one = plain(new DayProblem.Wanted(1, Map.of(), 0, false));
        costs(DayConstraints::missing, 2, given(one, FIRST, SAME));
        costs(DayConstraints::missing, 0, given(one, FIRST, OTHERS));
        costs(DayConstraints::missing, 2, given(one, FIRST)); // the second not yet planned
        DayProblem promised =
                plain(new DayProblem.Wanted(0, Map.of(PlayerId.of("a5"), 2, PlayerId.of("a6"), 1), 0, false));
        costs(DayConstraints::missing, 1, given(promised, FIRST, OTHERS));
        DayProblem before = day(
                promised.wanted(), Map.of(PlayerId.of("a5"), new DayProblem.Before(1, OptionalInt.empty(), 0)), 1, 1);
        costs(DayConstraints::missing, 0, given(before, FIRST, OTHERS));
    }

    @Test
    void inARow() {
        DayProblem one = plain(new DayProblem.Wanted(0, Map.of(), 1, false));
        costs(DayConstraints::inARow, 4, given(one, FIRST, SAME));
        costs(DayConstraints::inARow, 2, given(one, FIRST, OTHERS));
        costs(DayConstraints::inARow, 0, given(one, FIRST));
        costs(DayConstraints::inARow, 0, given(plain(new DayProblem.Wanted(0, Map.of(), 2, false)), FIRST, SAME));
        costs(DayConstraints::inARow, 0, given(plain(DayProblem.Wanted.CHANCES_ONLY), FIRST, SAME));
        DayProblem before = day(
                new DayProblem.Wanted(0, Map.of(), 2, false),
                Map.of(PlayerId.of("a1"), new DayProblem.Before(1, OptionalInt.empty(), 1)),
                1,
                1);
        costs(DayConstraints::inARow, 1, given(before, FIRST, OTHERS));
    }

    @Test
    void aim() {
        scores(0, 500_000_000L, given(plain(DayProblem.Wanted.CHANCES_ONLY), FIRST));
        scores(0, 250_000_000L, given(day(DayProblem.Wanted.CHANCES_ONLY, Map.of(), 0.5, 1), FIRST));
        scores(0, 0, given(plain(DayProblem.Wanted.CHANCES_ONLY)));
    }

    /** 45 of 90 minutes of rest missing, so one rally, a tenth of a tie; from the second rubber on one more each. */
    @Test
    void tired() {
        long both = 1_000_000_000L;
        scores(0, both - 4 * 50_000_000L * 2, given(plain(DayProblem.Wanted.CHANCES_ONLY), FIRST, SAME));
        scores(0, both - 2 * 50_000_000L * 2, given(plain(DayProblem.Wanted.CHANCES_ONLY), FIRST, OTHERS));
        DayProblem second = day(
                DayProblem.Wanted.CHANCES_ONLY,
                Map.of(PlayerId.of("a1"), new DayProblem.Before(2, OptionalInt.of(540), 0)),
                1,
                1);
        scores(0, 500_000_000L - 300_000_000L, given(second, FIRST)); // no rest: two rallies; two rubbers: one
        scores(0, 500_000_000L, given(second, sheet(0, 2, 3, 4, 5)));
        DayProblem nothing = day(DayProblem.Wanted.CHANCES_ONLY, Map.of(), 1, 0);
        scores(0, 500_000_000L, given(nothing, FIRST, SAME));
    }

    @Test
    void learning() {
        DayProblem.Wanted wanted = new DayProblem.Wanted(0, Map.of(), 0, true);
        scores(0, 20_000_000L, given(day(wanted, Map.of(), 0, 1), FIRST)); // two bits, a point each
        scores(0, 250_000_000L + 10_000_000L, given(day(wanted, Map.of(), 0.5, 1), FIRST));
        scores(0, 500_000_000L, given(day(wanted, Map.of(), 1, 1), FIRST));
        scores(0, 0, given(day(DayProblem.Wanted.CHANCES_ONLY, Map.of(), 0, 1), FIRST));
    }

    /** A constraint without a test of its name is a rule that nobody has tried. */
    @Test
    void every_constraint_has_its_test() {
        List<String> tests = Arrays.stream(DayConstraintsTest.class.getDeclaredMethods())
                .map(java.lang.reflect.Method::getName)
                .toList();
        List<String> constraints = Arrays.stream(DayConstraints.class.getDeclaredMethods())
                .filter(method -> method.getReturnType() == Constraint.class && !method.isSynthetic())
                .map(java.lang.reflect.Method::getName)
                .toList();
        assertThat(constraints).hasSize(5).allMatch(tests::contains);
    }
}
