package tiewright.ledger;

import static tiewright.schema.Tables.LEDGER;
import static tiewright.schema.Tables.REQUEST;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.impl.DSL;
import org.jooq.impl.SQLDataType;
import org.jspecify.annotations.Nullable;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.Fact;
import tiewright.event.FactKind;
import tiewright.event.Recorded;
import tiewright.event.Role;

/** The tables that are only ever added to: facts, and the requests they answered. */
final class FactTables {
    private static final Field<Long> SEQ = DSL.field(DSL.name("seq"), SQLDataType.BIGINT);

    private FactTables() {}

    /** Every fact in order. */
    static List<Recorded> read(DSLContext jooq) {
        Map<Long, Fact> facts = new HashMap<>();
        for (FactKind kind : kinds(jooq)) {
            jooq.selectFrom(FactRows.table(kind)).forEach(row -> facts.put(row.get(SEQ), FactRows.fact(kind, row)));
        }
        return jooq.selectFrom(LEDGER)
                .orderBy(LEDGER.SEQ)
                .fetch(row -> recorded(
                        row, Optional.ofNullable(facts.get(row.getSeq())).orElseThrow()));
    }

    /** The kinds that have happened: most days know half of them, and each asked for in vain would cost a start its time. */
    private static List<FactKind> kinds(DSLContext jooq) {
        return jooq.selectDistinct(LEDGER.KIND).from(LEDGER).fetch(row -> FactKind.of(row.value1()));
    }

    /** The first and the last seq that the key was answered with; first is last + 1 where it was no fact. */
    static Optional<long[]> answered(DSLContext jooq, String key) {
        return jooq.selectFrom(REQUEST).where(REQUEST.REQUEST_KEY.eq(key)).fetchOptional(row ->
                new long[] {row.getFirstSeq(), row.getLastSeq()});
    }

    static void append(DSLContext jooq, String key, long before, List<Recorded> facts) {
        jooq.insertInto(REQUEST)
                .set(REQUEST.REQUEST_KEY, key)
                .set(REQUEST.FIRST_SEQ, before + 1)
                .set(REQUEST.LAST_SEQ, before + facts.size())
                .execute();
        facts.forEach(recorded -> append(jooq, key, recorded));
    }

    private static void append(DSLContext jooq, String key, Recorded recorded) {
        jooq.insertInto(LEDGER)
                .set(LEDGER.SEQ, recorded.seq())
                .set(LEDGER.REQUEST_KEY, key)
                .set(LEDGER.KIND, recorded.fact().kind().code())
                .set(LEDGER.BY_ROLE, recorded.by().role().code())
                .set(LEDGER.BY_CLUB, recorded.by().club().map(ClubId::code).orElse(null))
                .set(LEDGER.BY_NAME, recorded.by().name())
                .set(LEDGER.DEVICE, recorded.by().device())
                .set(LEDGER.BY_LINK, recorded.by().link().orElse(null))
                .set(
                        LEDGER.DEVICE_TIME,
                        recorded.deviceTime()
                                .map(at -> at.atOffset(ZoneOffset.UTC))
                                .orElse(null))
                .set(LEDGER.RECEIVED_AT, recorded.receivedAt().atOffset(ZoneOffset.UTC))
                .execute();
        Map<Field<?>, @Nullable Object> row = new HashMap<>(FactRows.row(recorded.fact()));
        row.put(SEQ, recorded.seq());
        jooq.insertInto(FactRows.table(recorded.fact().kind())).set(row).execute();
    }

    private static Recorded recorded(Record row, Fact fact) {
        Actor by = new Actor(
                Role.parse(row.get(LEDGER.BY_ROLE)).orElseThrow(),
                Optional.ofNullable(row.get(LEDGER.BY_CLUB)).map(ClubId::of),
                row.get(LEDGER.BY_NAME),
                row.get(LEDGER.DEVICE),
                Optional.ofNullable(row.get(LEDGER.BY_LINK)));
        Optional<Instant> deviceTime =
                Optional.ofNullable(row.get(LEDGER.DEVICE_TIME)).map(at -> at.toInstant());
        return new Recorded(
                row.get(LEDGER.SEQ),
                fact,
                by,
                deviceTime,
                row.get(LEDGER.RECEIVED_AT).toInstant());
    }
}
