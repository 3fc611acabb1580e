package tiewright.lineup.game;

import java.util.Arrays;
import java.util.BitSet;
import java.util.stream.IntStream;

/**
 * Solves a large game on few of its rows and columns: those of a rough answer first, then again and again the best ones
 * left out, until none is better.
 */
final class DoubleOracle {
    /** Up to here the whole matrix is one linear programme. */
    private static final int SMALL = 130;

    private static final int ROUGH_ROUNDS = 120;
    private static final int START = 60;
    private static final int MORE = 12;
    private static final int MOST_ROUNDS = 400;
    private static final double CLOSED = 1e-11; // of the largest payoff

    private final double[][] payoff;
    private final BitSet rows = new BitSet();
    private final BitSet columns = new BitSet();

    private DoubleOracle(double[][] payoff) {
        this.payoff = payoff;
    }

    static Mixes solve(double[][] payoff) {
        return new DoubleOracle(payoff).solve();
    }

    private Mixes solve() {
        if (payoff.length <= SMALL && payoff[0].length <= SMALL) {
            rows.set(0, payoff.length);
            columns.set(0, payoff[0].length);
            return onChosen();
        }
        Mixes best = RegretMatching.play(payoff, ROUGH_ROUNDS);
        double bestGap = gap(best);
        choose(rows, best.row(), START);
        choose(columns, best.column(), START);
        for (int round = 0; round < MOST_ROUNDS && bestGap > CLOSED; round++) {
            Mixes mixes = onChosen();
            double gap = gap(mixes);
            if (gap < bestGap) {
                best = mixes;
                bestGap = gap;
            }
            if (!grow(mixes)) {
                break;
            }
        }
        return best;
    }

    private double gap(Mixes mixes) {
        return mixes.ceiling(payoff) - mixes.guarantee(payoff);
    }

    /** Adds the best rows and columns left out; false if there is none that is better. */
    private boolean grow(Mixes mixes) {
        double[] byRow = mixes.byRow(payoff);
        double[] byColumn = mixes.byColumn(payoff);
        double value = rows.stream().mapToDouble(i -> byRow[i]).max().orElseThrow();
        int before = rows.cardinality() + columns.cardinality();
        IntStream.range(0, byRow.length)
                .filter(i -> byRow[i] > value + CLOSED / 2 && !rows.get(i))
                .boxed()
                .sorted((a, b) -> Double.compare(byRow[b], byRow[a]))
                .limit(MORE)
                .forEach(rows::set);
        double held = columns.stream().mapToDouble(j -> byColumn[j]).min().orElseThrow();
        IntStream.range(0, byColumn.length)
                .filter(j -> byColumn[j] < held - CLOSED / 2 && !columns.get(j))
                .boxed()
                .sorted((a, b) -> Double.compare(byColumn[a], byColumn[b]))
                .limit(MORE)
                .forEach(columns::set);
        return rows.cardinality() + columns.cardinality() > before;
    }

    private static void choose(BitSet chosen, double[] weights, int most) {
        IntStream.range(0, weights.length)
                .boxed()
                .sorted((a, b) -> Double.compare(weights[b], weights[a]))
                .limit(most)
                .forEach(chosen::set);
    }

    private Mixes onChosen() {
        int[] some = rows.stream().toArray();
        int[] others = columns.stream().toArray();
        double[][] part = new double[some.length][others.length];
        for (int i = 0; i < some.length; i++) {
            for (int j = 0; j < others.length; j++) {
                part[i][j] = payoff[some[i]][others[j]];
            }
        }
        Mixes mixes = ProgrammedGame.solve(part);
        return new Mixes(spread(mixes.row(), some, payoff.length), spread(mixes.column(), others, payoff[0].length));
    }

    private static double[] spread(double[] weights, int[] places, int size) {
        double[] all = new double[size];
        Arrays.setAll(all, i -> 0);
        for (int i = 0; i < places.length; i++) {
            all[places[i]] = weights[i];
        }
        return all;
    }
}
