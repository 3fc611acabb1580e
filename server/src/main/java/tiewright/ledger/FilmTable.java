package tiewright.ledger;

import static tiewright.schema.Tables.PRIVATE_FILMS;

import java.util.List;
import org.jooq.DSLContext;
import tiewright.event.ClubId;
import tiewright.event.PrivateNote.FilmDropped;
import tiewright.event.PrivateNote.FilmKept;

/** What clubs noted from film: one row for each game of a club, read with that club's code only. */
final class FilmTable {
    private FilmTable() {}

    static void put(DSLContext jooq, FilmKept film) {
        drop(jooq, new FilmDropped(film.club(), film.game()));
        jooq.insertInto(PRIVATE_FILMS)
                .set(PRIVATE_FILMS.CLUB, film.club().code())
                .set(PRIVATE_FILMS.GAME, film.game())
                .set(PRIVATE_FILMS.ABOUT, film.about())
                .set(PRIVATE_FILMS.RALLIES, film.rallies())
                .execute();
    }

    static void drop(DSLContext jooq, FilmDropped film) {
        jooq.deleteFrom(PRIVATE_FILMS)
                .where(PRIVATE_FILMS.CLUB.eq(film.club().code()))
                .and(PRIVATE_FILMS.GAME.eq(film.game()))
                .execute();
    }

    static void forget(DSLContext jooq, ClubId club) {
        jooq.deleteFrom(PRIVATE_FILMS).where(PRIVATE_FILMS.CLUB.eq(club.code())).execute();
    }

    static List<FilmKept> of(DSLContext jooq, ClubId club) {
        return jooq.selectFrom(PRIVATE_FILMS)
                .where(PRIVATE_FILMS.CLUB.eq(club.code()))
                .orderBy(PRIVATE_FILMS.GAME)
                .fetch(row -> new FilmKept(club, row.getGame(), row.getAbout(), row.getRallies()));
    }
}
