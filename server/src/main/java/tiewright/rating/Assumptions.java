package tiewright.rating;

/**
 * What ratings rest on beside games and judgements, whether stated, estimated or usual. Units as in {@link Stated}.
 */
public record Assumptions(ServeRates serving, double formSpread, double extraSpread, double drift, double shared) {
    /** Before any game has spoken (assumptions of ours, no source). */
    static final double USUAL_FORM_SPREAD = 9;

    static final double USUAL_EXTRA_SPREAD = 1.5;

    private static final double USUAL_DRIFT = 2.5;
    private static final double USUAL_SHARED = 3.5;

    /** @param halfLife older games count less already, so that forms need not drift too */
    static Assumptions of(Stated stated, boolean halfLife) {
        return new Assumptions(
                stated.serving(),
                stated.formSpread().orElse(USUAL_FORM_SPREAD),
                stated.extraSpread().orElse(USUAL_EXTRA_SPREAD),
                stated.drift().orElse(halfLife ? 0 : USUAL_DRIFT),
                stated.shared().orElse(USUAL_SHARED));
    }

    /** The same where every form stands still. */
    Assumptions still() {
        return new Assumptions(serving, formSpread, extraSpread, 0, shared);
    }

    Assumptions withSpreads(double form, double extra) {
        return new Assumptions(serving, form, extra, drift, shared);
    }
}
