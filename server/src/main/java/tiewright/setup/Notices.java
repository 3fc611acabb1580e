package tiewright.setup;

import java.util.Optional;
import tiewright.event.Event;
import tiewright.event.OfficialFact;
import tiewright.event.Saying;

/** Numbers notices and rulings: one more than the last. */
final class Notices {
    private static final Saying NO_REASON = Saying.typed("");

    private Notices() {}

    /** Something stood otherwise before; no reason is given. */
    static OfficialFact.NoticeStated changed(Event event, Saying text, Saying before, Saying after) {
        return new OfficialFact.NoticeStated(
                nextNotice(event), text, Optional.empty(), Optional.of(before), Optional.of(after), NO_REASON);
    }

    /** Something is new. */
    static OfficialFact.NoticeStated added(Event event, Saying text, Saying after) {
        return new OfficialFact.NoticeStated(
                nextNotice(event), text, Optional.empty(), Optional.empty(), Optional.of(after), NO_REASON);
    }

    static OfficialFact.NoticeStated of(Event event, Saying text) {
        return because(event, text, NO_REASON);
    }

    static OfficialFact.NoticeStated because(Event event, Saying text, Saying reason) {
        return new OfficialFact.NoticeStated(
                nextNotice(event), text, Optional.empty(), Optional.empty(), Optional.empty(), reason);
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
                        .mapToInt(OfficialFact.RulingStated::number)
                        .max()
                        .orElse(0)
                + 1;
    }
}
