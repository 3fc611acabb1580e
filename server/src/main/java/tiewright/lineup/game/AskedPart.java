package tiewright.lineup.game;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * The rows and columns of a large game that have been asked for. Of what lies outside only the columns and rows that are weighed
 * just now are kept, so that a round works out what is new in it and nothing of the size of the whole.
 */
final class AskedPart {
    private final OracleGame.Payoff payoff;
    private final List<Integer> rows = new ArrayList<>();
    private final List<Integer> columns = new ArrayList<>();
    private final Map<Integer, double[]> wholeColumns = new HashMap<>();
    private final Map<Integer, double[]> wholeRows = new HashMap<>();
    private double[][] payoffs = new double[0][0];

    AskedPart(OracleGame.Payoff payoff) {
        this.payoff = payoff;
        grow(List.of(0), List.of(0));
    }

    void grow(List<Integer> moreRows, List<Integer> moreColumns) {
        rows.addAll(moreRows);
        columns.addAll(moreColumns);
        double[][] before = payoffs;
        payoffs = new double[rows.size()][columns.size()];
        for (int i = 0; i < payoffs.length; i++) {
            for (int j = 0; j < payoffs[i].length; j++) {
                boolean known = i < before.length && j < before[i].length;
                payoffs[i][j] = known ? before[i][j] : payoff.at(rows.get(i), columns.get(j));
            }
        }
    }

    List<Integer> rows() {
        return rows;
    }

    List<Integer> columns() {
        return columns;
    }

    /** Of these rows against these columns. */
    double[][] payoffs() {
        return payoffs;
    }

    /** What every row of the game gets against this mix of the columns. */
    double[] byRow(double[] mix) {
        return mean(wholeColumns, columns, mix, column -> each(payoff.rows(), row -> payoff.at(row, column)));
    }

    /** What every column of the game gives away against this mix of the rows. */
    double[] byColumn(double[] mix) {
        return mean(wholeRows, rows, mix, row -> each(payoff.columns(), column -> payoff.at(row, column)));
    }

    private static double[] mean(
            Map<Integer, double[]> known, List<Integer> places, double[] mix, IntFunction<double[]> work) {
        int[] weighed = IntStream.range(0, mix.length)
                .filter(i -> mix[i] > OracleGame.NO_WEIGHT)
                .toArray();
        known.keySet().retainAll(Arrays.stream(weighed).mapToObj(places::get).toList());
        double[] sum = new double[0];
        for (int i : weighed) {
            double[] one = known.computeIfAbsent(places.get(i), work::apply);
            sum = sum.length == 0 ? new double[one.length] : sum;
            for (int at = 0; at < sum.length; at++) {
                sum[at] += mix[i] * one[at];
            }
        }
        return sum;
    }

    private static double[] each(int size, IntToDoubleFunction worth) {
        double[] all = new double[size];
        Arrays.setAll(all, worth);
        return all;
    }
}
