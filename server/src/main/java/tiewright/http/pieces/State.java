package tiewright.http.pieces;

/** A state as a reader meets it: a word with its {@link Mark}. */
public record State(Mark mark, String word) {

    /** No state to tell: nothing is shown. */
    public static final State NONE = new State(Mark.PLAIN, "");
}
