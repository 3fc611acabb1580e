package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.DrawFact;
import tiewright.event.ExchangeId;
import tiewright.event.OfficialFact;
import tiewright.event.Recorded;
import tiewright.event.TieId;
import tiewright.sheet.SealSheet;

/** A tie that begins again is sealed and opened again, as often as that happens. */
class OpeningAgainTest {
    private static final TieId TIE = TieId.of("A1");

    private static void seal(Served served) {
        for (String club : List.of("N", "S")) {
            served.ask(
                    Days.captain(club),
                    new SealSheet(ExchangeId.sheets(TIE), ClubId.of(club), Days.straight(club, 4), "ab".repeat(32)));
        }
    }

    private static boolean isOpened(Served served) {
        return served.ledger.event().tie(TIE).orElseThrow().isOpened();
    }

    @Test
    void opens_by_itself_in_each_run_of_a_replayed_tie() {
        try (Served served = Served.empty(Days.moment("09:00"))
                .given(Days.oneTie().facts().stream().map(Recorded::fact).toList(), List.of())) {
            seal(served);
            served.at(Days.moment("09:45"));
            assertThat(isOpened(served)).isTrue();
            for (int run = 1; run <= 2; run++) {
                LocalTime start = LocalTime.of(10 + run, 0);
                served.given(
                        List.of(
                                new OfficialFact.RulingGiven(run, "A1", "Play again.", "A wrong ball.", "R. Referee"),
                                new DrawFact.TieRestarted(TIE, Optional.empty(), Optional.empty(), run),
                                new DrawFact.TieTimed(TIE, Optional.of(start), Optional.of("1"))),
                        List.of());
                assertThat(isOpened(served)).isFalse();
                seal(served);
                served.at(Days.moment(start.minusMinutes(15).toString()));
                assertThat(isOpened(served)).as("run " + (run + 1)).isTrue();
            }
        }
    }
}
