package tiewright.event;

/** The short code of a club, used everywhere the club is named by the tool. */
public record ClubId(String code) implements Comparable<ClubId> {
    public ClubId {
        code = Codes.checked("club", code);
    }

    public static ClubId of(String code) {
        return new ClubId(code);
    }

    @Override
    public int compareTo(ClubId other) {
        return Codes.compare(code, other.code);
    }

    @Override
    public String toString() {
        return code;
    }
}
