package tiewright.ledger;

import static tiewright.schema.Tables.PRIVATE_PROMISE;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import org.jooq.DSLContext;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote.RubbersPromised;

/** Playing time that captains promised: one row for each player to whom something is promised. */
final class PromiseTable {
    private PromiseTable() {}

    static void put(DSLContext jooq, RubbersPromised promise) {
        forget(jooq, promise.player());
        if (!promise.ends()) {
            jooq.insertInto(PRIVATE_PROMISE)
                    .set(PRIVATE_PROMISE.PLAYER, promise.player().code())
                    .set(PRIVATE_PROMISE.RUBBERS, promise.rubbers())
                    .execute();
        }
    }

    /** The next captain of a player who leaves the squad shall not read it. */
    static void forget(DSLContext jooq, PlayerId player) {
        jooq.deleteFrom(PRIVATE_PROMISE)
                .where(PRIVATE_PROMISE.PLAYER.eq(player.code()))
                .execute();
    }

    static Map<PlayerId, RubbersPromised> of(DSLContext jooq, Collection<String> squad) {
        Map<PlayerId, RubbersPromised> promises = new HashMap<>();
        jooq.selectFrom(PRIVATE_PROMISE).where(PRIVATE_PROMISE.PLAYER.in(squad)).forEach(row -> {
            PlayerId player = PlayerId.of(row.getPlayer());
            promises.put(player, new RubbersPromised(player, row.getRubbers()));
        });
        return promises;
    }
}
