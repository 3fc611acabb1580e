package tiewright.event;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import tiewright.conditions.Conditions;
import tiewright.conditions.Plays;
import tiewright.conditions.Preset;
import tiewright.conditions.Setting;
import tiewright.scoring.Score;
import tiewright.wording.Words;

/**
 * A day written as a test reads it: facts one after the other, each at the time and by the person last set. Sets only
 * what matters; invented by us. Facts are appended as they are, decisions are asked first.
 */
public final class Days {
    public static final LocalDate DATE = LocalDate.of(2026, 6, 20);
    public static final ZoneId ZONE = ZoneId.of("Europe/Vienna");
    private static final String NO_RECEIPT = "0".repeat(64);

    private final List<Recorded> facts = new ArrayList<>();
    private final Map<PlayerId, Directory.Person> people = new LinkedHashMap<>();
    private final Map<Decision.SealedRef, Decision.Sealed> sealed = new HashMap<>();
    private final List<PrivateNote> notes = new ArrayList<>();
    private Event event = Event.empty();
    private Instant now = moment("08:00");
    private Actor by = desk();

    private Days() {}

    /** Nothing has happened. */
    public static Days empty() {
        return new Days();
    }

    /** A described event under the conditions of a club day; the clock stands at 08:00, the desk acts. */
    public static Days aDay() {
        return new Days()
                .fact(new SetUpFact.EventDescribed(
                        "Midsummer Cup", DATE, "Long Hall", ZONE, LocalTime.of(9, 0), Optional.of(LocalTime.of(18, 0))))
                .conditions(Conditions.of(Preset.CLUB_DAY));
    }

    /** Two clubs of eight, N and S, two courts, and their tie A1 at 10:00 on court 1. */
    public static Days oneTie() {
        return aDay().clubs("N", "S")
                .courts("1", "2")
                .poolTie("A1", "A", 1, "N", "S")
                .timed("A1", "10:00", "1");
    }

    public Days conditions(Conditions conditions) {
        return fact(new SetUpFact.ConditionsPublished(event.conditionsVersion() + 1, conditions, OptionalInt.empty()));
    }

    public Days with(Setting setting, String value) {
        return conditions(event.conditions().with(setting, value));
    }

    /** Clubs with a squad of eight each: club N has N1 (the strongest) to N8. */
    public Days clubs(String... codes) {
        Arrays.stream(codes).forEach(code -> club(code, 8));
        return this;
    }

    public Days club(String code, int players) {
        fact(new SetUpFact.ClubEntered(ClubId.of(code), "Club " + code, Optional.empty(), OptionalInt.empty()));
        IntStream.rangeClosed(1, players).forEach(i -> player(code + i, code, i));
        return this;
    }

    public Days player(String code, String club, int rank) {
        people.put(PlayerId.of(code), new Directory.Person("Player " + code, OptionalInt.empty()));
        return fact(new SetUpFact.PlayerEntered(
                PlayerId.of(code), ClubId.of(club), OptionalInt.of(rank), Optional.empty(), Optional.empty(), false));
    }

    /** The name behind a code, instead of the usual one. */
    public Days named(String code, String name) {
        people.put(PlayerId.of(code), new Directory.Person(name, OptionalInt.empty()));
        return this;
    }

    /** What the club's players state to play in, in their order: {@code w} women's, {@code m} men's, {@code -} nothing. */
    public Days stating(String club, String letters) {
        for (int i = 0; i < letters.length(); i++) {
            String code = club + (i + 1);
            Optional<Plays> plays =
                    Optional.ofNullable(Map.of('w', Plays.WOMEN, 'm', Plays.MEN).get(letters.charAt(i)));
            people.put(PlayerId.of(code), new Directory.Person("Player " + code, OptionalInt.empty(), plays));
        }
        return this;
    }

    public Days courts(String... names) {
        Arrays.stream(names)
                .forEach(name -> fact(new SetUpFact.CourtSet(name, Optional.empty(), Optional.empty(), true)));
        return this;
    }

    public Days poolTie(String tie, String pool, int round, String home, String away) {
        return fact(new DrawFact.TieArranged(
                TieId.of(tie),
                Stage.POOL,
                Optional.of(pool),
                round,
                Slot.of(ClubId.of(home)),
                Slot.of(ClubId.of(away))));
    }

    /** A side is a source such as {@code A-1} or {@code winner-SF1}, else the code of a club. */
    public Days knockoutTie(String tie, int round, String home, String away) {
        return fact(new DrawFact.TieArranged(
                TieId.of(tie), Stage.KNOCKOUT, Optional.empty(), round, slot(home), slot(away)));
    }

    /** For the other places; sides as in the knockout. */
    public Days placingTie(String tie, int round, String home, String away) {
        return fact(new DrawFact.TieArranged(
                TieId.of(tie), Stage.PLACING, Optional.empty(), round, slot(home), slot(away)));
    }

    private static Slot slot(String side) {
        return SlotSource.parse(side).map(Slot::from).orElseGet(() -> Slot.of(ClubId.of(side)));
    }

    public Days timed(String tie, String start, String court) {
        return fact(new DrawFact.TieTimed(TieId.of(tie), Optional.of(LocalTime.parse(start)), Optional.of(court)));
    }

    /** Both sheets sealed and opened: 1 with 2 in rubber 1, 3 with 4 in rubber 2, and so on. */
    public Days opened(String tie) {
        Tie t = event.tie(TieId.of(tie)).orElseThrow();
        return opened(
                ExchangeId.sheets(t.id()),
                straight(
                        t.home().club().orElseThrow().code(), event.conditions().rubbers()),
                straight(
                        t.away().club().orElseThrow().code(), event.conditions().rubbers()));
    }

    public Days opened(ExchangeId exchange, Sheet home, Sheet away) {
        Tie tie = event.tie(exchange.tie()).orElseThrow();
        for (Side side : Side.values()) {
            fact(new ExchangeFact.SheetSealed(exchange, tie.club(side).orElseThrow(), NO_RECEIPT, false));
        }
        return fact(
                new ExchangeFact.SheetsOpened(exchange, home, Optional.of(NO_RECEIPT), away, Optional.of(NO_RECEIPT)));
    }

    /** The sheet of a squad entered by {@link #club}: as many pairs as rubbers, in order, while players last. */
    public static Sheet straight(String club, int rubbers) {
        return Sheet.of(IntStream.range(0, rubbers)
                .mapToObj(i -> Optional.of(Pair.of(club + (2 * i + 1), club + (2 * i + 2))))
                .toList());
    }

    /** An entry of a rubber ({@code 1}, {@code D}) that was played, games as in {@code 11-5 7-11 11-9}. */
    public Days card(String tie, String rubber, String games) {
        return card(tie, rubber, games, How.PLAYED);
    }

    public Days card(String tie, String rubber, String games, How how) {
        return fact(
                new PlayFact.CardEntered(TieId.of(tie), RubberNo.parse(rubber).orElseThrow(), games(games), how));
    }

    /** Entries for rubbers 1, 2, … of one game each. */
    public Days cards(String tie, String... rubbers) {
        for (int i = 0; i < rubbers.length; i++) {
            card(tie, Integer.toString(i + 1), rubbers[i]);
        }
        return this;
    }

    public static List<Score> games(String text) {
        return text.isEmpty()
                ? List.of()
                : Arrays.stream(text.split(" "))
                        .map(game -> game.split("-"))
                        .map(points -> Score.of(Integer.parseInt(points[0]), Integer.parseInt(points[1])))
                        .toList();
    }

    /** The clock from here on, in the hall. */
    public Days at(String time) {
        now = moment(time);
        return this;
    }

    public static Instant moment(String time) {
        return ZonedDateTime.of(DATE, LocalTime.parse(time), ZONE).toInstant();
    }

    public Instant now() {
        return now;
    }

    /** Who acts from here on. */
    public Days by(Actor actor) {
        by = actor;
        return this;
    }

    public static Actor desk() {
        return Actor.of(Role.DESK, "desk");
    }

    public static Actor referee() {
        return Actor.of(Role.REFEREE, "referee");
    }

    public static Actor organiser() {
        return Actor.of(Role.ORGANISER, "organiser");
    }

    public static Actor volunteer(String name) {
        return Actor.of(Role.VOLUNTEER, name);
    }

    public static Actor captain(String club) {
        return new Actor(Role.CAPTAIN, Optional.of(ClubId.of(club)), "captain " + club, "");
    }

    public static Actor player(String club) {
        return new Actor(Role.PLAYER, Optional.of(ClubId.of(club)), "player " + club, "");
    }

    public Days fact(Fact... more) {
        for (Fact fact : more) {
            Recorded recorded = new Recorded(facts.size() + 1, fact, by, Optional.empty(), now);
            facts.add(recorded);
            event = event.then(List.of(recorded));
        }
        return this;
    }

    /** A sealed sheet that a decision may ask for; the fact of sealing is not appended. */
    public Days sealed(ExchangeId exchange, String club, Sheet sheet, String secret) {
        sealed.put(new Decision.SealedRef(exchange, ClubId.of(club)), new Decision.Sealed(sheet, secret));
        return this;
    }

    public Decision.Given given() {
        return new Decision.Given(now, by, directory(), sealed);
    }

    public Decision.Outcome ask(Decision decision) {
        return decision.decide(event, given());
    }

    /** The decision is accepted and its facts are appended; a refusal fails the test. */
    public Days does(Decision decision) {
        Decision.Outcome outcome = ask(decision);
        if (outcome instanceof Decision.Refused refused) {
            throw new AssertionError("refused: " + refused.reasons());
        }
        Decision.Accepted accepted = (Decision.Accepted) outcome;
        notes.addAll(accepted.notes());
        accepted.notes().forEach(this::keep);
        return fact(accepted.facts().toArray(Fact[]::new));
    }

    private void keep(PrivateNote note) {
        if (note instanceof PrivateNote.SheetKept kept) {
            sealed.put(
                    new Decision.SealedRef(kept.exchange(), kept.club()),
                    new Decision.Sealed(kept.sheet(), kept.secret()));
        } else if (note instanceof PrivateNote.SheetDropped dropped) {
            sealed.remove(new Decision.SealedRef(dropped.exchange(), dropped.club()));
        }
    }

    /** Why the decision is refused; empty when it would be accepted. */
    public List<Refusal> refusals(Decision decision) {
        return ask(decision) instanceof Decision.Refused refused ? refused.reasons() : List.of();
    }

    /** The codes of {@link #refusals}. */
    public List<String> codes(Decision decision) {
        return refusals(decision).stream().map(Refusal::code).toList();
    }

    public Event event() {
        return event;
    }

    public Tie tie(String tie) {
        return event.tie(TieId.of(tie)).orElseThrow();
    }

    public List<Recorded> facts() {
        return List.copyOf(facts);
    }

    /** What the decisions so far asked to keep privately, oldest first. */
    public List<PrivateNote> notes() {
        return List.copyOf(notes);
    }

    /** What a notice or a ruling says, in English. */
    public static String said(Saying saying) {
        return Words.ofCodes(ZONE).saying(saying);
    }

    public Directory directory() {
        return new Directory(people);
    }
}
