package tiewright;

import java.util.Random;

/** The seed of a randomised test: a new one each run, or the one of {@code -Dseed=}. Its text belongs into every failure. */
public record Seed(long value) {
    private static final Seed OF_THIS_RUN = new Seed(Long.getLong("seed", System.nanoTime() & 0xffffff));

    /** A seed for one test, printed at once. */
    public static Seed fresh() {
        Seed seed = new Seed(Long.getLong("seed", System.nanoTime()));
        System.out.println(seed);
        return seed;
    }

    public Random random() {
        return new Random(value);
    }

    /** The chance of one round of a test that goes round many times. */
    public static Random random(int round) {
        return new Random(OF_THIS_RUN.value * 1_000_003 + round);
    }

    /** To stand beside what is asserted in a round. */
    public static String rerun(int round) {
        return "round " + round + ", rerun with -Dseed=" + OF_THIS_RUN.value;
    }

    @Override
    public String toString() {
        return "seed " + value + ", rerun with -Dseed=" + value;
    }
}
