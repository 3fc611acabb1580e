package tiewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.event.Card;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.ExchangeId;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.ledger.Ledger;
import tiewright.sheet.Receipt;

/** The invented day is alive when it is first looked at. */
class DemoDayTest {
    @Test
    void courts_are_busy_a_tie_is_level_two_cards_differ_and_sheets_are_in(@TempDir Path folder) {
        DemoClock clock = DemoDay.clock();
        try (Ledger ledger = Ledger.open(folder.resolve("day"), clock)) {
            DemoPhone phone = DemoDay.begin(ledger, clock).orElseThrow();
            Event event = ledger.event();
            Tie called = event.tie(TieId.of("B-2-1")).orElseThrow();
            Tie.Call call = called.calls().get(RubberNo.of(3));
            assertThat(Duration.between(call.at(), clock.instant()))
                    .isBetween(Duration.ofMinutes(7), Duration.ofMinutes(8));
            assertThat(called.card(RubberNo.of(2)).standing()).isEqualTo(Card.Standing.HELD);
            assertThat(event.tie(TieId.of("B-2-2")).orElseThrow().calls()).containsKey(RubberNo.of(4));
            assertThat(event.progress(event.tie(TieId.of("A-2-2")).orElseThrow())
                            .awaitsDecider())
                    .isTrue();
            assertThat(event.exchange(ExchangeId.sheets(TieId.of("A-3-1")))
                            .home()
                            .atDesk())
                    .isTrue();
            assertThat(event.exchange(ExchangeId.sheets(TieId.of("B-3-2")))
                            .home()
                            .isIn())
                    .isTrue();
            assertThat(event.exchange(ExchangeId.sheets(TieId.of("B-3-2")))
                            .home()
                            .atDesk())
                    .isFalse();
            assertThat(event.exchange(ExchangeId.sheets(TieId.of("B-3-2")))
                            .home()
                            .receipt())
                    .contains(Receipt.of(phone.secret(), phone.tie(), phone.club(), phone.sheet()));
            assertThat(phone.path()).startsWith("/captain/sheet/B-3-2#secret=" + phone.secret() + "&sheet-1-first=GR");
            assertThat(ledger.forecasts(ClubId.of("KS"))).hasSize(2);
            long facts = event.seq();
            DemoDay.begin(ledger, clock);
            assertThat(ledger.event().seq()).as("begun once").isEqualTo(facts);
        }
    }
}
