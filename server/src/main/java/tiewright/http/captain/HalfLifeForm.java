package tiewright.http.captain;

import java.util.Optional;
import java.util.OptionalInt;
import tiewright.event.Refusal;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.TextField;
import tiewright.http.views.ActionForm;
import tiewright.http.visit.Form;
import tiewright.http.visit.Tried;
import tiewright.rating.Ageing;

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
        Optional<String> typed = Optional.of(form.text(FIELD).strip()).filter(text -> !text.isEmpty());
        if (typed.isEmpty()) {
            return OptionalInt.empty();
        }
        if (typed.get().matches("[0-9]{1,6}") && Ageing.isHalfLife(Integer.parseInt(typed.get()))) {
            return OptionalInt.of(Integer.parseInt(typed.get()));
        }
        form.fault(Refusal.of("form.half-life").with("most", Ageing.MOST_DAYS).at(FIELD));
        return OptionalInt.empty();
    }
}
