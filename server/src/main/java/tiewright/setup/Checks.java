package tiewright.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Fact;
import tiewright.event.Refusal;
import tiewright.event.Role;

/** Gathers the reasons against a change, so that all of them are told at once. */
final class Checks {
    /** Longest name, place, label or spoken seed, in characters as people count them. */
    static final int LONGEST = 200;

    /** Longest reason of a ruling. */
    static final int LONGEST_REASON = 2000;

    private final List<Refusal> reasons = new ArrayList<>();

    /** Only the organiser's links set the event up. */
    static Checks byOrganiser(Decision.Given given) {
        return new Checks().refuseIf(given.by().role() != Role.ORGANISER, Refusal.of("setup.organiser-only"));
    }

    static boolean isCaptainOf(Actor by, ClubId club) {
        return by.role() == Role.CAPTAIN && by.club().filter(club::equals).isPresent();
    }

    Checks refuseIf(boolean wrong, Refusal reason) {
        if (wrong) {
            reasons.add(reason);
        }
        return this;
    }

    Checks refuseAll(List<Refusal> more) {
        reasons.addAll(more);
        return this;
    }

    Checks refuse(Optional<Refusal> reason) {
        reason.ifPresent(reasons::add);
        return this;
    }

    /** One line that must say something. */
    Checks line(String field, String text) {
        return refuseIf(
                        !Plain.saysSomething(text),
                        Refusal.of("setup.missing." + field).at(field))
                .plain(field, text, LONGEST);
    }

    Checks line(String field, Optional<String> text) {
        text.ifPresent(given -> plain(field, given, LONGEST));
        return this;
    }

    Checks reason(String field, String text) {
        return refuseIf(
                        !Plain.saysSomething(text),
                        Refusal.of("setup.missing." + field).at(field))
                .plain(field, text, LONGEST_REASON);
    }

    private Checks plain(String field, String text, int most) {
        return refuseIf(
                        Plain.length(text) > most,
                        Refusal.of("setup.too-long").with("most", most).at(field))
                .refuseIf(
                        !Plain.isOneLine(text),
                        Refusal.of("setup.hidden-characters").at(field));
    }

    boolean allFine() {
        return reasons.isEmpty();
    }

    /** Refused with every reason, else accepted with what follows. */
    Decision.Outcome then(Supplier<List<? extends Fact>> facts) {
        return reasons.isEmpty() ? new Decision.Accepted(List.copyOf(facts.get()), List.of()) : refused();
    }

    Decision.Refused refused() {
        return new Decision.Refused(reasons);
    }
}
