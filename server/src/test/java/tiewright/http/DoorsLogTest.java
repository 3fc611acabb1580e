package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.slf4j.LoggerFactory;
import tiewright.event.Days;
import tiewright.event.Role;

/** Who came in, who was not let in and which door stayed closed can be read afterwards, without what was typed. */
class DoorsLogTest {
    private static List<String> heard(Runnable what) {
        Logger log = (Logger) LoggerFactory.getLogger("tiewright");
        ListAppender<ILoggingEvent> lines = new ListAppender<>();
        lines.start();
        log.addAppender(lines);
        try {
            what.run();
            return lines.list.stream().map(ILoggingEvent::getFormattedMessage).toList();
        } finally {
            log.detachAppender(lines);
        }
    }

    @Test
    void coming_in_is_written_down_by_link_and_address_and_never_by_its_secret() {
        try (Served served = Served.of(Days.oneTie(), Days.moment("09:00"))) {
            String link = served.link(Role.DESK, Optional.empty(), Optional.empty(), "desk 2");
            String path = link.substring(served.service.url().length());
            Guest guest = served.stranger();
            assertThat(heard(() -> guest.get(path))).containsExactly("Link T1 (desk) was opened from 127.0.0.1.");
            assertThat(heard(() -> served.stranger().get("/enter/guessed")))
                    .containsExactly("A personal link that does not hold was tried from 127.0.0.1.");
        }
    }

    @Test
    void who_knocks_on_and_on_fills_no_disk_and_silences_nobody_else() {
        AtomicLong now = new AtomicLong();
        DoorLog doors = new DoorLog(now::get);
        assertThat(heard(() -> knock(doors, "192.0.2.1", DoorLog.OF_ONE)))
                .as("a person and a hall that joins are written down one by one")
                .hasSize(DoorLog.OF_ONE);
        assertThat(heard(() -> knock(doors, "192.0.2.1", 10_000)))
                .containsExactly(
                        "So many came to doors in this minute that the rest of them are counted and not written down.");
        assertThat(heard(() -> knock(doors, "192.0.2.2", 1)))
                .containsExactly("GET /desk stayed closed for a stranger from 192.0.2.2.");
        now.addAndGet(TimeUnit.SECONDS.toNanos(60));
        assertThat(heard(() -> knock(doors, "192.0.2.1", 1)))
                .containsExactly(
                        "10000 more came to doors and were not written down, lately from 192.0.2.1.",
                        "GET /desk stayed closed for a stranger from 192.0.2.1.");
        now.addAndGet(TimeUnit.SECONDS.toNanos(60));
        assertThat(heard(() -> knock(doors, "192.0.2.1", 1))).as("counted once").hasSize(1);
    }

    @Test
    void many_addresses_together_fill_no_disk_either() {
        AtomicLong now = new AtomicLong();
        DoorLog doors = new DoorLog(now::get);
        assertThat(heard(() -> IntStream.range(0, 5_000).forEach(each -> knock(doors, "2001:db8::" + each, 1))))
                .hasSize(DoorLog.OF_ALL + 1);
        now.addAndGet(TimeUnit.SECONDS.toNanos(60));
        assertThat(heard(() -> doors.unknownLink("192.0.2.9")))
                .containsExactly(
                        (5_000 - DoorLog.OF_ALL)
                                + " more came to doors and were not written down, lately from 2001:db8::4999.",
                        "A personal link that does not hold was tried from 192.0.2.9.");
    }

    @Test
    void a_visitor_who_knocks_through_pages_is_counted_too() {
        try (Served served = Served.of(Days.oneTie(), Days.moment("09:00"))) {
            Guest stranger = served.stranger();
            assertThat(heard(() -> {
                        for (int i = 0; i < DoorLog.OF_ONE; i++) {
                            stranger.get("/enter/guessed");
                            stranger.get("/desk");
                            stranger.postFrom("https://elsewhere.example", "/leave", Map.of());
                        }
                    }))
                    .hasSizeBetween(DoorLog.OF_ONE + 1, 2 * DoorLog.OF_ONE + 2);
        }
    }

    private static void knock(DoorLog doors, String from, int times) {
        for (int i = 0; i < times; i++) {
            doors.stayedClosed("GET /desk", "a stranger", from);
        }
    }

    @Test
    void a_door_that_stayed_closed_is_written_down_by_what_it_is() {
        try (Served served = Served.of(Days.oneTie(), Days.moment("09:00"))) {
            Guest captain = served.captain("N");
            assertThat(heard(() -> captain.get("/desk/tie/Quillonby")))
                    .containsExactly("GET /desk/tie/{tie} stayed closed for T1 from 127.0.0.1.");
            assertThat(heard(() -> captain.postFrom("https://elsewhere.example", "/captain/sheet/Quillonby", Map.of())))
                    .containsExactly(
                            "A form that does not come from a page of this service was refused: /captain/sheet/{tie}");
        }
    }
}
