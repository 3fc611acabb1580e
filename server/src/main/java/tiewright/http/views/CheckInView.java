package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.Refusal;
import tiewright.http.pieces.State;

/** Who is here, club by club. */
public record CheckInView(List<Club> clubs, Refusal refusal) {

    /** @param count "6 of 8 here" */
    public record Club(String id, String name, String count, List<Line> players) {}

    public record Line(String player, String name, State state, List<Press> presses) {}

    /** @param words what a press enters ("Here", "Not here", "Take it back") */
    public record Press(String words, String value) {}
}
