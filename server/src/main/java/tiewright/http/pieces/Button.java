package tiewright.http.pieces;

/**
 * A button that says what will happen.
 *
 * @param name name sent with the form, empty if none
 * @param value value sent with the form
 */
public record Button(String words, Kind kind, String name, String value) {

    /** How it looks: a page has one main button. */
    public enum Kind {
        MAIN,
        OTHER,
        /** Calls something off. */
        STOP
    }

    public static Button main(String words) {
        return new Button(words, Kind.MAIN, "", "");
    }

    public static Button other(String words) {
        return new Button(words, Kind.OTHER, "", "");
    }

    public static Button stop(String words) {
        return new Button(words, Kind.STOP, "", "");
    }

    public Button sending(String newName, String newValue) {
        return new Button(words, kind, newName, newValue);
    }

    public String css() {
        return switch (kind) {
            case MAIN -> "button button-main";
            case OTHER -> "button";
            case STOP -> "button button-stop";
        };
    }
}
