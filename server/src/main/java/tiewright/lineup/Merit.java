package tiewright.lineup;

import java.util.Comparator;

/**
 * How good a sheet is: the tie chance first, then how little it leaves missing to the playing time promised.
 *
 * <p>In steps of a billionth; where playing time is promised the chance counts in whole tenths of a percentage point, so
 * that the promise can decide.
 *
 * @param chance in billionths
 * @param missing rubbers missing to the promise
 */
record Merit(long chance, int missing) implements Comparable<Merit> {
  static final long BILLION = 1_000_000_000L;
  private static final long TENTH_OF_A_POINT = BILLION / 1_000;
  private static final Comparator<Merit> ORDER = Comparator.comparingLong(Merit::chance).thenComparing(Comparator.comparingInt(Merit::missing).reversed());

  static Merit of(Board board, int[] line) {
    long chance = Math.round(board.worth(line) * BILLION);
    if (board.problem().playingTime().floor() == 0) {
      return new Merit(chance, 0);
    }
    return new Merit(Math.floorDiv(chance + TENTH_OF_A_POINT / 2, TENTH_OF_A_POINT) * TENTH_OF_A_POINT, board.shortOfPromise(line));
  }

  @Override
  public int compareTo(Merit other) {
    return ORDER.compare(this, other);
  }
}
