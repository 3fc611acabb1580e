package tiewright.http.views;

import java.util.List;
import java.util.stream.Stream;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.HiddenField;

/**
 * A small form that does one thing.
 *
 * @param id unique on the page
 * @param words what it does and what to mind, may be empty
 */
public record ActionForm(String id, String path, String title, String words, List<FormField> fields, Button button) {
    public ActionForm {
        fields = List.copyOf(fields);
    }

    public static ActionForm of(String id, String path, String title, Button button) {
        return new ActionForm(id, path, title, "", List.of(), button);
    }

    public ActionForm saying(String newWords) {
        return new ActionForm(id, path, title, newWords, fields, button);
    }

    /** Whether it asks nothing: a press and no more. */
    public boolean isOnePress() {
        return fields.stream().allMatch(HiddenField.class::isInstance);
    }

    /** Carries a value along without showing it. */
    public ActionForm sending(String name, String value) {
        return asking(new HiddenField(name, value));
    }

    public ActionForm asking(FormField... more) {
        return new ActionForm(
                id,
                path,
                title,
                words,
                Stream.concat(fields.stream(), Stream.of(more)).toList(),
                button);
    }
}
