package tiewright.desk;

import java.util.ArrayList;
import java.util.List;
import tiewright.desk.DoNext.Item;
import tiewright.desk.DoNext.Kind;
import tiewright.draw.SlotFills;
import tiewright.event.Club;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.OfficialFact;

/** What waits for a signature, a lot, a slot or a tick. */
final class DoNextOfTables {
    private DoNextOfTables() {}

    static List<Item> items(Event event) {
        List<Item> items = new ArrayList<>();
        event.pools().keySet().forEach(pool -> table(event, pool, items));
        SlotFills.of(event)
                .forEach(fill -> items.add(
                        Item.of(Kind.SLOT_TO_FILL).with("tie", fill.tie()).with("club", fill.club())));
        SlotFills.disputed(event)
                .forEach(slot -> items.add(Item.of(Kind.SLOT_DISPUTED)
                        .with("tie", slot.tie())
                        .with("stands", slot.stands())
                        .with("shouldStand", slot.shouldStand())));
        FinalPlacing.level(event)
                .forEach(tie -> items.add(Item.of(Kind.KNOCKOUT_LEVEL).with("tie", tie)));
        Walkovers.waiting(event)
                .forEach(waiting -> items.add(Item.of(Kind.WALKOVER_TO_ENTER)
                        .with("tie", waiting.tie().id())
                        .with("club", waiting.club())));
        if (FinalPlacing.unfinished(event).isEmpty()) {
            items.add(Item.of(Kind.EVENT_TO_SIGN));
        }
        unread(event, items);
        return items;
    }

    private static void table(Event event, String pool, List<Item> items) {
        PoolEnd end = PoolEnd.of(event, pool);
        if (!end.unfinished().isEmpty()) {
            return;
        }
        end.table()
                .lotsToDraw()
                .forEach(level ->
                        items.add(Item.of(Kind.LOT_NEEDED).with("pool", pool).with("clubs", level)));
        OfficialFact.TableSigned signed = event.signedTables().get(pool);
        boolean stands = signed != null && signed.order().equals(end.table().order());
        if (end.table().lotsToDraw().isEmpty() && !stands) {
            items.add(Item.of(Kind.TABLE_TO_SIGN).with("pool", pool));
        }
    }

    private static void unread(Event event, List<Item> items) {
        List<ClubId> unread = event.clubs().values().stream()
                .map(Club::id)
                .filter(club -> event.conditionsRead().getOrDefault(club, 0) < event.conditionsVersion())
                .toList();
        if (!unread.isEmpty()) {
            items.add(Item.of(Kind.CONDITIONS_UNREAD).with("clubs", unread).with("version", event.conditionsVersion()));
        }
    }
}
