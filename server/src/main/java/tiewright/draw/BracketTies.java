package tiewright.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.SlotSource;
import tiewright.event.TieId;

/**
 * Makes the ties of a bracket from its lines. A tie keeps its number from the top of a full bracket, so that SF1 is
 * always between QF1 and QF2; where a line has a bye, its opponent stands in the next round at once and the number is
 * not used.
 */
final class BracketTies {
    private BracketTies() {}

    static List<PlannedTie> of(List<Optional<SlotSource>> lines, boolean thirdPlace) {
        List<PlannedTie> ties = new ArrayList<>();
        List<Optional<SlotSource>> entering = lines;
        for (int round = 1; entering.size() > 1; round++) {
            if (entering.size() == 2 && thirdPlace) {
                tieForThird(entering, round).ifPresent(ties::add);
            }
            entering = played(entering, round, ties);
        }
        return ties;
    }

    private static List<Optional<SlotSource>> played(
            List<Optional<SlotSource>> entering, int round, List<PlannedTie> ties) {
        List<Optional<SlotSource>> next = new ArrayList<>();
        for (int match = 0; match < entering.size() / 2; match++) {
            Optional<SlotSource> upper = entering.get(2 * match);
            Optional<SlotSource> lower = entering.get(2 * match + 1);
            if (upper.isPresent() && lower.isPresent()) {
                TieId tie = name(entering.size(), match + 1);
                ties.add(new PlannedTie(tie, round, upper.get(), lower.get()));
                next.add(Optional.of(SlotSource.winner(tie)));
            } else {
                next.add(upper.or(() -> lower));
            }
        }
        return next;
    }

    /** Needs two losers: where a finalist had a bye to the final, the one loser is third without a tie. */
    private static Optional<PlannedTie> tieForThird(List<Optional<SlotSource>> finalists, int round) {
        List<SlotSource> losers = finalists.stream()
                .flatMap(Optional::stream)
                .filter(s -> s.kind() == SlotSource.Kind.WINNER)
                .map(s -> SlotSource.loser(TieId.of(s.of())))
                .toList();
        return losers.size() == 2
                ? Optional.of(new PlannedTie(TieId.of("P3"), round, losers.get(0), losers.get(1)))
                : Optional.empty();
    }

    private static TieId name(int entering, int number) {
        return TieId.of(
                entering == 2
                        ? "F"
                        : entering == 4
                                ? "SF" + number
                                : entering == 8 ? "QF" + number : "R" + entering + "-" + number);
    }
}
