package tiewright.lineup.game;

import java.util.Arrays;

/**
 * Nearly optimal mixes of a large game, by regret matching+ with alternating turns and linearly weighted averages
 * (Tammelin, Solving large imperfect information games using CFR+, arXiv 1407.5042; from memory). Here it only finds the
 * rows and columns worth starting from.
 */
final class RegretMatching {
    private final double[][] payoff;
    private final double[] rowRegret;
    private final double[] columnRegret;

    private RegretMatching(double[][] payoff) {
        this.payoff = payoff;
        this.rowRegret = new double[payoff.length];
        this.columnRegret = new double[payoff[0].length];
    }

    static Mixes play(double[][] payoff, int rounds) {
        return new RegretMatching(payoff).play(rounds);
    }

    private Mixes play(int rounds) {
        double[] rowSum = new double[rowRegret.length];
        double[] columnSum = new double[columnRegret.length];
        double[] row = mix(rowRegret);
        double[] column = mix(columnRegret);
        for (int round = 1; round <= rounds; round++) {
            gather(rowRegret, new Mixes(row, column).byRow(payoff), row, 1);
            row = mix(rowRegret);
            gather(columnRegret, new Mixes(row, column).byColumn(payoff), column, -1);
            column = mix(columnRegret);
            add(rowSum, row, round);
            add(columnSum, column, round);
        }
        return new Mixes(mix(rowSum), mix(columnSum));
    }

    private static void gather(double[] regret, double[] payoffs, double[] played, int sign) {
        double got = 0;
        for (int i = 0; i < played.length; i++) {
            got += played[i] * payoffs[i];
        }
        for (int i = 0; i < regret.length; i++) {
            regret[i] = Math.max(0, regret[i] + sign * (payoffs[i] - got));
        }
    }

    private static double[] mix(double[] weights) {
        double sum = Arrays.stream(weights).sum();
        double[] mix = new double[weights.length];
        for (int i = 0; i < mix.length; i++) {
            mix[i] = sum > 0 ? weights[i] / sum : 1.0 / mix.length;
        }
        return mix;
    }

    private static void add(double[] sums, double[] mix, double weight) {
        for (int i = 0; i < sums.length; i++) {
            sums[i] += weight * mix[i];
        }
    }
}
