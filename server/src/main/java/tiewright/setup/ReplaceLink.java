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
        List<Fact> facts = new ArrayList<>();
        List<Refusal> reasons = new ArrayList<>();
        // both are asked about the event as it stands: whoever replaces the own link still has it
        for (Outcome outcome : List.of(new RevokeLink(link).decide(event, given), anew.insteadOf(old, event, given))) {
            if (outcome instanceof Accepted accepted) {
                facts.addAll(accepted.facts());
            } else {
                reasons.addAll(((Refused) outcome).reasons());
            }
        }
        if (!reasons.isEmpty()) {
            return new Refused(reasons.stream().distinct().toList());
        }
        facts.removeIf(fact -> fact.kind() == FactKind.NOTICE_STATED);
        LinkNotices.of(event, given, old.role(), old.club(), old.label(), "notices.link-replaced")
                .ifPresent(facts::add);
        return new Accepted(facts, List.of());
    }
}
