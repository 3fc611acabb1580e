package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import tiewright.desk.PublishPlan;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.OrderOfPlay;
import tiewright.event.Recorded;
import tiewright.event.RubberNo;
import tiewright.event.TieId;

/** A club that was planned to umpire reads it on its page, with the time and the court. */
class UmpireDutyTest {
    private static PublishPlan umpiredByE() {
        TreeMap<RubberNo, OrderOfPlay.Place> places = new TreeMap<>();
        RubberNo.upTo(4)
                .forEach(rubber -> places.put(
                        rubber, new OrderOfPlay.Place(LocalTime.of(10, 0), "1", Optional.of(ClubId.of("E")))));
        return new PublishPlan(
                List.of(new PublishPlan.Placed(TieId.of("A1"), places)),
                PublishPlan.Cuts.NONE,
                Optional.empty(),
                20,
                "7",
                "first plan",
                "Ines");
    }

    @Test
    void the_duty_stands_on_the_pages_of_the_club_and_of_the_tie_and_on_the_chart() {
        Days day = Days.aDay().clubs("N", "S", "E").courts("1").poolTie("A1", "A", 1, "N", "S");
        try (Served served = Served.empty(Days.moment("08:00"))
                .given(day.facts().stream().map(Recorded::fact).toList(), List.of())) {
            assertThat(served.stranger().get("/club/E").text()).doesNotContain("On duty");
            served.ask(Days.organiser(), umpiredByE());
            assertThat(served.stranger().get("/club/E").text()).contains("On duty as umpires", "10:00");
            assertThat(served.stranger().get("/club/N").text()).doesNotContain("On duty");
            assertThat(served.stranger().get("/tie/A1").text()).contains("umpires: ");
            assertThat(served.stranger().get("/plan").text()).contains("umpires E");
        }
    }
}
