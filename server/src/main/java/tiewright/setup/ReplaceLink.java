package tiewright.setup;

import java.util.ArrayList;
import java.util.List;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.FactKind;
import tiewright.event.Link;
import tiewright.event.Refusal;

/**
 * Makes a link useless and another one for the same person, with the same label: its slip was lost, or somebody else saw it.
 *
 * @param hash SHA-256 of the new link's secret, 64 lower-case hex digits
 */
public record ReplaceLink(String link, String hash) implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        Link old = event.links().get(link);
        if (old == null) {
            return Decision.Refused.because(
                    Refusal.of("setup.no-such-link").with("link", link).at("link"));
        }
        IssueLink anew = new IssueLink(old.role(), old.club(), old.player(), old.label(), hash);
        // both are asked about the event as it stands: whoever replaces the own link still has it
        List<Outcome> outcomes = List.of(new RevokeLink(link).decide(event, given), anew.insteadOf(old, event, given));
        List<Refusal> reasons = outcomes.stream()
                .filter(Refused.class::isInstance)
                .flatMap(refused -> ((Refused) refused).reasons().stream())
                .distinct()
                .toList();
        if (!reasons.isEmpty()) {
            return new Refused(reasons);
        }
        List<Fact> facts = new ArrayList<>();
        outcomes.forEach(accepted -> facts.addAll(((Accepted) accepted).facts()));
        facts.removeIf(fact -> fact.kind() == FactKind.NOTICE_STATED);
        LinkNotices.of(event, given, LinkNotices.Told.of(old), "notices.link-replaced")
                .ifPresent(facts::add);
        return new Accepted(facts, List.of());
    }
}
