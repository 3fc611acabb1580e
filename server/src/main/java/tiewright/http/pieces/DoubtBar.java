package tiewright.http.pieces;

/**
 * An estimate with its doubt: a dot, a whisker and how much it rests on. All numbers in one unit.
 *
 * @param words the estimate and its interval for people ("53 %, likely 48 to 58")
 * @param counted what it rests on ("n = 90 rallies")
 * @param low lower end of the interval
 * @param best the estimate
 * @param high upper end of the interval
 * @param from left end of the axis
 * @param to right end of the axis
 * @param even where neither side is ahead, drawn as a dashed line
 */
public record DoubtBar(
        String label,
        String words,
        String counted,
        double low,
        double best,
        double high,
        double from,
        double to,
        double even) {

    public DoubtBar {
        if (!(from < to && low <= best && best <= high)) {
            throw new IllegalArgumentException("not an interval: " + low + ", " + best + ", " + high);
        }
    }

    /** Place of a value on the axis in per cent of its length, kept within it. */
    public String at(double value) {
        double share = Math.max(0, Math.min(1, (value - from) / (to - from)));
        return Math.round(share * 1000) / 10.0 + "%";
    }
}
