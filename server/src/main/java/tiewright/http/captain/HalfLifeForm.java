package tiewright.http.captain;

import java.util.OptionalInt;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.TextField;
import tiewright.http.views.ActionForm;
import tiewright.http.visit.Form;
import tiewright.http.visit.Tried;

/** How much older games count in the own club's ratings: asked on the page of notes. */
final class HalfLifeForm {
    private static final String FIELD = "half-life";

    private HalfLifeForm() {}

    static ActionForm of(OptionalInt chosen, Tried tried) {
        String now = chosen.isPresent() ? Integer.toString(chosen.getAsInt()) : "";
        return ActionForm.of(FIELD + "-form", "/captain/squad/half-life", "Older games", Button.other("Keep this"))
                .saying(
                        chosen.isPresent()
                                ? "A game that was " + now
                                        + " days old on the day of this event counts half, one of twice that age a quarter."
                                : "Every game counts the same, however old it is.")
                .asking(TextField.of(
                                FIELD,
                                TextField.Kind.NUMBER,
                                "Days after which a game counts half; empty: every game counts the same",
                                tried.value(FIELD, now))
                        .withError(tried.error(FIELD)));
    }

    /** What was typed; nothing where every game shall count the same, and after a fault. */
    static OptionalInt days(Form form) {
        return form.number(FIELD);
    }
}
