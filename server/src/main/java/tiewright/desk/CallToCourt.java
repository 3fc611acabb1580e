package tiewright.desk;

import java.util.List;
import java.util.Optional;
import tiewright.event.Court;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.How;
import tiewright.event.PlayFact;
import tiewright.event.Refusal;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.TieId;

/**
 * The desk calls a rubber to a court. A rubber called again to another free court has moved there. The hours of a court are for planning and stop no call: play overruns.
 */
public record CallToCourt(TieId tie, RubberNo rubber, String court) implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        Optional<Tie> found = event.tie(tie);
        if (found.isEmpty()) {
            return Asked.noTie(tie);
        }
        Courts courts = Courts.of(event);
        Asked asked = Asked.byOfficial(given).all(place(event, found.get())).all(court(event, courts, found.get()));
        if (asked.isFine()) {
            courts.busy(found.get(), rubber, court)
                    .ifPresent(busy -> asked.all(List.of(
                            at(Refusal.of("desk.player-on-court").with("player", busy.player()), busy.where()))));
        }
        return asked.isFine()
                ? Accepted.of(new PlayFact.CourtCalled(tie, Optional.of(rubber), court))
                : asked.refused();
    }

    private List<Refusal> place(Event event, Tie found) {
        if (event.progress(found).finished()) {
            return List.of(Refusal.of("desk.tie-is-over").with("tie", tie).at("tie"));
        }
        if (Courts.hasEntry(found, rubber)) {
            return List.of(Refusal.of("desk.rubber-has-card")
                    .with("rubber", rubber)
                    .with("tie", tie)
                    .at("rubber"));
        }
        return new CardRules(event, found, rubber).place(How.PLAYED);
    }

    private List<Refusal> court(Event event, Courts courts, Tie found) {
        Optional<Court> wanted = Optional.ofNullable(event.courts().get(court));
        if (wanted.isEmpty()) {
            return List.of(Refusal.of("desk.no-such-court").with("court", court).at("court"));
        }
        if (!wanted.get().usable()) {
            return List.of(
                    Refusal.of("desk.court-out-of-use").with("court", court).at("court"));
        }
        Optional<Tie.Call> before = Optional.ofNullable(found.calls().get(rubber));
        if (before.filter(call -> call.court().equals(court)).isPresent()) {
            return List.of(Refusal.of("desk.already-called")
                    .with("court", court)
                    .with("at", before.get().at())
                    .at("court"));
        }
        return courts.on(court).stream()
                .limit(1)
                .map(other -> at(Refusal.of("desk.court-taken"), other).at("court"))
                .toList();
    }

    private static Refusal at(Refusal reason, Courts.OnCourt where) {
        return reason.with("court", where.call().court())
                .with("tie", where.tie().id())
                .with("rubber", where.rubber())
                .with("at", where.call().at());
    }
}
