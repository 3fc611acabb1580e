package tiewright.event;

import java.util.List;
import java.util.Optional;
import tiewright.conditions.RubberWeights;

/**
 * A tie as a table counts it: the two clubs and the rubbers decided so far, the decider among them.
 *
 * @param finished no rubber is left to play
 * @param weights of its rubbers, which say who has won it
 */
public record TieScore(
        TieId tie, ClubId home, ClubId away, List<RubberScore> rubbers, boolean finished, RubberWeights weights) {
    public TieScore {
        rubbers = List.copyOf(rubbers);
    }

    /** A tie whose rubbers weigh the same. */
    public TieScore(TieId tie, ClubId home, ClubId away, List<RubberScore> rubbers, boolean finished) {
        this(tie, home, away, rubbers, finished, RubberWeights.EQUAL);
    }

    /** The same tie with other rubbers. */
    public TieScore with(List<RubberScore> now, boolean over) {
        return new TieScore(tie, home, away, now, over, weights);
    }

    public int rubbersWon(Side side) {
        return (int) rubbers.stream()
                .filter(rubber -> rubber.winner().filter(side::equals).isPresent())
                .count();
    }

    /** What the rubbers won weigh together; the decider weighs 1. */
    public int weightWon(Side side) {
        return rubbers.stream()
                .filter(rubber -> rubber.isWonBy(side))
                .mapToInt(rubber -> rubber.rubber().weight(weights))
                .sum();
    }

    /** A rubber was on court, to its end or until somebody gave it up. */
    public boolean isAnythingPlayed() {
        return rubbers.stream().anyMatch(RubberScore::isPlayed);
    }

    /** The side whose rubbers weigh more in a finished tie; empty while it goes on and when it is drawn. */
    public Optional<Side> winner() {
        return finished ? Side.ahead(weightWon(Side.HOME) - weightWon(Side.AWAY)) : Optional.empty();
    }

    public ClubId club(Side side) {
        return side == Side.HOME ? home : away;
    }

    public boolean has(ClubId club) {
        return home.equals(club) || away.equals(club);
    }
}
