package tiewright.lineup.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.Sheet;
import tiewright.lineup.Belief;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.tie.Board;
import tiewright.lineup.tie.Ranking;

/**
 * The order of our pairs against somebody who names theirs blind: the draw that cannot be read, and what a reading of them is
 * worth.
 *
 * @param game the blind game; empty where there are too many sheets to go through
 * @param drawn one sheet of the draw, by the seed
 * @param habit how they went so far
 * @param ifStraight our best answer if they surely go straight
 * @param ifAsBefore our best answer if they go straight as often as {@link Habit#next} says, and in any order otherwise
 */
public record OrderAdvice(
        Optional<BlindGame> game, Optional<Sheet> drawn, Habit habit, Reply ifStraight, Reply ifAsBefore) {
    /**
     * An answer to a belief.
     *
     * @param worth of the aim if the belief is right
     * @param gain over the draw against the same belief
     */
    public record Reply(Sheet sheet, double worth, double gain) {}

    /**
     * @param earlier sheets of theirs that are open
     * @return empty where no legal sheet grants every wish
     */
    public static Optional<OrderAdvice> of(LineupProblem problem, List<Sheet> earlier, long seed) {
        Optional<BlindGame> game = BlindGame.of(problem);
        Habit habit = Habit.of(problem.theirs(), problem.strengths(), earlier);
        Belief straight = Belief.straight(problem.rules(), problem.theirs());
        Belief asBefore =
                Belief.leaning(straight, Belief.unknownOrder(problem.rules(), problem.theirs(), seed), habit.next());
        Optional<Reply> surely = reply(problem.expecting(straight), game);
        Optional<Reply> likely = reply(problem.expecting(asBefore), game);
        return surely.isEmpty() || likely.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new OrderAdvice(game, game.map(one -> one.draw(seed)), habit, surely.get(), likely.get()));
    }

    private static Optional<Reply> reply(LineupProblem problem, Optional<BlindGame> game) {
        Board board = new Board(problem);
        List<Ranking.Ranked> best = board.seating().count() == 0
                ? List.of()
                : Ranking.of(board, board.orderMatters(), 1).best();
        return best.stream().findFirst().map(one -> {
            double worth = board.worth().of(one.line());
            return new Reply(
                    board.sheet(one.line()),
                    worth,
                    Math.max(0, worth - game.map(solved -> drawn(board, solved)).orElse(worth)));
        });
    }

    /** What the draw is worth against a belief: the mean over its sheets, and over all orders where it draws the order too. */
    private static double drawn(Board board, BlindGame game) {
        double sum = 0;
        for (BlindGame.Weighted one : game.mix()) {
            List<Sheet> sheets = game.interchangeable() ? orders(one.sheet()) : List.of(one.sheet());
            sum += one.weight()
                    * sheets.stream()
                            .mapToDouble(sheet -> board.worth().of(board.line(sheet)))
                            .average()
                            .orElseThrow();
        }
        return sum;
    }

    private static List<Sheet> orders(Sheet sheet) {
        List<Sheet> orders = new ArrayList<>();
        Belief.permuted(List.copyOf(sheet.pairs().values())).forEach(order -> orders.add(Sheet.of(order)));
        return orders;
    }
}
