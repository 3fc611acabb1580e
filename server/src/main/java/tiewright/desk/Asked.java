package tiewright.desk;

import java.util.ArrayList;
import java.util.List;
import tiewright.event.Decision;
import tiewright.event.Refusal;
import tiewright.event.TieId;

/** The reasons against what somebody asks for, gathered one by one so that all can be told at once. */
final class Asked {
    /** Names and other short texts, in characters. */
    static final int SHORT = 200;

    /** Reasons, rulings, notices, in characters. */
    static final int LONG = 2000;

    private final List<Refusal> reasons = new ArrayList<>();

    /** Somebody who runs the event. */
    static Asked byOfficial(Decision.Given given) {
        return new Asked().unless(given.by().role().isOfficial(), Refusal.of("desk.officials-only"));
    }

    Asked unless(boolean holds, Refusal reason) {
        if (!holds) {
            reasons.add(reason);
        }
        return this;
    }

    Asked all(List<Refusal> more) {
        reasons.addAll(more);
        return this;
    }

    /** Something must be written in the field, and not too much. */
    Asked text(String field, String value, int most) {
        unless(!value.isBlank(), Refusal.of("desk.text-missing." + field).at(field));
        return notTooLong(field, value, most);
    }

    Asked notTooLong(String field, String value, int most) {
        return unless(
                value.length() <= most,
                Refusal.of("desk.text-too-long").with("most", most).at(field));
    }

    boolean isFine() {
        return reasons.isEmpty();
    }

    Decision.Refused refused() {
        return new Decision.Refused(reasons);
    }

    static Decision.Refused noTie(TieId tie) {
        return Decision.Refused.because(
                Refusal.of("desk.no-such-tie").with("tie", tie).at("tie"));
    }
}
