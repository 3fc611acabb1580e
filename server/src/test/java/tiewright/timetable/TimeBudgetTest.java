package tiewright.timetable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.LocalTime;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.conditions.Conditions;
import tiewright.conditions.Preset;
import tiewright.conditions.Setting;
import tiewright.scoring.Format;

class TimeBudgetTest {
    private static final Conditions CLUB_DAY = Conditions.of(Preset.CLUB_DAY);

    private static TimeBudget.Shape shape(
            int clubs, int pools, int knockout, int courts, String starts, String closes) {
        return new TimeBudget.Shape(clubs, pools, knockout, courts, LocalTime.parse(starts), LocalTime.parse(closes));
    }

    /**
     * Rules of thumb reckoned from timings of mixed doubles, 22 s from serve to serve (activity profile, Sports 2025, 13(11), 397;
     * from a summary): side-out to 7, 11, 15; rally scoring to 15, 21.
     */
    @ParameterizedTest
    @CsvSource({"side-out-7,9", "side-out-11,15", "side-out-15,21", "rally-15,10", "rally-21,14"})
    void a_game_takes_as_many_minutes_as_the_rule_of_thumb(String format, int minutes) {
        assertThat(RubberTime.of(Format.parse(format).orElseThrow(), 1, Pace.USUAL)
                        .minutes())
                .isEqualTo(minutes);
    }

    /** An even best of three lasts 2.5 games in the mean. */
    @Test
    void several_games_take_their_number() {
        RubberTime one = RubberTime.of(Format.sideOut(11), 1, Pace.USUAL);
        RubberTime three = RubberTime.of(Format.sideOut(11), 3, Pace.USUAL);
        assertThat(three.mean()).isCloseTo(2.5 * one.mean(), within(1e-9));
        assertThat(three.sd())
                .isCloseTo(Math.sqrt(2.5 * one.sd() * one.sd() + 0.25 * one.mean() * one.mean()), within(1e-9));
    }

    /** A best of three is over after two games or after three, hardly ever at its mean in between. */
    @ParameterizedTest
    @CsvSource({"side-out-11,3", "rally-15,3", "rally-21,3", "rally-11,5"})
    void nine_of_ten_rubbers_of_several_games_are_over_within_their_slot(String format, int games) {
        Conditions conditions = CLUB_DAY.with(Setting.SCORING, format).with(Setting.BEST_OF, Integer.toString(games));
        int slot = SlotLength.of(conditions, Pace.USUAL);
        Random random = new Random(77);
        RubberDraws draws = new RubberDraws(conditions.scoring(), games, Pace.USUAL);
        long over = IntStream.range(0, 20_000)
                .filter(i -> draws.draw(random) > slot)
                .count();
        assertThat(over / 20_000.0).isBetween(0.06, 0.115); // four standard errors of 4,000 games
        assertThat(slot).isGreaterThan(RubberTime.of(conditions, Pace.USUAL).minutes() + 5);
        assertThat(SlotLength.of(CLUB_DAY, Pace.USUAL))
                .as("one game: mean and turnover")
                .isEqualTo(20);
    }

    @Test
    void drawn_rubbers_have_the_mean_and_spread_of_the_chain() {
        Random random = new Random(5);
        RubberTime exact = RubberTime.of(Format.sideOut(11), 1, Pace.USUAL);
        RubberDraws draws = new RubberDraws(Format.sideOut(11), 1, Pace.USUAL);
        double[] minutes =
                IntStream.range(0, 20_000).mapToDouble(i -> draws.draw(random)).toArray();
        double mean = IntStream.range(0, minutes.length)
                .mapToDouble(i -> minutes[i])
                .average()
                .orElseThrow();
        double square = IntStream.range(0, minutes.length)
                .mapToDouble(i -> (minutes[i] - mean) * (minutes[i] - mean))
                .average()
                .orElseThrow();
        assertThat(mean).isCloseTo(exact.mean(), within(0.3)); // four standard errors of 4,000 games
        assertThat(Math.sqrt(square)).isCloseTo(exact.sd(), within(0.3));
    }

    @Test
    void counts_what_is_to_be_played() {
        TimeBudget budget = TimeBudget.of(shape(8, 2, 4, 8, "09:00", "18:00"), CLUB_DAY, Pace.USUAL, 1);
        assertThat(budget.rubbers()).isEqualTo((6 + 6 + 4) * 4);
        assertThat(budget.deciders())
                .isCloseTo(16 * 0.375, within(1e-12)); // 6 of 16 ties of four even rubbers end level
        assertThat(budget.slotMinutes()).isEqualTo(20);
        assertThat(budget.availableMinutes()).isEqualTo(540);
        assertThat(budget.simulatedDays()).isEqualTo(1_000);
        assertThat(budget.early()).isBeforeOrEqualTo(budget.middle());
        assertThat(budget.middle()).isBeforeOrEqualTo(budget.late());
    }

    @Test
    void a_day_with_room_fits_a_day_without_does_not_and_between_some_do() {
        TimeBudget fits = TimeBudget.of(shape(6, 1, 0, 8, "09:00", "20:00"), CLUB_DAY, Pace.USUAL, 1);
        TimeBudget not = TimeBudget.of(shape(12, 1, 0, 4, "09:00", "12:00"), CLUB_DAY, Pace.USUAL, 1);
        assertThat(fits.verdict()).isEqualTo(TimeBudget.Verdict.FITS);
        assertThat(not.verdict()).isEqualTo(TimeBudget.Verdict.DOES_NOT_FIT);
        assertThat(not.neededMinutes()).isGreaterThan(not.availableMinutes());
        LocalTime half = fits.middle();
        TimeBudget some =
                TimeBudget.of(new TimeBudget.Shape(6, 1, 0, 8, LocalTime.of(9, 0), half), CLUB_DAY, Pace.USUAL, 1);
        assertThat(some.verdict()).isEqualTo(TimeBudget.Verdict.FITS_SOMETIMES);
        assertThat(some.daysThatFit()).isBetween(450, 600);
    }

    @Test
    void slower_play_ends_later_and_the_same_seed_gives_the_same_days() {
        TimeBudget.Shape shape = shape(6, 1, 0, 4, "09:00", "18:00");
        TimeBudget usual = TimeBudget.of(shape, CLUB_DAY, Pace.USUAL, 3);
        assertThat(TimeBudget.of(shape, CLUB_DAY, Pace.USUAL, 3)).isEqualTo(usual);
        assertThat(TimeBudget.of(shape, CLUB_DAY, new Pace(30, 5), 3).middle()).isAfter(usual.middle());
        assertThat(TimeBudget.of(shape, CLUB_DAY.with(Setting.DECIDER, "none"), Pace.USUAL, 3)
                        .deciders())
                .isZero();
    }

    /** French padel federation, timing guide (from a summary): 0, 3 or 5 minutes after a stop of up to 5, up to 20, over 20. */
    @ParameterizedTest
    @CsvSource({"0,0", "5,0", "6,3", "20,3", "21,5", "25,5"})
    void warm_up_after_a_stop(int stop, int warmUp) {
        assertThat(Restart.warmUpAfter(Duration.ofMinutes(stop))).isEqualTo(Duration.ofMinutes(warmUp));
    }
}
