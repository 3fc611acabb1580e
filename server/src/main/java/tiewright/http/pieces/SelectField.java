package tiewright.http.pieces;

import java.util.List;

/**
 * A list to choose one from, folded away; refused options are listed disabled with their reason.
 *
 * @param id both the id and the name sent with the form
 * @param nothing words of the first, empty option; empty if one must always be chosen
 */
public record SelectField(String id, String label, String hint, String error, String nothing, List<Option> options)
        implements FormField {

    public SelectField {
        options = List.copyOf(options);
    }

    public static SelectField of(String id, String label, String nothing, List<Option> options) {
        return new SelectField(id, label, "", "", nothing, options);
    }

    public SelectField withHint(String words) {
        return new SelectField(id, label, words, error, nothing, options);
    }

    public SelectField withError(String words) {
        return new SelectField(id, label, hint, words, nothing, options);
    }

    /** Ids of the hint and error for {@code aria-describedby}, empty if there are none. */
    public String describedBy() {
        return Described.by(id, hint, error);
    }
}
