package tiewright.saturday;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A day that failed is printed as a test; pasted, it does again what was done. */
class RetoldTest {
    @Test
    void what_was_sent_is_sent_again_at_its_time() {
        try (Retold day = new Retold(1L, 2)) {
            Log.Sent sent = day.sends(
                    "08:40:10",
                    "the organiser",
                    "/organiser/times",
                    "/organiser/times",
                    "tie-A-1-1-start=10:30",
                    "tie-A-1-1-court=1",
                    "reason=A wet \"court\".");
            assertThat(sent.isDone()).as(sent.toString()).isTrue();
            day.restarts();
            Log.Sent again = day.sends("08:41", "the desk", "/desk", "/desk/sit", "sitting=R. Ashgrove");
            assertThat(again.answer().text()).contains("R. Ashgrove");
        }
    }

    @Test
    void it_is_printed_as_it_is_pasted() {
        try (Retold day = new Retold(1L, 2)) {
            Log.Sent sent = day.sends("08:41", "the desk", "/desk", "/desk/sit", "sitting=The \"desk\"");
            assertThat(Retold.test(1, 2, List.of(Retold.line(sent, java.time.LocalTime.of(8, 41)))))
                    .startsWith("@Test\nvoid day_1_of_2_clubs() {\n    try (Retold day = new Retold(1L, 2)) {\n")
                    .contains(
                            "day.sends(\"08:41\", \"the desk\", \"/desk\", \"/desk/sit\", \"sitting=The \\\"desk\\\"\");");
        }
    }
}
