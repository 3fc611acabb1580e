package tiewright.timetable;

import java.util.Arrays;
import java.util.Optional;
import java.util.Random;

/**
 * The best of several first plans, each packed slot by slot in another order: earlier rounds first; where most rounds are still
 * to come first; and both again with the order shaken. One packing alone can end a slot or two after another.
 */
final class Starts {
    /** Enough to find, on nearly every day of up to twelve clubs, a plan that is as short as the bound or as any search finds. */
    static final int USUAL_TRIES = 80;

    private final Board board;
    private final double[] byRound;
    private final double[] byRoundsLeft;
    private Optional<Spot[]> best = Optional.empty();
    private PlanScore score = new PlanScore(Long.MAX_VALUE, java.util.Map.of());

    private Starts(Board board) {
        this.board = board;
        this.byRound = board.pieces().stream()
                .mapToDouble(piece -> board.tie(piece).round() + stage(board.tie(piece)))
                .toArray();
        this.byRoundsLeft = board.pieces().stream()
                .mapToDouble(piece -> stage(board.tie(piece)) - roundsLeft(board.tie(piece)))
                .toArray();
    }

    private static double stage(PlanTie tie) {
        return 100.0 * tie.stage().ordinal();
    }

    private double roundsLeft(PlanTie tie) {
        return board.problem().ties().stream()
                        .filter(tie::isInPool)
                        .mapToInt(PlanTie::round)
                        .max()
                        .orElse(tie.round())
                - tie.round();
    }

    /** Earlier rounds first, nothing else tried. */
    static Optional<Spot[]> plain(Board board) {
        return Packing.of(board, new Starts(board).byRound);
    }

    /** The best of a few: with the same seed the same one. It stops early where it ends at the bound. */
    static Optional<Spot[]> best(Board board, int tries, long seed) {
        Starts starts = new Starts(board);
        starts.take(starts.byRound);
        starts.take(starts.byRoundsLeft);
        Random random = new Random(seed);
        int bound = starts.best.isEmpty() ? 0 : Bounds.of(board).minutes();
        for (int i = 0; i < tries && starts.score.of(Part.LENGTH) > bound; i++) {
            double shake = 0.5 + 2 * random.nextDouble();
            double[] rule = i % 2 == 0 ? starts.byRound : starts.byRoundsLeft;
            starts.take(Arrays.stream(rule)
                    .map(priority -> priority + shake * random.nextDouble())
                    .toArray());
        }
        return starts.best;
    }

    private void take(double[] priority) {
        Optional<Spot[]> packed = Packing.of(board, priority);
        if (packed.isPresent()) {
            PlanScore other =
                    Judge.of(board, packed.get(), Placing.nobody(board)).score();
            if (best.isEmpty() || other.compareTo(score) < 0) {
                best = packed;
                score = other;
            }
        }
    }
}
