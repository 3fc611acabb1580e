package tiewright.standings;

import tiewright.event.ClubId;
import tiewright.event.TieId;

/** A tie that decided between two clubs, with its rubbers. */
public record TieBetween(TieId tie, ClubId home, ClubId away, Result homeResult, int homeRubbers, int awayRubbers) {
    /** How it ended for the club. */
    public Result of(ClubId club) {
        return club.equals(home) ? homeResult : homeResult.other();
    }

    /** The side with fewer rubbers or as many has won: those that it took weigh more. */
    public boolean isByWeight() {
        return homeResult.other() != homeResult
                && Integer.signum(homeRubbers - awayRubbers) != (homeResult == Result.WON ? 1 : -1);
    }

    public int rubbersOf(ClubId club) {
        return club.equals(home) ? homeRubbers : awayRubbers;
    }
}
