package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.CardView;
import tiewright.http.pieces.State;

/** One tie's card and a way to enter each of its rubbers. */
public record TieCardsView(CardView card, List<Rubber> rubbers) {

    /**
     * @param entries what was entered so far, the oldest first, one line each
     * @param presses what else can be done there
     * @param log where who, when and from which device is read, empty for no link
     * @param hangs where what hangs on the score is read
     */
    public record Rubber(
            String label,
            String href,
            String words,
            State state,
            List<String> entries,
            List<ActionForm> presses,
            String log,
            String hangs) {}
}
