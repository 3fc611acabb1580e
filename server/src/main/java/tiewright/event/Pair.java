package tiewright.event;

import java.util.List;

/** Two different players of one club, in code order, so that A with B equals B with A. */
public record Pair(PlayerId first, PlayerId second) implements Comparable<Pair> {
    public Pair {
        if (first.equals(second)) {
            throw new IllegalArgumentException("a pair needs two players, got " + first + " twice");
        }
        if (first.compareTo(second) > 0) {
            PlayerId swap = first;
            first = second;
            second = swap;
        }
    }

    public static Pair of(PlayerId one, PlayerId other) {
        return new Pair(one, other);
    }

    public static Pair of(String one, String other) {
        return new Pair(PlayerId.of(one), PlayerId.of(other));
    }

    /** Both, in the order of their codes. */
    public List<PlayerId> players() {
        return List.of(first, second);
    }

    public boolean has(PlayerId player) {
        return first.equals(player) || second.equals(player);
    }

    /** The partner of a player of this pair. */
    public PlayerId partnerOf(PlayerId player) {
        return first.equals(player) ? second : first;
    }

    @Override
    public int compareTo(Pair other) {
        int byFirst = first.compareTo(other.first);
        return byFirst != 0 ? byFirst : second.compareTo(other.second);
    }

    @Override
    public String toString() {
        return first + "+" + second;
    }
}
