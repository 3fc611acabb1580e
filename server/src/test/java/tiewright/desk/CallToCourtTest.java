package tiewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.event.Days;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.PlayFact;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.SetUpFact;
import tiewright.event.Sheet;
import tiewright.event.TieId;

/** Calls and check-in: common practice, no source. */
class CallToCourtTest {
    private final Days day = Days.aDay()
            .clubs("N", "S", "E", "W")
            .courts("1", "2")
            .poolTie("A1", "A", 1, "N", "S")
            .poolTie("A2", "A", 1, "E", "W")
            .opened("A1")
            .opened("A2")
            .at("10:00");

    private static CallToCourt call(String tie, int rubber, String court) {
        return new CallToCourt(TieId.of(tie), RubberNo.of(rubber), court);
    }

    /** As older ledgers hold it: the whole tie at once, one rubber after the other on one court. */
    private void calledWhole(String court) {
        day.fact(new PlayFact.CourtCalled(TieId.of("A1"), Optional.empty(), court));
    }

    private static TakeBackCall back(String tie, int rubber, String reason) {
        return new TakeBackCall(TieId.of(tie), Optional.of(RubberNo.of(rubber)), reason);
    }

    @Test
    void logs_the_court_and_the_time() {
        day.does(call("A1", 1, "2"));
        assertThat(day.tie("A1").calls().get(RubberNo.of(1)).court()).isEqualTo("2");
        assertThat(day.tie("A1").calls().get(RubberNo.of(1)).at()).isEqualTo(Days.moment("10:00"));
    }

    @Test
    void one_rubber_at_a_time_on_a_court() {
        day.does(call("A1", 1, "1"));
        assertThat(Why.not(day, call("A1", 2, "1"))).containsExactly("desk.court-taken");
        assertThat(Why.not(day, call("A2", 1, "1"))).containsExactly("desk.court-taken");
        assertThat(Why.not(day, call("A2", 1, "2"))).isEmpty();
        day.card("A1", "1", "11-0");
        assertThat(Why.not(day, call("A1", 2, "1"))).isEmpty();
    }

    @Test
    void a_whole_tie_keeps_its_court_until_its_last_card() {
        calledWhole("1");
        day.cards("A1", "11-0", "11-0", "11-0");
        assertThat(Why.not(day, call("A2", 1, "1"))).containsExactly("desk.court-taken");
        day.card("A1", "4", "11-0");
        assertThat(Why.not(day, call("A2", 1, "1"))).isEmpty();
    }

    @Test
    void a_rubber_of_a_called_tie_may_move_to_another_court() {
        calledWhole("1");
        assertThat(Why.not(day, call("A1", 2, "1"))).containsExactly("desk.already-called");
        day.does(call("A1", 2, "2"));
        assertThat(day.tie("A1").calls().get(RubberNo.of(2)).court()).isEqualTo("2");
    }

    @Test
    void the_court_is_there_and_in_use() {
        assertThat(Why.not(day, call("A1", 1, "9"))).containsExactly("desk.no-such-court");
        day.fact(new SetUpFact.CourtSet("2", Optional.empty(), Optional.empty(), false));
        assertThat(Why.not(day, call("A1", 1, "2"))).containsExactly("desk.court-out-of-use");
    }

    @Test
    void sheets_are_opened_first() {
        Days closed = Days.oneTie();
        assertThat(Why.not(closed, call("A1", 1, "1"))).containsExactly("desk.sheets-not-opened");
        assertThat(Why.not(closed, call("Z", 1, "1"))).containsExactly("desk.no-such-tie");
    }

    @Test
    void nobody_is_on_two_courts() {
        Sheet twice = Sheet.full(Pair.of("N1", "N2"), Pair.of("N1", "N3"), Pair.of("N4", "N5"), Pair.of("N4", "N6"));
        Days busy = Days.oneTie()
                .with(Setting.MAX_RUBBERS_PER_PLAYER, "2")
                .opened(ExchangeId.sheets(TieId.of("A1")), twice, Days.straight("S", 4))
                .does(call("A1", 1, "1"));
        assertThat(Why.not(busy, call("A1", 2, "2"))).containsExactly("desk.player-on-court");
        assertThat(Why.not(busy, call("A1", 3, "2"))).isEmpty();
        busy.card("A1", "1", "11-0");
        assertThat(Why.not(busy, call("A1", 2, "2"))).isEmpty();
    }

    @Test
    void what_has_a_card_is_not_called() {
        day.card("A1", "1", "11-0");
        assertThat(Why.not(day, call("A1", 1, "1"))).containsExactly("desk.rubber-has-card");
        day.cards("A2", "11-0", "11-0", "11-0", "11-0");
        assertThat(Why.not(day, call("A2", 1, "1"))).containsExactly("desk.tie-is-over");
    }

    @Test
    void only_officials_call_check_in_and_take_back() {
        day.does(call("A1", 1, "1")).by(Days.volunteer("V"));
        assertThat(Why.not(day, call("A2", 1, "2"))).containsExactly("desk.officials-only");
        assertThat(Why.not(day, back("A1", 1, "wrong court"))).containsExactly("desk.officials-only");
        assertThat(Why.not(day, new CheckIn(PlayerId.of("N1"), true))).containsExactly("desk.officials-only");
    }

    @Test
    void a_wrong_call_is_taken_back_with_its_reason() {
        day.does(call("A1", 1, "1"));
        assertThat(Why.not(day, back("A1", 1, ""))).containsExactly("desk.text-missing.reason");
        assertThat(Why.not(day, back("A1", 2, "wrong"))).containsExactly("desk.not-called");
        assertThat(Why.not(day, back("Z", 2, "wrong"))).containsExactly("desk.no-such-tie");
        day.does(back("A1", 1, "wrong court"));
        assertThat(day.tie("A1").calls()).isEmpty();
        assertThat(Why.not(day, call("A2", 1, "1"))).isEmpty();
    }

    @Test
    void a_rubber_that_was_played_keeps_its_call() {
        calledWhole("1");
        day.card("A1", "1", "11-0");
        assertThat(Why.not(day, new TakeBackCall(TieId.of("A1"), Optional.empty(), "rain")))
                .containsExactly("desk.rubber-has-card");
        assertThat(Why.not(day, back("A1", 2, "rain"))).isEmpty();
    }

    @Test
    void the_desk_sees_a_player_once_and_can_take_it_back() {
        day.at("09:31").does(new CheckIn(PlayerId.of("N1"), true));
        assertThat(day.event().player(PlayerId.of("N1")).orElseThrow().checkedInAt())
                .contains(Days.moment("09:31"));
        assertThat(Why.not(day, new CheckIn(PlayerId.of("N1"), true))).containsExactly("desk.already-in");
        day.does(new CheckIn(PlayerId.of("N1"), false));
        assertThat(day.event().player(PlayerId.of("N1")).orElseThrow().absent()).isTrue();
        assertThat(Why.not(day, new CheckIn(PlayerId.of("N1"), false))).containsExactly("desk.already-absent");
        assertThat(Why.not(day, new CheckIn(PlayerId.of("X1"), true))).containsExactly("desk.no-such-player");
    }
}
