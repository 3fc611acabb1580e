package tiewright.lineup.tie;

import java.util.Comparator;

/**
 * How good a sheet is: the captain's aim first, then how little it leaves missing to the playing time promised, then what it
 * would teach.
 *
 * <p>In steps of a billionth; where a promise of playing time hangs on the sheet or learning is wanted, the aim counts in whole thousandths (of a
 * chance, or of a rubber), so that they can decide.
 *
 * @param worth of the aim, in billionths
 * @param missing promised rubbers that the sheet leaves unkept
 * @param learning thousandths of a bit
 */
record Merit(long worth, int missing, int learning) implements Comparable<Merit> {
    static final long BILLION = 1_000_000_000L;
    private static final long THOUSANDTH = BILLION / 1_000;
    private static final Comparator<Merit> ORDER = Comparator.comparingLong(Merit::worth)
            .thenComparing(Comparator.comparingInt(Merit::missing).reversed())
            .thenComparingInt(Merit::learning);

    static Merit of(Board board, int[] line) {
        return of(board, line, board.worth().of(line));
    }

    /** By few draws, for a search. */
    static Merit rough(Board board, int[] line) {
        return of(board, line, board.worth().rough(line));
    }

    /** By the rubbers alone, for a first look. */
    static Merit quick(Board board, int[] line) {
        return of(board, line, board.worth().quick(line));
    }

    private static Merit of(Board board, int[] line, double aim) {
        long worth = Math.round(aim * BILLION);
        if (!board.isCoarse()) {
            return new Merit(worth, 0, 0);
        }
        return new Merit(
                Math.floorDiv(worth + THOUSANDTH / 2, THOUSANDTH) * THOUSANDTH,
                board.owed().missing(line),
                (int) Math.round(board.learnt(line) * 1_000));
    }

    @Override
    public int compareTo(Merit other) {
        return ORDER.compare(this, other);
    }
}
