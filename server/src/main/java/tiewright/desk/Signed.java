package tiewright.desk;

import java.util.List;
import java.util.Optional;
import tiewright.draw.SlotFills;
import tiewright.event.Decision;
import tiewright.event.DrawFact;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.Refusal;
import tiewright.event.Tie;

/** What was signed, or is played on, does not change under people's feet: a correction there needs a ruling first. */
final class Signed {
    private Signed() {}

    /** The table that counts this tie is signed, or the whole event. */
    static List<Refusal> because(Event event, Tie tie) {
        if (event.signed().isPresent()) {
            return List.of(Refusal.of("desk.event-is-signed")
                    .with("by", event.signed().get().by()));
        }
        return tie.pool()
                .flatMap(pool -> Optional.ofNullable(event.signedTables().get(pool))
                        .map(signed -> List.of(Refusal.of("desk.table-is-signed")
                                .with("pool", pool)
                                .with("by", signed.by()))))
                .orElse(List.of());
    }

    /** With these facts another club should stand in a tie that has begun. */
    static List<Refusal> playedOn(Event event, Decision.Given given, List<Fact> facts) {
        List<SlotFills.Disputed> before = SlotFills.disputed(event);
        return SlotFills.disputed(event.after(facts, given)).stream()
                .filter(disputed -> !before.contains(disputed))
                .map(disputed -> Refusal.of("desk.next-tie-has-begun")
                        .with("tie", disputed.tie())
                        .with("stands", disputed.stands())
                        .with("shouldStand", disputed.shouldStand()))
                .toList();
    }

    /** With these facts another club would stand in a tie where one is published; nobody is moved in silence. */
    static List<Refusal> moved(Event event, Decision.Given given, List<Fact> facts) {
        return After.accepted(event, given, facts).facts().stream()
                .filter(DrawFact.SlotFilled.class::isInstance)
                .map(DrawFact.SlotFilled.class::cast)
                .flatMap(fill -> event
                        .tie(fill.tie())
                        .flatMap(tie -> tie.club(fill.side()))
                        .map(stands -> Refusal.of("desk.clubs-would-move")
                                .with("tie", fill.tie())
                                .with("stands", stands)
                                .with("shouldStand", fill.club()))
                        .stream())
                .toList();
    }
}
