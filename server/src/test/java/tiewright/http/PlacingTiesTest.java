package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.desk.RecordCard;
import tiewright.event.Days;
import tiewright.event.How;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.TieId;

/** Ties for the other places, on the pages that show the bracket and a tie. */
class PlacingTiesTest {
    @Test
    void they_stand_under_the_bracket_and_fill_as_the_knockout_does() {
        Days day = Days.aDay()
                .with(Setting.RUBBERS, "1")
                .clubs("N", "S", "E", "W")
                .knockoutTie("SF1", 1, "N", "S")
                .knockoutTie("SF2", 1, "E", "W")
                .knockoutTie("F", 2, "winner-SF1", "winner-SF2")
                .placingTie("P3", 2, "loser-SF1", "loser-SF2");
        for (String tie : new String[] {"SF1", "SF2"}) {
            day.opened(tie).does(new RecordCard(TieId.of(tie), RubberNo.of(1), Days.games("11-5"), How.PLAYED));
        }
        try (Served served = Served.of(day, Days.moment("11:00"))) {
            String bracket = served.stranger().get("/bracket").text();
            assertThat(bracket).contains("For the other places", "Club S", "Club W");
            assertThat(served.as(Role.DESK).get("/tie/P3").text()).contains("Club S", "Club W");
        }
    }
}
