package tiewright.plainfiles;

import java.util.Random;

/** The seed of a run: {@code -Dseed=N} repeats one, else a new one is taken; every random test prints it on failure. */
final class Seed {
  static final long VALUE = Long.getLong("seed", System.nanoTime() & 0xffffff);

  static Random random(int round) {
    return new Random(VALUE * 1_000_003 + round);
  }

  static String rerun(int round) {
    return "round " + round + ", rerun with -Dseed=" + VALUE;
  }

  private Seed() {}
}
