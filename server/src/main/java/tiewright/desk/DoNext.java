package tiewright.desk;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.correction.RulingNeeded;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.TieId;

/**
 * What should the desk and the organiser do next? Data only, the most urgent first; nothing here names anybody on a
 * sealed sheet or shows that one was replaced. Nothing is done by itself: a person decides each item.
 */
public final class DoNext {
    private DoNext() {}

    /** From the most to the least urgent. */
    public enum Kind {
        /** somebody was hurt and the medical time has run out: tie, rubber, at */
        MEDICAL_OVER("medical-over"),
        /** it runs out in two minutes: tie, rubber, at = its end */
        MEDICAL_SOON("medical-soon"),
        /** it runs: tie, rubber, at = its end */
        PLAY_STOPPED("play-stopped"),
        /** two entries differ: tie, rubber */
        CARD_HELD("card-held"),
        /** a sheet was not as it should be: tie, club, what */
        RULING_NEEDED("ruling-needed"),
        /** a club protests and nobody has decided: number, club, at = since when */
        PROTEST_OPEN("protest-open"),
        /** another club has begun in a slot: tie, stands, shouldStand */
        SLOT_DISPUTED("slot-disputed"),
        /** both sides are in and it is time: tie */
        SHEETS_TO_OPEN("sheets-to-open"),
        /** the same for the decider pairs: tie */
        DECIDER_TO_OPEN("decider-to-open"),
        /** the deadline has passed: tie, clubs without a sheet, at */
        SHEET_LATE("sheet-late"),
        /** the deadline has passed and the sheet is still on the captain's phone: tie, clubs, at */
        SHEET_ON_PHONE("sheet-on-phone"),
        /** the tie is level and waits for pairs: tie, clubs without one, at = deadline */
        DECIDER_NEEDED("decider-needed"),
        /** the deadline is near: tie, clubs without a sheet, at */
        SHEET_MISSING("sheet-missing"),
        /** called longer ago than a rubber takes: tie, rubber, court, at = since when */
        CARD_MISSING("card-missing"),
        /** should have been called: tie, at = published start */
        TIE_LATE("tie-late"),
        /** its clubs are known and the day has times, but it has none: tie */
        TIE_WITHOUT_TIME("tie-without-time"),
        /** can be called: tie, rubbers, courts that are free */
        TIE_TO_CALL("tie-to-call"),
        /** a knockout tie ended level and nobody goes on: tie */
        KNOCKOUT_LEVEL("knockout-level"),
        /** a knockout tie of a club that withdrew: tie, club */
        WALKOVER_TO_ENTER("walkover-to-enter"),
        /** only a lot parts: pool, clubs */
        LOT_NEEDED("lot-needed"),
        /** finished and not signed, or changed since: pool */
        TABLE_TO_SIGN("table-to-sign"),
        /** the club is certain and not entered: tie, club */
        SLOT_TO_FILL("slot-to-fill"),
        /** everything is finished: nothing */
        EVENT_TO_SIGN("event-to-sign"),
        /** captains who have not ticked the conditions as they hold: clubs, version */
        CONDITIONS_UNREAD("conditions-unread");

        private final String code;

        Kind(String code) {
            this.code = code;
        }

        public String code() {
            return code;
        }
    }

    /** @param data by name, as the kind says; the words and the links of a page take them from here */
    public record Item(Kind kind, Map<String, Object> data) {
        public Item {
            data = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(data));
        }

        static Item of(Kind kind) {
            return new Item(kind, Map.of());
        }

        Item with(String name, Object value) {
            Map<String, Object> more = new LinkedHashMap<>(data);
            more.put(name, value);
            return new Item(kind, more);
        }

        public Optional<TieId> tie() {
            return Optional.ofNullable((TieId) data.get("tie"));
        }

        public Optional<String> pool() {
            return Optional.ofNullable((String) data.get("pool"));
        }

        /** The moment it is about: a deadline, a start, since when. */
        public Optional<Instant> at() {
            return Optional.ofNullable((Instant) data.get("at"));
        }
    }

    /** The same, without what only names can tell. */
    public static List<Item> of(Event event, Instant now) {
        return of(event, Directory.EMPTY, now);
    }

    /** By urgency of the kind, then the earliest moment, then the order of the ties. */
    public static List<Item> of(Event event, Directory directory, Instant now) {
        if (event.signed().isPresent()) {
            return List.of();
        }
        List<Item> items = new ArrayList<>();
        items.addAll(new DoNextOnCourt(event, now).items());
        items.addAll(new DoNextOfSheets(event, now).items());
        items.addAll(DoNextOfTables.items(event));
        event.disputes()
                .openProtests()
                .forEach(protest -> items.add(Item.of(Kind.PROTEST_OPEN)
                        .with("number", protest.made().number())
                        .with("club", protest.made().club())
                        .with("at", protest.at())));
        RulingNeeded.of(event, directory)
                .forEach(one -> items.add(Item.of(Kind.RULING_NEEDED)
                        .with("tie", one.tie())
                        .with("club", one.club())
                        .with("what", one.kind())));
        items.sort(
                Comparator.comparing(Item::kind).thenComparing(item -> item.at().orElse(Instant.MAX)));
        return List.copyOf(items);
    }
}
