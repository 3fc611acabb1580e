package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.Moved;
import tiewright.http.pieces.Notice;
import tiewright.http.pieces.Refusal;
import tiewright.http.pieces.State;

/** Who must be told of a notice and who was. */
public record TellingView(Refusal refusal, Notice notice, String count, List<Club> clubs) {
    /**
     * A club that the notice concerns.
     *
     * @param people the squad by name, to shout for
     * @param press what the tick does
     */
    public record Club(String name, State state, List<Moved> moved, String people, ActionForm press) {}
}
