package tiewright.event;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import tiewright.conditions.Conditions;
import tiewright.conditions.Preset;

/** Folds facts into a snapshot: mutable while it works, never seen outside. */
final class Fold {
    private long seq;
    private Optional<SetUpFact.EventDescribed> about = Optional.empty();
    private int conditionsVersion;
    private Conditions conditions = Conditions.of(Preset.CLUB_DAY);
    private final Map<ClubId, Integer> conditionsRead = new LinkedHashMap<>();
    private final Map<ClubId, Club> clubs = new LinkedHashMap<>();
    private final Map<PlayerId, Player> players = new LinkedHashMap<>();
    private final Map<String, Court> courts = new LinkedHashMap<>();
    private final Map<String, Link> links = new LinkedHashMap<>();
    private Optional<SetUpFact.OpeningChosen> opening = Optional.empty();
    private Optional<DrawFact.PoolsDrawn> draw = Optional.empty();
    private Optional<DrawFact.KnockoutDrawn> knockoutDraw = Optional.empty();
    private final Map<TieId, Tie> ties = new LinkedHashMap<>();
    private final Map<ExchangeId, Exchange> exchanges = new LinkedHashMap<>();
    private final Map<ClubId, OfficialFact.ClubWithdrawn> withdrawals = new LinkedHashMap<>();
    private final Map<String, List<OfficialFact.LotDrawn>> lots = new LinkedHashMap<>();
    private final Map<String, OfficialFact.TableSigned> signedTables = new LinkedHashMap<>();
    private Optional<OfficialFact.EventSigned> signed = Optional.empty();
    private final List<OfficialFact.RulingGiven> rulings = new ArrayList<>();
    private final List<Event.Posted> notices = new ArrayList<>();
    private OrderOfPlay order = OrderOfPlay.NONE;
    private final List<Event.Heat> heat = new ArrayList<>();
    private Disputes disputes = Disputes.NONE;
    private SetUpFact.SafetyDescribed safety = SetUpFact.SafetyDescribed.NOTHING;
    private Deletion deletion = Deletion.NONE;
    private Optional<Instant> firstSealedAt = Optional.empty();
    private Reach reach = Reach.NOTHING;

    Fold() {}

    Fold(Event from) {
        seq = from.seq();
        about = from.about();
        conditionsVersion = from.conditionsVersion();
        conditions = from.conditions();
        conditionsRead.putAll(from.conditionsRead());
        clubs.putAll(from.clubs());
        players.putAll(from.players());
        courts.putAll(from.courts());
        links.putAll(from.links());
        opening = from.opening();
        draw = from.draw();
        knockoutDraw = from.knockoutDraw();
        ties.putAll(from.ties());
        exchanges.putAll(from.exchanges());
        withdrawals.putAll(from.withdrawals());
        lots.putAll(from.lots());
        signedTables.putAll(from.signedTables());
        signed = from.signed();
        rulings.addAll(from.rulings());
        notices.addAll(from.notices());
        order = from.order();
        heat.addAll(from.heat());
        disputes = from.disputes();
        safety = from.safety();
        deletion = from.deletion();
        firstSealedAt = from.firstSealedAt();
        reach = from.reach();
    }

    Reach reach() {
        return reach;
    }

    Event toEvent() {
        return new Event(
                seq,
                about,
                conditionsVersion,
                conditions,
                conditionsRead,
                clubs,
                players,
                courts,
                links,
                opening,
                draw,
                knockoutDraw,
                ties,
                exchanges,
                withdrawals,
                lots,
                signedTables,
                signed,
                rulings,
                notices,
                order,
                heat,
                disputes,
                safety,
                deletion,
                firstSealedAt,
                reach);
    }

    void apply(Recorded recorded) {
        if (recorded.seq() != seq + 1) {
            throw new IllegalStateException("fact " + recorded.seq() + " cannot follow fact " + seq);
        }
        seq = recorded.seq();
        Fact fact = recorded.fact();
        reach = reached(fact, recorded.receivedAt());
        switch (fact.kind()) {
            case EVENT_DESCRIBED -> about = Optional.of((SetUpFact.EventDescribed) fact);
            case CONDITIONS_PUBLISHED -> conditions((SetUpFact.ConditionsPublished) fact);
            case CONDITIONS_READ -> read((SetUpFact.ConditionsRead) fact);
            case CLUB_ENTERED -> club((SetUpFact.ClubEntered) fact);
            case CLUB_REMOVED -> removed(((SetUpFact.ClubRemoved) fact).club());
            case PLAYER_ENTERED -> player((SetUpFact.PlayerEntered) fact);
            case PLAYER_REMOVED -> players.remove(((SetUpFact.PlayerRemoved) fact).player());
            case COURT_SET -> court((SetUpFact.CourtSet) fact);
            case CHECKED_IN -> checkedIn((SetUpFact.CheckedIn) fact, recorded.receivedAt());
            case LINK_ISSUED -> link((SetUpFact.LinkIssued) fact);
            case LINK_REVOKED -> links.computeIfPresent(((SetUpFact.LinkRevoked) fact).link(), (n, l) -> l.asRevoked());
            case OPENING_CHOSEN -> opening = Optional.of((SetUpFact.OpeningChosen) fact);
            case SAFETY_DESCRIBED -> safety = (SetUpFact.SafetyDescribed) fact;
            case DELETION_DATED -> deletion = deletion.dated((SetUpFact.DeletionDated) fact);
            case DATA_ERASED -> erased(recorded.receivedAt());
            case POOLS_DRAWN -> drawn((DrawFact.PoolsDrawn) fact);
            case KNOCKOUT_DRAWN -> drawn((DrawFact.KnockoutDrawn) fact);
            case TIE_ARRANGED -> arranged((DrawFact.TieArranged) fact);
            case TIE_TIMED -> timed((DrawFact.TieTimed) fact, recorded.receivedAt());
            case PLAN_PUBLISHED -> order = order.published((DrawFact.PlanPublished) fact, recorded.receivedAt());
            case RUBBER_TIMED -> order = order.placed((DrawFact.RubberTimed) fact);
            case TIE_CALLED_OFF -> calledOff((DrawFact.TieCalledOff) fact, recorded.receivedAt());
            case SLOT_FILLED -> filled((DrawFact.SlotFilled) fact);
            case TIE_RESTARTED -> restarted((DrawFact.TieRestarted) fact);
            case SLOT_KEPT -> kept((DrawFact.SlotKept) fact);
            case SHEET_SEALED -> sealed((ExchangeFact.SheetSealed) fact, recorded.receivedAt());
            case SHEET_RETURNED ->
                side(
                        (ExchangeFact) fact,
                        ((ExchangeFact.SheetReturned) fact).club(),
                        Exchange.SideOfExchange::returned);
            case SHEET_HANDED_IN ->
                side(
                        (ExchangeFact) fact,
                        ((ExchangeFact.SheetHandedIn) fact).club(),
                        Exchange.SideOfExchange::handedIn);
            case OPENING_ASKED ->
                side((ExchangeFact) fact, ((ExchangeFact.OpeningAsked) fact).club(), Exchange.SideOfExchange::asked);
            case CLUB_TOLD ->
                side((ExchangeFact) fact, ((ExchangeFact.ClubTold) fact).club(), Exchange.SideOfExchange::asTold);
            case SIDE_RULED ->
                side(
                        (ExchangeFact) fact,
                        ((ExchangeFact.SideRuled) fact).club(),
                        s -> s.ruled((ExchangeFact.SideRuled) fact));
            case SHEETS_OPENED -> opened((ExchangeFact.SheetsOpened) fact, recorded.receivedAt());
            case PAIR_REPLACED -> replaced((ExchangeFact.PairReplaced) fact, recorded.receivedAt());
            case COURT_CALLED -> called((PlayFact.CourtCalled) fact, recorded.receivedAt());
            case CALL_TAKEN_BACK -> callTakenBack((PlayFact.CallTakenBack) fact);
            case CARD_ENTERED -> entered((PlayFact.CardEntered) fact, recorded);
            case CARD_CORRECTED -> corrected((PlayFact.CardCorrected) fact, recorded);
            case CARD_TAKEN_BACK -> cardTakenBack((PlayFact.CardTakenBack) fact, recorded);
            case PLAY_STOPPED ->
                change(
                        ((PlayFact) fact).tie(),
                        tie -> tie.withStop(
                                ((PlayFact.PlayStopped) fact).rubber(), Optional.of(recorded.receivedAt())));
            case PLAY_RESUMED ->
                change(
                        ((PlayFact) fact).tie(),
                        tie -> tie.withStop(((PlayFact.PlayResumed) fact).rubber(), Optional.empty()));
            case CLUB_WITHDRAWN ->
                withdrawals.put(((OfficialFact.ClubWithdrawn) fact).club(), (OfficialFact.ClubWithdrawn) fact);
            case LOT_DRAWN -> lot((OfficialFact.LotDrawn) fact);
            case TABLE_SIGNED -> signed((OfficialFact.TableSigned) fact, recorded.receivedAt());
            case EVENT_SIGNED -> signed = Optional.of((OfficialFact.EventSigned) fact);
            case RULING_GIVEN -> rulings.add((OfficialFact.RulingGiven) fact);
            case NOTICE_POSTED -> noticed((OfficialFact.NoticePosted) fact, recorded.receivedAt());
            case NOTICE_TOLD -> order = order.told((OfficialFact.NoticeTold) fact);
            case HEAT_DECIDED -> heat.add(new Event.Heat((OfficialFact.HeatDecided) fact, recorded.receivedAt()));
            case CORRECTION_DECIDED -> disputes = disputes.with((OfficialFact.CorrectionDecided) fact);
            case SIGNATURE_WITHDRAWN -> withdrawn((OfficialFact.SignatureWithdrawn) fact);
            case CASE_RULED -> disputes = disputes.with((OfficialFact.CaseRuled) fact);
            case PROTEST_MADE -> disputes = disputes.with((OfficialFact.ProtestMade) fact, recorded.receivedAt());
            case PROTEST_DECIDED -> disputes = disputes.with((OfficialFact.ProtestDecided) fact, recorded.receivedAt());
        }
    }

    /** Worked out before the fact is applied: only a first sheet of a side may be noticed by others. */
    private Reach reached(Fact fact, Instant at) {
        return switch (fact.kind()) {
            case LINK_ISSUED, LINK_REVOKED, CHECKED_IN, NOTICE_TOLD, HEAT_DECIDED -> reach.toOfficials(seq);
            case CONDITIONS_READ -> reach.toOfficials(seq).toClub(((SetUpFact.ConditionsRead) fact).club(), seq);
            case CLUB_TOLD -> reach.toClub(((ExchangeFact.ClubTold) fact).club(), seq);
            case SHEET_SEALED ->
                isReplacement((ExchangeFact.SheetSealed) fact)
                        ? reach.toClub(((ExchangeFact.SheetSealed) fact).club(), seq)
                        : reach.toEverybody(seq, at);
            default -> reach.toEverybody(seq, at);
        };
    }

    private boolean isReplacement(ExchangeFact.SheetSealed fact) {
        return Optional.ofNullable(ties.get(fact.exchange().tie()))
                .flatMap(tie -> tie.sideOf(fact.club()))
                .filter(side -> exchange(fact.exchange()).side(side).isIn())
                .isPresent();
    }

    private void conditions(SetUpFact.ConditionsPublished fact) {
        conditionsVersion = fact.version();
        conditions = fact.conditions();
    }

    private void read(SetUpFact.ConditionsRead fact) {
        conditionsRead.merge(fact.club(), fact.version(), Math::max);
    }

    private void club(SetUpFact.ClubEntered fact) {
        clubs.put(fact.club(), new Club(fact.club(), fact.name(), fact.town(), fact.seed()));
    }

    private void removed(ClubId club) {
        clubs.remove(club);
        players.values().removeIf(player -> player.club().equals(club));
    }

    private void player(SetUpFact.PlayerEntered fact) {
        Optional<Player> before = Optional.ofNullable(players.get(fact.player()));
        players.put(
                fact.player(),
                new Player(
                        fact.player(),
                        fact.club(),
                        fact.rank(),
                        fact.from(),
                        fact.until(),
                        fact.deputy(),
                        before.flatMap(Player::checkedInAt),
                        before.map(Player::absent).orElse(false)));
    }

    private void court(SetUpFact.CourtSet fact) {
        courts.put(fact.court(), new Court(fact.court(), fact.from(), fact.until(), fact.usable()));
    }

    private void checkedIn(SetUpFact.CheckedIn fact, Instant at) {
        players.computeIfPresent(fact.player(), (id, player) -> player.checked(fact.present(), at));
    }

    private void link(SetUpFact.LinkIssued fact) {
        links.put(
                fact.link(),
                new Link(fact.link(), fact.role(), fact.club(), fact.player(), fact.label(), fact.hash(), false));
    }

    /** The organisers' links stay: somebody has to be able to show what was deleted. */
    private void erased(Instant at) {
        deletion = deletion.erased(at);
        links.replaceAll((name, link) -> link.role() == Role.ORGANISER ? link : link.asRevoked());
    }

    private void drawn(DrawFact.PoolsDrawn fact) {
        draw = Optional.of(fact);
        ties.values().removeIf(tie -> tie.stage() == Stage.POOL);
    }

    private void drawn(DrawFact.KnockoutDrawn fact) {
        knockoutDraw = Optional.of(fact);
        ties.values().removeIf(tie -> tie.stage() == Stage.KNOCKOUT);
    }

    private void arranged(DrawFact.TieArranged fact) {
        ties.put(fact.tie(), Tie.arranged(fact));
    }

    private void timed(DrawFact.TieTimed fact, Instant at) {
        Optional.ofNullable(ties.get(fact.tie())).ifPresent(tie -> order = order.timed(tie, fact, at));
        change(fact.tie(), tie -> tie.timed(fact.start(), fact.court()));
    }

    private void calledOff(DrawFact.TieCalledOff fact, Instant at) {
        Optional.ofNullable(ties.remove(fact.tie())).ifPresent(tie -> order = order.calledOff(tie, at));
    }

    private void noticed(OfficialFact.NoticePosted fact, Instant at) {
        notices.add(new Event.Posted(fact, at));
        order = order.noticed(fact);
    }

    private void filled(DrawFact.SlotFilled fact) {
        change(fact.tie(), tie -> tie.filled(fact.side(), fact.club()));
    }

    private void kept(DrawFact.SlotKept fact) {
        change(fact.tie(), tie -> tie.kept(fact.side(), fact.club()));
    }

    private void restarted(DrawFact.TieRestarted fact) {
        exchanges.remove(ExchangeId.sheets(fact.tie()));
        exchanges.remove(ExchangeId.decider(fact.tie()));
        change(fact.tie(), tie -> tie.restarted(fact.home(), fact.away()));
    }

    private void signed(OfficialFact.TableSigned fact, Instant at) {
        signedTables.put(fact.pool(), fact);
        disputes = disputes.withSigned(fact.pool(), at);
    }

    private void withdrawn(OfficialFact.SignatureWithdrawn fact) {
        fact.pool().ifPresentOrElse(signedTables::remove, () -> signed = Optional.empty());
    }

    private void sealed(ExchangeFact.SheetSealed fact, Instant at) {
        firstSealedAt = firstSealedAt.or(() -> Optional.of(at));
        side(fact, fact.club(), side -> side.sealed(fact, at));
    }

    private void opened(ExchangeFact.SheetsOpened fact, Instant receivedAt) {
        Instant at = fact.openedAt()
                .flatMap(time -> about.map(
                        day -> day.date().atTime(time).atZone(day.zone()).toInstant()))
                .orElse(receivedAt);
        exchanges.put(fact.exchange(), exchange(fact.exchange()).opened(fact, at));
        change(fact.exchange().tie(), tie -> {
            SortedMap<RubberNo, Tie.OpenedRubber> pairs = new TreeMap<>(tie.opened());
            java.util.TreeSet<RubberNo> rubbers =
                    new java.util.TreeSet<>(fact.home().pairs().keySet());
            rubbers.addAll(fact.away().pairs().keySet());
            rubbers.forEach(no -> pairs.put(
                    no, new Tie.OpenedRubber(fact.home().pair(no), fact.away().pair(no))));
            return tie.withOpened(pairs);
        });
    }

    private void replaced(ExchangeFact.PairReplaced fact, Instant at) {
        exchanges.put(fact.exchange(), exchange(fact.exchange()).replaced(new Exchange.Replacement(fact, at)));
        change(fact.exchange().tie(), tie -> {
            SortedMap<RubberNo, Tie.OpenedRubber> pairs = new TreeMap<>(tie.opened());
            tie.sideOf(fact.club())
                    .ifPresent(side ->
                            pairs.computeIfPresent(fact.rubber(), (no, opened) -> opened.with(side, fact.pair())));
            return tie.withOpened(pairs);
        });
    }

    private void called(PlayFact.CourtCalled fact, Instant at) {
        change(fact.tie(), tie -> {
            SortedMap<RubberNo, Tie.Call> calls = new TreeMap<>(tie.calls());
            rubbersOf(fact.rubber()).forEach(no -> calls.put(no, new Tie.Call(fact.court(), at)));
            return tie.withCalls(calls);
        });
    }

    private void callTakenBack(PlayFact.CallTakenBack fact) {
        change(fact.tie(), tie -> {
            SortedMap<RubberNo, Tie.Call> calls = new TreeMap<>(tie.calls());
            rubbersOf(fact.rubber()).forEach(calls::remove);
            return tie.withCalls(calls);
        });
    }

    private List<RubberNo> rubbersOf(Optional<RubberNo> one) {
        return one.map(List::of).orElseGet(() -> RubberNo.upTo(conditions.rubbers()));
    }

    private void entered(PlayFact.CardEntered fact, Recorded at) {
        entry(
                fact.tie(),
                fact.rubber(),
                new Card.Entry(
                        at.seq(),
                        fact.games(),
                        fact.how(),
                        fact.asItStood(),
                        at.by(),
                        at.receivedAt(),
                        false,
                        false,
                        ""));
    }

    private void corrected(PlayFact.CardCorrected fact, Recorded at) {
        entry(
                fact.tie(),
                fact.rubber(),
                new Card.Entry(
                        at.seq(),
                        fact.games(),
                        fact.how(),
                        fact.asItStood(),
                        at.by(),
                        at.receivedAt(),
                        true,
                        false,
                        fact.reason()));
    }

    private void cardTakenBack(PlayFact.CardTakenBack fact, Recorded at) {
        entry(
                fact.tie(),
                fact.rubber(),
                new Card.Entry(
                        at.seq(),
                        List.of(),
                        How.VOID,
                        List.of(),
                        at.by(),
                        at.receivedAt(),
                        false,
                        true,
                        fact.reason()));
    }

    private void entry(TieId tie, RubberNo rubber, Card.Entry entry) {
        change(tie, t -> t.withCard(rubber, t.card(rubber).with(entry)).withStop(rubber, Optional.empty()));
    }

    private void lot(OfficialFact.LotDrawn fact) {
        List<OfficialFact.LotDrawn> more = new ArrayList<>(lots.getOrDefault(fact.pool(), List.of()));
        more.add(fact);
        lots.put(fact.pool(), List.copyOf(more));
    }

    private Exchange exchange(ExchangeId id) {
        return exchanges.getOrDefault(id, Exchange.begun(id));
    }

    private void side(
            ExchangeFact fact, ClubId club, java.util.function.UnaryOperator<Exchange.SideOfExchange> change) {
        Optional.ofNullable(ties.get(fact.exchange().tie()))
                .flatMap(tie -> tie.sideOf(club))
                .ifPresent(side -> {
                    Exchange exchange = exchange(fact.exchange());
                    exchanges.put(fact.exchange(), exchange.with(side, change.apply(exchange.side(side))));
                });
    }

    private void change(TieId id, java.util.function.UnaryOperator<Tie> change) {
        ties.computeIfPresent(id, (any, tie) -> change.apply(tie));
    }
}
