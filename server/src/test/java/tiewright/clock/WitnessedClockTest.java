package tiewright.clock;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tiewright.Seed;

/** A machine whose clock is set by hand and whose counter counts on; both are moved by the test alone. */
class WitnessedClockTest {
    private static final Instant NOON = Instant.parse("2026-06-20T12:00:00Z");
    private static final Duration MONTH = Duration.ofDays(30);

    private final Machine machine = new Machine();
    private final WitnessedClock clock = WitnessedClock.of(machine, machine::nanos);

    private static final class Machine extends Clock {
        private Instant wall = NOON;
        private long nanos = 77;

        void passes(Duration time) {
            wall = wall.plus(time);
            nanos += time.toNanos();
        }

        void isSet(Duration by) {
            wall = wall.plus(by);
        }

        long nanos() {
            return nanos;
        }

        @Override
        public Instant instant() {
            return wall;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }

    private static Instant noonPlus(long seconds) {
        return NOON.plusSeconds(seconds);
    }

    @Test
    void time_that_passes_is_believed_however_seldom_anybody_looks() {
        machine.passes(Duration.ofMillis(500));
        assertThat(clock.instant()).isEqualTo(NOON.plusMillis(500));
        machine.passes(Duration.ofHours(9));
        assertThat(clock.instant()).isEqualTo(NOON.plusMillis(500).plus(Duration.ofHours(9)));
        assertThat(clock.doubt()).isEmpty();
    }

    @Test
    void a_clock_set_ahead_makes_time_stand_still() {
        machine.passes(Duration.ofSeconds(10));
        clock.instant();
        machine.isSet(MONTH);
        machine.passes(Duration.ofSeconds(66));
        assertThat(clock.instant()).isEqualTo(noonPlus(10));
        assertThat(clock.doubt())
                .contains(new WitnessedClock.Doubt(noonPlus(10), noonPlus(76).plus(MONTH), noonPlus(76)));
    }

    @Test
    void two_seconds_are_a_jump_and_back_as_well() {
        for (long seconds : new long[] {2, -2}) {
            WitnessedClock fresh = WitnessedClock.of(machine, machine::nanos);
            Instant before = fresh.instant();
            machine.isSet(Duration.ofSeconds(seconds));
            assertThat(fresh.instant()).isEqualTo(before);
            assertThat(fresh.doubt()).isPresent();
        }
    }

    @Test
    void many_small_corrections_in_one_direction_are_a_jump_too() {
        for (int i = 0; i < 12; i++) {
            machine.passes(Duration.ofMillis(500));
            machine.isSet(Duration.ofMillis(200));
            clock.instant();
        }
        assertThat(clock.doubt()).isPresent();
    }

    @Test
    void quartz_that_is_corrected_all_day_is_none() {
        Seed seed = Seed.fresh();
        Random random = seed.random();
        for (int i = 0; i < 80_000; i++) {
            machine.passes(Duration.ofMillis(400 + random.nextInt(200)));
            machine.isSet(Duration.ofNanos(random.nextInt(400_000) - 200_000));
            clock.instant();
        }
        assertThat(clock.doubt()).as(seed.toString()).isEmpty();
        assertThat(clock.instant()).as(seed.toString()).isEqualTo(machine.instant());
    }

    @Test
    void a_clock_set_back_to_what_it_should_be_ends_the_doubt_by_itself() {
        machine.isSet(MONTH);
        assertThat(clock.doubt()).isPresent();
        machine.passes(Duration.ofSeconds(66));
        machine.isSet(MONTH.negated().plusMillis(300));
        assertThat(clock.doubt()).isEmpty();
        assertThat(clock.instant()).isEqualTo(noonPlus(66).plusMillis(300));
    }

    @Test
    void a_person_says_that_the_machine_is_right() {
        machine.isSet(Duration.ofHours(2));
        assertThat(clock.instant()).isEqualTo(NOON);
        clock.decide(true);
        assertThat(clock.doubt()).isEmpty();
        machine.passes(Duration.ofSeconds(5));
        assertThat(clock.instant()).isEqualTo(noonPlus(7205));
    }

    @Test
    void a_person_says_that_the_time_counted_on_is_right() {
        machine.isSet(Duration.ofHours(-2));
        machine.passes(Duration.ofSeconds(30));
        assertThat(clock.instant()).isEqualTo(NOON);
        clock.decide(false);
        machine.passes(Duration.ofSeconds(5));
        assertThat(clock.instant()).isEqualTo(noonPlus(35));
        machine.isSet(Duration.ofHours(2));
        assertThat(clock.doubt())
                .as("now the machine is put right, which is a jump again")
                .isPresent();
        clock.decide(true);
        assertThat(clock.instant()).isEqualTo(noonPlus(35));
    }

    @Test
    void at_the_start_the_last_fact_is_a_witness() {
        clock.remember(NOON.plusSeconds(40), false);
        assertThat(clock.doubt()).as("earlier than what was written down").isPresent();
        assertThat(clock.instant()).isEqualTo(noonPlus(40));

        WitnessedClock later = WitnessedClock.of(machine, machine::nanos);
        later.remember(NOON.minus(MONTH), false);
        assertThat(later.doubt()).as("a month without play is nothing unusual").isEmpty();
        later.remember(NOON.minus(Duration.ofHours(11)), true);
        assertThat(later.doubt()).as("a night between two days of play").isEmpty();
        later.remember(NOON.minus(MONTH), true);
        assertThat(later.doubt()).as("a month later in the middle of play").isPresent();
        assertThat(later.instant()).isEqualTo(NOON.minus(MONTH));
    }

    @Test
    void nothing_is_erased_in_doubt_nor_on_a_day_with_facts_nor_in_the_first_hour() {
        Optional<Instant> monthAgo = Optional.of(NOON.minus(MONTH));
        assertThat(clock.mayErase(7, monthAgo, ZoneOffset.UTC))
                .as("just started")
                .isFalse();
        machine.passes(WitnessedClock.QUIET.minusSeconds(1));
        assertThat(clock.mayErase(7, monthAgo, ZoneOffset.UTC)).isFalse();
        machine.passes(Duration.ofSeconds(1));
        assertThat(clock.mayErase(7, monthAgo, ZoneOffset.UTC)).isTrue();
        assertThat(clock.mayErase(7, Optional.empty(), ZoneOffset.UTC)).isTrue();
        assertThat(clock.mayErase(7, Optional.of(NOON), ZoneOffset.UTC))
                .as("a fact of today")
                .isFalse();
        assertThat(clock.mayErase(7, Optional.of(NOON.plus(MONTH)), ZoneOffset.UTC))
                .as("a fact of a day to come")
                .isFalse();
        assertThat(clock.mayErase(8, monthAgo, ZoneOffset.UTC))
                .as("something was just written")
                .isFalse();
        machine.passes(WitnessedClock.QUIET);
        assertThat(clock.mayErase(8, monthAgo, ZoneOffset.UTC)).isTrue();
        machine.isSet(MONTH);
        assertThat(clock.mayErase(8, monthAgo, ZoneOffset.UTC)).as("a jump").isFalse();
    }
}
