package tiewright.http.pieces;

import java.util.UUID;

/**
 * Makes the two hidden fields of every form: a key, so that sending it twice counts once, and a token that says up to
 * which fact the page had seen.
 */
public final class Forms {
    private final String seen;

    public Forms(String seen) {
        this.seen = seen;
    }

    /** A fresh key for one form. */
    public String key() {
        return UUID.randomUUID().toString();
    }

    public String seen() {
        return seen;
    }
}
