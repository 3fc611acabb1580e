package tiewright.http.visit;

import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import tiewright.event.Link;
import tiewright.event.Refusal;
import tiewright.letterbox.Letter;

/**
 * A form that a phone closed for this service, so that nobody on the way reads what was typed. It was closed for one address, one key of
 * a form and one link: sent to another tie, by another link or under another key it stays closed, and sent again as it was it counts once.
 */
public final class ClosedForm {
    private static final String FIELD = "closed";
    private static final String LETTER = "letter";

    private ClosedForm() {}

    /** What ties a closed form to the link by which its page was read; it says nothing to anybody. */
    public static String bound(Visit visit) {
        return Tokens.hash("closed by " + visit.visitor().link().map(Link::name).orElse(""))
                .substring(0, 32);
    }

    /** The form of this visit, opened if it came closed; with a fault, and nothing else, if it cannot be opened. */
    public static Form of(Visit visit) {
        Form sent = visit.form();
        if (!sent.has(FIELD)) {
            return sent;
        }
        String about = String.join("\n", visit.ctx().path(), sent.text("key"), bound(visit));
        Optional<Letter> letter = visit.hall().trust().letterbox().open(sent.text(FIELD), about);
        if (letter.isEmpty()) {
            Form unread = sent.with(Map.of(FIELD, ""));
            unread.fault(Refusal.of("form.closed-for-another"));
            return unread;
        }
        visit.ctx().attribute(LETTER, letter.get());
        Map<String, String> opened = new TreeMap<>(letter.get().fields());
        opened.put(FIELD, "");
        return sent.with(opened);
    }

    /** Whether it came closed and could be opened: the answer is closed too. */
    public static boolean isOpened(Visit visit) {
        return letter(visit.ctx()).isPresent();
    }

    /** Says it in the open, or, to a form that came closed, so that its own page alone can read it. */
    static void answer(Context ctx, String html) {
        letter(ctx)
                .ifPresentOrElse(
                        letter -> ctx.contentType("application/octet-stream").result(letter.answer(html)),
                        () -> ctx.html(html));
    }

    private static Optional<Letter> letter(Context ctx) {
        return Optional.ofNullable(ctx.attribute(LETTER));
    }
}
