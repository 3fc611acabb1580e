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
        List<RubberScore> scores = new ArrayList<>();
        List<RubberNo> held = new ArrayList<>();
        List<RubberNo> left = new ArrayList<>();
        for (int number = 1; number <= conditions.rubbers(); number++) {
            RubberNo rubber = RubberNo.of(number);
            sort(tie, rubber, scores, held, left);
        }
        int toWin = (int) (conditions.rubbers()
                                - scores.stream()
                                        .filter(s -> s.how() == How.VOID)
                                        .count())
                        / 2
                + 1;
        boolean level = won(scores, Side.HOME) == won(scores, Side.AWAY);
        boolean canComeToDecider = canComeToDecider(conditions, scores);
        boolean deciderNeeded = left.isEmpty() && held.isEmpty() && level && canComeToDecider;
        if (deciderNeeded) {
            sort(tie, RubberNo.DECIDER, scores, held, left);
        }
        if (held.isEmpty() && stops(tie, conditions) && leader(scores, toWin).isPresent()) {
            left.clear();
        }
        return new TieProgress(
                scores, toWin, held, left, canComeToDecider, deciderNeeded, left.isEmpty() && held.isEmpty());
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

    /** The decider is needed and has not been played yet. */
    public boolean awaitsDecider() {
        return deciderNeeded && !finished;
    }

    /** The side that took the finished tie; empty while it goes on and when it is drawn. */
    public Optional<Side> winner() {
        int difference = won(Side.HOME) - won(Side.AWAY);
        return !finished || difference == 0 ? Optional.empty() : Optional.of(difference > 0 ? Side.HOME : Side.AWAY);
    }

    /** The tie as the tables count it; empty while a club is not known. */
    public Optional<TieScore> score(Tie tie) {
        return tie.home()
                .club()
                .flatMap(home -> tie.away().club().map(away -> new TieScore(tie.id(), home, away, rubbers, finished)));
    }

    private static void sort(
            Tie tie, RubberNo rubber, List<RubberScore> scores, List<RubberNo> held, List<RubberNo> left) {
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

    private static boolean stops(Tie tie, Conditions conditions) {
        return switch (conditions.stopWhenDecided()) {
            case NONE -> false;
            case KNOCKOUT -> tie.stage() == Stage.KNOCKOUT;
            case ALL -> true;
        };
    }

    private static Optional<Side> leader(List<RubberScore> scores, int toWin) {
        for (Side side : Side.values()) {
            if (won(scores, side) >= toWin) {
                return Optional.of(side);
            }
        }
        return Optional.empty();
    }

    private static int won(List<RubberScore> scores, Side side) {
        int won = 0;
        for (RubberScore score : scores) {
            won += score.isWonBy(side) ? 1 : 0;
        }
        return won;
    }
}
