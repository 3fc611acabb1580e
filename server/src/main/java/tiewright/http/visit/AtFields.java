package tiewright.http.visit;

import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.Set;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.Refusal;

/**
 * A decision whose reasons stand beside the fields of one form of several: the field {@code by} of the form {@code A} is
 * {@code A-by}.
 *
 * @param shared fields that the page has only once, under their own name
 */
public record AtFields(String form, Decision decision, Set<String> shared) implements Decision {
    public AtFields(String form, Decision decision) {
        this(form, decision, Set.of());
    }

    public static String id(String form, String field) {
        return form + "-" + field;
    }

    /** A name or code as a part of an id in a page, where blanks and other scripts make trouble; no two become the same. */
    public static String safe(String code) {
        return code.matches("[A-Za-z0-9_-]+")
                ? code
                : "x." + HexFormat.of().formatHex(code.getBytes(StandardCharsets.UTF_8));
    }

    @Override
    public Outcome decide(Event event, Given given) {
        Outcome outcome = decision.decide(event, given);
        return outcome instanceof Refused refused
                ? new Refused(refused.reasons().stream().map(this::placed).toList())
                : outcome;
    }

    private Refusal placed(Refusal reason) {
        boolean stays = reason.field().isEmpty() || shared.contains(reason.field());
        return stays ? reason : reason.at(id(form, reason.field()));
    }

    @Override
    public Set<SealedRef> needs(Event event) {
        return decision.needs(event);
    }

    @Override
    public boolean isStaledBy(Fact fact) {
        return decision.isStaledBy(fact);
    }
}
