package tiewright.event;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.conditions.Conditions;

/**
 * The event as it stands after fact number {@code seq}: the fold of the ledger so far, one record for each family of facts.
 * Immutable; everything worked out (standings, bracket, advice) is a function of it. It holds no name of a person and
 * nothing of a sealed sheet but its receipt.
 *
 * <p>Maps keep the order of first entry. The accessors at the end spare callers the families, which they need not know; they
 * make the class longer than others.
 */
public record Event(
        long seq,
        Prospectus prospectus,
        Entries entries,
        Programme programme,
        Envelopes envelopes,
        OfficialRecord officials,
        Reach reach) {
    private static final Event EMPTY = new Event(
            0, Prospectus.NONE, Entries.NONE, Programme.NONE, Envelopes.NONE, OfficialRecord.NONE, Reach.NOTHING);

    /**
     * A notice and when it was posted.
     *
     * @param between the clubs of its tie, as they stood then; empty where it is about no one tie
     */
    public record Posted(OfficialFact.NoticeStated notice, Instant at, Optional<Saying> between) {}

    /** A decision in heat and when it was logged. */
    public record Heat(OfficialFact.HeatDecided decided, Instant at) {}

    /** Nothing has happened yet. */
    public static Event empty() {
        return EMPTY;
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

    /** Whether this link of the club may read the sheet that the club has sealed and that nobody has opened yet. */
    public boolean mayRead(Link link, ExchangeId exchange, Instant now) {
        Optional<Sealings.InPlace> inPlace = link.club()
                .flatMap(club -> tie(exchange.tie()).flatMap(tie -> tie.sideOf(club)))
                .flatMap(side -> exchange(exchange).side(side).sealings().inPlace());
        boolean asCaptain = link.role() == Role.CAPTAIN;
        return !link.revoked()
                && inPlace.filter(sheet ->
                                sheet.wasThere(link) && (!asCaptain || sheet.isBy(link) || entries.isLetIn(link, now)))
                        .isPresent();
    }

    /** The conditions are frozen by the first sealed sheet. */
    public boolean isFrozen() {
        return envelopes.firstSealedAt().isPresent();
    }

    /** How far the tie has come under the conditions. */
    public TieProgress progress(Tie tie) {
        return TieProgress.of(tie, conditions());
    }

    /** Somebody has begun with the tie: a sheet is in or ruled, or it is under way. Who plays in it changes by a ruling only. */
    public boolean hasBegun(Tie tie) {
        return tie.isUnderWay()
                || exchange(ExchangeId.sheets(tie.id())).isBegun()
                || exchange(ExchangeId.decider(tie.id())).isBegun();
    }

    /** Something of the tie is still to come: it is not over, and no club of it withdrew. */
    public boolean goesOn(Tie tie) {
        return !progress(tie).finished() && !isGone(tie);
    }

    /** A club of the tie withdrew: nobody is called to it any more. */
    public boolean isGone(Tie tie) {
        return tie.clubs().stream().anyMatch(withdrawals()::containsKey);
    }

    /** The published start of a tie as a moment; empty while it has none. */
    public Optional<Instant> startsAt(Tie tie) {
        return tie.start().flatMap(start -> about().map(day -> day.at(start)));
    }

    public Optional<SetUpFact.EventDescribed> about() {
        return prospectus.about();
    }

    public int conditionsVersion() {
        return prospectus.conditionsVersion();
    }

    public Conditions conditions() {
        return prospectus.conditions();
    }

    public Map<ClubId, Integer> conditionsRead() {
        return prospectus.conditionsRead();
    }

    public Optional<SetUpFact.OpeningChosen> opening() {
        return prospectus.opening();
    }

    public SetUpFact.SafetyDescribed safety() {
        return prospectus.safety();
    }

    public Deletion deletion() {
        return prospectus.deletion();
    }

    public Map<ClubId, Club> clubs() {
        return entries.clubs();
    }

    public Optional<Club> club(ClubId id) {
        return entries.club(id);
    }

    public Map<PlayerId, Player> players() {
        return entries.players();
    }

    public Optional<Player> player(PlayerId id) {
        return entries.player(id);
    }

    /** The squad in order of entry. */
    public List<Player> squad(ClubId club) {
        return entries.squad(club);
    }

    public Map<String, Court> courts() {
        return entries.courts();
    }

    public Map<String, Link> links() {
        return entries.links();
    }

    public Optional<DrawFact.PoolsDrawn> draw() {
        return programme.draw();
    }

    public Optional<DrawFact.KnockoutDrawn> knockoutDraw() {
        return programme.knockoutDraw();
    }

    public Map<TieId, Tie> ties() {
        return programme.ties();
    }

    public Optional<Tie> tie(TieId id) {
        return programme.tie(id);
    }

    public List<Tie> tiesOfPool(String pool) {
        return programme.tiesOfPool(pool);
    }

    /** The clubs of each pool in draw order, whether drawn here or brought in with the ties. */
    public Map<String, List<ClubId>> pools() {
        return programme.pools();
    }

    public OrderOfPlay order() {
        return programme.order();
    }

    public Map<ExchangeId, Exchange> exchanges() {
        return envelopes.exchanges();
    }

    public Exchange exchange(ExchangeId id) {
        return envelopes.exchange(id);
    }

    public Map<ClubId, OfficialFact.ClubWithdrawn> withdrawals() {
        return officials.withdrawals();
    }

    public Map<String, List<OfficialFact.LotDrawn>> lots() {
        return officials.lots();
    }

    public Map<String, OfficialFact.TableSigned> signedTables() {
        return officials.signedTables();
    }

    public Optional<OfficialFact.EventSigned> signed() {
        return officials.signed();
    }

    public List<OfficialFact.RulingStated> rulings() {
        return officials.rulings();
    }

    public List<Posted> notices() {
        return officials.notices();
    }

    public List<Heat> heat() {
        return officials.heat();
    }

    public Disputes disputes() {
        return officials.disputes();
    }
}
