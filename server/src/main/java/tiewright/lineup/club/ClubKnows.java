package tiewright.lineup.club;

import java.util.List;
import tiewright.event.ClubId;
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
public record ClubKnows(ClubId club, List<PrivateNote> notes, Earlier earlier, Fitting fitting, WhoPlays plays) {
    public ClubKnows {
        notes = List.copyOf(notes);
    }

    public static ClubKnows of(ClubId club, List<PrivateNote> notes, Earlier earlier) {
        return new ClubKnows(club, notes, earlier, Rating::fit, WhoPlays.NOTHING);
    }

    public ClubKnows stating(WhoPlays known) {
        return new ClubKnows(club, notes, earlier, fitting, known);
    }

    /** Who plays what counts only where not all rubbers are open. */
    LineupProblem stated(LineupProblem problem, LineupProblem.Against against, long seed) {
        return problem.rules().each().kinds().areOpen() ? problem : plays.in(problem, against, seed);
    }
}
