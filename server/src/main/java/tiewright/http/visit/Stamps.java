package tiewright.http.visit;

import io.javalin.http.Context;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import tiewright.event.ClubId;
import tiewright.event.Link;
import tiewright.http.pieces.Forms;
import tiewright.ledger.PrivateRequest;
import tiewright.ledger.Request;

/** What a form carries beside what was typed: its key, what its page was made from, and when the device says it was sent. */
final class Stamps {
    private static final String KEY = "key";
    private static final String SEEN = "seen";
    private static final String DEVICE_TIME = "device-time";
    private static final Set<String> ADDED = Set.of(KEY, SEEN, DEVICE_TIME);

    private final Visit visit;
    private final Form form;

    Stamps(Visit visit, Form form) {
        this.visit = visit;
        this.form = form;
    }

    /** As it stands in the forms of a page. */
    static String seal(Tokens tokens, Seen seen) {
        return tokens.close(SEEN, seen.text());
    }

    /** Whether a phone kept this form and sends it by itself (see {@code outbox.js}): told that it arrived and where that shows, not led there. */
    static boolean areOfAnOutbox(Context ctx) {
        return "outbox".equals(ctx.header("Sent-From"));
    }

    /** Whether it was kept for another event at this address, or before a copy was restored: here it may mean something else. */
    boolean areOfAnotherEvent() {
        return areOfAnOutbox(visit.ctx()) && seen().isEmpty();
    }

    /** What the page was made from; empty where the form does not say, or says what we did not. */
    Optional<Seen> seen() {
        return visit.hall().tokens().open(SEEN, form.text(SEEN)).map(Seen::parse);
    }

    Request request() {
        return new Request(
                key(),
                visit.visitor().actor(),
                deviceTime(),
                seen().map(Seen::seq).orElse(OptionalLong.empty()));
    }

    PrivateRequest request(ClubId club) {
        return new PrivateRequest(
                club, key(), visit.visitor().actor(), seen().map(Seen::noted).orElse(OptionalLong.empty()));
    }

    /**
     * The form's key, good for this person, address and content alone: a form that was changed after going back is not the
     * one that was answered, and no chosen key can pass for the key of somebody else or of the service itself.
     */
    private String key() {
        String sent = form.text(KEY).isEmpty() ? new Forms("").key() : form.text(KEY);
        String person = visit.visitor().link().map(Link::name).orElse("");
        String whole = String.join("\n", sent, person, visit.ctx().path(), form.content(ADDED));
        return "form/" + Tokens.hash(whole).substring(0, 40);
    }

    private Optional<Instant> deviceTime() {
        try {
            return form.maybe(DEVICE_TIME).map(Instant::parse);
        } catch (DateTimeParseException wrongClock) {
            return Optional.empty();
        }
    }
}
