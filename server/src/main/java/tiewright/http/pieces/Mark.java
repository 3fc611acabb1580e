package tiewright.http.pieces;

/** The shape and colour that go with the word of a state, so that print and colour-blind eyes lose nothing. */
public enum Mark {
    /** No shape: nothing is wanted of anybody. */
    PLAIN("plain"),
    /** A closed bar: secret, or in and not yet open. */
    SEALED("sealed"),
    /** A dashed bar: not in. */
    MISSING("missing"),
    /** An open bar: opened, to be read by all. */
    OPENED("opened"),
    /** A filled dot: being played now. */
    PLAYING("playing"),
    /** A triangle on yellow: needs a person. */
    HELD("held"),
    /** A cross: refused, retired, called off. */
    STOP("stop"),
    /** A tick: agreed by two sources, a promise kept. */
    KEPT("kept"),
    /** A double rule: final. */
    FINAL("final"),
    /** A struck line: no longer true. */
    OLD("old");

    private final String code;

    Mark(String code) {
        this.code = code;
    }

    /** The name used in the stylesheet: {@code state-CODE}. */
    public String code() {
        return code;
    }
}
