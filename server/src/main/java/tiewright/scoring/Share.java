package tiewright.scoring;

/**
 * So many of so many, with the 95 % interval of the share by Wilson (J. Am. Stat. Assoc. 22:209, 1927).
 *
 * @param count 0 to {@code of}
 * @param of at least 1
 */
public record Share(int count, int of) {
    /** Standard deviations on either side of the mean that hold 95 % of a normal distribution. */
    public static final double Z_95 = 1.959963984540054;

    public Share {
        if (of < 1 || count < 0 || count > of) {
            throw new IllegalArgumentException(count + " of " + of + " is no share");
        }
    }

    /** A fraction. */
    public double value() {
        return (double) count / of;
    }

    /** Lower end, a fraction. */
    public double low() {
        return count == 0 ? 0 : middle() - half();
    }

    /** Upper end, a fraction. */
    public double high() {
        return count == of ? 1 : middle() + half();
    }

    private double middle() {
        return (value() + Z_95 * Z_95 / (2 * of)) / (1 + Z_95 * Z_95 / of);
    }

    private double half() {
        double spread = value() * (1 - value()) / of + Z_95 * Z_95 / (4.0 * of * of);
        return Z_95 * Math.sqrt(spread) / (1 + Z_95 * Z_95 / of);
    }
}
