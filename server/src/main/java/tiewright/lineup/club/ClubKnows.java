package tiewright.lineup.club;

import java.util.List;
import java.util.Map;
import tiewright.conditions.Plays;
import tiewright.event.ClubId;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.lineup.LineupProblem;
import tiewright.rating.Earlier;
import tiewright.rating.Fitting;
import tiewright.rating.Rating;

/**
 * What a club knows besides the event.
 *
 * @param notes what its captain judges and wishes; a later note about the same replaces an earlier one
 * @param earlier games and film; the cards of the event are added
 * @param fitting how strengths come from it
 * @param plays what players state to play in beside open rubbers
 */
public record ClubKnows(
        ClubId club, List<PrivateNote> notes, Earlier earlier, Fitting fitting, Map<PlayerId, Plays> plays) {
    public ClubKnows {
        notes = List.copyOf(notes);
        plays = Map.copyOf(plays);
    }

    public static ClubKnows of(ClubId club, List<PrivateNote> notes, Earlier earlier) {
        return new ClubKnows(club, notes, earlier, Rating::fit, Map.of());
    }

    public ClubKnows stating(Map<PlayerId, Plays> stated) {
        return new ClubKnows(club, notes, earlier, fitting, stated);
    }

    /** Who plays what counts only where not all rubbers are open. */
    LineupProblem stated(LineupProblem problem, LineupProblem.Against against, long seed) {
        return problem.rules().each().kinds().areOpen() ? problem : problem.stating(plays, against, seed);
    }
}
