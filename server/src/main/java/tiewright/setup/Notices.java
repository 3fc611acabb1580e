package tiewright.setup;

import java.util.Optional;
import tiewright.event.Event;
import tiewright.event.OfficialFact;

/** Numbers notices and rulings: one more than the last. */
final class Notices {
    private Notices() {}

    static OfficialFact.NoticePosted changed(Event event, String text, String before, String after, String reason) {
        return new OfficialFact.NoticePosted(
                nextNotice(event), text, Optional.empty(), said(before), said(after), reason);
    }

    static OfficialFact.NoticePosted of(Event event, String text, String reason) {
        return changed(event, text, "", "", reason);
    }

    private static Optional<String> said(String text) {
        return Optional.of(text).filter(t -> !t.isEmpty());
    }

    static int nextNotice(Event event) {
        return event.notices().stream()
                        .mapToInt(posted -> posted.notice().number())
                        .max()
                        .orElse(0)
                + 1;
    }

    static int nextRuling(Event event) {
        return event.rulings().stream()
                        .mapToInt(OfficialFact.RulingGiven::number)
                        .max()
                        .orElse(0)
                + 1;
    }
}
