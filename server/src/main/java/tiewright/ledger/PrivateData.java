package tiewright.ledger;

import static tiewright.schema.Tables.PRIVATE_PERSON;
import static tiewright.schema.Tables.PRIVATE_SHEET;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import org.jooq.impl.DSL;
import org.jooq.impl.SQLDataType;
import tiewright.event.ClubId;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.Held;
import tiewright.event.NamesKept;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.SetUpFact;
import tiewright.schema.DefaultSchema;

/**
 * Everything that must go on a date. It goes through the tables by their name, so that one made later is not forgotten: whatever
 * is called {@code private_…} is counted and erased.
 */
final class PrivateData {
    private static final String PREFIX = "private_";
    private static final List<String> WHOSE = List.of("player", "player_1");

    private PrivateData() {}

    static List<? extends Table<?>> tables() {
        return DefaultSchema.DEFAULT_SCHEMA.getTables().stream()
                .filter(table -> table.getName().startsWith(PREFIX))
                .toList();
    }

    /** What the table holds, in one word: {@code film}. */
    static String kind(Table<?> table) {
        return table.getName().substring(PREFIX.length());
    }

    /** Everything goes; of names what the note says stays. */
    static void erase(DSLContext jooq, PrivateNote.EverythingErased note) {
        tables().forEach(table -> jooq.deleteFrom(table).execute());
        note.kept()
                .people()
                .forEach((player, person) -> PrivateTables.put(jooq, new PrivateNote.PersonNamed(player, person)));
    }

    /** How much of it is there; a name that would stay as it is counts for nothing. */
    static Held held(DSLContext jooq, Event event, Directory directory) {
        SortedMap<String, Integer> all = new TreeMap<>();
        SortedMap<ClubId, SortedMap<String, Integer>> clubs = new TreeMap<>();
        Directory left = directory.erased(
                event.deletion().promised().map(SetUpFact.DeletionDated::names).orElse(NamesKept.CODES),
                event.about().map(about -> about.date().getYear()).orElse(0));
        for (Table<?> table : tables()) {
            all.put(kind(table), 0);
            for (Record row : jooq.selectFrom(table)) {
                if (!table.equals(PRIVATE_PERSON)
                        || goes(PlayerId.of(row.get(PRIVATE_PERSON.PLAYER)), directory, left)) {
                    all.merge(kind(table), 1, Integer::sum);
                    club(table, row, event)
                            .ifPresent(club -> clubs.computeIfAbsent(club, any -> new TreeMap<>())
                                    .merge(kind(table), 1, Integer::sum));
                }
            }
        }
        return new Held(all, clubs);
    }

    private static boolean goes(PlayerId player, Directory directory, Directory left) {
        return !directory.person(player).equals(left.person(player));
    }

    /** Whose it is, if one club's. How many sheets one club has sealed ahead is its own affair. */
    private static Optional<ClubId> club(Table<?> table, Record row, Event event) {
        if (table.equals(PRIVATE_SHEET)) {
            return Optional.empty();
        }
        Optional<ClubId> owner = text(row, "club").map(ClubId::of);
        for (String column : WHOSE) {
            owner = owner.or(() ->
                    text(row, column).map(PlayerId::of).flatMap(event::player).map(Player::club));
        }
        return owner;
    }

    private static Optional<String> text(Record row, String column) {
        Field<String> field = DSL.field(DSL.name(column), SQLDataType.VARCHAR);
        return row.field(column) == null ? Optional.empty() : Optional.ofNullable(row.get(field));
    }
}
