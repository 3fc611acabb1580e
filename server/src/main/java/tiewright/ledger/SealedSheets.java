package tiewright.ledger;

import static tiewright.schema.Tables.PRIVATE_SHEET;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.DSLContext;
import tiewright.event.ClubId;
import tiewright.event.Decision.Sealed;
import tiewright.event.Decision.SealedRef;
import tiewright.event.ExchangeId;
import tiewright.event.SheetKind;
import tiewright.event.TieId;

/** The table of sealed sheets: ciphertext only, one row for each exchange and club. */
final class SealedSheets {
    private final Seal seal;

    /** Sheets in the clear, for a moment, and those that the key does not open. */
    record Opened(Map<SealedRef, Sealed> sheets, List<SealedRef> unreadable) {}

    SealedSheets(Seal seal) {
        this.seal = seal;
    }

    /** A number that only this club can have drawn, the same for the same question. */
    long chance(ClubId club, String question) {
        return seal.chance(club.code() + "," + question); // a code has no comma
    }

    /** Keeps the sheet instead of an earlier one of the same club. */
    void keep(DSLContext jooq, SealedRef where, Sealed sheet) {
        drop(jooq, where);
        Seal.Box box = seal.close(where, sheet);
        jooq.insertInto(PRIVATE_SHEET)
                .set(PRIVATE_SHEET.TIE, where.exchange().tie().code())
                .set(PRIVATE_SHEET.KIND, where.exchange().kind().code())
                .set(PRIVATE_SHEET.CLUB, where.club().code())
                .set(PRIVATE_SHEET.NONCE, box.nonce())
                .set(PRIVATE_SHEET.CIPHERTEXT, box.ciphertext())
                .execute();
    }

    void drop(DSLContext jooq, SealedRef where) {
        jooq.deleteFrom(PRIVATE_SHEET).where(at(where)).execute();
    }

    Opened open(DSLContext jooq, Collection<SealedRef> wanted) {
        Map<SealedRef, Sealed> sheets = new LinkedHashMap<>();
        List<SealedRef> unreadable = new ArrayList<>();
        for (SealedRef where : wanted) {
            box(jooq, where)
                    .ifPresent(box -> seal.open(where, box)
                            .ifPresentOrElse(sheet -> sheets.put(where, sheet), () -> unreadable.add(where)));
        }
        return new Opened(sheets, unreadable);
    }

    /** Every kept sheet that the key does not open, in code order. */
    List<SealedRef> unreadable(DSLContext jooq) {
        List<SealedRef> all = jooq.selectFrom(PRIVATE_SHEET)
                .orderBy(PRIVATE_SHEET.TIE, PRIVATE_SHEET.KIND, PRIVATE_SHEET.CLUB)
                .fetch(row -> new SealedRef(
                        new ExchangeId(
                                TieId.of(row.getTie()),
                                SheetKind.parse(row.getKind()).orElseThrow()),
                        ClubId.of(row.getClub())));
        return open(jooq, all).unreadable();
    }

    private static Optional<Seal.Box> box(DSLContext jooq, SealedRef where) {
        return jooq.selectFrom(PRIVATE_SHEET)
                .where(at(where))
                .fetchOptional(row -> new Seal.Box(row.getNonce(), row.getCiphertext()));
    }

    private static Condition at(SealedRef where) {
        return PRIVATE_SHEET
                .TIE
                .eq(where.exchange().tie().code())
                .and(PRIVATE_SHEET.KIND.eq(where.exchange().kind().code()))
                .and(PRIVATE_SHEET.CLUB.eq(where.club().code()));
    }
}
