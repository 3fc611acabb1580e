package tiewright.lineup;

import tiewright.rating.Draws;

/**
 * Some of the draws. All of them are part 1, its halves are 2 and 3, theirs 4 to 7, and so on down to the smallest; part 0 is none.
 */
public record SomeDraws(int part) {
    static final int PARTS = 64;

    public static final SomeDraws NONE = new SomeDraws(0);
    public static final SomeDraws ALL = new SomeDraws(1);

    /** As many as do where a search asks thousands of times. */
    public static final SomeDraws FEW = new SomeDraws(PARTS / 2);

    /** As many orders of theirs as need every draw; with more of them the draws are dealt out. */
    private static final int EACH_BY_ALL = 4;

    public SomeDraws {
        if (part < 0 || part >= PARTS) {
            throw new IllegalArgumentException("there is no part " + part);
        }
    }

    /** How many are left out before the first. */
    public int from() {
        return part == 0 ? 0 : (part - Integer.highestOneBit(part)) * count();
    }

    public int count() {
        return part == 0 ? 0 : Draws.COUNT / Integer.highestOneBit(part);
    }

    /**
     * The part by which one of many meetings is looked at, where only the mean over all of them counts: each by another part, all
     * together by every draw.
     *
     * @param meetings how many there are
     * @param which any number, the same for the same meeting
     */
    public static SomeDraws dealt(int meetings, int which) {
        int parts = Math.min(PARTS / 2, Integer.highestOneBit(Math.max(1, meetings / EACH_BY_ALL)));
        return new SomeDraws(parts + Math.floorMod(which, parts));
    }
}
