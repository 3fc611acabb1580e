package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.ExchangeId;
import tiewright.event.Recorded;
import tiewright.event.Role;
import tiewright.event.TieId;
import tiewright.sheet.SealSheet;

/** A captain tells the own club who plays before the opening; nobody else hears it. */
class OwnClubTest {
    @Test
    void only_personal_links_of_the_own_club_see_who_plays() {
        Days day = Days.oneTie();
        try (Served served = Served.empty(Days.moment("09:00"))
                .given(day.facts().stream().map(Recorded::fact).toList(), List.of())) {
            Guest player = served.player("N", "N3");
            served.ask(
                    Days.captain("N"),
                    new SealSheet(
                            ExchangeId.sheets(TieId.of("A1")), ClubId.of("N"), Days.straight("N", 4), "ab".repeat(32)));
            assertThat(player.get("/player/N3").text())
                    .doesNotContain("Your captain says")
                    .contains("Court 1", "10:00");
            served.captain("N").send("/captain/sheet/A1", "/captain/sheet/A1/tell", Map.of());
            assertThat(player.get("/player/N3").text()).contains("Your captain says Rubber 2 with N4");
            for (Guest other : List.of(
                    served.stranger(),
                    served.player("S", "S1"),
                    served.captain("S"),
                    served.as(Role.DESK),
                    served.as(Role.ORGANISER))) {
                assertThat(other.get("/player/N3").text()).doesNotContain("Your captain says");
            }
        }
    }
}
