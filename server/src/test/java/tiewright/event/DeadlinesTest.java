package tiewright.event;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Conditions;
import tiewright.conditions.Setting;

/** When sheets must be in: 15 minutes before the start, pairs for a decider 5 minutes after the last card, here. */
class DeadlinesTest {
    private static final ExchangeId SHEETS = ExchangeId.sheets(TieId.of("A1"));
    private static final ExchangeId DECIDER = ExchangeId.decider(TieId.of("A1"));

    private static Days day() {
        return Days.oneTie().with(Setting.SHEET_DEADLINE_MINUTES, "15").with(Setting.DECIDER_MINUTES, "5");
    }

    private static Days level() {
        return day().at("10:10")
                .card("A1", "1", "15-3")
                .at("10:50")
                .card("A1", "2", "15-3")
                .at("10:30")
                .card("A1", "3", "3-15")
                .at("10:40")
                .card("A1", "4", "3-15");
    }

    @Test
    void sheets_are_due_before_the_published_start() {
        assertThat(Deadlines.of(day().event(), SHEETS)).contains(Days.moment("09:45"));
        assertThat(Deadlines.of(day().with(Setting.SHEET_DEADLINE_MINUTES, "0").event(), SHEETS))
                .contains(Days.moment("10:00"));
        assertThat(Deadlines.of(day().timed("A1", "11:30", "2").event(), SHEETS))
                .contains(Days.moment("11:15"));
    }

    @Test
    void without_a_start_or_a_tie_there_is_no_deadline() {
        Days untimed = day().fact(new DrawFact.TieTimed(TieId.of("A1"), Optional.empty(), Optional.empty()));
        assertThat(Deadlines.of(untimed.event(), SHEETS)).isEmpty();
        assertThat(Deadlines.of(day().event(), ExchangeId.sheets(TieId.of("none"))))
                .isEmpty();
        assertThat(Deadlines.of(day().event(), ExchangeId.decider(TieId.of("none"))))
                .isEmpty();
    }

    /** Cards come in any order: the clock runs from the last that came in, not from the first nor from that of the last rubber. */
    @Test
    void the_decider_is_due_after_the_card_that_came_in_last() {
        assertThat(Deadlines.of(level().event(), DECIDER)).contains(Days.moment("10:55"));
    }

    @Test
    void a_reading_that_only_confirms_gives_nobody_more_time() {
        assertThat(Deadlines.of(
                        level().at("10:54")
                                .by(Days.captain("N"))
                                .card("A1", "1", "15-3")
                                .event(),
                        DECIDER))
                .contains(Days.moment("10:55"));
    }

    /** Level at 10:50, due at 10:55: three minutes are left when a captain types another score, also when it is settled at 11:10. */
    @Test
    void a_reading_that_differs_stops_the_clock_once_and_its_rest_runs_on_when_it_is_settled() {
        Days held = level().at("10:52").by(Days.captain("N")).card("A1", "1", "15-4");
        assertThat(Deadlines.of(held.event(), DECIDER)).isEmpty();
        assertThat(DeciderClock.of(held.tie("A1"), held.event().conditions()).rest())
                .contains(Duration.ofMinutes(3));
        Days settled = held.at("11:10").by(Days.referee()).fact(settles());
        assertThat(Deadlines.of(settled.event(), DECIDER)).contains(Days.moment("11:13"));
        assertThat(DeciderClock.of(settled.tie("A1"), settled.event().conditions())
                        .rest())
                .isEmpty();
        Days again = settled.at("11:12").by(Days.captain("S")).card("A1", "2", "15-4");
        assertThat(DeciderClock.of(again.tie("A1"), again.event().conditions()).rest())
                .as("it stands still once")
                .isEmpty();
        assertThat(Deadlines.of(again.event(), DECIDER)).as("not level").isEmpty();
        assertThat(Deadlines.of(
                        again.at("11:20").by(Days.referee()).fact(settles("2")).event(), DECIDER))
                .contains(Days.moment("11:13"));
    }

    private static PlayFact.CardCorrected settles() {
        return settles("1");
    }

    private static PlayFact.CardCorrected settles(String rubber) {
        return new PlayFact.CardCorrected(
                TieId.of("A1"),
                RubberNo.parse(rubber).orElseThrow(),
                Days.games("15-3"),
                How.PLAYED,
                "the card shows it");
    }

    @Test
    void the_card_of_the_decider_itself_moves_nothing() {
        assertThat(Deadlines.of(level().at("11:30").card("A1", "D", "15-3").event(), DECIDER))
                .contains(Days.moment("10:55"));
    }

    @Test
    void a_tie_that_is_not_level_has_no_deadline_for_a_decider() {
        assertThat(Deadlines.of(day().at("10:10").card("A1", "1", "15-3").event(), DECIDER))
                .isEmpty();
        assertThat(Deadlines.of(
                        day().cards("A1", "15-3", "15-3", "15-3", "3-15").event(), DECIDER))
                .isEmpty();
        assertThat(Deadlines.of(level().with(Setting.DECIDER, "none").event(), DECIDER))
                .isEmpty();
    }

    /** Due at 09:45: the whole minute is in time, and where the conditions give a grace of five minutes those after it. */
    @Test
    void a_first_sheet_is_taken_through_the_minute_of_the_deadline_and_the_grace() {
        Instant due = Days.moment("09:45");
        Conditions grace = day().with(Setting.LATE_SHEET, "grace")
                .with(Setting.GRACE_MINUTES, "5")
                .event()
                .conditions();
        assertThat(Deadlines.closes(due, grace)).isEqualTo(Days.moment("09:51"));
        assertThat(Deadlines.lastMinute(due, grace)).isEqualTo(Days.moment("09:50"));
        Conditions none = day().with(Setting.GRACE_MINUTES, "5")
                .with(Setting.LATE_SHEET, "forfeit")
                .event()
                .conditions();
        assertThat(Deadlines.closes(due, none)).isEqualTo(Days.moment("09:46"));
        assertThat(Deadlines.lastMinute(due, none)).isEqualTo(due);
    }
}
