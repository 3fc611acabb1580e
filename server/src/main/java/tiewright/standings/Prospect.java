package tiewright.standings;

/** Whether a club goes through from its table. */
public enum Prospect {
    /** Whatever else happens. */
    THROUGH,
    /** It depends on the rest. */
    OPEN,
    /** Whatever else happens, it does not. */
    OUT;

    static Prospect of(PlaceRange places, int through) {
        return places.worst() <= through ? THROUGH : places.best() > through ? OUT : OPEN;
    }
}
