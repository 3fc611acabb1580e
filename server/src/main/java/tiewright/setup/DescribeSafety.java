package tiewright.setup;

import java.util.List;
import java.util.Optional;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.FactKind;
import tiewright.event.Refusal;
import tiewright.event.SetUpFact;

/** Says where help is at the place, or says it anew; what is not known is left empty. */
public record DescribeSafety(String firstAid, String defibrillator, String emergency) implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        SetUpFact.SafetyDescribed now =
                new SetUpFact.SafetyDescribed(Plain.of(firstAid), Plain.of(defibrillator), Plain.of(emergency));
        return Checks.byOrganiser(given)
                .line("firstAid", Optional.of(firstAid))
                .line("defibrillator", Optional.of(defibrillator))
                .line("emergency", Optional.of(emergency))
                .refuseIf(
                        now.equals(event.safety()),
                        Refusal.of("setup.safety-stands").at("firstAid"))
                .then(() -> List.of(now));
    }

    /** What somebody else described meanwhile. */
    @Override
    public boolean isStaledBy(Fact fact) {
        return fact.kind() == FactKind.SAFETY_DESCRIBED;
    }
}
