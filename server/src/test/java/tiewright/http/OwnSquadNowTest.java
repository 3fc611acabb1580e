package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tiewright.event.Days;

/** What a captain's first page says of the own squad counts the own players alone, whoever else has played. */
class OwnSquadNowTest {
    @Test
    void counts_nobody_of_another_club() {
        Days day = Days.aDay()
                .clubs("N", "S", "E", "W")
                .courts("1", "2")
                .poolTie("A1", "A", 1, "N", "S")
                .poolTie("A2", "A", 1, "E", "W")
                .poolTie("A3", "A", 2, "N", "E")
                .timed("A1", "10:00", "1")
                .timed("A2", "10:00", "2")
                .timed("A3", "10:50", "1")
                .opened("A1")
                .opened("A2")
                .at("10:40")
                .cards("A1", "11-5", "11-6", "11-4")
                .cards("A2", "11-5", "11-6", "11-4", "11-3");
        try (Served served = Served.of(day, Days.moment("10:45"))) {
            assertThat(served.captain("N").get("/captain").text()).contains("6 just off court, 2 rested");
        }
    }
}
