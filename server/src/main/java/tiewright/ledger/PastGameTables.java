package tiewright.ledger;

import static tiewright.schema.Tables.PRIVATE_CLUB_GAME;
import static tiewright.schema.Tables.PRIVATE_PAST_GAME;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import tiewright.event.ClubId;
import tiewright.event.KeptGame;
import tiewright.event.OfRubber;
import tiewright.event.PrivateNote.GameGiven;
import tiewright.event.PrivateNote.GameTakenBack;
import tiewright.event.PrivateNote.PastGame;
import tiewright.scoring.Format;
import tiewright.scoring.Score;

/** Earlier games: those that count for everybody, and those that a club keeps for itself, read with that club's code only. */
final class PastGameTables {
    private PastGameTables() {}

    /** Games for everybody have no subject: each one counts, also when two are alike. */
    static void put(DSLContext jooq, PastGame game) {
        int last = jooq.select(DSL.max(PRIVATE_PAST_GAME.NUMBER))
                .from(PRIVATE_PAST_GAME)
                .fetchOptional(DSL.max(PRIVATE_PAST_GAME.NUMBER))
                .orElse(0);
        jooq.insertInto(PRIVATE_PAST_GAME)
                .set(PRIVATE_PAST_GAME.NUMBER, last + 1)
                .set(PRIVATE_PAST_GAME.PLAYED_ON, game.date())
                .set(PRIVATE_PAST_GAME.HOME_1, game.home1())
                .set(PRIVATE_PAST_GAME.HOME_2, game.home2())
                .set(PRIVATE_PAST_GAME.AWAY_1, game.away1())
                .set(PRIVATE_PAST_GAME.AWAY_2, game.away2())
                .set(PRIVATE_PAST_GAME.HOME, game.score().home())
                .set(PRIVATE_PAST_GAME.AWAY, game.score().away())
                .set(PRIVATE_PAST_GAME.FORMAT, game.format().code())
                .set(PRIVATE_PAST_GAME.RUBBER, match(game))
                .set(PRIVATE_PAST_GAME.BEST_OF, bestOf(game))
                .execute();
    }

    static List<PastGame> all(DSLContext jooq) {
        return jooq.selectFrom(PRIVATE_PAST_GAME)
                .orderBy(PRIVATE_PAST_GAME.NUMBER)
                .fetch(row -> new PastGame(
                        row.getPlayedOn(),
                        row.getHome_1(),
                        row.getHome_2(),
                        row.getAway_1(),
                        row.getAway_2(),
                        Score.of(row.getHome(), row.getAway()),
                        Format.parse(row.getFormat()).orElseThrow(),
                        rubber(row.getRubber(), row.getBestOf())));
    }

    static void give(DSLContext jooq, GameGiven given) {
        PastGame game = given.game();
        takeBack(jooq, new GameTakenBack(given.club(), given.number()));
        jooq.insertInto(PRIVATE_CLUB_GAME)
                .set(PRIVATE_CLUB_GAME.CLUB, given.club().code())
                .set(PRIVATE_CLUB_GAME.NUMBER, given.number())
                .set(PRIVATE_CLUB_GAME.PLAYED_ON, game.date())
                .set(PRIVATE_CLUB_GAME.HOME_1, game.home1())
                .set(PRIVATE_CLUB_GAME.HOME_2, game.home2())
                .set(PRIVATE_CLUB_GAME.AWAY_1, game.away1())
                .set(PRIVATE_CLUB_GAME.AWAY_2, game.away2())
                .set(PRIVATE_CLUB_GAME.HOME, game.score().home())
                .set(PRIVATE_CLUB_GAME.AWAY, game.score().away())
                .set(PRIVATE_CLUB_GAME.FORMAT, game.format().code())
                .set(PRIVATE_CLUB_GAME.RUBBER, match(game))
                .set(PRIVATE_CLUB_GAME.BEST_OF, bestOf(game))
                .execute();
    }

    static void takeBack(DSLContext jooq, GameTakenBack game) {
        jooq.deleteFrom(PRIVATE_CLUB_GAME)
                .where(PRIVATE_CLUB_GAME.CLUB.eq(game.club().code()))
                .and(PRIVATE_CLUB_GAME.NUMBER.eq(game.number()))
                .execute();
    }

    static void forget(DSLContext jooq, ClubId club) {
        jooq.deleteFrom(PRIVATE_CLUB_GAME)
                .where(PRIVATE_CLUB_GAME.CLUB.eq(club.code()))
                .execute();
    }

    /** By day, and within a day as they were given. */
    static List<KeptGame> of(DSLContext jooq, ClubId club) {
        return jooq.selectFrom(PRIVATE_CLUB_GAME)
                .where(PRIVATE_CLUB_GAME.CLUB.eq(club.code()))
                .orderBy(PRIVATE_CLUB_GAME.PLAYED_ON, PRIVATE_CLUB_GAME.NUMBER)
                .fetch(row -> new KeptGame(
                        row.getNumber(),
                        new PastGame(
                                row.getPlayedOn(),
                                row.getHome_1(),
                                row.getHome_2(),
                                row.getAway_1(),
                                row.getAway_2(),
                                Score.of(row.getHome(), row.getAway()),
                                Format.parse(row.getFormat()).orElseThrow(),
                                rubber(row.getRubber(), row.getBestOf()))));
    }

    private static @Nullable String match(PastGame game) {
        return game.rubber().map(OfRubber::match).orElse(null);
    }

    private static @Nullable Integer bestOf(PastGame game) {
        return game.rubber()
                .map(OfRubber::bestOf)
                .filter(OptionalInt::isPresent)
                .map(OptionalInt::getAsInt)
                .orElse(null);
    }

    private static Optional<OfRubber> rubber(@Nullable String match, @Nullable Integer bestOf) {
        return Optional.ofNullable(match)
                .map(named -> new OfRubber(named, bestOf == null ? OptionalInt.empty() : OptionalInt.of(bestOf)));
    }
}
