package tiewright.desk;

import java.util.List;
import java.util.Optional;
import tiewright.event.Actor;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.PlayFact;
import tiewright.event.Refusal;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.TieId;

/**
 * Somebody is hurt or ill: the rubber and its clock stand still from now on. One press, nothing is asked: the desk, a
 * volunteer with the cards, or a captain of the tie. The card or {@link ResumePlay} ends it; nothing is ever lost by a clock.
 */
public record StopPlay(TieId tie, RubberNo rubber) implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        Optional<Tie> found = event.tie(tie);
        if (found.isEmpty()) {
            return Asked.noTie(tie);
        }
        Actor by = given.by();
        boolean beside = by.role() == Role.VOLUNTEER
                || by.role() == Role.CAPTAIN
                        && by.club().filter(found.get()::has).isPresent();
        Asked asked = new Asked()
                .unless(
                        beside || by.role().isOfficial(),
                        Refusal.of("desk.stop-by-court").with("tie", tie))
                .all(place(event, found.get()));
        return asked.isFine() ? Accepted.of(new PlayFact.PlayStopped(tie, rubber)) : asked.refused();
    }

    private List<Refusal> place(Event event, Tie found) {
        if (Courts.hasEntry(found, rubber)) {
            return List.of(Refusal.of("desk.rubber-has-card")
                    .with("rubber", rubber)
                    .with("tie", tie)
                    .at("rubber"));
        }
        if (!event.progress(found).left().contains(rubber) || !found.opened().containsKey(rubber)) {
            return List.of(Refusal.of("desk.nothing-to-stop")
                    .with("rubber", rubber)
                    .with("tie", tie)
                    .at("rubber"));
        }
        return Optional.ofNullable(found.stopped().get(rubber))
                .map(since -> List.of(
                        Refusal.of("desk.stopped-already").with("at", since).at("rubber")))
                .orElse(List.of());
    }
}
