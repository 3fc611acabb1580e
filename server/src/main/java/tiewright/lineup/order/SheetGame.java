package tiewright.lineup.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import tiewright.conditions.DeciderKind;
import tiewright.conditions.OrderOfStrength;
import tiewright.event.Pair;
import tiewright.lineup.Belief;
import tiewright.lineup.EdgeCurve;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Purpose;
import tiewright.lineup.Wishes;
import tiewright.lineup.decider.Closers;
import tiewright.lineup.decider.DeciderPairs;
import tiewright.lineup.game.OracleGame;
import tiewright.lineup.tie.Board;
import tiewright.lineup.tie.EndWorths;
import tiewright.lineup.tie.Ranking;
import tiewright.lineup.tie.SheetSearch;
import tiewright.lineup.tie.TieOdds;

/** The blind game laid out: legal sheets of both sides, and the payoff of any two, worked out when it is asked for. */
final class SheetGame implements OracleGame.Payoff {
    private static final int MOST_RUBBERS_IN_ANY_ORDER = 5;

    private final Side ours;
    private final Side theirs;
    private final boolean anyOrder;
    private final double[][] chances; // a pair of ours against a pair of theirs
    private final EndWorths aim;
    private final EdgeCurve decider;
    private final int[][] orders;

    /** One club: its board, its legal sheets, and how strong its pair of the decider is after each. */
    private record Side(Board board, List<int[]> lines, double[] closers) {}

    private SheetGame(LineupProblem problem, Side ours, Side theirs, boolean anyOrder) {
        this.ours = ours;
        this.theirs = theirs;
        this.anyOrder = anyOrder;
        EdgeCurve rubber =
                new EdgeCurve(problem.rules().scoring(), problem.rules().bestOf());
        this.chances =
                new double[ours.board().pairs().size()][theirs.board().pairs().size()];
        for (int i = 0; i < chances.length; i++) {
            for (int j = 0; j < chances[i].length; j++) {
                chances[i][j] = rubber.chance(problem.edge(
                        ours.board().pairs().get(i), theirs.board().pairs().get(j)));
            }
        }
        this.aim = new EndWorths(problem.purpose().aim(), problem.rules());
        this.decider = new EdgeCurve(problem.rules().deciderScoring(), 1);
        this.orders = anyOrder
                ? orders(problem.rules().rubbers())
                : new int[][] {IntStream.range(0, problem.rules().rubbers()).toArray()};
    }

    static Optional<SheetGame> of(LineupProblem problem) {
        LineupProblem turned = new LineupProblem(
                problem.rules(),
                /* ours= */ problem.theirs(),
                /* theirs= */ problem.ours(),
                Belief.straight(problem.rules(), problem.ours()),
                List.of(),
                Purpose.WIN,
                problem.freshness(),
                problem.strengths());
        int rubbers = problem.rules().rubbers();
        Board own = new Board(problem);
        Board other = new Board(turned);
        boolean full = own.filled() == rubbers && other.filled() == rubbers;
        boolean anyOrder =
                problem.rules().order() == OrderOfStrength.NONE && full && rubbers <= MOST_RUBBERS_IN_ANY_ORDER;
        Optional<Side> ours = side(problem, own, !anyOrder);
        Optional<Side> theirs = ours.isEmpty() ? Optional.empty() : side(turned, other, !anyOrder);
        return theirs.map(side -> new SheetGame(problem, ours.get(), side, anyOrder));
    }

    private static Optional<Side> side(LineupProblem problem, Board board, boolean eachOrder) {
        List<int[]> lines = new ArrayList<>();
        if (board.filled() == 0) {
            return Optional.empty();
        }
        SheetSearch.End end = SheetSearch.run(board, eachOrder, Ranking.MOST_STEPS, line -> {
            lines.add(line.clone());
            return lines.size() <= BlindGame.MOST_SHEETS;
        });
        if (end != SheetSearch.End.ALL_SEEN || lines.isEmpty()) {
            return Optional.empty();
        }
        DeciderKind kind = problem.rules().decider();
        List<Pair> sent = DeciderPairs.all(problem.ours()).stream()
                .filter(pair -> Wishes.allowInDecider(problem, pair))
                .toList();
        Closers closers = new Closers(kind, problem.strengths(), problem.freshness(), sent);
        double[] strengths = lines.stream()
                .mapToDouble(line -> strength(closers, board, line))
                .toArray();
        return Optional.of(new Side(board, lines, strengths));
    }

    private static double strength(Closers closers, Board board, int[] line) {
        int[] rubbers = closers.rubbers(board.sheet(line));
        int best = closers.best(rubbers);
        return best == Closers.NOBODY ? Double.NEGATIVE_INFINITY : closers.strength(best, rubbers);
    }

    private static int[][] orders(int rubbers) {
        List<int[]> orders = new ArrayList<>();
        order(new int[rubbers], 0, 0, orders);
        return orders.toArray(int[][]::new);
    }

    private static void order(int[] order, int placed, int used, List<int[]> orders) {
        if (placed == order.length) {
            orders.add(order.clone());
            return;
        }
        for (int rubber = 0; rubber < order.length; rubber++) {
            if ((used & 1 << rubber) == 0) {
                order[placed] = rubber;
                order(order, placed + 1, used | 1 << rubber, orders);
            }
        }
    }

    @Override
    public int rows() {
        return ours.lines().size();
    }

    @Override
    public int columns() {
        return theirs.lines().size();
    }

    @Override
    public double at(int row, int column) {
        double level = level(ours.closers()[row], theirs.closers()[column]);
        int[] own = ours.lines().get(row);
        int[] other = theirs.lines().get(column);
        double[] wins = new double[0];
        for (int[] order : orders) {
            int[] turned =
                    anyOrder ? Arrays.stream(order).map(rubber -> other[rubber]).toArray() : other;
            double[] some = TieOdds.wins(Board.rubbers(own, turned, chances));
            if (wins.length == 0) {
                wins = some;
            } else {
                for (int won = 0; won < wins.length; won++) {
                    wins[won] += some[won];
                }
            }
        }
        for (int won = 0; orders.length > 1 && won < wins.length; won++) {
            wins[won] /= orders.length;
        }
        return aim.mean(wins, level);
    }

    private double level(double our, double their) {
        if (our == Double.NEGATIVE_INFINITY) {
            return 0;
        }
        return their == Double.NEGATIVE_INFINITY ? 1 : decider.chance(our - their);
    }

    BlindGame solve() {
        OracleGame solved = OracleGame.solve(this);
        return new BlindGame(
                solved.guarantee(),
                solved.gap(),
                anyOrder,
                mix(ours, EqualSheets.share(this, solved)),
                mix(theirs, solved.columnMix()),
                rows(),
                columns());
    }

    private static List<BlindGame.Weighted> mix(Side side, double[] weights) {
        return IntStream.range(0, weights.length)
                .filter(i -> weights[i] > 0)
                .boxed()
                .sorted((a, b) -> Double.compare(weights[b], weights[a]))
                .map(i -> new BlindGame.Weighted(side.board().sheet(side.lines().get(i)), weights[i]))
                .toList();
    }
}
