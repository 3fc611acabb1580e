package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.event.Days;
import tiewright.event.DrawFact;
import tiewright.event.How;
import tiewright.event.PlayFact;
import tiewright.event.RubberNo;
import tiewright.event.TieId;

/** The board for the wall turns both sheets over together, and puts them away once the tie is played. */
class BoardTest {
    @Test
    void a_tie_on_two_courts_names_both_before_and_after_its_sheets_are_turned_over() {
        Days wide = Days.oneTie();
        for (int rubber = 1; rubber <= 2; rubber++) {
            wide.fact(new DrawFact.RubberTimed(
                    TieId.of("A1"), RubberNo.of(rubber), LocalTime.of(10, 0), "" + rubber, Optional.empty()));
        }
        try (Served served = Served.of(wide, Days.moment("09:00"))) {
            assertThat(served.stranger().get("/board").text()).contains("Court 1, 2");
        }
        try (Served served = Served.of(wide.opened("A1"), Days.moment("09:50"))) {
            assertThat(served.stranger().get("/board").text()).contains("Courts 1, 2");
        }
    }

    @Test
    void both_sheets_stand_on_the_board_from_their_opening_to_the_first_card() {
        try (Served served = Served.of(Days.oneTie(), Days.moment("09:00"))) {
            assertThat(served.stranger().get("/board").text()).doesNotContain("turned over together");
        }
        Days day = Days.oneTie().opened("A1");
        try (Served served = Served.of(day, Days.moment("10:00"))) {
            assertThat(served.stranger().get("/board").text())
                    .contains("Both sheets, turned over together", "Rubber 1", "Player N1", "Player S1");
            served.given(
                    List.of(new PlayFact.CardEntered(TieId.of("A1"), RubberNo.of(1), Days.games("11-5"), How.PLAYED)),
                    List.of());
            assertThat(served.stranger().get("/board").text()).doesNotContain("turned over together");
        }
    }
}
