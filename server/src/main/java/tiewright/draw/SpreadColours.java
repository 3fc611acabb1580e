package tiewright.draw;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * An order of the groups that does not depend on their names, as far as two rounds of colour refinement can tell them
 * apart. Where they cannot, equal states may be counted twice, which costs time and nothing else.
 */
final class SpreadColours {
  private final int[][] in;
  private final int[] groups;
  private final int[] bins;

  SpreadColours(int binCount, int[][] in, IntFunction<String> binLook, IntFunction<String> groupLook) {
    this.in = in;
    this.bins = IntStream.range(0, binCount).map(b -> binLook.apply(b).hashCode()).toArray();
    this.groups = IntStream.range(0, in.length).map(g -> groupLook.apply(g).hashCode()).toArray();
  }

  List<Integer> sorted(int[] active) {
    for (int round = 0; round < 2; round++) {
      int[] groupsBefore = groups.clone();
      for (int g : active) {
        groups[g] = mixed(groups[g], IntStream.range(0, bins.length).filter(b -> in[g][b] > 0)
            .map(b -> 31 * bins[b] + in[g][b]).sorted().toArray());
      }
      for (int b = 0; b < bins.length; b++) {
        int bin = b;
        bins[b] = mixed(bins[b], Arrays.stream(active).filter(g -> in[g][bin] > 0)
            .map(g -> 31 * groupsBefore[g] + in[g][bin]).sorted().toArray());
      }
    }
    return Arrays.stream(active).boxed().sorted((a, b) -> Integer.compare(groups[a], groups[b])).toList();
  }

  private static int mixed(int colour, int[] neighbours) {
    return 0x9E3779B1 * (31 * colour + Arrays.hashCode(neighbours)) ^ colour >>> 15;
  }
}
