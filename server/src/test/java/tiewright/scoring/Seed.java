package tiewright.scoring;

import java.util.OptionalInt;
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

  /** Any format to at most {@code most} points, all kinds and endings. */
  static Format format(Random random, int most) {
    int target = 1 + random.nextInt(most);
    OptionalInt cap = random.nextInt(3) == 0 ? OptionalInt.of(target + random.nextInt(8)) : OptionalInt.empty();
    Format.Kind kind = random.nextBoolean() ? Format.Kind.RALLY : Format.Kind.SIDE_OUT;
    return new Format(kind, target, random.nextInt(4) == 0, cap, random.nextInt(3) == 0);
  }

  @Override
  public String toString() {
    return "seed " + value + ", rerun with -Dseed=" + value;
  }
}
