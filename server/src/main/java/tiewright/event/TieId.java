package tiewright.event;

/** The code of a tie (club v club), such as {@code A1} or {@code SF1}. */
public record TieId(String code) implements Comparable<TieId> {
    public TieId {
        code = Codes.checked("tie", code);
    }

    public static TieId of(String code) {
        return new TieId(code);
    }

    @Override
    public int compareTo(TieId other) {
        return Codes.compare(code, other.code);
    }

    @Override
    public String toString() {
        return code;
    }
}
