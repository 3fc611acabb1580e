package tiewright.http;

/** Nothing is at this address; the sentence says what was looked for. */
final class NotFound extends RuntimeException {
    private static final long serialVersionUID = 1;

    NotFound(String sentence) {
        super(sentence);
    }
}
