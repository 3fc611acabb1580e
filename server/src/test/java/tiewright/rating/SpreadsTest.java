package tiewright.rating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.scoring.Format;
import tiewright.scoring.Score;

/** Spreads from the games, forms that move, and what games of one rubber share. */
class SpreadsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 7);

    /** Effects and standard errors of eight schools (D. Rubin, J. Educ. Statist. 6, 1981; from memory). */
    private static final double[] EFFECTS = {28, 8, -3, 7, -1, 1, 18, 12};

    private static final double[] ERRORS = {15, 10, 16, 11, 9, 11, 10, 18};

    private record Measured(double value, double error) implements Likelihood {
        @Override
        public double log(double sum) {
            return -Math.pow((sum - value) / error, 2) / 2;
        }

        @Override
        public double slope(double sum) {
            return (value - sum) / (error * error);
        }

        @Override
        public double bend(double sum) {
            return 1 / (error * error);
        }
    }

    private static double[] all(double value) {
        double[] each = new double[EFFECTS.length];
        Arrays.fill(each, value);
        return each;
    }

    /** By the density of a normal of both variances: what is observed is exactly normal here, so Laplace's method is exact. */
    private static double byHand(double mean, double spread) {
        double sum = 0;
        for (int i = 0; i < EFFECTS.length; i++) {
            double variance = ERRORS[i] * ERRORS[i] + spread * spread;
            sum -= Math.log(variance) / 2 + Math.pow(EFFECTS[i] - mean, 2) / (2 * variance);
        }
        return sum;
    }

    @Test
    void the_chance_of_what_was_seen_is_that_of_eight_schools_under_any_spread() {
        List<Observation> seen = new ArrayList<>();
        for (int i = 0; i < EFFECTS.length; i++) {
            seen.add(new Observation(new int[] {i}, new double[] {1}, new Measured(EFFECTS[i], ERRORS[i])));
        }
        AboutMode about = new AboutMode(seen, all(3));
        double first = about.logChance(all(7.7), all(1.0 / 100));
        for (double spread : new double[] {0.5, 3, 6.5, 20, 80}) {
            assertThat(about.logChance(all(7.7), all(1 / (spread * spread))) - first)
                    .as("spread %s", spread)
                    .isCloseTo(byHand(7.7, spread) - byHand(7.7, 10), within(1e-9));
        }
    }

    private static PastGame game(LocalDate day, String ours, String theirs, int away, Optional<String> rubber) {
        return new PastGame(
                day,
                Pair.of(ours.split(" ")[0], ours.split(" ")[1]),
                Pair.of(theirs.split(" ")[0], theirs.split(" ")[1]),
                Score.of(11, away),
                Format.rally(11),
                rubber);
    }

    private static Strengths fit(Stated stated, PastGame... games) {
        Ageing ageing = new Ageing(DAY, OptionalInt.empty());
        return Rating.fit(Prior.none(), new Evidence(List.of(), List.of(games), List.of(), ageing, stated));
    }

    /** A random walk: variances of steps add up (common practice, no source); 364 days are thirteen times four weeks. */
    @Test
    void the_doubt_of_a_form_grows_with_time_and_its_best_guess_stays() {
        Strengths now = fit(Stated.nothing(), game(DAY, "a b", "c d", 3, Optional.empty()));
        Strengths later = now.on(DAY.plusDays(364));
        PlayerId one = PlayerId.of("a");
        assertThat(later.form(one).mean()).isCloseTo(now.form(one).mean(), within(1e-9));
        assertThat(later.form(one).variance() - now.form(one).variance())
                .isCloseTo(2.5 * 2.5 * 364 / 365.25, within(1e-9));
        assertThat(later.edge(Pair.of("a", "b"), Pair.of("c", "d")).variance()
                        - now.edge(Pair.of("a", "b"), Pair.of("c", "d")).variance())
                .as("four halves of a form")
                .isCloseTo(2.5 * 2.5 * 364 / 365.25, within(1e-9));
        assertThat(later.form(PlayerId.of("nobody")).sd())
                .as("a stranger is a stranger")
                .isEqualTo(9);
    }

    @Test
    void an_old_game_says_less_of_today_and_without_drift_as_much() {
        PastGame old = game(DAY.minusDays(700), "a b", "c d", 0, Optional.empty());
        PastGame fresh = game(DAY, "a b", "c d", 0, Optional.empty());
        PlayerId one = PlayerId.of("a");
        assertThat(fit(Stated.nothing(), old).form(one).sd())
                .isGreaterThan(fit(Stated.nothing(), fresh).form(one).sd());
        assertThat(fit(Stated.plain(), old).form(one).mean())
                .isCloseTo(fit(Stated.plain(), fresh).form(one).mean(), within(1e-9));
        PastGame[] both = {old, game(DAY, "c d", "a b", 0, Optional.empty())};
        assertThat(fit(Stated.nothing(), both).form(one).mean())
                .as("the later of two opposite games counts more")
                .isNegative();
        assertThat(fit(Stated.plain(), both).form(one).mean()).isCloseTo(0, within(1e-6));
    }

    @Test
    void three_games_of_one_rubber_say_less_than_three_rubbers() {
        PastGame[] together = new PastGame[3];
        PastGame[] apart = new PastGame[3];
        for (int i = 0; i < 3; i++) {
            together[i] = game(DAY, "a b", "c d", 5, Optional.of("m"));
            apart[i] = game(DAY, "a b", "c d", 5, Optional.of("m" + i));
        }
        Pair ours = Pair.of("a", "b");
        Pair theirs = Pair.of("c", "d");
        Estimate one = fit(Stated.nothing(), together).edge(ours, theirs);
        Estimate many = fit(Stated.nothing(), apart).edge(ours, theirs);
        assertThat(one.sd()).isGreaterThan(many.sd());
        assertThat(one.mean()).isLessThan(many.mean());
        Stated nothingShared = new Stated(
                ServeRates.USUAL,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(0));
        assertThat(fit(nothingShared, together).edge(ours, theirs).mean())
                .isCloseTo(fit(nothingShared, apart).edge(ours, theirs).mean(), within(1e-9));
    }

    /** Whoever stands first in a row: what a rubber shares is for the same pair in each of its games. */
    @Test
    void sides_may_be_turned_within_a_rubber() {
        PastGame straight = game(DAY, "a b", "c d", 5, Optional.of("m"));
        PastGame turned = new PastGame(
                DAY, straight.away(), straight.home(), Score.of(5, 11), straight.format(), straight.rubber());
        Pair ours = Pair.of("a", "b");
        Pair theirs = Pair.of("c", "d");
        assertThat(fit(Stated.nothing(), straight, turned).edge(ours, theirs).mean())
                .isCloseTo(
                        fit(Stated.nothing(), straight, straight)
                                .edge(ours, theirs)
                                .mean(),
                        within(1e-9));
    }

    @Test
    void a_rubber_of_several_games_is_less_sure_where_they_share_something_and_even_stays_even() {
        Strengths none = fit(Stated.nothing());
        Estimate ahead = Estimate.of(6, 0);
        double plain = none.plainChance(Format.rally(11), 3, 6);
        assertThat(none.chance(Format.rally(11), 3, ahead))
                .isLessThan(plain - 0.005)
                .isGreaterThan(0.5);
        assertThat(none.chance(Format.rally(11), 1, ahead))
                .as("nothing is shared by one game")
                .isCloseTo(none.plainChance(Format.rally(11), 1, 6), within(1e-4));
        assertThat(none.chance(Format.rally(11), 3, Estimate.of(0, 4))).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void few_games_leave_the_usual_spreads_and_stated_ones_stay() {
        Assumptions few = fit(Stated.nothing(), game(DAY, "a b", "c d", 0, Optional.empty()))
                .assumptions();
        assertThat(few).isEqualTo(new Assumptions(ServeRates.USUAL, 9, 1.5, 2.5, 3.5));
        PastGame[] many = new PastGame[40];
        for (int i = 0; i < many.length; i++) {
            many[i] = game(DAY, i % 2 == 0 ? "a b" : "a c", i % 2 == 0 ? "c d" : "b d", 0, Optional.empty());
        }
        Assumptions found = fit(Stated.nothing(), many).assumptions();
        assertThat(found.formSpread()).as("every game to nothing").isGreaterThan(9.5);
        Stated form = new Stated(
                ServeRates.USUAL,
                OptionalDouble.of(4),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        assertThat(fit(form, many).assumptions().formSpread()).isEqualTo(4);
        assertThat(fit(form, many).assumptions().extraSpread()).isNotEqualTo(1.5);
        assertThat(fit(Stated.plain(), many).assumptions()).isEqualTo(new Assumptions(ServeRates.PLAIN, 6, 3, 0, 0));
    }
}
