package tiewright.ledger;

import static tiewright.schema.Tables.PRIVATE_CHEMISTRY;
import static tiewright.schema.Tables.PRIVATE_FORM;
import static tiewright.schema.Tables.PRIVATE_HALF_LIFE;
import static tiewright.schema.Tables.PRIVATE_HURT;
import static tiewright.schema.Tables.PRIVATE_PERSON;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import tiewright.conditions.Plays;
import tiewright.event.ClubId;
import tiewright.event.ClubNotes;
import tiewright.event.Directory.Person;
import tiewright.event.Pair;
import tiewright.event.PairWish;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote.ChemistryJudged;
import tiewright.event.PrivateNote.FormJudged;
import tiewright.event.PrivateNote.HalfLifeChosen;
import tiewright.event.PrivateNote.HurtMarked;
import tiewright.event.PrivateNote.PersonNamed;

/** The tables that are private or erased on a date. A note replaces the earlier one of its subject; an empty one ends it. */
final class PrivateTables {
    private PrivateTables() {}

    static void put(DSLContext jooq, PersonNamed note) {
        Person person = note.person();
        jooq.deleteFrom(PRIVATE_PERSON)
                .where(PRIVATE_PERSON.PLAYER.eq(note.player().code()))
                .execute();
        jooq.insertInto(PRIVATE_PERSON)
                .set(PRIVATE_PERSON.PLAYER, note.player().code())
                .set(PRIVATE_PERSON.NAME, person.name())
                .set(
                        PRIVATE_PERSON.BORN_YEAR,
                        person.bornYear().isPresent() ? person.bornYear().getAsInt() : null)
                .set(PRIVATE_PERSON.PLAYS, person.plays().map(Plays::code).orElse(null))
                .execute();
    }

    static void put(DSLContext jooq, HurtMarked note) {
        jooq.deleteFrom(PRIVATE_HURT)
                .where(PRIVATE_HURT.PLAYER.eq(note.player().code()))
                .execute();
        if (!note.ends()) {
            jooq.insertInto(PRIVATE_HURT)
                    .set(PRIVATE_HURT.PLAYER, note.player().code())
                    .execute();
        }
    }

    static Set<PlayerId> hurt(DSLContext jooq) {
        return new TreeSet<>(jooq.selectFrom(PRIVATE_HURT).fetch(row -> PlayerId.of(row.getPlayer())));
    }

    static void put(DSLContext jooq, FormJudged note) {
        jooq.deleteFrom(PRIVATE_FORM)
                .where(PRIVATE_FORM.PLAYER.eq(note.player().code()))
                .execute();
        if (!note.ends()) {
            jooq.insertInto(PRIVATE_FORM)
                    .set(PRIVATE_FORM.PLAYER, note.player().code())
                    .set(PRIVATE_FORM.FORM, orNull(note.form()))
                    .set(PRIVATE_FORM.SD, orNull(note.sd()))
                    .execute();
        }
    }

    static void put(DSLContext jooq, ChemistryJudged note) {
        jooq.deleteFrom(PRIVATE_CHEMISTRY)
                .where(PRIVATE_CHEMISTRY.PLAYER_1.eq(note.pair().first().code()))
                .and(PRIVATE_CHEMISTRY.PLAYER_2.eq(note.pair().second().code()))
                .execute();
        if (!note.ends()) {
            jooq.insertInto(PRIVATE_CHEMISTRY)
                    .set(PRIVATE_CHEMISTRY.PLAYER_1, note.pair().first().code())
                    .set(PRIVATE_CHEMISTRY.PLAYER_2, note.pair().second().code())
                    .set(PRIVATE_CHEMISTRY.EXTRA, note.extra())
                    .set(PRIVATE_CHEMISTRY.SD, orNull(note.sd()))
                    .set(
                            PRIVATE_CHEMISTRY.WISH,
                            note.wish()
                                    .map(wish -> wish.name().toLowerCase(Locale.ROOT))
                                    .orElse(null))
                    .execute();
        }
    }

    static void put(DSLContext jooq, HalfLifeChosen note) {
        jooq.deleteFrom(PRIVATE_HALF_LIFE)
                .where(PRIVATE_HALF_LIFE.CLUB.eq(note.club().code()))
                .execute();
        if (!note.ends()) {
            jooq.insertInto(PRIVATE_HALF_LIFE)
                    .set(PRIVATE_HALF_LIFE.CLUB, note.club().code())
                    .set(PRIVATE_HALF_LIFE.DAYS, note.days().getAsInt())
                    .execute();
        }
    }

    /** What a captain noted about a player goes when the player leaves the squad: the next captain shall not read it. */
    static void forget(DSLContext jooq, PlayerId player) {
        jooq.deleteFrom(PRIVATE_FORM)
                .where(PRIVATE_FORM.PLAYER.eq(player.code()))
                .execute();
        jooq.deleteFrom(PRIVATE_HURT)
                .where(PRIVATE_HURT.PLAYER.eq(player.code()))
                .execute();
        jooq.deleteFrom(PRIVATE_CHEMISTRY)
                .where(PRIVATE_CHEMISTRY.PLAYER_1.eq(player.code()))
                .or(PRIVATE_CHEMISTRY.PLAYER_2.eq(player.code()))
                .execute();
    }

    /** A club that is entered later under the same code shall not read what this one noted, nor what it was told. */
    static void forget(DSLContext jooq, ClubId club) {
        jooq.deleteFrom(PRIVATE_HALF_LIFE)
                .where(PRIVATE_HALF_LIFE.CLUB.eq(club.code()))
                .execute();
    }

    static Map<PlayerId, Person> people(DSLContext jooq) {
        Map<PlayerId, Person> people = new TreeMap<>();
        jooq.selectFrom(PRIVATE_PERSON)
                .forEach(row -> people.put(
                        PlayerId.of(row.getPlayer()),
                        new Person(
                                row.getName(),
                                optional(row.getBornYear()),
                                Optional.ofNullable(row.getPlays()).flatMap(Plays::parse))));
        return people;
    }

    static ClubNotes of(DSLContext jooq, ClubId club, Collection<PlayerId> squad) {
        List<String> codes = squad.stream().map(PlayerId::code).toList();
        Map<PlayerId, FormJudged> forms = new HashMap<>();
        jooq.selectFrom(PRIVATE_FORM).where(PRIVATE_FORM.PLAYER.in(codes)).forEach(row -> {
            PlayerId player = PlayerId.of(row.getPlayer());
            forms.put(player, new FormJudged(player, optional(row.getForm()), optional(row.getSd())));
        });
        Map<Pair, ChemistryJudged> chemistry = new HashMap<>();
        jooq.selectFrom(PRIVATE_CHEMISTRY)
                .where(PRIVATE_CHEMISTRY.PLAYER_1.in(codes))
                .and(PRIVATE_CHEMISTRY.PLAYER_2.in(codes))
                .forEach(row -> {
                    Pair pair = Pair.of(row.getPlayer_1(), row.getPlayer_2());
                    Optional<PairWish> wish = Optional.ofNullable(row.getWish())
                            .map(code -> PairWish.valueOf(code.toUpperCase(Locale.ROOT)));
                    chemistry.put(pair, new ChemistryJudged(pair, row.getExtra(), optional(row.getSd()), wish));
                });
        OptionalInt halfLife = jooq.selectFrom(PRIVATE_HALF_LIFE)
                .where(PRIVATE_HALF_LIFE.CLUB.eq(club.code()))
                .fetchOptional(PRIVATE_HALF_LIFE.DAYS)
                .map(OptionalInt::of)
                .orElse(OptionalInt.empty());
        return new ClubNotes(forms, chemistry, WishTable.of(jooq, club), PromiseTable.of(jooq, codes), halfLife);
    }

    private static @Nullable Double orNull(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }

    private static OptionalDouble optional(@Nullable Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private static OptionalInt optional(@Nullable Integer value) {
        return value == null ? OptionalInt.empty() : OptionalInt.of(value);
    }
}
