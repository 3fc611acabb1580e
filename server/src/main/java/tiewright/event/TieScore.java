package tiewright.event;

import java.util.List;
import java.util.Optional;

/**
 * A tie as a table counts it: the two clubs and the rubbers decided so far, the decider among them.
 *
 * @param finished no rubber is left to play
 */
public record TieScore(TieId tie, ClubId home, ClubId away, List<RubberScore> rubbers, boolean finished) {
    public TieScore {
        rubbers = List.copyOf(rubbers);
    }

    public int rubbersWon(Side side) {
        return (int) rubbers.stream()
                .filter(rubber -> rubber.winner().filter(side::equals).isPresent())
                .count();
    }

    /** The side with more rubbers in a finished tie; empty while it goes on and when it is drawn. */
    public Optional<Side> winner() {
        return finished ? Side.ahead(rubbersWon(Side.HOME) - rubbersWon(Side.AWAY)) : Optional.empty();
    }

    public ClubId club(Side side) {
        return side == Side.HOME ? home : away;
    }

    public boolean has(ClubId club) {
        return home.equals(club) || away.equals(club);
    }
}
