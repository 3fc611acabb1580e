package tiewright.timetable;

/** What a plan is judged by once it keeps everything that must hold, in this order. */
public enum Part {
    /** minutes that the last tie ends after the venue closes */
    OVERRUN("overrun"),
    /** minutes from the first slot to the end of the last tie */
    LENGTH("length"),
    /** idle waits: over all clubs the square of the longest wait between two ties, in slots */
    WAIT("wait"),
    /** ties that begin less than one slot after the club's last one ended */
    BACK_TO_BACK("back-to-back"),
    /** over all ties, by how many minutes one side has rested longer than the other; first ties count as even */
    UNEQUAL_REST("unequal-rest"),
    /** how often two ties of one club stand on the same courts although there are others */
    SAME_COURTS("same-courts"),
    /** umpire duties: over all clubs the square of their number */
    DUTIES("duties");

    private final String code;

    Part(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }
}
