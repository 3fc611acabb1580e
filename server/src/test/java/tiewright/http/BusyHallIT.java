package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.desk.PostNotice;
import tiewright.event.Days;
import tiewright.event.Recorded;

/** An open page in a hall where something changes all the time. */
class BusyHallIT {
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    @Test
    void a_page_keeps_up_though_changes_come_faster_than_it_waits() throws IOException {
        Days day = Days.oneTie();
        try (Chromium browser = Chromium.start();
                Served served = Served.empty(Days.moment("09:00"))
                        .given(day.facts().stream().map(Recorded::fact).toList(), List.of())) {
            browser.at(served.service.url());
            browser.go("/");
            long end = System.nanoTime() + PATIENCE.toNanos();
            boolean shown = false;
            for (int i = 1; !shown && System.nanoTime() < end; i++) {
                served.ask(
                        Days.organiser(),
                        new PostNotice(
                                "Lunch is served, call " + i,
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                "for all to know"));
                shown = browser.text().contains("Lunch is served");
            }
            assertThat(shown).as("the page shows a notice while more come in").isTrue();
            assertThat(browser.complaints()).isEmpty();
        }
    }
}
