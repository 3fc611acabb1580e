package tiewright.draw;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where a spread of members over bins stands: how much room each bin has, which groups are in it, who is left, and what
 * the rest may still cost. A bin is a pool or a first-round match; a group is a town or a pool whose clubs should not
 * meet there. Immutable.
 */
final class SpreadState {
    /**
     * What members have in common. Kinds are placed in the order of the list.
     *
     * @param tag the seed group whose bins they must enter, or -1 for any bin
     * @param takes how much room: 2 for a seed with a bye
     * @param bye true for a bye itself, which belongs to no group and reserves the bin for {@code byeTaker}s
     * @param first true for the first of a pool, whose half its second should avoid
     * @param avoidsFirst true for the second of a pool
     * @param free true for members without a group that matters; only as the last kind
     */
    record Kind(int tag, int takes, boolean bye, boolean first, boolean avoidsFirst, boolean byeTaker, boolean free) {
        static final Kind GROUPED = new Kind(-1, 1, false, false, false, true, false);
        static final Kind FREE = new Kind(-1, 1, false, false, false, true, true);
    }

    /** A member to be placed: its group and the place of its kind in the list. */
    record Member(int group, int kind) {}

    /** What is known of a bin: its room, its half (0 upper, 1 lower) and the seed group whose line it has, or -1. */
    record Bin(int room, int half, int tag, boolean reserved) {
        Bin filled(Kind kind) {
            return new Bin(room - kind.takes(), half, kind.tag() >= 0 ? -1 : tag, reserved || kind.bye());
        }
    }

    private final List<Kind> kinds;
    private final Bin[] bins;
    private final int[][] in;
    private final int[][] left;
    private final int[] halfOfFirst;
    private final int meetings;
    private final int halves;

    private SpreadState(
            List<Kind> kinds, Bin[] bins, int[][] in, int[][] left, int[] halfOfFirst, int meetings, int halves) {
        this.kinds = kinds;
        this.bins = bins;
        this.in = in;
        this.left = left;
        this.halfOfFirst = halfOfFirst;
        this.meetings = meetings;
        this.halves = halves;
    }

    /** Nobody placed, all of {@code members} left, no limit to the cost. */
    static SpreadState start(List<Kind> kinds, List<Bin> bins, int groups, List<Member> members) {
        int[][] left = new int[groups][kinds.size()];
        members.forEach(m -> left[m.group()][m.kind()]++);
        int[] halfOfFirst = new int[groups];
        Arrays.fill(halfOfFirst, -1);
        int[][] in = new int[groups][bins.size()];
        return new SpreadState(
                kinds, bins.toArray(Bin[]::new), in, left, halfOfFirst, Integer.MAX_VALUE / 2, Integer.MAX_VALUE / 2);
    }

    SpreadState withBudget(int mostMeetings, int mostHalves) {
        return new SpreadState(kinds, bins, in, left, halfOfFirst, mostMeetings, mostHalves);
    }

    int bins() {
        return bins.length;
    }

    Bin bin(int bin) {
        return bins[bin];
    }

    boolean allows(Member member, int bin) {
        Kind kind = kinds.get(member.kind());
        Bin b = bins[bin];
        return b.room() >= kind.takes()
                && (kind.tag() < 0 || kind.tag() == b.tag())
                && (kind.byeTaker() || !b.reserved());
    }

    SpreadState put(Member member, int bin) {
        Kind kind = kinds.get(member.kind());
        int g = member.group();
        Bin[] newBins = bins.clone();
        newBins[bin] = bins[bin].filled(kind);
        int[][] newLeft = withRow(left, g, member.kind(), -1);
        if (kind.bye() || kind.free()) {
            return new SpreadState(kinds, newBins, in, newLeft, halfOfFirst, meetings, halves);
        }
        int[] newHalf = halfOfFirst;
        if (kind.first()) {
            newHalf = halfOfFirst.clone();
            newHalf[g] = bins[bin].half();
        }
        int wrongHalf = kind.avoidsFirst() && halfOfFirst[g] == bins[bin].half() ? 1 : 0;
        return new SpreadState(
                kinds, newBins, withRow(in, g, bin, 1), newLeft, newHalf, meetings - in[g][bin], halves - wrongHalf);
    }

    private static int[][] withRow(int[][] rows, int row, int column, int change) {
        int[][] copy = rows.clone();
        copy[row] = rows[row].clone();
        copy[row][column] += change;
        return copy;
    }

    /** The member placed next in a count: the first kind that has any left, its first group. */
    Member next() {
        for (int kind = 0; kind < kinds.size(); kind++) {
            for (int group = 0; group < left.length; group++) {
                if (left[group][kind] > 0) {
                    return new Member(group, kind);
                }
            }
        }
        throw new IllegalStateException("nobody is left");
    }

    boolean onlyFreeLeft() {
        for (int[] ofGroup : left) {
            for (int k = 0; k < kinds.size(); k++) {
                if (ofGroup[k] > 0 && !kinds.get(k).free()) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Members without a group that matters go anywhere: n! over the product of the rooms' factorials. */
    BigInteger waysOfTheFree() {
        int free = Arrays.stream(left).flatMapToInt(Arrays::stream).sum();
        BigInteger ways = factorial(free);
        if (free > 0) {
            for (Bin bin : bins) {
                ways = ways.divide(factorial(bin.room()));
            }
        }
        return ways;
    }

    private static BigInteger factorial(int n) {
        return IntStream.rangeClosed(2, n).mapToObj(BigInteger::valueOf).reduce(BigInteger.ONE, BigInteger::multiply);
    }

    boolean overBudget() {
        return meetings < 0 || halves < 0 || (meetings > 0 && fewestMeetings() > meetings);
    }

    /** A lower bound: every group spread as evenly as it can be, were there room everywhere. */
    int fewestMeetings() {
        int sum = 0;
        for (int g = 0; g < in.length; g++) {
            sum += fewestMeetings(in[g].clone(), membersLeft(g));
        }
        return sum;
    }

    private static int fewestMeetings(int[] load, int more) {
        int sum = 0;
        for (int i = 0; i < more; i++) {
            int least = 0;
            for (int bin = 1; bin < load.length; bin++) {
                least = load[bin] < load[least] ? bin : least;
            }
            sum += load[least]++;
        }
        return sum;
    }

    int membersLeft(int group) {
        int sum = 0;
        for (int k = 0; k < kinds.size(); k++) {
            sum += kinds.get(k).bye() || kinds.get(k).free() ? 0 : left[group][k];
        }
        return sum;
    }

    int membersWithAHalf() {
        return IntStream.range(0, kinds.size())
                .filter(k -> kinds.get(k).avoidsFirst())
                .map(k -> Arrays.stream(left).mapToInt(l -> l[k]).sum())
                .sum();
    }

    /** How a bin looks to those who are left: equal looks allow equally many ways. */
    String look(int bin) {
        return new SpreadLooks(this).ofBin(bin);
    }

    /** The same for states that differ only in the names of bins and groups; never the same for states that differ otherwise. */
    String key() {
        return new SpreadLooks(this).key();
    }

    int groups() {
        return in.length;
    }

    /** How many members of a group are in each bin, by group and bin; not to be changed. */
    int[][] in() {
        return in;
    }

    List<Kind> kinds() {
        return kinds;
    }

    /** How many of a kind a group has left. */
    int left(int group, int kind) {
        return left[group][kind];
    }

    /** The half in which the first of a group stands, or -1. */
    int halfOfFirst(int group) {
        return halfOfFirst[group];
    }

    /** What the rest may still cost, in words for a key. */
    String budget() {
        return meetings + "/" + halves;
    }
}
