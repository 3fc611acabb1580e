package tiewright.event;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What officials signed, ruled, drew and posted, in the order of entry.
 *
 * @param lots by pool, oldest first
 * @param signedTables by pool, as far as the signature holds
 * @param signed the final standings, as long as the signature holds
 */
public record OfficialRecord(
        Map<ClubId, OfficialFact.ClubWithdrawn> withdrawals,
        Map<String, List<OfficialFact.LotDrawn>> lots,
        Map<String, OfficialFact.TableSigned> signedTables,
        Optional<OfficialFact.EventSigned> signed,
        List<OfficialFact.RulingStated> rulings,
        List<Event.Posted> notices,
        List<Event.Heat> heat,
        Disputes disputes) {
    static final OfficialRecord NONE = new OfficialRecord(
            Map.of(), Map.of(), Map.of(), Optional.empty(), List.of(), List.of(), List.of(), Disputes.NONE);

    public OfficialRecord {
        withdrawals = Frozen.copy(withdrawals);
        lots = Frozen.copy(lots);
        signedTables = Frozen.copy(signedTables);
        rulings = List.copyOf(rulings);
        notices = List.copyOf(notices);
        heat = List.copyOf(heat);
    }

    OfficialRecord with(OfficialFact.ClubWithdrawn fact) {
        return new OfficialRecord(
                Frozen.with(withdrawals, fact.club(), fact),
                lots,
                signedTables,
                signed,
                rulings,
                notices,
                heat,
                disputes);
    }

    OfficialRecord with(OfficialFact.LotDrawn fact) {
        List<OfficialFact.LotDrawn> ofPool = and(lots.getOrDefault(fact.pool(), List.of()), fact);
        return new OfficialRecord(
                withdrawals,
                Frozen.with(lots, fact.pool(), ofPool),
                signedTables,
                signed,
                rulings,
                notices,
                heat,
                disputes);
    }

    OfficialRecord with(OfficialFact.TableSigned fact, Instant at) {
        return with(Frozen.with(signedTables, fact.pool(), fact), signed).with(disputes.withSigned(fact.pool(), at));
    }

    OfficialRecord with(OfficialFact.EventSigned fact) {
        return with(signedTables, Optional.of(fact));
    }

    OfficialRecord with(OfficialFact.SignatureWithdrawn fact) {
        if (fact.pool().isEmpty()) {
            return with(signedTables, Optional.empty());
        }
        Map<String, OfficialFact.TableSigned> fewer = new LinkedHashMap<>(signedTables);
        fewer.remove(fact.pool().get());
        return with(fewer, signed);
    }

    private OfficialRecord with(
            Map<String, OfficialFact.TableSigned> tables, Optional<OfficialFact.EventSigned> standings) {
        return new OfficialRecord(withdrawals, lots, tables, standings, rulings, notices, heat, disputes);
    }

    OfficialRecord with(OfficialFact.RulingStated fact) {
        return new OfficialRecord(withdrawals, lots, signedTables, signed, and(rulings, fact), notices, heat, disputes);
    }

    OfficialRecord with(Event.Posted posted) {
        List<Event.Posted> more = and(notices, posted);
        return new OfficialRecord(withdrawals, lots, signedTables, signed, rulings, more, heat, disputes);
    }

    OfficialRecord with(OfficialFact.HeatDecided fact, Instant at) {
        List<Event.Heat> more = and(heat, new Event.Heat(fact, at));
        return new OfficialRecord(withdrawals, lots, signedTables, signed, rulings, notices, more, disputes);
    }

    OfficialRecord with(Disputes now) {
        return new OfficialRecord(withdrawals, lots, signedTables, signed, rulings, notices, heat, now);
    }

    private static <T> List<T> and(List<T> list, T more) {
        List<T> longer = new ArrayList<>(list);
        longer.add(more);
        return List.copyOf(longer);
    }
}
