package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.Refusal;
import tiewright.http.pieces.State;

/**
 * Who is here, club by club.
 *
 * @param count "12 of 64 here"
 */
public record CheckInView(String count, List<Club> clubs, Refusal refusal) {
    public CheckInView {
        clubs = List.copyOf(clubs);
    }

    /**
     * @param count "6 of 8 here"
     * @param all words of the press that enters everybody who was not asked yet; empty where nobody is left
     */
    public record Club(String id, String name, String count, String all, List<Line> players) {
        public Club {
            players = List.copyOf(players);
        }
    }

    /**
     * A player, who is the button.
     *
     * @param turned what a press enters: "yes" for here, "no" for not here
     * @param press what it does, in words
     */
    public record Line(String player, String name, State state, String turned, String press) {}
}
