package tiewright.lineup.tie;

import java.util.List;
import tiewright.event.Sheet;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Wish;

/**
 * What a sheet of the captain's own making is worth.
 *
 * @param sheet its chance and what it costs against the best
 * @param wishesNotGranted the captain's own wishes that it does not grant: said, not refused
 */
public record Evaluation(ProposedSheet sheet, List<Wish> wishesNotGranted) {
    public Evaluation {
        wishesNotGranted = List.copyOf(wishesNotGranted);
    }

    /**
     * The sheet by itself, with the chances that an evaluation gives it but without looking for a better one, so at once. Its cost
     * is 0 and it has no reasons.
     *
     * @throws IllegalArgumentException if it names a pair that cannot play, or a rubber that there is not
     */
    public static ProposedSheet alone(LineupProblem problem, Sheet sheet) {
        Board board = new Board(problem);
        return new Describing(board, new Doubt(board)).alone(board.line(sheet), List.of());
    }
}
