package tiewright.http.answers;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import tiewright.conditions.RetirementScore;
import tiewright.desk.DoNext;
import tiewright.desk.Echo;
import tiewright.desk.FinalPlacing;
import tiewright.desk.NextCalls;
import tiewright.desk.Objections;
import tiewright.event.ClubId;
import tiewright.event.DeciderClock;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.ExchangeId;
import tiewright.event.How;
import tiewright.event.OrderOfPlay;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.Recorded;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.event.VisibleEvent;
import tiewright.event.VisibleLog;
import tiewright.ledger.Ledger;
import tiewright.scoring.Score;
import tiewright.sheet.LateSheets;
import tiewright.sheet.SheetOf;
import tiewright.standings.Needs;
import tiewright.standings.NeedsReport;
import tiewright.standings.PoolTables;
import tiewright.standings.Standings;
import tiewright.standings.Table;
import tiewright.timetable.Expected;
import tiewright.timetable.ExpectedTimes;
import tiewright.timetable.Lateness;
import tiewright.timetable.Pace;
import tiewright.timetable.PlanProblem;
import tiewright.wording.DoNextWords;
import tiewright.wording.Language;
import tiewright.wording.Words;

/** What the computing rooms answer any viewer. Each answer is for everybody, or checks for whom it is. */
public final class Answers {
    private static final DateTimeFormatter BEGAN =
            DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss.SSS").withZone(ZoneOffset.UTC);

    private final Event event;
    private final VisibleEvent visible;
    private final Ledger ledger;
    private final Worked worked;

    public Answers(Asker asker) {
        this.event = asker.whole();
        this.visible = asker.event();
        this.ledger = asker.ledger();
        this.worked = asker.worked();
    }

    /** What is left of the clock of a decider that stands still, because the readings of a card differ. */
    public Optional<Duration> restOfDecider(Tie tie) {
        return DeciderClock.of(tie, event.conditions()).rest();
    }

    /** When somebody at the desk last entered anything that everybody may see. */
    public Optional<Instant> lastFromDesk() {
        return event.reach().heardAt();
    }

    /** When the first fact of the event was received, as a name of this event that no other has. */
    public String began() {
        return BEGAN.format(
                ledger.facts(0).stream().map(Recorded::receivedAt).findFirst().orElse(Instant.EPOCH));
    }

    /** When the ties that have not begun are likely to begin, for everybody. */
    public Map<TieId, Expected> expected() {
        return worked.expected(
                event.reach().everybody(),
                visible.now(),
                () -> ExpectedTimes.of(event, visible.now()).ties());
    }

    /** How long one rubber and its turnover are planned, in minutes: as in the plan that holds, else as is usual. */
    public int rubberMinutes() {
        return visible.order()
                .plan()
                .map(OrderOfPlay.Plan::slotMinutes)
                .orElseGet(() -> PlanProblem.usualSlot(event, Pace.USUAL));
    }

    /** The rubbers that can be called now, by tie, each with its court. */
    public Map<TieId, List<NextCalls.Next>> nextCalls() {
        return NextCalls.of(event);
    }

    /** Which clocks of lateness run; nothing for anybody but officials. */
    public List<Lateness.Late> late() {
        return visible.viewer().role().isOfficial() ? Lateness.of(event, visible.now()) : List.of();
    }

    /** The table of a pool as it stands. */
    public Table table(String pool) {
        return Standings.of(PoolTables.input(event, pool));
    }

    /** Until when captains can object to a finished table. */
    public Optional<Instant> objectionsUntil(String pool) {
        return Objections.until(event, pool);
    }

    /** What happens to a sheet that is not in at the deadline, as the conditions say. */
    public String lateRule() {
        return Words.of(visible)
                .sentence(
                        "page.late-" + event.conditions().lateSheet().code(),
                        Map.of("grace", event.conditions().graceMinutes()));
    }

    /** What the desk should do next; nothing for anybody else. */
    public List<DoNext.Item> doNext() {
        return visible.viewer().role().isOfficial() ? DoNext.of(event, ledger.directory(), visible.now()) : List.of();
    }

    public String doNextWords(DoNext.Item item) {
        return DoNextWords.of(Language.of(visible.language()), event).sentence(item);
    }

    /** The clubs in the order of the day, champion first; empty while something is unfinished. */
    public List<ClubId> finalPlacing() {
        return FinalPlacing.of(event);
    }

    /** Who has won by these numbers, as the table would count them. */
    public Optional<Echo> echo(TieId tie, RubberNo rubber, List<Score> games, How how) {
        return Echo.of(event, tie, rubber, games, how);
    }

    /** How a retired rubber would count in each published way. */
    public Map<RetirementScore, List<Score>> retirements(RubberNo rubber, List<Score> games, How how) {
        return Echo.ways(event, rubber, games, how);
    }

    /** What each club of a pool still needs, in draw order. */
    public List<NeedsReport> needs(String pool) {
        return worked.needs(
                event.reach().everybody(),
                pool,
                () -> event.pools().getOrDefault(pool, List.of()).stream()
                        .flatMap(club -> Needs.of(PoolTables.input(event, pool), club, OptionalInt.empty()).stream())
                        .toList());
    }

    /** The sheet that the conditions foresee for a club that is late; a person decides whether it counts. */
    public Optional<Sheet> foreseen(ExchangeId exchange, ClubId club) {
        return visible.viewer().role().isOfficial()
                ? LateSheets.foreseen(new SheetOf(event, exchange, club, ledger.directory()))
                : Optional.empty();
    }

    /** The sealed sheet that a captain let the own club's links see; empty for everybody else. */
    public Optional<Sheet> toldSheet(ExchangeId exchange, ClubId club) {
        if (!visible.viewer().isOf(club) || !visible.mayRead(exchange)) {
            return Optional.empty();
        }
        boolean told = event.tie(exchange.tie())
                .flatMap(tie -> tie.sideOf(club))
                .filter(side -> event.exchange(exchange).side(side).told())
                .isPresent();
        return told ? ledger.ownSheet(exchange, club).map(Decision.Sealed::sheet) : Optional.empty();
    }

    /** The facts that this official may notice, numbered for this viewer, oldest first. */
    public List<VisibleLog.Entry> log() {
        if (!visible.viewer().role().isOfficial()) {
            throw new IllegalStateException("only officials read the log");
        }
        return VisibleLog.of(ledger.facts(0), visible.viewer());
    }

    /** Who of the club is marked as hurt or ill: for officials and the own captain; nobody, as far as a link knows that is not let in. */
    public List<PlayerId> hurt(ClubId club) {
        if (!visible.viewer().role().isOfficial() && !visible.viewer().isCaptainOf(club)) {
            throw new IllegalStateException("only officials and the captain of a club may ask this");
        }
        boolean shown = visible.viewer().role().isOfficial() || visible.isLetIn();
        Set<PlayerId> marked = shown ? ledger.hurt() : Set.of();
        return event.squad(club).stream()
                .map(Player::id)
                .filter(marked::contains)
                .toList();
    }
}
