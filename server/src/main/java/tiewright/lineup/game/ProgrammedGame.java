package tiewright.lineup.game;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.MaxIter;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.PivotSelectionRule;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;

/**
 * A game as two linear programmes (Chvatal, Linear Programming, chapter 15): with all payoffs made positive, the column
 * player's mix is the y >= 0 with the largest sum such that no row gets more than 1, divided by that sum; the row
 * player's mix is the same question asked of the mirrored game.
 */
final class ProgrammedGame {
    private static final int MOST_PIVOTS = 50_000;
    private static final int ROUNDS = 20_000;

    private ProgrammedGame() {}

    static Mixes solve(double[][] payoff) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double[] line : payoff) {
            for (double entry : line) {
                low = Math.min(low, entry);
                high = Math.max(high, entry);
            }
        }
        if (high == low) {
            return new Mixes(even(payoff.length), even(payoff[0].length));
        }
        double[][] forColumn = new double[payoff.length][payoff[0].length];
        double[][] forRow = new double[payoff[0].length][payoff.length];
        for (int i = 0; i < payoff.length; i++) {
            for (int j = 0; j < payoff[0].length; j++) {
                double share = (payoff[i][j] - low) / (high - low);
                forColumn[i][j] = 1 + share;
                forRow[j][i] = 2 - share;
            }
        }
        try {
            return new Mixes(columnMix(forRow), columnMix(forColumn));
        } catch (MathIllegalStateException stuck) {
            return RegretMatching.play(payoff, ROUNDS); // its gap is measured and told like any other
        }
    }

    private static double[] columnMix(double[][] positive) {
        try {
            return columnMix(positive, PivotSelectionRule.DANTZIG);
        } catch (MathIllegalStateException circling) {
            return columnMix(positive, PivotSelectionRule.BLAND);
        }
    }

    private static double[] columnMix(double[][] positive, PivotSelectionRule rule) {
        double[] ones = new double[positive[0].length];
        Arrays.fill(ones, 1);
        List<LinearConstraint> rows = new ArrayList<>();
        for (double[] row : positive) {
            rows.add(new LinearConstraint(row, Relationship.LEQ, 1));
        }
        double[] weights = new SimplexSolver(1e-12, 10, 1e-12)
                .optimize(
                        new MaxIter(MOST_PIVOTS),
                        new LinearObjectiveFunction(ones, 0),
                        new LinearConstraintSet(rows),
                        GoalType.MAXIMIZE,
                        new NonNegativeConstraint(true),
                        rule)
                .getPoint();
        double sum = Arrays.stream(weights).map(weight -> Math.max(0, weight)).sum();
        return Arrays.stream(weights).map(weight -> Math.max(0, weight) / sum).toArray();
    }

    private static double[] even(int size) {
        double[] weights = new double[size];
        Arrays.fill(weights, 1.0 / size);
        return weights;
    }
}
