package tiewright.lineup.tie;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import tiewright.search.Stop;

/**
 * The best sheets of a problem, by trying every one.
 *
 * @param best the best first; equal ones in the order in which they were found
 * @param tried sheets that were tried
 * @param complete false: there were too many, and these are the best of those tried
 */
public record Ranking(List<Ranked> best, long tried, boolean complete) {
    /** Sheets that are tried at most. */
    static final long MOST_SHEETS = 1_000_000;

    /** Places tried at most while going through them, where wishes leave few sheets of very many. */
    public static final long MOST_STEPS = 6_000_000;

    /** Chances worked out at most: sheets of ours times sheets of theirs; some ten seconds. */
    private static final long MOST_CHANCES = 100_000_000;

    /**
     * Chances worked out over all draws of the strengths, at most: where there are more, the sheets that are best by their rubbers
     * alone are looked at so, and what that leaves out lies within a few thousandths.
     */
    private static final int FIRST_LOOK = 10_000;

    /**
     * How much more than to any sheet looked at before sharing its doubt may add to a sheet. In simulated ties it adds to two sheets of a
     * problem what differs by less; what this leaves out lies within a thousandth.
     */
    private static final long MORE_ADDED = Merit.BILLION / 100;

    /** @param found when it was found, from 0 */
    public record Ranked(int[] line, Merit merit, long found) {}

    private static final Comparator<Ranked> WORST_FIRST = Comparator.comparing(Ranked::merit)
            .thenComparing(Comparator.comparingLong(Ranked::found).reversed());

    /** @param eachOrder see {@link SheetSearch} */
    public static Ranking of(Board board, boolean eachOrder, int count) {
        return of(board, eachOrder, count, new Stop());
    }

    public static Ranking of(Board board, boolean eachOrder, int count, Stop stop) {
        FirstLook look = FirstLook.of(board, eachOrder, count, stop);
        List<Ranked> best =
                best(look.sheets(), count).stream().map(Among::sheet).toList();
        return new Ranking(best, look.tried(), look.complete());
    }

    /** The best sheet of several problems, each with its own players here; empty where none of them has one. */
    static Optional<Among> bestOf(List<Board> boards) {
        List<Among> all = new ArrayList<>();
        for (Board board : boards) {
            all.addAll(FirstLook.of(board, board.orderMatters(), 1, new Stop()).sheets());
        }
        return best(all, 1).stream().findFirst();
    }

    /** A sheet, and the problem that it is one of. */
    record Among(Board board, Ranked sheet) {
        private static final Comparator<Among> WORST_FIRST = Comparator.comparing(Among::sheet, Ranking.WORST_FIRST);

        private Among byAllDraws() {
            return new Among(board, new Ranked(sheet.line(), Merit.of(board, sheet.line()), sheet.found()));
        }

        private long worth() {
            return sheet.merit().worth();
        }
    }

    /** The best by their rubbers alone. */
    private record FirstLook(List<Among> sheets, long tried, boolean complete) {
        static FirstLook of(Board board, boolean eachOrder, int count, Stop stop) {
            PriorityQueue<Ranked> kept = new PriorityQueue<>(WORST_FIRST);
            int looked = Math.max(count, FIRST_LOOK / board.weights().length);
            long most = most(board);
            long[] tried = {0};
            SheetSearch.End end = SheetSearch.run(board, eachOrder, MOST_STEPS, line -> {
                if (tried[0] == most || stop.isPressed()) {
                    return false;
                }
                kept.add(new Ranked(line.clone(), Merit.quick(board, line), tried[0]++));
                if (kept.size() > looked) {
                    kept.poll();
                }
                return true;
            });
            List<Among> sheets =
                    kept.stream().map(sheet -> new Among(board, sheet)).toList();
            return new FirstLook(sheets, tried[0], end == SheetSearch.End.ALL_SEEN);
        }
    }

    /** By all draws: from the best by their rubbers alone on, until what sharing adds makes up for the distance no more. */
    private static List<Among> best(List<Among> firstLook, int count) {
        PriorityQueue<Among> best = new PriorityQueue<>(Among.WORST_FIRST);
        long mostAdded = 0;
        for (Among quick :
                firstLook.stream().sorted(Among.WORST_FIRST.reversed()).toList()) {
            if (best.size() == count
                    && quick.worth() + mostAdded + MORE_ADDED < best.element().worth()) {
                break;
            }
            Among whole = quick.byAllDraws();
            long added = whole.worth() - quick.worth();
            mostAdded = best.isEmpty() ? added : Math.max(mostAdded, added);
            best.add(whole);
            if (best.size() > count) {
                best.poll();
            }
        }
        return best.stream().sorted(Among.WORST_FIRST.reversed()).toList();
    }

    /** Sheets of this problem that are tried at most. */
    static long most(Board board) {
        return Math.min(MOST_SHEETS, MOST_CHANCES / board.weights().length);
    }
}
