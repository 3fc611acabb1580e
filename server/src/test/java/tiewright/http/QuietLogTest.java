package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.slf4j.LoggerFactory;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.ExchangeId;
import tiewright.event.TieId;
import tiewright.sheet.SealSheet;

/** What is tried again twice a second is said once. */
class QuietLogTest {
    private static Served sealed() {
        Served served = Served.of(Days.oneTie(), Days.moment("09:00"));
        for (String club : new String[] {"N", "S"}) {
            served.ask(
                    Days.captain(club),
                    new SealSheet(
                            ExchangeId.sheets(TieId.of("A1")),
                            ClubId.of(club),
                            Days.straight(club, 4),
                            "ab".repeat(32)));
        }
        return served;
    }

    /** What the log says of many looks after the deadline. */
    private static List<ILoggingEvent> looked(Served served) {
        Logger log = (Logger) LoggerFactory.getLogger("tiewright");
        ListAppender<ILoggingEvent> lines = new ListAppender<>();
        lines.start();
        log.addAppender(lines);
        try {
            for (int i = 0; i < 40; i++) {
                served.at(Days.moment("10:00").plusSeconds(i));
            }
        } finally {
            log.detachAppender(lines);
        }
        return lines.list;
    }

    /** As on a disk that is full: each look fails. */
    @Test
    void a_ledger_that_takes_nothing_is_told_once_not_at_every_look() {
        try (Served served = sealed()) {
            served.ledger.close();
            assertThat(looked(served))
                    .extracting(ILoggingEvent::getFormattedMessage)
                    .filteredOn(line -> line.contains("timer"))
                    .hasSize(1);
        }
    }

    @Test
    void sheets_that_nobody_can_read_any_more_are_told_once_not_at_every_look() throws IOException {
        try (Served served = sealed()) {
            served.service.close();
            served.ledger.close();
            Files.write(served.folder.resolve("seal.key"), new byte[32]);
            served.restart();
            assertThat(looked(served))
                    .extracting(ILoggingEvent::getFormattedMessage)
                    .filteredOn(line -> line.contains("A1"))
                    .hasSize(1)
                    .first()
                    .asString()
                    .contains("were due and could not be opened");
        }
    }
}
