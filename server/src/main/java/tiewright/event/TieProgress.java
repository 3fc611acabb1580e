package tiewright.event;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import tiewright.conditions.Conditions;

/**
 * How far a tie has come.
 *
 * @param rubbers the confirmed scores so far, the decider last
 * @param toWin rubbers that take the tie, counting only those that are not void
 * @param held rubbers whose entries differ, which count nowhere
 * @param left rubbers still to be played, the decider only when it is needed
 * @param canComeToDecider its rubbers can end level, for their number is even or one is void, and the conditions then ask for
 *     a decider
 * @param deciderNeeded all rubbers are decided, the clubs are level and the conditions ask for a decider
 * @param finished nothing is left to play
 */
public record TieProgress(
        List<RubberScore> rubbers,
        int toWin,
        List<RubberNo> held,
        List<RubberNo> left,
        boolean canComeToDecider,
        boolean deciderNeeded,
        boolean finished) {

    public static TieProgress of(Tie tie, Conditions conditions) {
        Sorted sorted = new Sorted(tie);
        RubberNo.upTo(conditions.rubbers()).forEach(sorted::add);
        int voids =
                (int) sorted.scores.stream().filter(s -> s.how() == How.VOID).count();
        int toWin = (conditions.rubbers() - voids) / 2 + 1;
        boolean canComeToDecider = canComeToDecider(conditions, sorted.scores);
        boolean deciderNeeded = canComeToDecider && sorted.isAllKnown() && sorted.isLevel();
        if (deciderNeeded) {
            sorted.add(RubberNo.DECIDER);
        }
        if (sorted.held.isEmpty() && stops(tie, conditions) && sorted.most() >= toWin) {
            sorted.left.clear();
        }
        return new TieProgress(
                sorted.scores, toWin, sorted.held, sorted.left, canComeToDecider, deciderNeeded, sorted.isAllKnown());
    }

    /** The rubbers of a tie by what is known of them. */
    private record Sorted(Tie tie, List<RubberScore> scores, List<RubberNo> held, List<RubberNo> left) {
        Sorted(Tie tie) {
            this(tie, new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
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

        boolean isLevel() {
            return TieProgress.won(scores, Side.HOME) == TieProgress.won(scores, Side.AWAY);
        }

        int most() {
            return Math.max(TieProgress.won(scores, Side.HOME), TieProgress.won(scores, Side.AWAY));
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

    public int won(Side side) {
        return won(rubbers, side);
    }

    /** A rubber was on court, to its end or until somebody gave it up. */
    public boolean isAnythingPlayed() {
        return rubbers.stream()
                .anyMatch(score -> score.how() == How.PLAYED || score.how().isRetirement());
    }

    /** The decider is needed and has not been played yet. */
    public boolean awaitsDecider() {
        return deciderNeeded && !finished;
    }

    /** The side that took the finished tie; empty while it goes on and when it is drawn. */
    public Optional<Side> winner() {
        return finished ? Side.ahead(won(Side.HOME) - won(Side.AWAY)) : Optional.empty();
    }

    /** The tie as the tables count it; empty while a club is not known. */
    public Optional<TieScore> score(Tie tie) {
        return tie.home()
                .club()
                .flatMap(home -> tie.away().club().map(away -> new TieScore(tie.id(), home, away, rubbers, finished)));
    }

    private static boolean stops(Tie tie, Conditions conditions) {
        return switch (conditions.stopWhenDecided()) {
            case NONE -> false;
            case KNOCKOUT -> tie.stage() == Stage.KNOCKOUT;
            case ALL -> true;
        };
    }

    private static int won(List<RubberScore> scores, Side side) {
        int won = 0;
        for (RubberScore score : scores) {
            won += score.isWonBy(side) ? 1 : 0;
        }
        return won;
    }
}
