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
        this.bins = IntStream.range(0, binCount)
                .map(b -> binLook.apply(b).hashCode())
                .toArray();
        this.groups = IntStream.range(0, in.length)
                .map(g -> groupLook.apply(g).hashCode())
                .toArray();
    }

    List<Integer> sorted(int[] active) {
        for (int round = 0; round < 2; round++) {
            int[] groupsBefore = groups.clone();
            for (int g : active) {
                colourGroup(g);
            }
            for (int b = 0; b < bins.length; b++) {
                colourBin(b, active, groupsBefore);
            }
        }
        return Arrays.stream(active)
                .boxed()
                .sorted((a, b) -> Integer.compare(groups[a], groups[b]))
                .toList();
    }

    private void colourGroup(int g) {
        int[] seen = new int[bins.length];
        int n = 0;
        for (int b = 0; b < bins.length; b++) {
            if (in[g][b] > 0) {
                seen[n++] = 31 * bins[b] + in[g][b];
            }
        }
        groups[g] = mixed(groups[g], seen, n);
    }

    private void colourBin(int b, int[] active, int[] groupsBefore) {
        int[] seen = new int[active.length];
        int n = 0;
        for (int g : active) {
            if (in[g][b] > 0) {
                seen[n++] = 31 * groupsBefore[g] + in[g][b];
            }
        }
        bins[b] = mixed(bins[b], seen, n);
    }

    /** The first n of the neighbours, in whatever order. */
    private static int mixed(int colour, int[] neighbours, int n) {
        Arrays.sort(neighbours, 0, n);
        int hash = 1;
        for (int i = 0; i < n; i++) {
            hash = 31 * hash + neighbours[i];
        }
        return 0x9E3779B1 * (31 * colour + hash) ^ colour >>> 15;
    }
}
