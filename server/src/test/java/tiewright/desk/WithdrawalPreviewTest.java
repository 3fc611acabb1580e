package tiewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.conditions.Withdrawal;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Event;
import tiewright.event.RubberNo;
import tiewright.event.SlotSource;
import tiewright.event.TieId;
import tiewright.standings.PoolTables;
import tiewright.standings.Standings;

/**
 * Each published treatment of a withdrawal side by side: deleted (Lithuanian badminton federation, team rule 7.12), kept
 * (Racquetball Canada round robin), awarded (common practice, no source). The results are ours, worked by hand.
 */
class WithdrawalPreviewTest {
    private static final ClubId E = ClubId.of("E");
    private static final SlotSource FIRST = SlotSource.place("A", 1);

    /** N beat S 3-1, E beat N 3-1, S and E have not met. */
    static Days day() {
        return Days.aDay()
                .clubs("N", "S", "E")
                .with(Setting.DECIDER, "none")
                .poolTie("A1", "A", 1, "N", "S")
                .poolTie("A2", "A", 2, "E", "N")
                .poolTie("A3", "A", 3, "S", "E")
                .knockoutTie("F", 1, "A-1", "A-2")
                .opened("A1")
                .cards("A1", "11-5", "11-5", "11-5", "5-11")
                .opened("A2")
                .cards("A2", "11-5", "11-5", "11-5", "5-11")
                .by(Days.referee());
    }

    private static List<String> order(WithdrawalPreview.Outlook outlook) {
        return outlook.table().orElseThrow().order().stream().map(ClubId::code).toList();
    }

    @Test
    void three_treatments_send_three_different_clubs_on() {
        Days day = day();
        Event before = day.event();
        WithdrawalPreview preview = WithdrawalPreview.of(before, day.given(), E);
        assertThat(preview.treatments())
                .extracting(outlook -> outlook.treatment().orElseThrow())
                .containsExactly(Withdrawal.values());
        assertThat(order(preview.treatments().get(0)))
                .as("annul: only N v S counts")
                .containsExactly("N", "S");
        assertThat(order(preview.treatments().get(1)))
                .as("keep: E and N level, E beat N")
                .containsExactly("E", "N", "S");
        assertThat(order(preview.treatments().get(2)))
                .as("award: one tie each; rubbers +2, 0, -2")
                .containsExactly("S", "N", "E");
        assertThat(preview.treatments())
                .extracting(outlook -> outlook.goesOn().get(FIRST))
                .containsExactly(Optional.of(ClubId.of("N")), Optional.of(E), Optional.of(ClubId.of("S")));
        assertThat(day.event()).as("asking changes nothing").isEqualTo(before);
    }

    @Test
    void what_is_shown_is_what_then_holds() {
        for (WithdrawalPreview.Outlook outlook :
                WithdrawalPreview.of(day().event(), day().given(), E).treatments()) {
            Days day = day().does(new WithdrawClub(E, outlook.treatment().orElseThrow(), "bus", "R"));
            assertThat(outlook.table()).contains(Standings.of(PoolTables.input(day.event(), "A")));
        }
    }

    @Test
    void what_cannot_be_chosen_says_why() {
        Days day =
                day().opened("A3").cards("A3", "11-1", "11-1", "11-1", "11-1").does(new SignTable("A", "R"));
        assertThat(WithdrawalPreview.of(day.event(), day.given(), E).treatments())
                .extracting(outlook -> outlook.refused().stream()
                        .map(refusal -> refusal.code())
                        .toList())
                .containsExactly(List.of("desk.annul-after-signing"), List.of(), List.of());
    }

    @Test
    void a_tie_of_the_knockout_that_would_go_without_play_is_told() {
        Days day = Days.aDay()
                .with(Setting.RUBBERS, "1")
                .clubs("N", "S")
                .knockoutTie("F", 1, "N", "S")
                .by(Days.referee());
        assertThat(WithdrawalPreview.of(day.event(), day.given(), ClubId.of("N"))
                        .treatments())
                .allSatisfy(outlook -> assertThat(outlook.walkovers()).containsEntry(TieId.of("F"), ClubId.of("S")));
        assertThat(day.tie("F").card(RubberNo.of(1)).entries()).isEmpty();
    }
}
