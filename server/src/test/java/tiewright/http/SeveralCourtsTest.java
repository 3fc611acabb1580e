package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tiewright.desk.CallToCourt;
import tiewright.event.Days;
import tiewright.event.RubberNo;
import tiewright.event.TieId;

/** A tie that is on several courts at once, as the hall reads it. */
class SeveralCourtsTest {
    private static Days day() {
        return Days.oneTie()
                .opened("A1")
                .cards("A1", "11-4", "4-11")
                .at("10:50")
                .does(new CallToCourt(TieId.of("A1"), RubberNo.of(3), "1"));
    }

    private static String now(Days day) {
        try (Served served = Served.of(day, Days.moment("11:02"))) {
            return served.stranger().get("/").text();
        }
    }

    @Test
    void every_court_that_it_is_on_is_named_with_its_rubber() {
        String now = now(day().does(new CallToCourt(TieId.of("A1"), RubberNo.of(4), "2")));
        assertThat(now).containsPattern("Court 1 .*rubber 3:").containsPattern("Court 2 .*rubber 4:");
        assertThat(now).doesNotContain("2 is free").doesNotContainPattern("Courts? [0-9, ]*\\b[12]\\b[^.]* free");
    }

    @Test
    void a_court_without_a_rubber_is_free() {
        assertThat(now(day())).containsPattern("Courts? [^.]*\\b2\\b[^.]* free");
    }
}
