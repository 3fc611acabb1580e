package tiewright.http;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import tiewright.conditions.DeciderKind;
import tiewright.conditions.RetirementScore;
import tiewright.desk.DoNext;
import tiewright.desk.Echo;
import tiewright.desk.FinalPlacing;
import tiewright.desk.Objections;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.ExchangeId;
import tiewright.event.How;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.Recorded;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.TieId;
import tiewright.event.VisibleEvent;
import tiewright.event.VisibleLog;
import tiewright.ledger.ClubNotes;
import tiewright.ledger.Ledger;
import tiewright.lineup.Aim;
import tiewright.lineup.DayInputs;
import tiewright.lineup.DayLoads;
import tiewright.lineup.DayProblem;
import tiewright.lineup.Freshness;
import tiewright.lineup.LineupInputs;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.OwnRecord;
import tiewright.plainfiles.FilmNotes;
import tiewright.rating.Earlier;
import tiewright.rating.Evidence;
import tiewright.rating.Prior;
import tiewright.rating.Ratings;
import tiewright.setup.EntryWarnings;
import tiewright.scoring.Score;
import tiewright.sheet.Choices;
import tiewright.sheet.LateSheets;
import tiewright.sheet.SheetRules;
import tiewright.standings.Needs;
import tiewright.standings.NeedsReport;
import tiewright.standings.PoolTables;
import tiewright.standings.Standings;
import tiewright.standings.Table;
import tiewright.standings.ThroughChances;
import tiewright.timetable.Budget;
import tiewright.timetable.Expected;
import tiewright.timetable.ExpectedTimes;
import tiewright.timetable.Lateness;
import tiewright.timetable.Pin;
import tiewright.timetable.PlanProblem;
import tiewright.timetable.Planned;
import tiewright.timetable.Planner;
import tiewright.timetable.Replan;
import tiewright.wording.DoNextWords;
import tiewright.wording.Words;

/**
 * What the computing rooms answer one viewer: the one place of this room that holds a whole event. Each answer is for
 * everybody, or checks for whom it is.
 */
final class Answers {
  private static final DateTimeFormatter BEGAN = DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss.SSS").withZone(ZoneOffset.UTC);

  private static final int PLAYS_TO_SEE_WHETHER_IT_MATTERS = 60;

  private final Event event;
  private final VisibleEvent visible;
  private final Ledger ledger;
  private final Worked worked;

  Answers(Event event, VisibleEvent visible, Ledger ledger, Worked worked) {
    this.event = event;
    this.visible = visible;
    this.ledger = ledger;
    this.worked = worked;
  }

  /** When somebody at the desk last entered anything that everybody may see. */
  Optional<Instant> lastFromDesk() {
    return event.reach().heardAt();
  }

  /** When the first fact of the event was received, as a name of this event that no other has. */
  String began() {
    return BEGAN.format(ledger.facts(0).stream().map(Recorded::receivedAt).findFirst().orElse(Instant.EPOCH));
  }

  /** A search for an order of play over the event as it stands now, for those who may publish one. */
  Function<Budget, Planned> planning(PlanAsk asked, List<Pin> pins) {
    mustPublish();
    PlanProblem problem = PlanProblem.of(event, asked.asked(event.conditions().freezeMinutes(), pins));
    return budget -> Planner.plan(problem, budget);
  }

  /** When a tie, or one rubber of it, is over that is put on so many courts by hand. */
  LocalTime endOfPin(TieId tie, Optional<RubberNo> rubber, LocalTime start, int courts, PlanAsk asked) {
    PlanProblem problem = PlanProblem.of(event, asked.asked(0, List.of()));
    return start.plusMinutes((long) slots(tie, rubber, courts) * problem.slotMinutes());
  }

  private int slots(TieId tie, Optional<RubberNo> rubber, int courts) {
    int rubbers = rubber.isPresent() ? 1 : event.tie(tie).map(one -> event.progress(one).left().size()).orElse(1);
    return Math.max(1, (rubbers + courts - 1) / Math.max(1, courts));
  }

  /** A search for ways to go on after something broke, for those who may publish one. */
  Function<Budget, Planning.Ways> replanning(BreakAsk asked) {
    mustPublish();
    PlanProblem.Asked wanted = asked.asked(event.conditions().freezeMinutes());
    return budget -> new Planning.Ways(Replan.options(event, wanted, budget), Replan.fault(event, wanted));
  }

  /** When the ties that have not begun are likely to begin, for everybody. */
  Map<TieId, Expected> expected() {
    return worked.expected(event.reach().everybody(), visible.now(), () -> ExpectedTimes.of(event, visible.now()).ties());
  }

  /** Which clocks of lateness run; nothing for anybody but officials. */
  List<Lateness.Late> late() {
    return visible.viewer().role().isOfficial() ? Lateness.of(event, visible.now()) : List.of();
  }

  private void mustPublish() {
    Role role = visible.viewer().role();
    if (role != Role.ORGANISER && role != Role.REFEREE) {
      throw new IllegalStateException("only the organiser or the referee may ask this");
    }
  }

  /** The table of a pool as it stands. */
  Table table(String pool) {
    return Standings.of(PoolTables.input(event, pool));
  }

  /** Until when captains can object to a finished table. */
  Optional<Instant> objectionsUntil(String pool) {
    return Objections.until(event, pool);
  }

  /** A level tie is parted by a decider under these conditions. */
  boolean hasDecider() {
    return event.conditions().decider() != DeciderKind.NONE && event.conditions().rubbers() % 2 == 0;
  }

  /** What happens to a sheet that is not in at the deadline, as the conditions say. */
  String lateRule() {
    return Words.of(visible).sentence(
        "page.late-" + event.conditions().lateSheet().code(), Map.of("grace", event.conditions().graceMinutes()));
  }

  /** What the desk should do next; nothing for anybody else. */
  List<DoNext.Item> doNext() {
    return visible.viewer().role().isOfficial() ? DoNext.of(event, ledger.directory(), visible.now()) : List.of();
  }

  String doNextWords(DoNext.Item item) {
    return DoNextWords.of(event).sentence(item);
  }

  /** The clubs in the order of the day, champion first; empty while something is unfinished. */
  List<ClubId> finalPlacing() {
    return FinalPlacing.of(event);
  }

  /** Who has won by these numbers, as the table would count them. */
  Optional<Echo> echo(TieId tie, RubberNo rubber, List<Score> games, How how) {
    return Echo.of(event, tie, rubber, games, how);
  }

  /** How a retired rubber would count in each published way. */
  Map<RetirementScore, List<Score>> retirements(RubberNo rubber, List<Score> games, How how) {
    return Echo.ways(event, rubber, games, how);
  }

  /** What advice to the own captain is made from: the public event and the own club's notes. */
  LineupInputs lineup(TieId tie, ClubId club, LineupProblem.Against against, long seed) {
    mustBeOwn(club);
    Freshness now = DayLoads.of(event, event.tie(tie).orElseThrow(), Optional.of(visible.now()), Freshness.Cost.USUAL);
    return LineupInputs.of(event, tie, club, ledger.privateOf(club).all(club), earlier(ledger, event, club), against, seed)
        .asking(problem -> problem.after(now))
        .marking(ledger.hurt());
  }

  /** Form and chemistry of the own squad, from the public event and the own club's notes. */
  Ratings ratings(ClubId club) {
    mustBeOwn(club);
    ClubNotes notes = ledger.privateOf(club);
    Evidence evidence = Evidence.of(event, earlier(ledger, event, club), Evidence.ageing(event, notes.halfLife()));
    return Ratings.of(Prior.of(notes.all(club)), evidence, List.of(event.squad(club).stream().map(Player::id).toList()));
  }

  /** The aim of a tie with what each of its ends would be worth. */
  Aim aim(TieId tie, ClubId club, Aim.Kind kind, long seed) {
    mustBeOwn(club);
    return switch (kind) {
      case WIN -> Aim.WIN;
      case RUBBERS -> Aim.RUBBERS;
      case QUALIFY -> {
        Map<Aim.Ended, Double> worths = worths(tie, club, ThroughChances.USUAL_PLAYS, seed);
        yield worths.isEmpty() ? Aim.WIN : Aim.qualify(worths);
      }
    };
  }

  private Map<Aim.Ended, Double> worths(TieId tie, ClubId club, int plays, long seed) {
    Map<Aim.Ended, Double> worths = new HashMap<>();
    ThroughChances.of(event, tie, club, plays, seed)
        .forEach((end, chance) -> worths.put(new Aim.Ended(end.own(), end.other()), chance));
    return worths;
  }

  /** The ties that the own club has ahead; one on whose end nothing hangs for going through weighs nothing. */
  Optional<DayProblem> dayAhead(ClubId club, DayProblem.Wanted wanted, long seed) {
    mustBeOwn(club);
    Map<TieId, Double> weights = new HashMap<>();
    event.ties().values().stream().filter(tie -> tie.has(club) && tie.pool().isPresent() && !tie.isOpened()).forEach(tie -> {
      Map<Aim.Ended, Double> worths = worths(tie.id(), club, PLAYS_TO_SEE_WHETHER_IT_MATTERS, seed);
      weights.put(tie.id(), !worths.isEmpty() && Aim.qualify(worths).isSettled() ? 0.0 : 1.0);
    });
    return DayInputs.of(
        event, club, tie -> lineup(tie, club, LineupProblem.Against.UNKNOWN, seed), weights, wanted, visible.now());
  }

  /** A forecast for the own club, and how it went if that is known. */
  record Forecasted(PrivateNote.Forecast forecast, Optional<OwnRecord.Scored> result) {}

  List<Forecasted> forecasts(ClubId club) {
    mustBeOwn(club);
    return ledger.forecasts(club).stream()
        .map(forecast -> new Forecasted(forecast, OwnRecord.scored(event, club, forecast)))
        .toList();
  }

  /** What the own club noted from film, in the order of the games' codes. */
  List<FilmNotes.Game> films(ClubId club) {
    mustBeOwn(club);
    return FilmNotes.kept(ledger.filmsOf(club), event.conditions());
  }

  /** Earlier games, which are everybody's, and the film of this club. */
  static Earlier earlier(Ledger ledger, Event event, ClubId club) {
    return new Earlier(ledger.pastGames(), FilmNotes.counted(ledger.filmsOf(club), event.conditions()));
  }

  /** The players that the own club may name, rubber by rubber. */
  Choices choices(ExchangeId exchange, ClubId club, Map<RubberNo, List<PlayerId>> soFar) {
    mustBeOwn(club);
    return Choices.of(event, exchange, club, soFar);
  }

  /** What each club of a pool still needs, in draw order. */
  List<NeedsReport> needs(String pool) {
    return worked.needs(event.reach().everybody(), pool, () -> event.pools().getOrDefault(pool, List.of()).stream()
        .flatMap(club -> Needs.of(PoolTables.input(event, pool), club, OptionalInt.empty()).stream())
        .toList());
  }

  /** The sheet that the conditions foresee for a club that is late; a person decides whether it counts. */
  Optional<Sheet> foreseen(ExchangeId exchange, ClubId club) {
    return visible.viewer().role().isOfficial() ? LateSheets.foreseen(event, exchange, club) : Optional.empty();
  }

  /** The sealed sheet that a captain let the own club's links see; empty for everybody else. */
  Optional<Sheet> toldSheet(ExchangeId exchange, ClubId club) {
    if (!visible.viewer().isOf(club)) {
      return Optional.empty();
    }
    boolean told = event.tie(exchange.tie()).flatMap(tie -> tie.sideOf(club))
        .filter(side -> event.exchange(exchange).side(side).told())
        .isPresent();
    return told ? ledger.ownSheet(exchange, club).map(Decision.Sealed::sheet) : Optional.empty();
  }

  /** What looks wrong about the entries, with both entries in each sentence; for the organiser. */
  List<String> entryWarnings() {
    must(Role.ORGANISER);
    Words words = Words.of(visible);
    return EntryWarnings.of(event, ledger.directory()).stream()
        .map(warning -> words.sentence(warning.kind().code(), warning.data()))
        .toList();
  }

  /** The birth year of a player, for the organiser who keeps the squads. */
  OptionalInt bornYear(PlayerId player) {
    must(Role.ORGANISER);
    return ledger.directory().person(player).map(Directory.Person::bornYear).orElse(OptionalInt.empty());
  }

  /** The next number for a player's code of this club; one that was ever used is not used again. */
  int nextPlayerNumber(ClubId club) {
    must(Role.ORGANISER);
    String stem = SquadForm.stem(club) + "-";
    return Stream.concat(event.players().keySet().stream(), ledger.directory().people().keySet().stream())
        .map(PlayerId::code)
        .filter(code -> code.startsWith(stem) && code.substring(stem.length()).matches("[0-9]{1,6}"))
        .mapToInt(code -> Integer.parseInt(code.substring(stem.length())))
        .max().orElse(0) + 1;
  }

  /** The facts that this official may notice, numbered for this viewer, oldest first. */
  List<VisibleLog.Entry> log() {
    if (!visible.viewer().role().isOfficial()) {
      throw new IllegalStateException("only officials read the log");
    }
    return VisibleLog.of(ledger.facts(0), visible.viewer());
  }

  private void must(Role role) {
    if (visible.viewer().role() != role) {
      throw new IllegalStateException("only the " + role.code() + " may ask this");
    }
  }

  /** The club's own sheet still keeps the conditions: nobody on it has gone since it was sealed. */
  boolean isLegal(ExchangeId exchange, ClubId club, Sheet sheet) {
    mustBeOwn(club);
    return SheetRules.faults(event, exchange, club, sheet).isEmpty();
  }

  /** The club's own sealed sheet. */
  Optional<Decision.Sealed> ownSheet(ExchangeId exchange, ClubId club) {
    mustBeOwn(club);
    return ledger.ownSheet(exchange, club);
  }

  /** Who of the club is marked as hurt or ill: for officials and the own captain. */
  List<PlayerId> hurt(ClubId club) {
    if (!visible.viewer().role().isOfficial()) {
      mustBeOwn(club);
    }
    Set<PlayerId> marked = ledger.hurt();
    return event.squad(club).stream().map(Player::id).filter(marked::contains).toList();
  }

  private void mustBeOwn(ClubId club) {
    if (!visible.viewer().isCaptainOf(club)) {
      throw new IllegalStateException("only the captain of a club may ask this");
    }
  }
}
