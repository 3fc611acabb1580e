package tiewright.http.visit;

import java.util.List;
import java.util.OptionalInt;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.SelectField;
import tiewright.http.pieces.TextField;

/** Which ruling allows what the conditions alone do not: chosen from those that were given, so that nobody types a number. */
public final class ByRuling {
    /** The field that says the number of the ruling. */
    public static final String FIELD = "by-ruling";

    private ByRuling() {}

    /** The reason, and once a ruling was given also which one it rests on, if it does. */
    public static FormField[] fields(Visit visit, Tried tried, TextField reason) {
        return all(visit, tried, reason).toArray(FormField[]::new);
    }

    public static List<FormField> all(Visit visit, Tried tried, TextField reason) {
        String chosen = tried.value(FIELD, "");
        List<Option> rulings = visit.event().rulings().stream()
                .map(ruling -> Option.of(
                        Integer.toString(ruling.number()),
                        visit.say(
                                "page-visit.ruling-about",
                                "number",
                                ruling.number(),
                                "about",
                                visit.words().saying(ruling.about())),
                        chosen.equals(Integer.toString(ruling.number()))))
                .toList();
        return rulings.isEmpty()
                ? List.of(reason)
                : List.of(
                        reason,
                        SelectField.of(
                                FIELD,
                                visit.say("page-visit.by-which-ruling"),
                                visit.say("page-visit.by-no-ruling"),
                                rulings));
    }

    /** The ruling that was chosen, if any. */
    public static OptionalInt chosen(Form form) {
        String number = form.text(FIELD);
        return number.matches("[0-9]{1,6}") ? OptionalInt.of(Integer.parseInt(number)) : OptionalInt.empty();
    }
}
