package tiewright.http.pieces;

import java.util.List;

/**
 * A list to choose from with everything in sight.
 *
 * @param id id of the group and the name sent with the form; the options are {@code id-1}, {@code id-2}, ...
 * @param many whether several may be chosen
 */
public record ChoiceList(String id, String legend, String hint, String error, boolean many, List<Option> options)
        implements FormField {

    public ChoiceList {
        options = List.copyOf(options);
    }

    public static ChoiceList one(String id, String legend, List<Option> options) {
        return new ChoiceList(id, legend, "", "", false, options);
    }

    public ChoiceList withHint(String words) {
        return new ChoiceList(id, legend, words, error, many, options);
    }

    public ChoiceList withError(String words) {
        return new ChoiceList(id, legend, hint, words, many, options);
    }

    /** Ids of the hint and error for {@code aria-describedby}, empty if there are none. */
    public String describedBy() {
        return Described.by(id, hint, error);
    }
}
