package tiewright.http.visit;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import tiewright.http.pieces.Refusal;

/**
 * What a form was sent with and why it was not done, so that the page can be shown again with everything that was typed.
 *
 * @param errors the sentences beside a field, by field
 */
public record Tried(Form typed, Refusal refusal, Map<String, String> errors) {
    /** Nothing has been tried yet. */
    public static final Tried NOTHING = new Tried(Form.empty(), Refusal.NONE, Map.of());

    public static Tried refused(Form typed, String title, List<Refusal.Problem> problems) {
        Map<String, String> errors = problems.stream()
                .filter(problem -> !problem.fieldId().isEmpty())
                .collect(Collectors.toMap(
                        Refusal.Problem::fieldId, Refusal.Problem::sentence, (one, other) -> one + " " + other));
        return new Tried(typed, new Refusal(title, problems), errors);
    }

    /** What was typed is fine so far; the page asks something more. */
    public static Tried again(Form typed) {
        return new Tried(typed, Refusal.NONE, Map.of());
    }

    @SuppressWarnings("ReferenceEquality") // an empty form that was sent is not nothing
    public boolean isNothing() {
        return this == NOTHING;
    }

    /** What was typed into the field, or what stands there at first. */
    public String value(String field, String otherwise) {
        return isNothing() ? otherwise : typed.text(field);
    }

    public boolean isChosen(String field, String value, boolean otherwise) {
        return isNothing() ? otherwise : typed.texts(field).contains(value);
    }

    public String error(String field) {
        return errors.getOrDefault(field, "");
    }
}
