package tiewright.lineup.tie;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
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
        PriorityQueue<Ranked> kept = new PriorityQueue<>(WORST_FIRST);
        int looked = Math.max(count, FIRST_LOOK / board.weights().length);
        long most = most(board);
        long[] tried = {0};
        SheetSearch.End end = SheetSearch.run(board, eachOrder, MOST_STEPS, line -> {
            if (tried[0] == most || stop.isPressed()) {
                return false;
            }
            Ranked ranked = new Ranked(line.clone(), Merit.quick(board, line), tried[0]++);
            kept.add(ranked);
            if (kept.size() > looked) {
                kept.poll();
            }
            return true;
        });
        return new Ranking(best(board, kept, count), tried[0], end == SheetSearch.End.ALL_SEEN);
    }

    /** By all draws: from the best by their rubbers alone on, until what sharing adds makes up for the distance no more. */
    private static List<Ranked> best(Board board, Collection<Ranked> firstLook, int count) {
        PriorityQueue<Ranked> best = new PriorityQueue<>(WORST_FIRST);
        long mostAdded = 0;
        for (Ranked quick : firstLook.stream().sorted(WORST_FIRST.reversed()).toList()) {
            long most = quick.merit().worth() + mostAdded + MORE_ADDED;
            if (best.size() == count && most < best.element().merit().worth()) {
                break;
            }
            Ranked whole = new Ranked(quick.line(), Merit.of(board, quick.line()), quick.found());
            long added = whole.merit().worth() - quick.merit().worth();
            mostAdded = best.isEmpty() ? added : Math.max(mostAdded, added);
            best.add(whole);
            if (best.size() > count) {
                best.poll();
            }
        }
        return best.stream().sorted(WORST_FIRST.reversed()).toList();
    }

    /** Sheets of this problem that are tried at most. */
    static long most(Board board) {
        return Math.min(MOST_SHEETS, MOST_CHANCES / board.weights().length);
    }
}
