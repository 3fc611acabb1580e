package tiewright.event;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.conditions.Conditions;
import tiewright.conditions.RubberWeights;

/**
 * How far a tie has come.
 *
 * @param rubbers the confirmed scores so far, the decider last
 * @param weights of its rubbers
 * @param toWin weight that takes the tie, counting only rubbers that are not void: of equal rubbers so many
 * @param held rubbers whose entries differ, which count nowhere
 * @param left rubbers still to be played, the decider only when it is needed
 * @param canComeToDecider its rubbers can end level, for their number is even or one is void, and the conditions then ask for
 *     a decider
 * @param deciderNeeded all rubbers are decided, the clubs are level and the conditions ask for a decider
 * @param finished nothing is left to play
 */
public record TieProgress(
        List<RubberScore> rubbers,
        RubberWeights weights,
        int toWin,
        List<RubberNo> held,
        List<RubberNo> left,
        boolean canComeToDecider,
        boolean deciderNeeded,
        boolean finished) {

    public static TieProgress of(Tie tie, Conditions conditions) {
        Sorted sorted = new Sorted(tie, conditions.tieRubbers().weights());
        RubberNo.upTo(conditions.rubbers()).forEach(sorted::add);
        int toWin = (sorted.weights.total(conditions.rubbers()) - sorted.voided()) / 2 + 1;
        boolean canComeToDecider = canComeToDecider(conditions, sorted.scores);
        boolean deciderNeeded = canComeToDecider && sorted.isAllKnown() && sorted.isLevel();
        if (deciderNeeded) {
            sorted.add(RubberNo.DECIDER);
        }
        if (sorted.held.isEmpty() && stops(tie, conditions) && sorted.most() >= toWin) {
            sorted.left.clear();
        }
        return new TieProgress(
                sorted.scores,
                sorted.weights,
                toWin,
                sorted.held,
                sorted.left,
                canComeToDecider,
                deciderNeeded,
                sorted.isAllKnown());
    }

    /** The rubbers of a tie by what is known of them. */
    private record Sorted(
            Tie tie, RubberWeights weights, List<RubberScore> scores, List<RubberNo> held, List<RubberNo> left) {
        Sorted(Tie tie, RubberWeights weights) {
            this(tie, weights, new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        }

        void add(RubberNo rubber) {
            Card card = tie.card(rubber);
            Optional<RubberScore> score = card.score(rubber);
            if (score.isPresent()) {
                scores.add(score.get());
            } else if (card.standing() == Card.Standing.HELD) {
                held.add(rubber);
            } else {
                left.add(rubber);
            }
        }

        boolean isAllKnown() {
            return left.isEmpty() && held.isEmpty();
        }

        int voided() {
            return scores.stream()
                    .filter(score -> score.how() == How.VOID)
                    .mapToInt(score -> score.rubber().weight(weights))
                    .sum();
        }

        boolean isLevel() {
            return weightWon(scores, weights, Side.HOME) == weightWon(scores, weights, Side.AWAY);
        }

        int most() {
            return Math.max(weightWon(scores, weights, Side.HOME), weightWon(scores, weights, Side.AWAY));
        }
    }

    public TieProgress {
        rubbers = List.copyOf(rubbers);
        held = List.copyOf(held);
        left = List.copyOf(left);
    }

    /** Whether a tie with these scores can come to a decider. */
    public static boolean canComeToDecider(Conditions conditions, Collection<RubberScore> scores) {
        return conditions.hasDecider()
                && (conditions.canEndLevel() || scores.stream().anyMatch(score -> score.how() == How.VOID));
    }

    /** Rubbers won so far, whatever they weigh. */
    public int won(Side side) {
        return (int) rubbers.stream().filter(score -> score.isWonBy(side)).count();
    }

    /** What they weigh together; the decider weighs 1. */
    public int weightWon(Side side) {
        return weightWon(rubbers, weights, side);
    }

    /** What can still be won, the decider apart: the weight of the rubbers that are left or held. */
    public int weightOpen() {
        return Stream.concat(left.stream(), held.stream())
                .filter(rubber -> !rubber.isDecider())
                .mapToInt(rubber -> rubber.weight(weights))
                .sum();
    }

    /** A rubber was on court, to its end or until somebody gave it up. */
    public boolean isAnythingPlayed() {
        return rubbers.stream().anyMatch(RubberScore::isPlayed);
    }

    /** The decider is needed and has not been played yet. */
    public boolean awaitsDecider() {
        return deciderNeeded && !finished;
    }

    /** The side that took the finished tie; empty while it goes on and when it is drawn. */
    public Optional<Side> winner() {
        return finished ? Side.ahead(weightWon(Side.HOME) - weightWon(Side.AWAY)) : Optional.empty();
    }

    /** The tie as the tables count it; empty while a club is not known. */
    public Optional<TieScore> score(Tie tie) {
        return tie.home()
                .club()
                .flatMap(home ->
                        tie.away().club().map(away -> new TieScore(tie.id(), home, away, rubbers, finished, weights)));
    }

    private static boolean stops(Tie tie, Conditions conditions) {
        return switch (conditions.stopWhenDecided()) {
            case NONE -> false;
            case KNOCKOUT -> tie.stage() != Stage.POOL;
            case ALL -> true;
        };
    }

    private static int weightWon(List<RubberScore> scores, RubberWeights weights, Side side) {
        int won = 0;
        for (RubberScore score : scores) {
            won += score.isWonBy(side) ? score.rubber().weight(weights) : 0;
        }
        return won;
    }
}
