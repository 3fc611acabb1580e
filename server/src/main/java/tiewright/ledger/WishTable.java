package tiewright.ledger;

import static tiewright.schema.Tables.PRIVATE_TIE_WISH;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jooq.DSLContext;
import tiewright.event.ClubId;
import tiewright.event.PrivateNote.PlayerWished;
import tiewright.event.PrivateNote.TieWish;
import tiewright.event.TieId;
import tiewright.schema.tables.records.PrivateTieWishRecord;

/** Who of a club must play in a tie, and who must rest: one row for each tie with wishes. */
final class WishTable {
    private WishTable() {}

    static void put(DSLContext jooq, TieWish note) {
        jooq.deleteFrom(PRIVATE_TIE_WISH)
                .where(PRIVATE_TIE_WISH.TIE.eq(note.tie().code()))
                .and(PRIVATE_TIE_WISH.CLUB.eq(note.club().code()))
                .execute();
        if (!note.ends()) {
            jooq.insertInto(PRIVATE_TIE_WISH)
                    .set(PRIVATE_TIE_WISH.TIE, note.tie().code())
                    .set(PRIVATE_TIE_WISH.CLUB, note.club().code())
                    .set(PRIVATE_TIE_WISH.MUST_PLAY, Texts.players(note.mustPlay()))
                    .set(PRIVATE_TIE_WISH.MUST_REST, Texts.players(note.mustRest()))
                    .execute();
        }
    }

    /** One player's wish among those of the tie. */
    static void put(DSLContext jooq, PlayerWished note) {
        TieWish before = jooq.selectFrom(PRIVATE_TIE_WISH)
                .where(PRIVATE_TIE_WISH.TIE.eq(note.tie().code()))
                .and(PRIVATE_TIE_WISH.CLUB.eq(note.club().code()))
                .fetchOptional(row -> wishes(note.club(), row))
                .orElse(new TieWish(note.tie(), note.club(), List.of(), List.of()));
        put(jooq, before.with(note));
    }

    private static TieWish wishes(ClubId club, PrivateTieWishRecord row) {
        return new TieWish(
                TieId.of(row.getTie()), club, Texts.players(row.getMustPlay()), Texts.players(row.getMustRest()));
    }

    static Map<TieId, TieWish> of(DSLContext jooq, ClubId club) {
        Map<TieId, TieWish> wishes = new HashMap<>();
        jooq.selectFrom(PRIVATE_TIE_WISH)
                .where(PRIVATE_TIE_WISH.CLUB.eq(club.code()))
                .forEach(row -> wishes.put(TieId.of(row.getTie()), wishes(club, row)));
        return wishes;
    }

    static void forget(DSLContext jooq, ClubId club) {
        jooq.deleteFrom(PRIVATE_TIE_WISH)
                .where(PRIVATE_TIE_WISH.CLUB.eq(club.code()))
                .execute();
    }
}
