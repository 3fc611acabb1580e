package tiewright.event;

/** The code of a player; a name is never part of it, so that a fact can hold it for ever. */
public record PlayerId(String code) implements Comparable<PlayerId> {
    public PlayerId {
        code = Codes.checked("player", code);
    }

    public static PlayerId of(String code) {
        return new PlayerId(code);
    }

    @Override
    public int compareTo(PlayerId other) {
        return Codes.compare(code, other.code);
    }

    @Override
    public String toString() {
        return code;
    }
}
