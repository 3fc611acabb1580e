package tiewright.lineup.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import tiewright.conditions.DeciderKind;
import tiewright.event.Pair;
import tiewright.lineup.Belief;
import tiewright.lineup.DrawnChance;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Meetings;
import tiewright.lineup.Purpose;
import tiewright.lineup.Wishes;
import tiewright.lineup.decider.Closers;
import tiewright.lineup.decider.DeciderPairs;
import tiewright.lineup.decider.LevelWorth;
import tiewright.lineup.game.OracleGame;
import tiewright.lineup.tie.Board;
import tiewright.lineup.tie.EndWorths;
import tiewright.lineup.tie.Ranking;
import tiewright.lineup.tie.SheetSearch;
import tiewright.lineup.tie.TieMean;

/** The blind game laid out: legal sheets of both sides, and the payoff of any two, worked out when it is asked for. */
final class SheetGame implements OracleGame.Payoff {
    private static final int MOST_RUBBERS_IN_ANY_ORDER = 5;
    private static final int MOST_KEPT = 250_000; // payoffs

    private final Side ours;
    private final Side theirs;
    private final boolean anyOrder;
    private final Meetings meetings;
    private final DrawnChance[][] chances; // a pair of ours against a pair of theirs
    private final double[][] means;
    private final EndWorths aim;
    private final Map<List<Optional<LevelWorth.Sent>>, DrawnChance> deciders = new HashMap<>();
    private final boolean bestGuess;
    private final int[][] orders;
    private final double[][] known; // payoffs worked out so far; no rows where there would be too many

    /** One club: its board, its legal sheets, and its pair of the decider after each. */
    private record Side(Board board, List<int[]> lines, List<Optional<LevelWorth.Sent>> closers) {}

    private SheetGame(LineupProblem problem, Side ours, Side theirs, boolean anyOrder) {
        this.ours = ours;
        this.theirs = theirs;
        this.anyOrder = anyOrder;
        this.meetings = new Meetings(problem);
        this.bestGuess = problem.strengths().isAtBestGuess();
        this.chances = new DrawnChance[ours.board().pairs().size()]
                [theirs.board().pairs().size()];
        this.means = new double[chances.length][];
        for (int i = 0; i < chances.length; i++) {
            for (int j = 0; j < chances[i].length; j++) {
                chances[i][j] = meetings.rubber(
                        ours.board().pairs().get(i), theirs.board().pairs().get(j));
            }
            means[i] = Arrays.stream(chances[i]).mapToDouble(DrawnChance::mean).toArray();
        }
        this.aim = EndWorths.of(problem.purpose().aim(), problem.rules());
        this.orders = anyOrder
                ? orders(problem.rules().rubbers())
                : new int[][] {IntStream.range(0, problem.rules().rubbers()).toArray()};
        this.known = (long) rows() * columns() > MOST_KEPT ? new double[0][] : new double[rows()][columns()];
        Arrays.stream(known).forEach(row -> Arrays.fill(row, Double.NaN));
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
        boolean full = own.seating().count() == rubbers && other.seating().count() == rubbers;
        boolean anyOrder = problem.rules().isOrderFree() && full && rubbers <= MOST_RUBBERS_IN_ANY_ORDER;
        Optional<Side> ours = side(problem, own, !anyOrder);
        Optional<Side> theirs = ours.isEmpty() ? Optional.empty() : side(turned, other, !anyOrder);
        return theirs.map(side -> new SheetGame(problem, ours.get(), side, anyOrder));
    }

    private static Optional<Side> side(LineupProblem problem, Board board, boolean eachOrder) {
        List<int[]> lines = new ArrayList<>();
        if (board.seating().count() == 0) {
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
        List<Pair> candidates = DeciderPairs.all(problem.ours()).stream()
                .filter(pair -> Wishes.allowInDecider(problem, pair))
                .toList();
        Closers closers = new Closers(kind, problem.strengths(), problem.freshness(), candidates);
        List<Optional<LevelWorth.Sent>> sent = lines.stream()
                .map(line -> closers.sent(closers.rubbers(board.sheet(line))))
                .toList();
        return Optional.of(new Side(board, lines, sent));
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
        if (known.length == 0) {
            return work(row, column);
        }
        if (Double.isNaN(known[row][column])) {
            known[row][column] = work(row, column);
        }
        return known[row][column];
    }

    private double work(int row, int column) {
        DrawnChance level = level(ours.closers().get(row), theirs.closers().get(column));
        int[] own = ours.lines().get(row);
        int[] other = theirs.lines().get(column);
        double sum = 0;
        for (int[] order : orders) {
            sum += aim.mean(Board.rubbers(own, turned(order, other), means), level.mean());
        }
        double independent = sum / orders.length;
        return bestGuess ? independent : independent + shared(own, other, level);
    }

    /** What it adds that rubbers and decider share their doubt, by few of the draws: see {@link TieMean}. */
    private double shared(int[] own, int[] other, DrawnChance level) {
        double sum = 0;
        for (int[] order : orders) {
            sum += TieMean.shared(aim, TieMean.rubbers(own, turned(order, other), chances), level);
        }
        return sum / orders.length;
    }

    private int[] turned(int[] order, int[] other) {
        return anyOrder ? Arrays.stream(order).map(rubber -> other[rubber]).toArray() : other;
    }

    private DrawnChance level(Optional<LevelWorth.Sent> our, Optional<LevelWorth.Sent> their) {
        return deciders.computeIfAbsent(
                List.of(our, their),
                any -> our.isEmpty() || their.isEmpty()
                        ? DrawnChance.surely(our.isEmpty() ? 0 : 1)
                        : meetings.decider(
                                our.get().pair(),
                                our.get().loss(),
                                their.get().pair(),
                                their.get().loss()));
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
