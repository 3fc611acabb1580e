package tiewright.rating;

import tiewright.scoring.Format;

/**
 * The chance of the serving side to win a rally between equal pairs.
 *
 * @param sideOut where only the server scores; {@code rally} where every rally is a point; both between 0 and 1
 */
public record ServeRates(double sideOut, double rally) {
    /** Serving is the harder side of a rally in either scoring (assumption of ours; timings in the room {@code timetable} rest on it too). */
    public static final ServeRates USUAL = new ServeRates(0.47, 0.44);

    /** An even rally where every rally is a point: for sums with a pencil. */
    public static final ServeRates PLAIN = new ServeRates(0.47, 0.50);

    public ServeRates {
        if (!(sideOut > 0 && sideOut < 1 && rally > 0 && rally < 1)) {
            throw new IllegalArgumentException("a serving side wins between none and all rallies");
        }
    }

    public static ServeRates of(double both) {
        return new ServeRates(both, both);
    }

    public double of(Format.Kind kind) {
        return kind == Format.Kind.SIDE_OUT ? sideOut : rally;
    }
}
