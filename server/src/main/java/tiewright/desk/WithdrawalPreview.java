package tiewright.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.conditions.Withdrawal;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.OfficialFact;
import tiewright.event.Refusal;
import tiewright.event.Side;
import tiewright.event.SlotSource;
import tiewright.event.Stage;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.standings.PoolTables;
import tiewright.standings.Row;
import tiewright.standings.Standings;
import tiewright.standings.Table;

/**
 * What each treatment of a withdrawal would do to the table of the club's pool and to who goes on, before anybody
 * decides. Asking changes nothing, and nothing here chooses.
 *
 * @param pool the club's pool, if it is in one
 * @param now as it stands
 */
public record WithdrawalPreview(ClubId club, Optional<String> pool, Outlook now, List<Outlook> treatments) {
    public WithdrawalPreview {
        treatments = List.copyOf(treatments);
    }

    /**
     * @param treatment empty for the table as it stands
     * @param refused why it cannot be chosen; then the rest is as it stands
     * @param goesOn by slot of the knockout that the pool feeds, in order of the ties: the club, if it is known already
     * @param walkovers ties of the knockout that would be decided without play, and who goes on from them
     */
    public record Outlook(
            Optional<Withdrawal> treatment,
            List<Refusal> refused,
            Optional<Table> table,
            Map<SlotSource, Optional<ClubId>> goesOn,
            Map<TieId, ClubId> walkovers) {}

    public static WithdrawalPreview of(Event event, Decision.Given given, ClubId club) {
        Optional<String> pool = event.pools().entrySet().stream()
                .filter(each -> each.getValue().contains(club))
                .map(Map.Entry::getKey)
                .findFirst();
        List<Outlook> treatments = new ArrayList<>();
        for (Withdrawal treatment : Withdrawal.values()) {
            Decision.Outcome outcome = new WithdrawClub(club, treatment, "-", "-").decide(event, given);
            treatments.add(
                    outcome instanceof Decision.Accepted accepted
                            ? outlook(
                                    event,
                                    event.after(accepted.facts(), given),
                                    pool,
                                    Optional.of(treatment),
                                    List.of())
                            : outlook(
                                    event,
                                    event,
                                    pool,
                                    Optional.of(treatment),
                                    ((Decision.Refused) outcome).reasons()));
        }
        return new WithdrawalPreview(club, pool, outlook(event, event, pool, Optional.empty(), List.of()), treatments);
    }

    private static Outlook outlook(
            Event before, Event after, Optional<String> pool, Optional<Withdrawal> treatment, List<Refusal> refused) {
        Optional<Table> table = pool.map(name -> Standings.of(PoolTables.input(after, name)));
        Map<SlotSource, Optional<ClubId>> goesOn = new LinkedHashMap<>();
        pool.ifPresent(name ->
                sources(after, name).forEach(source -> goesOn.put(source, at(after, table.orElseThrow(), source))));
        return new Outlook(treatment, refused, table, goesOn, walkovers(before, after));
    }

    private static List<SlotSource> sources(Event event, String pool) {
        List<SlotSource> sources = new ArrayList<>();
        for (Tie tie : event.ties().values()) {
            for (Side side : Side.values()) {
                tie.slot(side)
                        .from()
                        .filter(from -> from.kind() == SlotSource.Kind.POOL_PLACE
                                && from.of().equals(pool))
                        .ifPresent(sources::add);
            }
        }
        sources.sort(java.util.Comparator.comparingInt(SlotSource::place));
        return sources;
    }

    /** A signed order holds; else the table as it stands, where nobody shares the place. */
    private static Optional<ClubId> at(Event event, Table table, SlotSource source) {
        OfficialFact.TableSigned signed = event.signedTables().get(source.of());
        if (signed != null) {
            return source.place() <= signed.order().size()
                    ? Optional.of(signed.order().get(source.place() - 1))
                    : Optional.empty();
        }
        List<ClubId> there = table.rows().stream()
                .filter(row -> row.place() == source.place())
                .map(Row::club)
                .toList();
        return there.size() == 1 ? Optional.of(there.get(0)) : Optional.empty();
    }

    private static Map<TieId, ClubId> walkovers(Event before, Event after) {
        Map<TieId, ClubId> walkovers = new LinkedHashMap<>();
        for (Tie tie : after.ties().values()) {
            boolean wasOver = before.tie(tie.id())
                    .filter(old -> before.progress(old).finished())
                    .isPresent();
            if (tie.stage() != Stage.POOL && tie.isReady() && !wasOver) {
                after.progress(tie).winner().flatMap(tie::club).ifPresent(winner -> walkovers.put(tie.id(), winner));
            }
        }
        return walkovers;
    }
}
