package tiewright.draw;

import java.util.ArrayList;
import java.util.List;
import tiewright.conditions.Seeding;

/**
 * The lines of a bracket that belong to each group of seeds: 1, 2, 3-4, 5-8, 9-16. Lines count from 1 at the top.
 *
 * <p>Tennis: 1 and 2 at top and bottom; 3-4 at the top of the second and the bottom of the third quarter (16 lines: 5
 * and 12; ITF Pro Circuit Rulebook 2015, Women's Circuit, p. 63); then in the sections still without a seed, at the
 * bottom in the upper half and at the top in the lower one (5-8 of 32 lines: 8, 16, 17, 25; from memory; smaller
 * sections: no source). Halves: 3-4 at the bottom of the first half and the top of the second, 5-8 at the bottoms of the
 * odd quarters and the tops of the even ones, 9-16 likewise with eighths (ITTF 3.6.2).
 */
final class SeedLines {
    private SeedLines() {}

    /** The groups in order, half of the lines in all: one line of every first-round match. */
    static List<List<Integer>> groups(int lines, Seeding seeding) {
        List<List<Integer>> groups = new ArrayList<>();
        groups.add(List.of(1));
        if (lines >= 4) {
            groups.add(List.of(lines));
        }
        for (int size = 2; size * 4 <= lines; size *= 2) {
            groups.add(seeding == Seeding.HALVES ? inner(lines, size) : tennis(lines, size, groups));
        }
        return List.copyOf(groups);
    }

    /** The group, from 0, of a seed from 1. */
    static int groupOf(int seed) {
        return seed == 1 ? 0 : 32 - Integer.numberOfLeadingZeros(seed - 1);
    }

    private static List<Integer> inner(int lines, int sections) {
        List<Integer> group = new ArrayList<>();
        int length = lines / sections;
        for (int s = 0; s < sections; s++) {
            group.add(s % 2 == 0 ? (s + 1) * length : s * length + 1);
        }
        return group;
    }

    private static List<Integer> tennis(int lines, int size, List<List<Integer>> before) {
        List<Integer> taken = before.stream().flatMap(List::stream).toList();
        List<Integer> group = new ArrayList<>();
        int length = lines / size / 2;
        for (int top = 1; top <= lines; top += length) {
            int bottom = top + length - 1;
            int from = top;
            if (taken.stream().noneMatch(line -> line >= from && line <= bottom)) {
                boolean atTop = size == 2 == (top <= lines / 2);
                group.add(atTop ? top : bottom);
            }
        }
        return group;
    }
}
