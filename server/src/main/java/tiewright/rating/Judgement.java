package tiewright.rating;

import java.util.OptionalDouble;
import tiewright.event.NoteChecks;
import tiewright.event.Refusal;

/** The figures in which captains judge: rallies in 100. */
final class Judgement {
    static final int MOST = 50;

    private Judgement() {}

    static void check(NoteChecks checks, OptionalDouble form, String field) {
        checks.refuseIf(
                form.isPresent() && !(Math.abs(form.getAsDouble()) <= MOST),
                Refusal.of("notes.form-out-of-range").with("most", MOST).at(field));
    }

    /** Nobody is quite sure: a doubt of 0 cannot stand. */
    static void checkDoubt(NoteChecks checks, OptionalDouble doubt, String field) {
        checks.refuseIf(
                doubt.isPresent() && !(doubt.getAsDouble() > 0 && doubt.getAsDouble() <= MOST),
                Refusal.of("notes.doubt-out-of-range").with("most", MOST).at(field));
    }
}
