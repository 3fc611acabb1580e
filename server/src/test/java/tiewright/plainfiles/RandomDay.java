package tiewright.plainfiles;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import tiewright.conditions.Conditions;
import tiewright.conditions.Plays;
import tiewright.conditions.Preset;
import tiewright.conditions.Setting;
import tiewright.conditions.Withdrawal;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.Directory;
import tiewright.event.DrawFact;
import tiewright.event.Event;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.Fact;
import tiewright.event.How;
import tiewright.event.OfRubber;
import tiewright.event.OfficialFact;
import tiewright.event.Pair;
import tiewright.event.PairWish;
import tiewright.event.PlayFact;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.Recorded;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.SetUpFact;
import tiewright.event.Sheet;
import tiewright.event.Slot;
import tiewright.event.SlotSource;
import tiewright.event.Stage;
import tiewright.event.TieId;
import tiewright.scoring.Format;
import tiewright.scoring.Score;
import tiewright.sheet.Receipt;

/** A day with something of everything that files carry and of much that they do not, as a ledger would hold it. */
final class RandomDay {
    private static final List<String> NAMES = List.of(
            "Maren",
            "Åse \"Ace\" Lund",
            "O’Dare, Finn",
            "林 美澄",
            "Σοφία",
            "يوسف",
            "a",
            "x".repeat(200),
            "Nò,\"ël\"",
            "Ivo-Jan van 't Hek");
    private final Random random;
    private final List<Recorded> facts = new ArrayList<>();
    private final Map<PlayerId, Directory.Person> people = new TreeMap<>();
    private final List<PrivateNote.FormJudged> forms = new ArrayList<>();
    private final List<PrivateNote.ChemistryJudged> chemistry = new ArrayList<>();
    private final List<PrivateNote.RubbersPromised> promises = new ArrayList<>();
    private final List<PrivateNote.PastGame> past = new ArrayList<>();
    private final List<ClubId> clubs = new ArrayList<>();
    private Conditions conditions = Conditions.of(Preset.CLUB_DAY);

    private RandomDay(Random random) {
        this.random = random;
    }

    static RandomDay of(Random random) {
        RandomDay day = new RandomDay(random);
        day.setUp();
        day.play();
        return day;
    }

    Event event() {
        return Event.of(facts);
    }

    Directory directory() {
        return new Directory(people);
    }

    OwnNotes notes() {
        return OwnNotes.of(forms, chemistry).promising(promises);
    }

    List<PrivateNote.PastGame> past() {
        return past;
    }

    private void fact(Fact fact) {
        facts.add(new Recorded(
                facts.size() + 1,
                fact,
                Actor.of(Role.DESK, "desk " + facts.size()),
                Optional.empty(),
                Instant.parse("2026-11-28T09:00:00Z").plusSeconds(facts.size() * 7L)));
    }

    private boolean chance(double p) {
        return random.nextDouble() < p;
    }

    private <T> Optional<T> perhaps(T value) {
        return chance(0.5) ? Optional.of(value) : Optional.empty();
    }

    private OptionalInt perhaps(int value) {
        return chance(0.5) ? OptionalInt.of(value) : OptionalInt.empty();
    }

    private <T> T any(List<T> values) {
        return values.get(random.nextInt(values.size()));
    }

    private LocalTime time() {
        return LocalTime.of(9 + random.nextInt(4), random.nextInt(60));
    }

    private void setUp() {
        fact(new SetUpFact.EventDescribed(
                any(NAMES),
                LocalDate.of(2026, 11, 28),
                any(NAMES),
                ZoneId.of(any(List.of("Europe/Dublin", "Asia/Kolkata", "America/St_Johns"))),
                LocalTime.of(9, 0),
                perhaps(LocalTime.of(18, 30))));
        conditions = Conditions.of(any(List.of(Preset.values())));
        if (chance(0.5)) {
            conditions = conditions
                    .with(Setting.BEST_OF, any(List.of("1", "3")))
                    .with(Setting.RUBBERS, any(List.of("2", "3", "4")));
        }
        fact(new SetUpFact.ConditionsPublished(1, conditions, OptionalInt.empty()));
        for (String club : List.of("A", "B-b", "Ç")) {
            clubs.add(ClubId.of(club));
            fact(new SetUpFact.ClubEntered(ClubId.of(club), any(NAMES), perhaps("Town, \"old\""), perhaps(3)));
            squad(ClubId.of(club));
        }
        fact(new SetUpFact.CourtSet("1", Optional.of(LocalTime.of(8, 0)), perhaps(LocalTime.of(20, 0)), true));
        fact(new SetUpFact.CourtSet("grass", Optional.empty(), Optional.empty(), chance(0.5)));
        ties();
        for (int i = random.nextInt(3); i > 0; i--) {
            past.add(new PrivateNote.PastGame(
                    LocalDate.of(2026, 1 + i, 3),
                    "A1",
                    "a stranger",
                    "Ç1",
                    "Ç2",
                    Score.of(11, random.nextInt(10)),
                    Format.sideOut(11),
                    perhaps(new OfRubber(
                            any(List.of("m1", "=a, \"b\"")), chance(0.5) ? OptionalInt.of(3) : OptionalInt.empty()))));
        }
    }

    private void squad(ClubId club) {
        for (int i = 1; i <= 8; i++) {
            PlayerId player = PlayerId.of(club.code() + i);
            fact(new SetUpFact.PlayerEntered(
                    player, club, OptionalInt.of(i), perhaps(time()), perhaps(LocalTime.of(16, 5)), chance(0.2)));
            people.put(player, new Directory.Person(any(NAMES), perhaps(2009), perhaps(any(List.of(Plays.values())))));
            if (chance(0.6)) {
                fact(new SetUpFact.CheckedIn(player, chance(0.8)));
            }
            if (chance(0.3)) {
                forms.add(new PrivateNote.FormJudged(
                        player, OptionalDouble.of(random.nextInt(80) / 8.0 - 5), OptionalDouble.empty()));
            }
        }
        if (chance(0.3)) {
            promises.add(new PrivateNote.RubbersPromised(PlayerId.of(club.code() + 7), random.nextInt(4))); // 0 is none
        }
        if (chance(0.5)) {
            chemistry.add(new PrivateNote.ChemistryJudged(
                    Pair.of(club.code() + "1", club.code() + "5"),
                    random.nextGaussian() > 0 ? 0.1 : -2,
                    OptionalDouble.of(1.25),
                    perhaps(any(List.of(PairWish.values())))));
        }
    }

    private void ties() {
        arrange("P-1", Optional.of("P"), 1, Slot.of(clubs.get(0)), Slot.of(clubs.get(1)));
        arrange("P-2", Optional.of("P"), 2, Slot.of(clubs.get(2)), Slot.of(clubs.get(0)));
        arrange("P-3", Optional.of("P"), 3, Slot.of(clubs.get(1)), Slot.of(clubs.get(2)));
        arrange("SF", Optional.empty(), 1, Slot.from(SlotSource.place("P", 1)), Slot.of(clubs.get(2)));
        arrange(
                "F",
                Optional.empty(),
                2,
                Slot.from(SlotSource.winner(TieId.of("SF"))),
                Slot.from(SlotSource.place("P", 2)));
        if (chance(0.5)) {
            fact(new DrawFact.SlotFilled(TieId.of("SF"), tiewright.event.Side.HOME, clubs.get(0)));
        }
    }

    private void arrange(String code, Optional<String> pool, int round, Slot home, Slot away) {
        TieId tie = TieId.of(code);
        fact(new DrawFact.TieArranged(tie, pool.isPresent() ? Stage.POOL : Stage.KNOCKOUT, pool, round, home, away));
        if (chance(0.7)) {
            fact(new DrawFact.TieTimed(tie, perhaps(time()), perhaps("Courts 1, 2")));
        }
    }

    private void play() {
        open("P-1", clubs.get(0), clubs.get(1));
        cards("P-1", false);
        if (chance(0.7)) {
            open("P-2", clubs.get(2), clubs.get(0));
            cards("P-2", true);
        }
        // sealed and never opened: nothing of it may travel
        fact(new ExchangeFact.SheetSealed(ExchangeId.sheets(TieId.of("P-3")), clubs.get(1), "f".repeat(64), false));
        if (chance(0.3)) {
            fact(new OfficialFact.ClubWithdrawn(
                    clubs.get(2), perhaps(TieId.of("P-2")), any(List.of(Withdrawal.values())), 1));
        }
        if (chance(0.3)) {
            fact(new OfficialFact.LotDrawn("P", List.of(clubs.get(1), clubs.get(0)), any(NAMES)));
            fact(new OfficialFact.LotDrawn("P", List.of(clubs.get(2), clubs.get(0)), "w"));
        }
        fact(new PlayFact.CourtCalled(TieId.of("P-3"), Optional.empty(), "1"));
        fact(new OfficialFact.NoticePosted(1, "n", Optional.empty(), Optional.empty(), Optional.empty(), "r"));
    }

    private void open(String code, ClubId home, ClubId away) {
        ExchangeId exchange = ExchangeId.sheets(TieId.of(code));
        Sheet[] sheets = {sheet(home), sheet(away)};
        String secret = "0123456789abcdef".repeat(4);
        boolean forfeited = chance(0.2);
        fact(new ExchangeFact.SheetSealed(
                exchange, home, Receipt.of(secret, exchange.tie(), home, sheets[0]), chance(0.2)));
        fact(
                forfeited
                        ? new ExchangeFact.SideRuled(exchange, away, true, 1)
                        : new ExchangeFact.SheetSealed(
                                exchange, away, Receipt.of(secret, exchange.tie(), away, sheets[1]), false));
        fact(new ExchangeFact.SheetsOpened(
                exchange,
                sheets[0],
                Optional.of(secret),
                sheets[1],
                forfeited ? Optional.empty() : Optional.of(secret),
                perhaps(time())));
        if (chance(0.3)) {
            fact(new ExchangeFact.PairReplaced(
                    exchange,
                    away,
                    RubberNo.of(1),
                    perhaps(Pair.of(away.code() + "1", away.code() + "8")),
                    "injury",
                    "the referee"));
        }
    }

    private Sheet sheet(ClubId club) {
        List<Integer> numbers = new ArrayList<>(List.of(1, 2, 3, 4, 5, 6, 7, 8));
        Collections.shuffle(numbers, random);
        SortedMap<RubberNo, Optional<Pair>> pairs = new TreeMap<>();
        for (int i = 1; i <= conditions.rubbers(); i++) {
            int at = 2 * (i - 1) % 8;
            pairs.put(
                    RubberNo.of(i),
                    chance(0.9)
                            ? Optional.of(Pair.of(club.code() + numbers.get(at), club.code() + numbers.get(at + 1)))
                            : Optional.empty());
        }
        return new Sheet(pairs);
    }

    private void cards(String code, boolean someMissing) {
        for (int i = 1; i <= conditions.rubbers(); i++) {
            if (!someMissing || chance(0.6)) {
                card(
                        code,
                        RubberNo.of(i),
                        i % 2 == 0,
                        conditions.bestOf() / 2 + 1,
                        conditions.scoring().target());
            }
        }
        if (chance(0.2)) {
            fact(new PlayFact.CardTakenBack(TieId.of(code), RubberNo.of(1), "wrong card"));
        }
        card(
                code,
                RubberNo.DECIDER,
                chance(0.5),
                1,
                conditions.deciderScoring().target()); // counts only where it was needed
    }

    private void card(String code, RubberNo rubber, boolean homeWins, int games, int target) {
        How how = any(List.of(How.PLAYED, How.PLAYED, homeWins ? How.WALKOVER_AWAY : How.WALKOVER_HOME, How.VOID));
        int other = how == How.PLAYED ? random.nextInt(target - 1) : 0;
        List<Score> scores = how == How.VOID
                ? List.of()
                : Collections.nCopies(games, homeWins ? Score.of(target, other) : Score.of(other, target));
        fact(new PlayFact.CardEntered(TieId.of(code), rubber, scores, how));
        if (chance(0.1)) { // a second source that differs holds the rubber
            fact(new PlayFact.CardEntered(
                    TieId.of(code),
                    rubber,
                    Collections.nCopies(games, Score.of(target, 0).swapped()),
                    How.WALKOVER_HOME));
        }
    }
}
