package tiewright.ledger;

import static tiewright.schema.Tables.PRIVATE_CHANGE;
import static tiewright.schema.Tables.PRIVATE_COUNT;
import static tiewright.schema.Tables.PRIVATE_REQUEST;

import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import tiewright.event.ClubId;
import tiewright.event.NoteSubject;
import tiewright.event.PlayerId;
import tiewright.schema.tables.records.PrivateChangeRecord;

/** Which private requests were answered, and what each of a club's changes was about; numbered for each club alone. */
final class ChangeTables {
    private ChangeTables() {}

    static boolean answered(DSLContext jooq, ClubId club, String key) {
        return jooq.fetchExists(
                PRIVATE_REQUEST, PRIVATE_REQUEST.CLUB.eq(club.code()).and(PRIVATE_REQUEST.REQUEST_KEY.eq(key)));
    }

    static void answer(DSLContext jooq, ClubId club, String key) {
        jooq.insertInto(PRIVATE_REQUEST)
                .set(PRIVATE_REQUEST.CLUB, club.code())
                .set(PRIVATE_REQUEST.REQUEST_KEY, key)
                .execute();
    }

    /** The number of each club's last change; a club without one is not in it. */
    static Map<ClubId, Long> counts(DSLContext jooq) {
        return jooq.selectFrom(PRIVATE_COUNT).fetchMap(row -> ClubId.of(row.getClub()), row -> row.getNumber());
    }

    static void append(DSLContext jooq, Changes changes) {
        changes.subjects().forEach((club, subjects) -> {
            long number = next(jooq, club);
            subjects.stream().distinct().forEach(subject -> put(jooq, club, number, subject, changes));
        });
    }

    private static long next(DSLContext jooq, ClubId club) {
        long number = Optional.ofNullable(counts(jooq).get(club)).orElse(0L) + 1;
        jooq.deleteFrom(PRIVATE_COUNT).where(PRIVATE_COUNT.CLUB.eq(club.code())).execute();
        jooq.insertInto(PRIVATE_COUNT)
                .set(PRIVATE_COUNT.CLUB, club.code())
                .set(PRIVATE_COUNT.NUMBER, number)
                .execute();
        return number;
    }

    private static void put(DSLContext jooq, ClubId club, long number, NoteSubject subject, Changes changes) {
        String about = subject.kind().name().toLowerCase(Locale.ROOT);
        jooq.deleteFrom(PRIVATE_CHANGE)
                .where(PRIVATE_CHANGE.CLUB.eq(club.code()))
                .and(PRIVATE_CHANGE.ABOUT.eq(about))
                .and(PRIVATE_CHANGE.WHAT.eq(subject.what()))
                .execute();
        jooq.insertInto(PRIVATE_CHANGE)
                .set(PRIVATE_CHANGE.CLUB, club.code())
                .set(PRIVATE_CHANGE.ABOUT, about)
                .set(PRIVATE_CHANGE.WHAT, subject.what())
                .set(PRIVATE_CHANGE.PLAYER_1, player(subject, 0))
                .set(PRIVATE_CHANGE.PLAYER_2, player(subject, 1))
                .set(PRIVATE_CHANGE.NUMBER, number)
                .set(PRIVATE_CHANGE.BY_NAME, changes.by())
                .set(PRIVATE_CHANGE.CHANGED_AT, changes.at().atOffset(ZoneOffset.UTC))
                .execute();
    }

    private static @Nullable String player(NoteSubject subject, int which) {
        return subject.players().size() > which ? subject.players().get(which).code() : null;
    }

    /** What was changed after that number, oldest first. */
    static List<Changes.Change> since(DSLContext jooq, ClubId club, long number) {
        return jooq.selectFrom(PRIVATE_CHANGE)
                .where(PRIVATE_CHANGE.CLUB.eq(club.code()))
                .and(PRIVATE_CHANGE.NUMBER.gt(number))
                .orderBy(PRIVATE_CHANGE.NUMBER, PRIVATE_CHANGE.ABOUT, PRIVATE_CHANGE.WHAT)
                .fetch(row -> new Changes.Change(
                        subject(row), row.getByName(), row.getChangedAt().toInstant()));
    }

    private static NoteSubject subject(PrivateChangeRecord row) {
        return new NoteSubject(
                NoteSubject.Kind.valueOf(row.getAbout().toUpperCase(Locale.ROOT)),
                row.getWhat(),
                Stream.of(Optional.ofNullable(row.getPlayer_1()), Optional.ofNullable(row.getPlayer_2()))
                        .flatMap(Optional::stream)
                        .map(PlayerId::of)
                        .toList());
    }

    /** The count goes on, so that no form of the club that was there before fits the next one. */
    static void forget(DSLContext jooq, ClubId club) {
        jooq.deleteFrom(PRIVATE_CHANGE)
                .where(PRIVATE_CHANGE.CLUB.eq(club.code()))
                .execute();
        jooq.deleteFrom(PRIVATE_REQUEST)
                .where(PRIVATE_REQUEST.CLUB.eq(club.code()))
                .execute();
    }
}
