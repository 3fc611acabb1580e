package tiewright.event;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Folds facts into a snapshot: says which family a fact belongs to, and what of it reaches whom. Each family folds its own.
 * Mutable while it works, never seen outside.
 */
final class Fold {
    private long seq;
    private Prospectus prospectus;
    private final EntriesFold entries;
    private final ProgrammeFold programme;
    private final EnvelopesFold envelopes;
    private OfficialRecord officials;
    private Reach reach;

    Fold(Event from) {
        seq = from.seq();
        prospectus = from.prospectus();
        entries = new EntriesFold(from.entries());
        programme = new ProgrammeFold(from.programme());
        envelopes = new EnvelopesFold(from.envelopes());
        officials = from.officials();
        reach = from.reach();
    }

    Reach reach() {
        return reach;
    }

    Event toEvent() {
        return new Event(seq, prospectus, entries.done(), programme.done(), envelopes.done(), officials, reach);
    }

    /** One line for each kind and therefore longer than other methods: here the compiler asks for a new kind. */
    void apply(Recorded recorded) {
        if (recorded.seq() != seq + 1) {
            throw new IllegalStateException("fact " + recorded.seq() + " cannot follow fact " + seq);
        }
        seq = recorded.seq();
        Fact fact = recorded.fact();
        Instant at = recorded.receivedAt();
        reach = reached(fact, at);
        switch (fact.kind()) {
            case EVENT_DESCRIBED -> prospectus = prospectus.with((SetUpFact.EventDescribed) fact);
            case CONDITIONS_PUBLISHED -> prospectus = prospectus.with((SetUpFact.ConditionsPublished) fact);
            case CONDITIONS_READ -> prospectus = prospectus.with((SetUpFact.ConditionsRead) fact);
            case OPENING_CHOSEN -> prospectus = prospectus.with((SetUpFact.OpeningChosen) fact);
            case SAFETY_DESCRIBED -> prospectus = prospectus.with((SetUpFact.SafetyDescribed) fact);
            case DELETION_DATED -> prospectus = prospectus.with((SetUpFact.DeletionDated) fact);
            case DATA_ERASED -> erased(recorded);
            case CLUB_ENTERED -> entries.entered((SetUpFact.ClubEntered) fact);
            case CLUB_REMOVED -> entries.removed((SetUpFact.ClubRemoved) fact);
            case PLAYER_ENTERED -> entries.entered((SetUpFact.PlayerEntered) fact);
            case PLAYER_REMOVED -> entries.removed((SetUpFact.PlayerRemoved) fact);
            case COURT_SET -> entries.set((SetUpFact.CourtSet) fact);
            case CHECKED_IN -> entries.checked((SetUpFact.CheckedIn) fact, at);
            case LINK_ISSUED -> entries.issued((SetUpFact.LinkIssued) fact, recorded);
            case LINK_LET_IN -> entries.letIn((SetUpFact.LinkLetIn) fact, recorded);
            case LINK_REVOKED -> entries.revoked((SetUpFact.LinkRevoked) fact, recorded);
            case POOLS_DRAWN -> programme.drawn((DrawFact.PoolsDrawn) fact);
            case KNOCKOUT_DRAWN -> programme.drawn((DrawFact.KnockoutDrawn) fact);
            case TIE_ARRANGED -> arranged((DrawFact.TieArranged) fact);
            case TIE_TIMED -> programme.timed((DrawFact.TieTimed) fact, entries.clubs(), at);
            case PLAN_PUBLISHED -> programme.published((DrawFact.PlanPublished) fact, at);
            case RUBBER_TIMED -> programme.placed((DrawFact.RubberTimed) fact);
            case TIE_CALLED_OFF -> programme.calledOff((DrawFact.TieCalledOff) fact, entries.clubs(), at);
            case SLOT_FILLED -> filled((DrawFact.SlotFilled) fact);
            case SLOT_KEPT -> kept((DrawFact.SlotKept) fact);
            case TIE_RESTARTED -> restarted((DrawFact.TieRestarted) fact);
            case SHEET_SEALED -> sealed((ExchangeFact.SheetSealed) fact, recorded);
            case SHEET_RETURNED -> returned((ExchangeFact.SheetReturned) fact);
            case SHEET_HANDED_IN -> handedIn((ExchangeFact.SheetHandedIn) fact);
            case OPENING_ASKED -> asked((ExchangeFact.OpeningAsked) fact);
            case CLUB_TOLD -> told((ExchangeFact.ClubTold) fact);
            case SIDE_RULED -> ruled((ExchangeFact.SideRuled) fact);
            case SHEETS_OPENED -> opened((ExchangeFact.SheetsOpened) fact, at);
            case PAIR_REPLACED -> replaced((ExchangeFact.PairReplaced) fact, at);
            case COURT_CALLED -> programme.called((PlayFact.CourtCalled) fact, rubbers(), at);
            case CALL_TAKEN_BACK -> programme.takenBack((PlayFact.CallTakenBack) fact, rubbers());
            case CARD_ENTERED -> entered((PlayFact.CardEntered) fact, recorded);
            case CARD_CORRECTED -> corrected((PlayFact.CardCorrected) fact, recorded);
            case CARD_TAKEN_BACK -> cardTakenBack((PlayFact.CardTakenBack) fact, recorded);
            case PLAY_STOPPED, PLAY_RESUMED, HALL_STOPPED -> programme.stands(fact, at);
            case CLUB_WITHDRAWN -> officials = officials.with((OfficialFact.ClubWithdrawn) fact);
            case LOT_DRAWN -> officials = officials.with((OfficialFact.LotDrawn) fact);
            case TABLE_SIGNED -> officials = officials.with((OfficialFact.TableSigned) fact, at);
            case EVENT_SIGNED -> officials = officials.with((OfficialFact.EventSigned) fact);
            case SIGNATURE_WITHDRAWN -> officials = officials.with((OfficialFact.SignatureWithdrawn) fact);
            case RULING_GIVEN -> officials = officials.with(((OfficialFact.RulingGiven) fact).stated());
            case NOTICE_POSTED -> posted(((OfficialFact.NoticePosted) fact).stated(), at);
            case RULING_STATED -> officials = officials.with((OfficialFact.RulingStated) fact);
            case NOTICE_STATED -> posted((OfficialFact.NoticeStated) fact, at);
            case NOTICE_TOLD -> programme.told((OfficialFact.NoticeTold) fact);
            case HEAT_DECIDED -> officials = officials.with((OfficialFact.HeatDecided) fact, at);
            case CORRECTION_DECIDED -> disputed(d -> d.with((OfficialFact.CorrectionDecided) fact));
            case CASE_RULED -> disputed(d -> d.with((OfficialFact.CaseRuled) fact));
            case TWO_PEOPLE -> disputed(d -> d.with((OfficialFact.TwoPeople) fact));
            case PROTEST_MADE -> disputed(d -> d.with((OfficialFact.ProtestMade) fact, at));
            case PROTEST_DECIDED -> disputed(d -> d.with((OfficialFact.ProtestDecided) fact, at));
        }
    }

    /** Worked out before the fact is applied: only a first sheet of a side may be noticed by others. */
    private Reach reached(Fact fact, Instant at) {
        return switch (fact.kind()) {
            case CHECKED_IN, NOTICE_TOLD, HEAT_DECIDED, TWO_PEOPLE -> reach.toOfficials(seq);
            case LINK_ISSUED -> reachedByLink(((SetUpFact.LinkIssued) fact).club());
            case LINK_REVOKED -> reachedByLink(clubOf(((SetUpFact.LinkRevoked) fact).link()));
            case LINK_LET_IN -> reachedByLink(clubOf(((SetUpFact.LinkLetIn) fact).link()));
            case CONDITIONS_READ -> reach.toOfficials(seq).toClub(((SetUpFact.ConditionsRead) fact).club(), seq);
            case CLUB_TOLD -> reach.toClub(((ExchangeFact.ClubTold) fact).club(), seq);
            case SHEET_SEALED ->
                isReplacement((ExchangeFact.SheetSealed) fact)
                        ? reach.toClub(((ExchangeFact.SheetSealed) fact).club(), seq)
                        : reach.toEverybody(seq, at);
            default -> reach.toEverybody(seq, at);
        };
    }

    /** What happens to its links a club is told as well. */
    private Reach reachedByLink(Optional<ClubId> club) {
        Reach officials = reach.toOfficials(seq);
        return club.map(one -> officials.toClub(one, seq)).orElse(officials);
    }

    private Optional<ClubId> clubOf(String link) {
        return Optional.ofNullable(entries.links().get(link)).flatMap(Link::club);
    }

    private boolean isReplacement(ExchangeFact.SheetSealed fact) {
        return programme
                .tie(fact.exchange().tie())
                .flatMap(tie -> tie.sideOf(fact.club()))
                .filter(side -> envelopes.exchange(fact.exchange()).side(side).isIn())
                .isPresent();
    }

    private int rubbers() {
        return prospectus.conditions().rubbers();
    }

    private void erased(Recorded recorded) {
        prospectus = prospectus.erased(recorded.receivedAt());
        entries.erased(recorded);
    }

    /** A tie laid out anew begins anew. */
    private void arranged(DrawFact.TieArranged fact) {
        envelopes.restarted(fact.tie());
        programme.arranged(fact);
    }

    private void filled(DrawFact.SlotFilled fact) {
        taken(fact.tie(), fact.side(), fact.club());
        programme.filled(fact);
    }

    private void kept(DrawFact.SlotKept fact) {
        taken(fact.tie(), fact.side(), fact.club());
        programme.kept(fact);
    }

    /** Whoever takes a slot learns nothing of what the club that stood there did. */
    private void taken(TieId tie, Side side, ClubId club) {
        programme
                .tie(tie)
                .flatMap(found -> found.club(side))
                .filter(before -> !before.equals(club))
                .ifPresent(before -> envelopes.left(tie, side));
    }

    private void restarted(DrawFact.TieRestarted fact) {
        envelopes.restarted(fact.tie());
        programme.restarted(fact);
    }

    private void sealed(ExchangeFact.SheetSealed fact, Recorded recorded) {
        envelopes.sealedAt(recorded.receivedAt());
        Optional<Link> by = recorded.by().link().map(entries.links()::get);
        boolean letIn = by.filter(link ->
                        ClubLinks.of(entries.links().values(), fact.club()).isLetIn(link, recorded.receivedAt()))
                .isPresent();
        side(fact, fact.club(), side -> side.sealed(fact, side.sealings().sealed(recorded, by, letIn)));
    }

    private void returned(ExchangeFact.SheetReturned fact) {
        side(fact, fact.club(), Exchange.SideOfExchange::returned);
    }

    private void handedIn(ExchangeFact.SheetHandedIn fact) {
        side(fact, fact.club(), Exchange.SideOfExchange::handedIn);
    }

    private void asked(ExchangeFact.OpeningAsked fact) {
        side(fact, fact.club(), Exchange.SideOfExchange::asked);
    }

    private void told(ExchangeFact.ClubTold fact) {
        side(fact, fact.club(), side -> side.asTold(fact.told()));
    }

    private void ruled(ExchangeFact.SideRuled fact) {
        side(fact, fact.club(), side -> side.ruled(fact));
    }

    private void side(ExchangeFact fact, ClubId club, UnaryOperator<Exchange.SideOfExchange> change) {
        programme
                .tie(fact.exchange().tie())
                .flatMap(tie -> tie.sideOf(club))
                .ifPresent(side -> envelopes.change(fact.exchange(), side, change));
    }

    private void opened(ExchangeFact.SheetsOpened fact, Instant receivedAt) {
        Instant at = fact.openedAt()
                .flatMap(time -> prospectus.about().map(day -> day.at(time)))
                .orElse(receivedAt);
        envelopes.opened(fact, at);
        programme.opened(fact);
    }

    private void replaced(ExchangeFact.PairReplaced fact, Instant at) {
        envelopes.replaced(fact, at);
        programme.replaced(fact);
    }

    private void entered(PlayFact.CardEntered fact, Recorded recorded) {
        Card.Written written = new Card.Written(fact.games(), fact.how(), fact.asItStood());
        programme.written(
                fact.tie(), fact.rubber(), Card.Entry.of(recorded, written, Card.Purpose.READS, Because.NOTHING));
    }

    private void corrected(PlayFact.CardCorrected fact, Recorded recorded) {
        Card.Written written = new Card.Written(fact.games(), fact.how(), fact.asItStood());
        programme.written(
                fact.tie(), fact.rubber(), Card.Entry.of(recorded, written, Card.Purpose.SETTLES, fact.because()));
    }

    private void cardTakenBack(PlayFact.CardTakenBack fact, Recorded recorded) {
        Card.Written nothing = new Card.Written(List.of(), How.VOID, List.of());
        programme.written(
                fact.tie(), fact.rubber(), Card.Entry.of(recorded, nothing, Card.Purpose.TAKES_BACK, fact.because()));
    }

    private void posted(OfficialFact.NoticeStated fact, Instant at) {
        Optional<Saying> between =
                fact.tie().flatMap(programme::tie).map(tie -> AsItStands.between(tie, entries.clubs()));
        officials = officials.with(new Event.Posted(fact, at, between));
        programme.noticed(fact);
    }

    private void disputed(UnaryOperator<Disputes> change) {
        officials = officials.with(change.apply(officials.disputes()));
    }
}
