package tiewright.rating;

/** What a line of the ratings is good for. */
public enum Verdict {
    /** Too few rallies on film: mostly scores and the captain's own judgement. */
    NOT_ENOUGH_FILM("not-enough-film"),
    /** These two hardly ever play with anybody else: only the pair as a whole is known. */
    CANNOT_TELL_APART("cannot-tell-apart"),
    /** Enough rallies to look at, too few to act on. */
    FIRST_LOOK("first-look"),
    /** Above 0 with a chance of at least 90 %. */
    ABOVE("above"),
    /** Below 0 with a chance of at least 90 %. */
    BELOW("below"),
    /** Enough film, and neither is that likely. */
    NO_DIFFERENCE("no-difference");

    /** Standard deviations from 0 at which a normal truth lies on this side of it with a chance of 90 %. */
    private static final double SURE = 1.2815515655446004;

    private final String code;

    Verdict(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    /** By the chance that the truth lies on one side of 0. */
    static Verdict ofChance(Estimate estimate) {
        double away = SURE * estimate.sd();
        return estimate.mean() > away ? ABOVE : estimate.mean() < -away ? BELOW : NO_DIFFERENCE;
    }
}
