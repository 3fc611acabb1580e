package tiewright.rating;

import java.util.Random;

/** The seed of a randomised test: a new one each run, or the one of {@code -Dseed=}. Its text belongs into every failure. */
record Seed(long value) {
  static Seed fresh() {
    Seed seed = new Seed(Long.getLong("seed", System.nanoTime()));
    System.out.println(seed);
    return seed;
  }

  Random random() {
    return new Random(value);
  }

  @Override
  public String toString() {
    return "seed " + value + ", rerun with -Dseed=" + value;
  }
}
