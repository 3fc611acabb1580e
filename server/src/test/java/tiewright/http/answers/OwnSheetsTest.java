package tiewright.http.answers;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Event;
import tiewright.event.ExchangeId;
import tiewright.event.TieId;
import tiewright.event.Viewer;
import tiewright.http.Served;
import tiewright.ledger.Ledger;

/** A page is made of one moment; what opened since belongs to the next. */
class OwnSheetsTest {
    private static final ExchangeId SHEETS = ExchangeId.sheets(TieId.of("A1"));

    private static OwnSheets asked(Event event, Ledger ledger) {
        return new OwnSheets(
                Asker.of(event, Viewer.captain(ClubId.of("N")), Days.moment("09:40"), ledger, new Worked()));
    }

    @Test
    void says_when_both_sheets_opened_after_the_moment_that_a_page_is_made_of() {
        try (Served served = Served.of(Days.oneTie().opened("A1"), Days.moment("09:40"))) {
            Event before = Days.oneTie().event();
            Event now = served.ledger.event();
            assertThat(now.exchange(SHEETS).isOpened()).isTrue();
            assertThat(asked(before, served.ledger).openedMeanwhile(SHEETS)).isTrue();
            assertThat(asked(now, served.ledger).openedMeanwhile(SHEETS))
                    .as("the page says that they are open")
                    .isFalse();
        }
        try (Served served = Served.of(Days.oneTie(), Days.moment("09:40"))) {
            assertThat(asked(served.ledger.event(), served.ledger).openedMeanwhile(SHEETS))
                    .as("nothing is open")
                    .isFalse();
        }
    }
}
