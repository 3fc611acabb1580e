package tiewright.lineup.club;

import java.util.List;

/**
 * By how much forecasts did better than a coin: the mean of what a coin loses on what happened, 0.693, less what they lost (natural
 * logs, as in {@link OwnRecord}).
 *
 * @param low end of the 95 % interval of that mean, by the normal approximation (common practice); {@code high} the other
 */
public record AgainstCoin(double mean, double low, double high) {
    private static final double SURE = 1.96;

    /** What can be said. */
    public enum Verdict {
        TOO_FEW,
        BETTER,
        WORSE,
        OPEN
    }

    static AgainstCoin of(List<OwnRecord.Scored> forecasts) {
        double[] gains = forecasts.stream()
                .mapToDouble(one -> Math.log(2) - OwnRecord.logLoss(one))
                .toArray();
        double sum = 0;
        double squares = 0;
        for (double gain : gains) {
            sum += gain;
            squares += gain * gain;
        }
        int count = Math.max(1, gains.length);
        double mean = sum / count;
        double variance = Math.max(0, squares / count - mean * mean) * count / Math.max(1, count - 1);
        double reach = SURE * Math.sqrt(variance / count);
        return new AgainstCoin(mean, mean - reach, mean + reach);
    }

    Verdict verdict(int forecasts) {
        if (forecasts < OwnRecord.ENOUGH) {
            return Verdict.TOO_FEW;
        }
        return low > 0 ? Verdict.BETTER : high < 0 ? Verdict.WORSE : Verdict.OPEN;
    }
}
