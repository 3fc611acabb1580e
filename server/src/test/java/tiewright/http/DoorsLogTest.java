package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
