package tiewright.http.visit;

import java.util.List;
import java.util.Optional;
import tiewright.event.Event;
import tiewright.event.OrderOfPlay;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.Moved;
import tiewright.wording.Words;

/** Published times that changed, as everybody reads them: the old one struck, the new one, the notice and its reason. */
public final class Changes {
    private final VisibleEvent event;
    private final Words words;

    public Changes(VisibleEvent event) {
        this.event = event;
        this.words = Words.of(event);
    }

    /** All that a notice changed. */
    public List<Moved> of(int notice) {
        return event.order().under(notice).stream()
                .map(change -> new Moved(title(change), times(change.before(), ""), now(change), ""))
                .toList();
    }

    /** The last change of a tie that has not begun, if a time was published before it. */
    public Optional<Moved> last(Tie tie) {
        List<OrderOfPlay.Change> all = event.order().of(tie.id());
        return tie.isInPlay() || all.isEmpty()
                ? Optional.empty()
                : Optional.of(all.get(all.size() - 1))
                        .filter(change -> !change.before().isNone())
                        .map(change -> new Moved("", times(change.before(), ""), now(change), why(change)));
    }

    /** Everything that was ever published for a tie and changed, oldest first. */
    public List<Moved> history(Tie tie) {
        return event.order().of(tie.id()).stream()
                .filter(change -> !change.before().isNone())
                .map(change -> new Moved(
                        HallClock.said(event.clock(change.at())) + ":",
                        times(change.before(), ""),
                        now(change),
                        why(change)))
                .toList();
    }

    /** Who was to meet, as it stood then. */
    public String title(OrderOfPlay.Change change) {
        return words.saying(change.between());
    }

    private String now(OrderOfPlay.Change change) {
        return change.calledOff()
                ? words.say("page-visit.not-played")
                : times(change.after(), words.say("page-visit.no-time-today"));
    }

    private String why(OrderOfPlay.Change change) {
        return change.notice().isEmpty() ? "" : notice(change.notice().getAsInt());
    }

    private String notice(int number) {
        return event.notices().stream()
                .map(Event.Posted::notice)
                .filter(one -> one.number() == number && !one.reason().isEmpty())
                .findFirst()
                .map(one ->
                        words.say("page-visit.notice-because", "number", number, "reason", words.saying(one.reason())))
                .orElseGet(() -> words.say("page-visit.notice-alone", "number", number));
    }

    private String times(OrderOfPlay.Times times, String none) {
        return times(words, times, none);
    }

    public static String times(Words words, OrderOfPlay.Times times, String none) {
        if (times.isNone()) {
            return none;
        }
        String start = times.start().map(HallClock::said).orElseGet(() -> words.say("page-visit.no-time-yet-within"));
        return times.courts().isEmpty()
                ? start
                : words.say(
                        "page-visit.time-and-courts",
                        "start",
                        start,
                        "count",
                        times.courts().size(),
                        "courts",
                        times.courts());
    }
}
