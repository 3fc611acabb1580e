package tiewright.rating;

import java.util.HashMap;
import java.util.Map;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import tiewright.scoring.Format;
import tiewright.scoring.Score;

/**
 * The log of the chance of one final score for any edge of the side named first.
 *
 * <p>Worked out exactly by the chain at whole rallies in a hundred, when first asked for, and between them read off the
 * polynomial of fifth degree through six neighbours: to 1e-6 in value, slope and bend for edges up to 30 (tested). Beyond
 * an edge of 100 the curve goes on straight, as the log of a chance does there. Not for two threads at once.
 */
final class ScoreCurve implements Likelihood {
    private static final int FARTHEST = 100;
    private static final int NODES = 6;
    private static final double[][] THROUGH_NODES = throughNodes();

    private final ServeRates rates;
    private final Format format;
    private final Score score;
    private final Map<Integer, Double> exact = new HashMap<>();
    private final double[][] cells = new double[2 * FARTHEST][];

    ScoreCurve(ServeRates rates, Format format, Score score) {
        this.rates = rates;
        this.format = format;
        this.score = score;
    }

    /** From values at -2, -1, 0, 1, 2, 3 to the coefficients of the polynomial through them, lowest power first. */
    private static double[][] throughNodes() {
        RealMatrix powers = MatrixUtils.createRealMatrix(NODES, NODES);
        for (int row = 0; row < NODES; row++) {
            for (int power = 0; power < NODES; power++) {
                powers.setEntry(row, power, Math.pow(row - 2, power));
            }
        }
        return MatrixUtils.inverse(powers).getData();
    }

    @Override
    public double log(double edge) {
        double near = near(edge);
        double[] cell = cell(near);
        double t = near - Math.floor(near);
        double value = 0;
        for (int power = NODES - 1; power >= 0; power--) {
            value = value * t + cell[power];
        }
        return Math.min(0, value + (edge - near) * slope(near, cell));
    }

    @Override
    public double slope(double edge) {
        double near = near(edge);
        return slope(near, cell(near));
    }

    private static double slope(double near, double[] cell) {
        double t = near - Math.floor(near);
        double slope = 0;
        for (int power = NODES - 1; power >= 1; power--) {
            slope = slope * t + power * cell[power];
        }
        return slope;
    }

    @Override
    public double bend(double edge) {
        double near = near(edge);
        if (near != edge) {
            return 0;
        }
        double[] cell = cell(near);
        double t = near - Math.floor(near);
        double second = 0;
        for (int power = NODES - 1; power >= 2; power--) {
            second = second * t + power * (power - 1) * cell[power];
        }
        return -second;
    }

    private static double near(double edge) {
        return Math.max(-FARTHEST, Math.min(Math.nextDown((double) FARTHEST), edge));
    }

    private double[] cell(double near) {
        int from = (int) Math.floor(near);
        int place = from + FARTHEST;
        if (cells[place] == null) {
            double[] coefficients = new double[NODES];
            for (int node = 0; node < NODES; node++) {
                double value = exact.computeIfAbsent(
                        from + node - 2, edge -> RallyModel.logChance(rates, format, score, edge));
                for (int power = 0; power < NODES; power++) {
                    coefficients[power] += THROUGH_NODES[power][node] * value;
                }
            }
            cells[place] = coefficients;
        }
        return cells[place];
    }
}
