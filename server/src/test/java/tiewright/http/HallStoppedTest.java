package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import tiewright.event.Days;
import tiewright.event.Role;

/** Rain: play stands still until a time. Every page says so, calls ask, and it ends by a press or by its time. */
class HallStoppedTest {
    private static final String BREAKS = "/organiser/day-breaks";
    private static final String STOPPED = "Play is stopped until 10:08.";

    private final Served served = Served.of(Days.oneTie().opened("A1"), Days.moment("09:50"));

    private void stop() {
        Guest organiser = served.as(Role.ORGANISER);
        organiser.send(
                BREAKS + "?what=stop", BREAKS + "/look", Map.of("stopped", "09:45", "from", "10:05", "slot", ""));
        served.service.awaitPlans();
        Guest.Got way = organiser.get(BREAKS + "?way=0");
        assertThat(way.text())
                .as("twenty minutes ask for three of warm-up")
                .contains("With it every page says that play is stopped until 10:08.");
        Guest.Got done = organiser.post(
                BREAKS + "/publish",
                organiser.filled(BREAKS + "?way=0", BREAKS + "/publish", Map.of("reason", "Rain", "by", "Ines Roth")));
        assertThat(done.path()).as(done.text()).isEqualTo("/plan");
    }

    @Test
    void everybody_reads_it_calls_ask_and_it_ends_by_a_press() {
        try (served) {
            stop();
            for (Guest reader : new Guest[] {served.stranger(), served.captain("N"), served.player("N", "N1")}) {
                for (String page : new String[] {"/", "/board", "/tie/A1", "/notices"}) {
                    assertThat(reader.get(page).text()).as(page).contains(STOPPED);
                }
            }
            assertThat(served.captain("S").get("/captain").text()).contains(STOPPED);
            assertThat(served.player("S", "S1").get("/my").text()).contains(STOPPED);
            Guest desk = served.as(Role.DESK);
            assertThat(desk.get("/desk").text())
                    .contains(STOPPED, "Play is stopped until 10:08: call rubber 1 all the same", "Play goes on")
                    .doesNotContain("on time");
            assertThat(desk.get("/desk/tie/A1").text())
                    .contains("Play is stopped until 10:08: call to court all the same");
            assertThat(desk.get("/log").text()).contains("Play is stopped on every court until 10:08: Rain");
            desk.send("/desk", "/desk/goes-on", Map.of());
            assertThat(desk.get("/desk").text()).doesNotContain("stopped until").contains("Call rubber 1");
            assertThat(served.stranger().get("/board").text()).doesNotContain("stopped");
            assertThat(desk.get("/log").text()).contains("Play goes on.");
        }
    }

    @Test
    void it_ends_by_its_time_and_pressed_then_nothing_happens() {
        try (served) {
            stop();
            Guest desk = served.as(Role.DESK);
            Map<String, String> press = desk.filled("/desk", "/desk/goes-on", Map.of());
            served.at(Days.moment("10:08"));
            assertThat(served.stranger().get("/board").text()).doesNotContain("stopped");
            long facts = served.ledger.event().seq();
            assertThat(desk.post("/desk/goes-on", press).path()).isEqualTo("/desk");
            assertThat(served.ledger.event().seq()).isEqualTo(facts);
        }
    }
}
