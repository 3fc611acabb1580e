package tiewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.event.Days;
import tiewright.event.DrawFact;
import tiewright.event.ExchangeId;
import tiewright.event.How;
import tiewright.event.Pair;
import tiewright.event.PlayFact;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.TieId;

/** Which rubbers can be called, and where to. */
class NextCallsTest {
    private final Days day = Days.aDay()
            .clubs("N", "S", "E", "W")
            .courts("1", "2", "3")
            .poolTie("A1", "A", 1, "N", "S")
            .poolTie("A2", "A", 1, "E", "W")
            .timed("A1", "10:00", "1")
            .timed("A2", "10:00", "1")
            .at("10:00");

    private List<String> next(String tie) {
        return NextCalls.of(day.event()).getOrDefault(TieId.of(tie), List.of()).stream()
                .map(one -> one.rubber() + " " + one.court().orElse("-"))
                .toList();
    }

    private void call(int rubber, String court) {
        day.does(new CallToCourt(TieId.of("A1"), RubberNo.of(rubber), court));
    }

    /** The order of play puts the rubbers of A1, in their order, on these courts. */
    private void planned(String... courts) {
        day.fact(new DrawFact.PlanPublished(1, 1, 20, "1", "The morning", "R. Organiser"));
        for (int i = 0; i < courts.length; i++) {
            day.fact(new DrawFact.RubberTimed(
                    TieId.of("A1"), RubberNo.of(i + 1), LocalTime.of(10, 20 * (i / 2)), courts[i], Optional.empty()));
        }
    }

    @Test
    void nothing_before_the_opening() {
        assertThat(next("A1")).isEmpty();
    }

    @Test
    void one_after_the_other_on_the_only_court_of_the_tie() {
        day.opened("A1");
        assertThat(next("A1")).containsExactly("1 1");
        call(1, "1");
        assertThat(next("A1")).isEmpty();
        day.card("A1", "1", "11-3");
        assertThat(next("A1")).containsExactly("2 1");
    }

    @Test
    void side_by_side_on_the_courts_of_the_order_of_play() {
        planned("2", "3", "2", "3");
        day.opened("A1");
        assertThat(next("A1")).containsExactly("1 2", "2 3");
        call(1, "2");
        assertThat(next("A1")).containsExactly("2 3");
        call(2, "3");
        assertThat(next("A1")).isEmpty();
        day.card("A1", "2", "11-3");
        assertThat(next("A1")).as("its court is still taken by rubber 1").containsExactly("3 -");
    }

    @Test
    void one_at_a_time_where_the_conditions_say_rubber_by_rubber() {
        day.with(Setting.TIE_PLAY, "rubber-by-rubber");
        planned("2", "3", "1", "2");
        day.opened("A1");
        assertThat(next("A1")).containsExactly("1 2");
        call(1, "2");
        assertThat(next("A1")).isEmpty();
        day.card("A1", "1", "11-3");
        assertThat(next("A1")).containsExactly("2 3");
    }

    @Test
    void waits_while_another_tie_is_on_its_court() {
        day.opened("A1").opened("A2");
        call(1, "1");
        assertThat(next("A2")).containsExactly("1 -");
    }

    @Test
    void a_walkover_of_a_short_squad_does_not_hide_the_other_rubbers() {
        day.opened("A1")
                .fact(new PlayFact.CardEntered(TieId.of("A1"), RubberNo.of(4), Days.games("11-0"), How.WALKOVER_AWAY));
        assertThat(next("A1")).containsExactly("1 1");
    }

    @Test
    void nothing_of_a_tie_that_is_over() {
        day.opened("A1").cards("A1", "11-1", "11-2", "11-3", "11-4");
        assertThat(next("A1")).isEmpty();
    }

    @Test
    void two_ties_without_a_court_of_their_own_are_not_offered_the_same_one() {
        Days free = Days.aDay()
                .with(Setting.TIE_PLAY, "rubber-by-rubber")
                .clubs("N", "S", "E", "W")
                .courts("1", "2")
                .poolTie("A1", "A", 1, "N", "S")
                .poolTie("A2", "A", 1, "E", "W")
                .opened("A1")
                .opened("A2");
        assertThat(NextCalls.of(free.event()).values())
                .containsExactly(
                        List.of(new NextCalls.Next(RubberNo.of(1), Optional.of("1"))),
                        List.of(new NextCalls.Next(RubberNo.of(1), Optional.of("2"))));
    }

    @Test
    void nobody_is_called_to_two_courts() {
        Sheet twice = Sheet.full(Pair.of("N1", "N2"), Pair.of("N1", "N3"), Pair.of("N4", "N5"), Pair.of("N6", "N7"));
        day.with(Setting.MAX_RUBBERS_PER_PLAYER, "2");
        planned("1", "2", "3", "1");
        day.opened(ExchangeId.sheets(TieId.of("A1")), twice, Days.straight("S", 4));
        assertThat(next("A1")).as("N1 is wanted in rubber 1").containsExactly("1 1", "3 3", "4 -");
    }
}
