package tiewright.timetable;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.event.Days;
import tiewright.event.PlayFact;
import tiewright.event.RubberNo;
import tiewright.event.TieId;

/** Ten minutes as on a club day. What starts the clock: the call, the schedule, the free court (SDTF format; the others common practice). */
class LatenessTest {
    private static Days day(String clock) {
        return Days.oneTie().with(Setting.CLOCK_STARTS, clock).opened("A1");
    }

    private static Days called(Days day, String at, int rubber, String court) {
        return day.at(at).fact(new PlayFact.CourtCalled(TieId.of("A1"), Optional.of(RubberNo.of(rubber)), court));
    }

    private static List<Lateness.Late> at(Days day, String now) {
        return Lateness.of(day.event(), Days.moment(now));
    }

    @Test
    void the_clock_of_the_call() {
        Days day = called(day("call"), "10:05", 1, "1");
        assertThat(at(day, "10:14")).singleElement().satisfies(late -> {
            assertThat(late.rubber()).contains(RubberNo.of(1));
            assertThat(late.clock()).isEqualTo(Days.moment("10:05"));
            assertThat(late.claimableSince()).isEqualTo(Days.moment("10:15"));
            assertThat(late.claimable()).isFalse();
        });
        assertThat(at(day, "10:15"))
                .singleElement()
                .satisfies(late -> assertThat(late.claimable()).isTrue());
        assertThat(at(day("call"), "11:00")).isEmpty(); // nobody was called
    }

    /** By hand, late after 15 minutes, called at 10:05: one rubber from 10:20, then one more each 15 minutes (Western Suburbs by-laws 6-8). */
    @Test
    void a_ladder_of_15_30_and_45_minutes_names_each_step_and_gives_nothing() {
        Days day = called(
                day("call").with(Setting.LATE_MINUTES, "15").with(Setting.LATE_LOSS, "ladder-one-rubber-each-15"),
                "10:05",
                1,
                "1");
        assertThat(at(day, "10:50").get(0).ladder())
                .containsExactly(
                        new LateStep(LateStep.What.RUBBERS, 1, Days.moment("10:20")),
                        new LateStep(LateStep.What.RUBBERS, 2, Days.moment("10:35")),
                        new LateStep(LateStep.What.RUBBERS, 3, Days.moment("10:50")),
                        new LateStep(LateStep.What.RUBBERS, 4, Days.moment("11:05")));
        assertThat(day.event().progress(day.tie("A1")).rubbers()).isEmpty();
    }

    /** 5 minutes: the first game; then the match (UTA Monday interclub; USA Pickleball player instructions 2024); the tie is ours. */
    @Test
    void first_a_game_then_the_rubber_then_the_tie() {
        Days day = called(
                day("call").with(Setting.LATE_MINUTES, "5").with(Setting.LATE_LOSS, "game-then-rubber"),
                "10:05",
                1,
                "1");
        assertThat(at(day, "10:06").get(0).ladder())
                .containsExactly(
                        new LateStep(LateStep.What.GAME, 0, Days.moment("10:10")),
                        new LateStep(LateStep.What.RUBBERS, 1, Days.moment("10:15")),
                        new LateStep(LateStep.What.TIE, 0, Days.moment("10:20")));
    }

    @Test
    void the_clock_of_the_schedule() {
        assertThat(at(day("schedule"), "09:59")).isEmpty();
        assertThat(at(day("schedule"), "10:10")).singleElement().satisfies(late -> {
            assertThat(late.rubber()).isEmpty();
            assertThat(late.claimableSince()).isEqualTo(Days.moment("10:10"));
            assertThat(late.claimable()).isTrue();
        });
        Days day = called(day("schedule"), "10:05", 1, "1");
        assertThat(at(day, "10:06"))
                .singleElement()
                .satisfies(late -> assertThat(late.clock()).isEqualTo(Days.moment("10:00")));
    }

    @Test
    void the_clock_of_the_free_court() {
        Days day = called(called(day("court-free"), "10:00", 1, "1"), "10:02", 2, "1")
                .at("10:21")
                .card("A1", "1", "11-4");
        assertThat(at(day, "10:25")).singleElement().satisfies(late -> {
            assertThat(late.rubber()).contains(RubberNo.of(2));
            assertThat(late.clock()).isEqualTo(Days.moment("10:21"));
        });
    }

    @Test
    void a_court_still_taken_starts_no_clock_of_the_tie_that_waits_for_it() {
        TieId before = TieId.of("A2");
        Days day = day("court-free")
                .clubs("E", "W")
                .poolTie("A2", "A", 1, "E", "W")
                .timed("A2", "09:30", "1")
                .opened("A2")
                .at("09:50")
                .fact(new PlayFact.CourtCalled(before, Optional.of(RubberNo.of(1)), "1"));
        assertThat(at(day, "10:20")).extracting(Lateness.Late::tie).containsExactly(before);
        day.at("10:25").card("A2", "1", "11-4");
        assertThat(at(day, "10:30")).singleElement().satisfies(late -> {
            assertThat(late.tie()).isEqualTo(TieId.of("A1"));
            assertThat(late.clock()).isEqualTo(Days.moment("10:25"));
        });
    }

    @Test
    void a_second_rubber_on_the_court_waits_for_the_card_of_the_first() {
        Days day = called(called(day("call"), "10:00", 1, "1"), "10:00", 2, "1");
        assertThat(at(day, "10:12"))
                .extracting(late -> late.rubber().orElseThrow().number())
                .containsExactly(1);
        day.at("10:20").card("A1", "1", "11-4");
        assertThat(at(day, "10:22")).singleElement().satisfies(late -> {
            assertThat(late.rubber()).contains(RubberNo.of(2));
            assertThat(late.clock()).isEqualTo(Days.moment("10:20"));
            assertThat(late.claimable()).isFalse();
        });
    }

    @Test
    void a_card_stops_the_clock_and_nothing_is_awarded() {
        Days day = called(day("call"), "10:00", 1, "1");
        long before = day.event().seq();
        assertThat(at(day, "12:00")).hasSize(1);
        assertThat(day.event().seq()).isEqualTo(before);
        assertThat(day.tie("A1").cards()).isEmpty();
        day.at("10:20").card("A1", "1", "11-4");
        assertThat(at(day, "12:00")).isEmpty();
    }
}
