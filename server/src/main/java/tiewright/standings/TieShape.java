package tiewright.standings;

import java.util.Optional;
import tiewright.conditions.RubberWeights;
import tiewright.event.RubberNo;

/**
 * What a tie of this table consists of, as far as tables need it.
 *
 * @param rubbers rubbers of a tie, the decider not among them, 1 or more
 * @param stopsWhenDecided rubbers that cannot change the winner any more may be left out
 * @param games of a rubber
 * @param decider games of the decider, if one is played when the rubbers finish level
 * @param weights of the rubbers
 */
public record TieShape(
        int rubbers, boolean stopsWhenDecided, Games games, Optional<Games> decider, RubberWeights weights) {
    public TieShape {
        if (rubbers < 1) {
            throw new IllegalArgumentException("a tie has a rubber or more, got " + rubbers);
        }
    }

    /** A level tie stays drawn. */
    public boolean canBeDrawn() {
        return decider.isEmpty() && weights.canBeLevel(rubbers);
    }

    Games games(RubberNo rubber) {
        return rubber.isDecider() ? decider.orElse(games) : games;
    }
}
