package tiewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static tiewright.sheet.Asked.DECIDER;
import static tiewright.sheet.Asked.N;
import static tiewright.sheet.Asked.S;
import static tiewright.sheet.Asked.SHEETS;

import org.junit.jupiter.api.Test;
import tiewright.event.Days;
import tiewright.event.ExchangeFact;
import tiewright.event.PrivateNote;

/** Sheets of a tie that will not be played as it stands go back unseen. */
class GivenBackTest {

    @Test
    void every_sealed_sheet_goes_back_to_its_own_club_with_the_reason() {
        GivenBack back = of(Asked.bothSealed());
        assertThat(back.facts())
                .containsExactly(
                        new ExchangeFact.SheetReturned(SHEETS, N, "Moved"),
                        new ExchangeFact.SheetReturned(SHEETS, S, "Moved"));
        assertThat(back.notes())
                .containsExactly(new PrivateNote.SheetDropped(SHEETS, N), new PrivateNote.SheetDropped(SHEETS, S));
    }

    @Test
    void who_has_sealed_nothing_gets_nothing_back() {
        assertThat(of(Days.oneTie().by(Days.captain("S")).does(Asked.seal("S"))).facts())
                .containsExactly(new ExchangeFact.SheetReturned(SHEETS, S, "Moved"));
        assertThat(of(Days.oneTie()).facts()).isEmpty();
    }

    @Test
    void opened_sheets_stay_and_a_sealed_pair_for_the_decider_goes_back() {
        Days day = Asked.level().by(Days.captain("N")).does(Asked.sealDecider("N", "1", "2"));
        assertThat(of(day).facts()).containsExactly(new ExchangeFact.SheetReturned(DECIDER, N, "Moved"));
        assertThat(of(day).notes()).containsExactly(new PrivateNote.SheetDropped(DECIDER, N));
    }

    private static GivenBack of(Days day) {
        return GivenBack.of(day.event(), day.tie("A1"), "Moved");
    }
}
