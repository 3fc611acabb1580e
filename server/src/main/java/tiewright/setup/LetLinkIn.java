package tiewright.setup;

import java.util.List;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Link;
import tiewright.event.Refusal;
import tiewright.event.SetUpFact;

/** A captain or deputy lets another captain's link of the own club read what the club noted and will seal. */
public record LetLinkIn(String link) implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        Link found = event.links().get(link);
        if (found == null
                || found.club()
                        .filter(club -> Checks.isCaptainOf(given.by(), club))
                        .isEmpty()) {
            return Decision.Refused.because(
                    Refusal.of("setup.no-such-link").with("link", link).at("link"));
        }
        return new Checks()
                .refuseIf(!LinkRights.isLetIn(event, given), LinkRights.notLetIn())
                .refuseIf(
                        found.revoked(),
                        Refusal.of("setup.revoked-already").with("link", link).at("link"))
                .refuseIf(
                        found.life().letIn().isPresent()
                                || !found.isCaptainOf(found.club().orElseThrow()),
                        Refusal.of("setup.let-in-already").with("link", link).at("link"))
                .then(() -> List.of(new SetUpFact.LinkLetIn(link)));
    }
}
