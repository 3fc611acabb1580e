package tiewright.ledger;

import static tiewright.schema.Tables.PRIVATE_FORECAST;

import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import tiewright.event.ClubId;
import tiewright.event.PrivateNote.Forecast;
import tiewright.event.RubberNo;
import tiewright.event.TieId;

/** What the advice to a club expected when sheets opened: one row for each rubber and one for the tie. */
final class ForecastTable {
    private static final String THE_TIE = "T";

    private ForecastTable() {}

    static void put(DSLContext jooq, Forecast note) {
        String part = note.part().map(RubberNo::toString).orElse(THE_TIE);
        jooq.deleteFrom(PRIVATE_FORECAST)
                .where(PRIVATE_FORECAST.TIE.eq(note.tie().code()))
                .and(PRIVATE_FORECAST.CLUB.eq(note.club().code()))
                .and(PRIVATE_FORECAST.PART.eq(part))
                .execute();
        jooq.insertInto(PRIVATE_FORECAST)
                .set(PRIVATE_FORECAST.TIE, note.tie().code())
                .set(PRIVATE_FORECAST.CLUB, note.club().code())
                .set(PRIVATE_FORECAST.PART, part)
                .set(PRIVATE_FORECAST.CHANCE, note.chance())
                .set(PRIVATE_FORECAST.BY_RATING, note.byRating())
                .set(PRIVATE_FORECAST.GIVEN_AWAY, note.givenAway())
                .execute();
    }

    static List<Forecast> of(DSLContext jooq, ClubId club) {
        return jooq.selectFrom(PRIVATE_FORECAST)
                .where(PRIVATE_FORECAST.CLUB.eq(club.code()))
                .orderBy(PRIVATE_FORECAST.TIE, PRIVATE_FORECAST.PART)
                .fetch(row -> new Forecast(
                        TieId.of(row.getTie()),
                        club,
                        row.getPart().equals(THE_TIE) ? Optional.empty() : RubberNo.parse(row.getPart()),
                        row.getChance(),
                        row.getByRating(),
                        row.getGivenAway()));
    }

    static void forget(DSLContext jooq, ClubId club) {
        jooq.deleteFrom(PRIVATE_FORECAST)
                .where(PRIVATE_FORECAST.CLUB.eq(club.code()))
                .execute();
    }
}
