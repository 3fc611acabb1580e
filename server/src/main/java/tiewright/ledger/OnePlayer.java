package tiewright.ledger;

import static tiewright.schema.Tables.PRIVATE_PERSON;
import static tiewright.schema.Tables.PRIVATE_TIE_WISH;

import java.util.List;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Table;
import org.jooq.impl.DSL;
import org.jooq.impl.SQLDataType;
import tiewright.event.ClubId;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote.FilmDropped;
import tiewright.event.PrivateNote.PlayerForgotten;
import tiewright.event.PrivateNote.TieWish;
import tiewright.event.TieId;

/** What a club noted about one player, deleted early at the player's wish. The name stays: results need it until the date. */
final class OnePlayer {
    private static final List<String> WHO = List.of("player", "player_1", "player_2");

    private OnePlayer() {}

    static void forget(DSLContext jooq, PlayerForgotten note) {
        PlayerId player = note.player();
        for (Table<?> table : PrivateData.tables()) {
            for (String column : WHO) {
                if (!table.equals(PRIVATE_PERSON) && table.field(column) != null) {
                    Field<String> who = DSL.field(DSL.name(column), SQLDataType.VARCHAR);
                    jooq.deleteFrom(table).where(who.eq(player.code())).execute();
                }
            }
        }
        wishes(jooq, note.club(), player);
        note.films().forEach(game -> FilmTable.drop(jooq, new FilmDropped(note.club(), game)));
    }

    private static void wishes(DSLContext jooq, ClubId club, PlayerId player) {
        jooq.selectFrom(PRIVATE_TIE_WISH)
                .where(PRIVATE_TIE_WISH.CLUB.eq(club.code()))
                .forEach(row -> WishTable.put(
                        jooq,
                        new TieWish(
                                TieId.of(row.getTie()),
                                club,
                                without(player, row.getMustPlay()),
                                without(player, row.getMustRest()))));
    }

    private static List<PlayerId> without(PlayerId player, String players) {
        return Texts.players(players).stream()
                .filter(one -> !one.equals(player))
                .toList();
    }
}
