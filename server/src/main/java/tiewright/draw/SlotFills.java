package tiewright.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.ClubId;
import tiewright.event.DrawFact;
import tiewright.event.Event;
import tiewright.event.OfficialFact;
import tiewright.event.Side;
import tiewright.event.Slot;
import tiewright.event.SlotSource;
import tiewright.event.Tie;
import tiewright.event.TieId;

/**
 * Which slots have a club that is now certain: a place of a signed table, or the winner or loser of a finished tie.
 *
 * <p>A tie with a held rubber is not finished, so nobody goes on from it. A slot that was filled and whose club became
 * another one (a corrected card, a table signed again) is filled anew only while nothing of its tie has begun; after
 * that a person decides, see {@link #disputed}. A club that stays by ruling is not touched.
 */
public final class SlotFills {
    private SlotFills() {}

    /** A slot in whose tie play or sealing has begun with a club that should not be there by the results as they stand. */
    public record Disputed(TieId tie, Side side, ClubId stands, ClubId shouldStand) {}

    /** The facts to append so that every slot has the club that is certain for it; empty when all have. */
    public static List<DrawFact.SlotFilled> of(Event event) {
        List<DrawFact.SlotFilled> fills = new ArrayList<>();
        for (Change change : changes(event)) {
            if (change.tie().club(change.side()).isEmpty() || !event.hasBegun(change.tie())) {
                fills.add(new DrawFact.SlotFilled(change.tie().id(), change.side(), change.club()));
            }
        }
        return List.copyOf(fills);
    }

    /** Slots that a person must decide, because another club has begun there. */
    public static List<Disputed> disputed(Event event) {
        List<Disputed> disputed = new ArrayList<>();
        for (Change change : changes(event)) {
            change.tie()
                    .club(change.side())
                    .filter(stands -> event.hasBegun(change.tie()))
                    .ifPresent(stands ->
                            disputed.add(new Disputed(change.tie().id(), change.side(), stands, change.club())));
        }
        return List.copyOf(disputed);
    }

    private record Change(Tie tie, Side side, ClubId club) {}

    private static List<Change> changes(Event event) {
        List<Change> changes = new ArrayList<>();
        for (Tie tie : event.ties().values()) {
            for (Side side : Side.values()) {
                Slot slot = tie.slot(side);
                slot.from()
                        .filter(source -> !slot.kept())
                        .flatMap(source -> certain(event, source))
                        .filter(club -> slot.club().filter(club::equals).isEmpty())
                        .ifPresent(club -> changes.add(new Change(tie, side, club)));
            }
        }
        return changes;
    }

    private static Optional<ClubId> certain(Event event, SlotSource source) {
        return switch (source.kind()) {
            case POOL_PLACE ->
                Optional.ofNullable(event.signedTables().get(source.of()))
                        .map(OfficialFact.TableSigned::order)
                        .filter(order -> order.size() >= source.place())
                        .map(order -> order.get(source.place() - 1));
            case WINNER, LOSER -> source.sent(event);
        };
    }
}
