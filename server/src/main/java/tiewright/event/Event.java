package tiewright.event;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.conditions.Conditions;

/**
 * The event as it stands after fact number {@code seq}: the fold of the ledger so far. Immutable; everything worked out
 * (standings, bracket, advice) is a function of it. It holds no name of a person and nothing of a sealed sheet but its
 * receipt.
 *
 * <p>Maps keep the order of first entry.
 */
public record Event(
        long seq,
        Optional<SetUpFact.EventDescribed> about,
        int conditionsVersion,
        Conditions conditions,
        Map<ClubId, Integer> conditionsRead,
        Map<ClubId, Club> clubs,
        Map<PlayerId, Player> players,
        Map<String, Court> courts,
        Map<String, Link> links,
        Optional<SetUpFact.OpeningChosen> opening,
        Optional<DrawFact.PoolsDrawn> draw,
        Optional<DrawFact.KnockoutDrawn> knockoutDraw,
        Map<TieId, Tie> ties,
        Map<ExchangeId, Exchange> exchanges,
        Map<ClubId, OfficialFact.ClubWithdrawn> withdrawals,
        Map<String, List<OfficialFact.LotDrawn>> lots,
        Map<String, OfficialFact.TableSigned> signedTables,
        Optional<OfficialFact.EventSigned> signed,
        List<OfficialFact.RulingGiven> rulings,
        List<Posted> notices,
        OrderOfPlay order,
        List<Heat> heat,
        Disputes disputes,
        SetUpFact.SafetyDescribed safety,
        Deletion deletion,
        Optional<Instant> firstSealedAt,
        Reach reach) {

    /** A notice and when it was posted. */
    public record Posted(OfficialFact.NoticePosted notice, Instant at) {}

    /** A decision in heat and when it was logged. */
    public record Heat(OfficialFact.HeatDecided decided, Instant at) {}

    public Event {
        conditionsRead = frozen(conditionsRead);
        clubs = frozen(clubs);
        players = frozen(players);
        courts = frozen(courts);
        links = frozen(links);
        ties = frozen(ties);
        exchanges = frozen(exchanges);
        withdrawals = frozen(withdrawals);
        lots = frozen(lots);
        signedTables = frozen(signedTables);
        rulings = List.copyOf(rulings);
        notices = List.copyOf(notices);
        heat = List.copyOf(heat);
    }

    /** Nothing has happened yet. */
    public static Event empty() {
        return new Fold().toEvent();
    }

    /** The event after all these facts, oldest first. */
    public static Event of(Collection<Recorded> facts) {
        return empty().then(facts);
    }

    /** This event and what happened next, oldest first. */
    public Event then(Collection<Recorded> facts) {
        Fold fold = new Fold(this);
        facts.forEach(fold::apply);
        return fold.toEvent();
    }

    /** This event as it will be once these facts of a decision are in, oldest first. */
    public Event after(Collection<? extends Fact> facts, Decision.Given given) {
        List<Recorded> recorded = new ArrayList<>();
        for (Fact fact : facts) {
            recorded.add(new Recorded(seq + recorded.size() + 1, fact, given.by(), Optional.empty(), given.now()));
        }
        return then(recorded);
    }

    public Optional<Club> club(ClubId id) {
        return Optional.ofNullable(clubs.get(id));
    }

    public Optional<Player> player(PlayerId id) {
        return Optional.ofNullable(players.get(id));
    }

    public Optional<Tie> tie(TieId id) {
        return Optional.ofNullable(ties.get(id));
    }

    public Exchange exchange(ExchangeId id) {
        return exchanges.getOrDefault(id, Exchange.begun(id));
    }

    /** The squad in order of entry. */
    public List<Player> squad(ClubId club) {
        return players.values().stream()
                .filter(player -> player.club().equals(club))
                .toList();
    }

    /** The conditions are frozen by the first sealed sheet. */
    public boolean isFrozen() {
        return firstSealedAt.isPresent();
    }

    /** How far the tie has come under the conditions. */
    public TieProgress progress(Tie tie) {
        return TieProgress.of(tie, conditions);
    }

    /** Somebody has begun with the tie: a sheet is in or ruled, or it is under way. Who plays in it changes by a ruling only. */
    public boolean hasBegun(Tie tie) {
        return tie.isUnderWay()
                || exchange(ExchangeId.sheets(tie.id())).isBegun()
                || exchange(ExchangeId.decider(tie.id())).isBegun();
    }

    /** A club of the tie withdrew: nobody is called to it any more. */
    public boolean isGone(Tie tie) {
        return tie.clubs().stream().anyMatch(withdrawals::containsKey);
    }

    /** The published start of a tie as a moment; empty while it has none. */
    public Optional<Instant> startsAt(Tie tie) {
        return tie.start()
                .flatMap(start -> about.map(day ->
                        LocalDateTime.of(day.date(), start).atZone(day.zone()).toInstant()));
    }

    /** The clubs of each pool in draw order, whether drawn here or brought in with the ties. */
    public Map<String, List<ClubId>> pools() {
        return Pools.of(this);
    }

    public List<Tie> tiesOfPool(String pool) {
        return ties.values().stream()
                .filter(tie -> tie.pool().filter(pool::equals).isPresent())
                .toList();
    }

    private static <K, V> Map<K, V> frozen(Map<K, V> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }
}
