package tiewright.setup;

import java.util.ArrayList;
import java.util.List;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.Link;
import tiewright.event.Refusal;
import tiewright.event.Role;
import tiewright.event.SetUpFact;

/** Makes a link useless from now on. The last link of an organiser stays, or nobody could go on. */
public record RevokeLink(String link) implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        Link found = event.links().get(link);
        if (found == null) {
            return Decision.Refused.because(
                    Refusal.of("setup.no-such-link").with("link", link).at("link"));
        }
        long organisers = event.links().values().stream()
                .filter(l -> l.role() == Role.ORGANISER && !l.revoked())
                .count();
        return new Checks()
                .refuse(LinkRights.whyNot(event, given, found.role(), found.club()))
                .refuseIf(
                        found.revoked(),
                        Refusal.of("setup.revoked-already").with("link", link).at("link"))
                .refuseIf(
                        !found.revoked() && found.role() == Role.ORGANISER && organisers == 1,
                        Refusal.of("setup.last-organiser-link")
                                .with("link", link)
                                .at("link"))
                .then(() -> facts(event, given, found));
    }

    private static List<Fact> facts(Event event, Given given, Link ended) {
        List<Fact> facts = new ArrayList<>(List.of(new SetUpFact.LinkRevoked(ended.name())));
        LinkNotices.of(event, given, LinkNotices.Told.of(ended), "notices.link-ended")
                .ifPresent(facts::add);
        return facts;
    }
}
