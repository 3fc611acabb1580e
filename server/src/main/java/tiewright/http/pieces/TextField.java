package tiewright.http.pieces;

/**
 * A field to type in.
 *
 * @param id both the id and the name sent with the form
 * @param value what was typed before, kept after a refusal
 * @param error what is wrong with it, empty if nothing
 * @param autocomplete the HTML autofill token, {@code off} if none fits
 * @param maxLength the most characters taken, 0 for no limit
 */
public record TextField(
        String id,
        Kind kind,
        String label,
        String hint,
        String value,
        String error,
        String autocomplete,
        boolean required,
        int maxLength)
        implements FormField {

    /** What is typed: decides the keyboard of a phone and the width of the field. */
    public enum Kind {
        LINE("text", "text", ""),
        /** Whole numbers: text with a numeric keyboard, for number fields lose what they cannot read. */
        NUMBER("text", "numeric", "short"),
        /** A few characters that are no whole number, such as degrees. */
        SHORT("text", "decimal", "short"),
        DATE("date", "text", "short-date"),
        TIME("time", "text", "short-date"),
        EMAIL("email", "email", ""),
        TELEPHONE("tel", "tel", ""),
        LINK("url", "url", "wide"),
        /** Several lines. */
        LONG("", "text", "wide");

        private final String type;
        private final String inputMode;
        private final String width;

        Kind(String type, String inputMode, String width) {
            this.type = type;
            this.inputMode = inputMode;
            this.width = width;
        }

        public String type() {
            return type;
        }

        public String inputMode() {
            return inputMode;
        }

        public String width() {
            return width;
        }
    }

    /** A field that need not be filled. */
    public static TextField of(String id, Kind kind, String label, String value) {
        return new TextField(id, kind, label, "", value, "", "off", false, 0);
    }

    public TextField withHint(String words) {
        return new TextField(id, kind, label, words, value, error, autocomplete, required, maxLength);
    }

    public TextField withError(String words) {
        return new TextField(id, kind, label, hint, value, words, autocomplete, required, maxLength);
    }

    public TextField withAutocomplete(String token) {
        return new TextField(id, kind, label, hint, value, error, token, required, maxLength);
    }

    public TextField withMaxLength(int most) {
        return new TextField(id, kind, label, hint, value, error, autocomplete, required, most);
    }

    public TextField mustBeFilled() {
        return new TextField(id, kind, label, hint, value, error, autocomplete, true, maxLength);
    }

    /** Ids of the hint and error for {@code aria-describedby}, empty if there are none. */
    public String describedBy() {
        return Described.by(id, hint, error);
    }
}
