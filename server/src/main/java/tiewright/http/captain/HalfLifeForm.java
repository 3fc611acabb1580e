package tiewright.http.captain;

import java.util.OptionalInt;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.TextField;
import tiewright.http.views.ActionForm;
import tiewright.http.visit.Form;
import tiewright.http.visit.Tried;
import tiewright.wording.Words;

/** How much older games count in the own club's ratings: asked on the page of the squad. */
final class HalfLifeForm {
    static final String PATH = "/captain/squad/half-life";

    private static final String FIELD = "half-life";

    private HalfLifeForm() {}

    static String said(Words words, OptionalInt chosen) {
        return chosen.isPresent()
                ? words.say("page-captain.games-count-half", "days", chosen.getAsInt())
                : words.say("page-captain.games-count-alike");
    }

    static ActionForm of(Words words, OptionalInt chosen, Tried tried) {
        String now = chosen.isPresent() ? Integer.toString(chosen.getAsInt()) : "";
        return ActionForm.of(FIELD + "-form", PATH, "", Button.other(words.say("page-captain.keep-days")))
                .asking(TextField.of(
                                FIELD,
                                TextField.Kind.NUMBER,
                                words.say("page-captain.days-to-half"),
                                tried.value(FIELD, now))
                        .withError(tried.error(FIELD)));
    }

    /** What was typed; nothing where every game shall count the same, and after a fault. */
    static OptionalInt days(Form form) {
        return form.number(FIELD);
    }
}
