package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.GivenFile;
import tiewright.http.pieces.Refusal;

/**
 * Earlier games that a club keeps for itself, and the forms that take more. For that club's eyes only.
 *
 * @param kept how many there are, in a sentence
 * @param one takes one game
 * @param back take back some, or all; none without a game
 * @param many takes a file of games
 */
public record PastView(
        Refusal refusal, List<String> cautions, String kept, ActionForm one, List<ActionForm> back, Many many) {
    public PastView {
        cautions = List.copyOf(cautions);
        back = List.copyOf(back);
    }

    /** @param players whom the file may name by code, a club a line */
    public record Many(GivenFile file, String path, Button give, List<String> players) {
        public Many {
            players = List.copyOf(players);
        }
    }
}
