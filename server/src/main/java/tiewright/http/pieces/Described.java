package tiewright.http.pieces;

/** Which texts describe a field to a screen reader. */
final class Described {
    private Described() {}

    static String by(String id, String hint, String error) {
        return ((hint.isEmpty() ? "" : id + "-hint ") + (error.isEmpty() ? "" : id + "-error")).strip();
    }
}
