package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.GivenFile;
import tiewright.http.pieces.Refusal;

/**
 * Earlier games that a club keeps for itself, and the form that takes more. For that club's eyes only.
 *
 * @param kept how many there are, in a sentence
 * @param back take back some, or all; none without a game
 * @param players whom the file may name by code, a club a line
 */
public record PastView(
        Refusal refusal,
        List<String> cautions,
        String kept,
        List<ActionForm> back,
        GivenFile file,
        String path,
        Button give,
        List<String> players) {
    public PastView {
        cautions = List.copyOf(cautions);
        back = List.copyOf(back);
        players = List.copyOf(players);
    }
}
