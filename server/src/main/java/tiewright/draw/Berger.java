package tiewright.draw;

import java.util.ArrayList;
import java.util.List;

/**
 * In which round which numbers of a pool meet, by the Berger tables (FIDE Handbook C.05, Annex 1).
 *
 * <p>In round 1 the last number meets 1; from round to round its opponent moves on by half the field. The last number
 * is named second in odd rounds and first in even ones. With an odd entry the highest number of the table stands for
 * the bye, and its pairing is left out.
 */
public final class Berger {
    public static final int LARGEST = 16;

    /** Two numbers of a pool, from 1; home is the one named first in the table. */
    public record Pairing(int home, int away) {}

    private Berger() {}

    /**
     * The rounds for n clubs in the order of the table.
     *
     * @param n 2 to {@value #LARGEST}
     * @return n - 1 rounds of n/2 pairings for even n, n rounds of (n - 1)/2 for odd n
     */
    public static List<List<Pairing>> rounds(int n) {
        if (n < 2 || n > LARGEST) {
            throw new IllegalArgumentException("a pool has 2 to " + LARGEST + " clubs, not " + n);
        }
        int table = n + n % 2;
        List<List<Pairing>> rounds = new ArrayList<>();
        for (int round = 1; round < table; round++) {
            rounds.add(round(round, table).stream()
                    .filter(p -> p.home() <= n && p.away() <= n)
                    .toList());
        }
        return List.copyOf(rounds);
    }

    /** The round, from 1, in which two different numbers meet. */
    static int roundOf(int one, int other, int n) {
        List<List<Pairing>> rounds = rounds(n);
        for (int r = 0; r < rounds.size(); r++) {
            if (rounds.get(r).contains(new Pairing(one, other)) || rounds.get(r).contains(new Pairing(other, one))) {
                return r + 1;
            }
        }
        throw new IllegalArgumentException(one + " and " + other + " do not meet among " + n);
    }

    private static List<Pairing> round(int round, int table) {
        int circle = table - 1;
        int top = 1 + (round - 1) * (table / 2) % circle;
        List<Pairing> pairings = new ArrayList<>();
        pairings.add(round % 2 == 1 ? new Pairing(top, table) : new Pairing(table, top));
        for (int step = 1; step < table / 2; step++) {
            pairings.add(new Pairing(on(circle, top + step), on(circle, top - step)));
        }
        return pairings;
    }

    private static int on(int circle, int number) {
        return Math.floorMod(number - 1, circle) + 1;
    }
}
