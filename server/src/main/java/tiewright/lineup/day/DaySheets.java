package tiewright.lineup.day;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.tie.Board;
import tiewright.lineup.tie.Ranking;
import tiewright.lineup.tie.SheetSearch;
import tiewright.search.Stop;

/**
 * The sheets of one tie among which the plan of a day chooses: for each way to share out the rubbers among the players the
 * best few, for only who plays how often ties the ties of a day to each other.
 *
 * @param complete false: there were too many legal sheets to try, and the best of the way may be missing
 */
record DaySheets(List<DaySheet> sheets, long tried, boolean complete) {
    /** For each way to share out the rubbers; tiredness can make the second best pairing the better one. */
    private static final int KEPT = 3;

    private static final int MOST_SHEETS = 5_000;
    private static final long MOST_TRIED = 300_000;

    DaySheets {
        sheets = List.copyOf(sheets);
    }

    /** The best for each way to share out the rubbers. */
    DaySheets firsts() {
        Set<List<Integer>> seen = new HashSet<>();
        return new DaySheets(
                sheets.stream().filter(sheet -> seen.add(sheet.rubbers())).toList(), tried, complete);
    }

    private record Kept(int[] line, double value) {}

    static DaySheets of(DayProblem day, int tie, Stop stop) {
        DayProblem.Ahead ahead = day.ties().get(tie);
        LineupProblem problem = day.wanted().learning() ? ahead.problem().learning() : ahead.problem();
        Board board = new Board(problem);
        Map<Long, List<Kept>> best = new HashMap<>();
        long[] tried = {0};
        SheetSearch.End end = SheetSearch.run(board, board.orderMatters(), Ranking.MOST_STEPS, line -> {
            if (tried[0]++ == MOST_TRIED || stop.isPressed()) {
                return false;
            }
            keep(best.computeIfAbsent(key(board, line), key -> new ArrayList<>()), line, value(ahead, board, line));
            return true;
        });
        List<Kept> all = best.values().stream()
                .flatMap(List::stream)
                .sorted(Comparator.comparingDouble(Kept::value).reversed().thenComparing(Kept::line, Arrays::compare))
                .limit(MOST_SHEETS)
                .toList();
        List<PlayerId> players = day.players();
        List<DaySheet> sheets = new ArrayList<>();
        for (Kept kept : all) {
            sheets.add(sheet(tie, sheets.size(), board, kept.line(), players));
        }
        return new DaySheets(sheets, tried[0], end == SheetSearch.End.ALL_SEEN);
    }

    static double value(DayProblem.Ahead ahead, Board board, int[] line) {
        return ahead.weight() * board.worth().quick(line) + (1 - ahead.weight()) * DayProblem.BIT * board.learnt(line);
    }

    private static void keep(List<Kept> kept, int[] line, double value) {
        if (kept.size() < KEPT || value > kept.get(kept.size() - 1).value()) {
            kept.add(new Kept(line.clone(), value));
            kept.sort(Comparator.comparingDouble(Kept::value).reversed());
            if (kept.size() > KEPT) {
                kept.remove(KEPT);
            }
        }
    }

    /** Two bits for each player: how often named. */
    private static long key(Board board, int[] line) {
        long key = 0;
        for (int pair : line) {
            if (pair != Board.EMPTY) {
                key += 1L << 2 * board.players().indexOf(board.pairs().get(pair).first());
                key += 1L << 2 * board.players().indexOf(board.pairs().get(pair).second());
            }
        }
        return key;
    }

    private static DaySheet sheet(int tie, int number, Board board, int[] line, List<PlayerId> players) {
        int[] rubbers = new int[players.size()];
        double[] slopes = new double[players.size()];
        for (int rubber = 0; rubber < line.length; rubber++) {
            if (line[rubber] != Board.EMPTY) {
                Pair pair = board.pairs().get(line[rubber]);
                double half = slope(board, line, rubber) / 2; // a pair is as strong as the mean of its two
                for (PlayerId player : pair.players()) {
                    rubbers[players.indexOf(player)]++;
                    slopes[players.indexOf(player)] += half;
                }
            }
        }
        return new DaySheet(
                tie,
                number,
                board.sheet(line),
                board.worth().of(line),
                board.learnt(line),
                Arrays.stream(rubbers).boxed().toList(),
                Arrays.stream(slopes).boxed().toList());
    }

    /** What the aim loses for each rally in 100 that the pair of this rubber is weaker: change of the rubber's chance times what it moves. */
    private static double slope(Board board, int[] line, int rubber) {
        double sum = 0;
        for (int i = 0; i < board.weights().length; i++) {
            int theirs = board.expectedLines()[i][rubber];
            if (theirs != Board.EMPTY) {
                sum += board.weights()[i]
                        * board.rise(line[rubber], theirs)
                        * board.worth().swing(line, i, rubber);
            }
        }
        return sum;
    }
}
