package tiewright.setup;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import tiewright.event.Codes;
import tiewright.event.Court;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.Refusal;
import tiewright.event.SetUpFact;

/**
 * Names a court and its hours, or takes it out of use. New courts are the organiser's; the desk and the referee may alter one
 * that is there, for courts are lost on the day.
 */
public record SetCourt(String court, Optional<LocalTime> from, Optional<LocalTime> until, boolean usable)
        implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        Optional<Court> before = Optional.ofNullable(event.courts().get(court));
        Checks checks = before.isPresent()
                ? new Checks().refuseIf(!given.by().role().isOfficial(), Refusal.of("setup.officials-only"))
                : Checks.byOrganiser(given);
        boolean same =
                before.filter(new Court(court, from, until, usable)::equals).isPresent();
        checks.refuseIf(
                        !Codes.isCode(court) || !Plain.isOneLine(court),
                        Refusal.of("setup.not-a-court")
                                .with("most", Codes.LONGEST)
                                .at("court"))
                .refuseIf(
                        from.isPresent() && until.isPresent() && !from.get().isBefore(until.get()),
                        Refusal.of("setup.court-closes-first")
                                .with("from", from.orElse(LocalTime.MIN))
                                .with("until", until.orElse(LocalTime.MIN))
                                .at("until"))
                .refuseIf(
                        same,
                        Refusal.of("setup.court-unchanged").with("court", court).at("court"));
        event.courts().keySet().stream()
                .filter(other -> before.isEmpty() && other.equalsIgnoreCase(court))
                .forEach(other -> checks.refuseIf(
                        true,
                        Refusal.of("setup.court-is-there").with("court", other).at("court")));
        return checks.then(() -> List.of(new SetUpFact.CourtSet(court, from, until, usable)));
    }

    /** The same court as somebody else set meanwhile. */
    @Override
    public boolean isStaledBy(Fact fact) {
        return fact instanceof SetUpFact.CourtSet other && other.court().equals(court);
    }
}
