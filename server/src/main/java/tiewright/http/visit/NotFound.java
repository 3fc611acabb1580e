package tiewright.http.visit;

/** Nothing is at this address; the sentence says what was looked for. */
public final class NotFound extends RuntimeException {
    private static final long serialVersionUID = 1;

    public NotFound(String sentence) {
        super(sentence);
    }
}
