package tiewright.event;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;
import tiewright.conditions.Conditions;
import tiewright.conditions.Preset;
import tiewright.conditions.Setting;
import tiewright.conditions.Withdrawal;
import tiewright.scoring.Score;

/**
 * Facts of every kind in any order, in a small world: also what no decision would ever let happen, for a fold must bear
 * whatever lies in a ledger. Four clubs, three ties, one of them of the knockout.
 */
final class RandomFacts {
    static final List<ClubId> CLUBS = List.of(ClubId.of("N"), ClubId.of("S"), ClubId.of("E"), ClubId.of("W"));
    static final List<TieId> TIES = List.of(TieId.of("A1"), TieId.of("A2"), TieId.of("F"));

    /** A ledger begins with these, so that most of what follows falls on something. */
    private static final List<FactKind> FIRST = List.of(
            FactKind.EVENT_DESCRIBED,
            FactKind.CONDITIONS_PUBLISHED,
            FactKind.CLUB_ENTERED,
            FactKind.PLAYER_ENTERED,
            FactKind.PLAYER_ENTERED,
            FactKind.COURT_SET,
            FactKind.LINK_ISSUED);

    private final Random random;
    private final List<Recorded> facts = new ArrayList<>();
    private Instant now = Days.moment("08:00");

    private RandomFacts(Random random) {
        this.random = random;
    }

    static List<Recorded> of(Random random, int count) {
        RandomFacts all = new RandomFacts(random);
        FIRST.forEach(all::add);
        for (TieId tie : TIES) {
            all.record(all.arranged(tie));
            all.record(new DrawFact.TieTimed(tie, Optional.of(LocalTime.of(10, 0)), Optional.of("1")));
        }
        while (all.facts.size() < count) {
            all.add(all.one(Arrays.asList(FactKind.values())));
        }
        return List.copyOf(all.facts);
    }

    private void add(FactKind kind) {
        record(fact(kind));
    }

    private void record(Fact fact) {
        now = now.plusSeconds(random.nextInt(120));
        Actor by = new Actor(one(Arrays.asList(Role.values())), Optional.empty(), "somebody " + random.nextInt(3), "");
        facts.add(new Recorded(facts.size() + 1, fact, by, Optional.empty(), now));
    }

    private Fact fact(FactKind kind) {
        return switch (kind) {
            case EVENT_DESCRIBED ->
                new SetUpFact.EventDescribed(
                        "Cup", Days.DATE, "Hall", Days.ZONE, LocalTime.of(9, 0), maybe(LocalTime.of(18, 0)));
            case CONDITIONS_PUBLISHED ->
                new SetUpFact.ConditionsPublished(
                        1 + random.nextInt(3),
                        Conditions.of(one(Arrays.asList(Preset.values())))
                                .with(Setting.RUBBERS, one(List.of("3", "4"))),
                        OptionalInt.empty());
            case CONDITIONS_READ -> new SetUpFact.ConditionsRead(club(), random.nextInt(3));
            case CLUB_ENTERED ->
                new SetUpFact.ClubEntered(club(), "Club " + random.nextInt(9), maybe("Town"), OptionalInt.of(1));
            case CLUB_REMOVED -> new SetUpFact.ClubRemoved(club());
            case PLAYER_ENTERED ->
                new SetUpFact.PlayerEntered(
                        player(),
                        club(),
                        OptionalInt.of(1 + random.nextInt(8)),
                        Optional.empty(),
                        maybe(time()),
                        yes());
            case PLAYER_REMOVED -> new SetUpFact.PlayerRemoved(player());
            case COURT_SET -> new SetUpFact.CourtSet(court(), Optional.empty(), maybe(time()), yes());
            case CHECKED_IN -> new SetUpFact.CheckedIn(player(), yes());
            case LINK_ISSUED ->
                new SetUpFact.LinkIssued(
                        "L" + random.nextInt(4),
                        one(List.of(Role.DESK, Role.ORGANISER)),
                        Optional.empty(),
                        Optional.empty(),
                        "link",
                        "0".repeat(64));
            case LINK_REVOKED -> new SetUpFact.LinkRevoked("L" + random.nextInt(4));
            case LINK_LET_IN -> new SetUpFact.LinkLetIn("L" + random.nextInt(4));
            case OPENING_CHOSEN -> new SetUpFact.OpeningChosen(yes(), maybe("Ola"));
            case SAFETY_DESCRIBED -> new SetUpFact.SafetyDescribed("door " + random.nextInt(3), "hall", "112");
            case DELETION_DATED ->
                new SetUpFact.DeletionDated(
                        LocalDate.of(2026, 7, 1 + random.nextInt(9)), one(Arrays.asList(NamesKept.values())));
            case DATA_ERASED -> new SetUpFact.DataErased(new TreeMap<>());
            case POOLS_DRAWN, KNOCKOUT_DRAWN, TIE_ARRANGED, TIE_TIMED -> drawn(kind);
            case PLAN_PUBLISHED, RUBBER_TIMED, TIE_CALLED_OFF, SLOT_FILLED, SLOT_KEPT, TIE_RESTARTED -> planned(kind);
            case SHEET_SEALED,
                    SHEET_RETURNED,
                    SHEET_HANDED_IN,
                    OPENING_ASKED,
                    CLUB_TOLD,
                    SIDE_RULED,
                    SHEETS_OPENED,
                    PAIR_REPLACED -> exchanged(kind);
            case COURT_CALLED,
                    CALL_TAKEN_BACK,
                    CARD_ENTERED,
                    CARD_CORRECTED,
                    CARD_TAKEN_BACK,
                    PLAY_STOPPED,
                    PLAY_RESUMED -> played(kind);
            default -> official(kind);
        };
    }

    private Fact drawn(FactKind kind) {
        return switch (kind) {
            case POOLS_DRAWN ->
                // a draw sweeps ties away: seldom, or nothing would ever happen in them
                random.nextInt(4) == 0
                        ? new DrawFact.PoolsDrawn("words", "Wim", new TreeMap<>(java.util.Map.of("A", CLUBS)))
                        : arranged(one(TIES));
            case KNOCKOUT_DRAWN ->
                random.nextInt(4) == 0 ? new DrawFact.KnockoutDrawn("words", "Wim") : arranged(TieId.of("F"));
            case TIE_ARRANGED -> arranged(one(TIES));
            default -> new DrawFact.TieTimed(one(TIES), maybe(time()), maybe(court()));
        };
    }

    private DrawFact.TieArranged arranged(TieId tie) {
        return switch (tie.code()) {
            case "A1" -> pool(tie, "N", "S");
            case "A2" -> pool(tie, "E", "W");
            default ->
                new DrawFact.TieArranged(
                        tie,
                        Stage.KNOCKOUT,
                        Optional.empty(),
                        1,
                        Slot.from(SlotSource.place("A", 1)),
                        Slot.from(SlotSource.winner(TieId.of("A2"))));
        };
    }

    private static DrawFact.TieArranged pool(TieId tie, String home, String away) {
        return new DrawFact.TieArranged(
                tie, Stage.POOL, Optional.of("A"), 1, Slot.of(ClubId.of(home)), Slot.of(ClubId.of(away)));
    }

    private Fact planned(FactKind kind) {
        return switch (kind) {
            case PLAN_PUBLISHED -> new DrawFact.PlanPublished(1, random.nextInt(4), 20, "1", "why", "R");
            case RUBBER_TIMED -> new DrawFact.RubberTimed(one(TIES), rubber(), time(), court(), maybe(club()));
            case TIE_CALLED_OFF ->
                random.nextInt(4) == 0
                        ? new DrawFact.TieCalledOff(one(TIES), 1)
                        : new DrawFact.TieTimed(one(TIES), maybe(time()), maybe(court()));
            case SLOT_FILLED -> new DrawFact.SlotFilled(TieId.of("F"), side(), club());
            case SLOT_KEPT -> new DrawFact.SlotKept(TieId.of("F"), side(), club(), 1);
            default -> new DrawFact.TieRestarted(one(TIES), maybe(club()), maybe(club()), 1);
        };
    }

    private Fact exchanged(FactKind kind) {
        ExchangeId id = new ExchangeId(one(TIES), one(Arrays.asList(SheetKind.values())));
        return switch (kind) {
            case SHEET_SEALED -> new ExchangeFact.SheetSealed(id, club(), receipt(), yes());
            case SHEET_RETURNED -> new ExchangeFact.SheetReturned(id, club(), "why");
            case SHEET_HANDED_IN -> new ExchangeFact.SheetHandedIn(id, club());
            case OPENING_ASKED -> new ExchangeFact.OpeningAsked(id, club());
            case CLUB_TOLD -> new ExchangeFact.ClubTold(id, club());
            case SIDE_RULED -> new ExchangeFact.SideRuled(id, club(), yes(), 1);
            case SHEETS_OPENED ->
                new ExchangeFact.SheetsOpened(id, sheet(id, "N"), maybe(receipt()), sheet(id, "S"), maybe(receipt()));
            default ->
                new ExchangeFact.PairReplaced(
                        id,
                        club(),
                        rubber(),
                        maybe(Pair.of("N1", "N2")),
                        one(List.of("injury", "illness", "no-show", "disqualified", "clerical", "substitution")),
                        "R");
        };
    }

    private static Sheet sheet(ExchangeId id, String club) {
        return id.kind() == SheetKind.DECIDER ? Sheet.decider(Pair.of(club + "1", club + "3")) : Days.straight(club, 4);
    }

    private Fact played(FactKind kind) {
        TieId tie = one(TIES);
        return switch (kind) {
            case COURT_CALLED -> new PlayFact.CourtCalled(tie, maybe(rubber()), court());
            case CALL_TAKEN_BACK -> new PlayFact.CallTakenBack(tie, maybe(rubber()), "why");
            case CARD_ENTERED -> new PlayFact.CardEntered(tie, rubber(), games(), how());
            case CARD_CORRECTED ->
                new PlayFact.CardCorrected(tie, rubber(), games(), how(), games(), "why", OptionalInt.empty());
            case CARD_TAKEN_BACK -> new PlayFact.CardTakenBack(tie, rubber(), "why");
            case PLAY_STOPPED -> new PlayFact.PlayStopped(tie, rubber());
            default -> new PlayFact.PlayResumed(tie, rubber());
        };
    }

    private Fact official(FactKind kind) {
        int number = random.nextInt(4);
        return switch (kind) {
            case CLUB_WITHDRAWN ->
                new OfficialFact.ClubWithdrawn(
                        club(), maybe(one(TIES)), one(Arrays.asList(Withdrawal.values())), number);
            case LOT_DRAWN -> new OfficialFact.LotDrawn("A", CLUBS, "Wim");
            case TABLE_SIGNED -> new OfficialFact.TableSigned("A", CLUBS, "R");
            case EVENT_SIGNED -> new OfficialFact.EventSigned(CLUBS, "R");
            case SIGNATURE_WITHDRAWN -> new OfficialFact.SignatureWithdrawn(maybe("A"), number);
            case RULING_GIVEN -> new OfficialFact.RulingGiven(number, "what", "ruled", "why", "R");
            case NOTICE_POSTED ->
                new OfficialFact.NoticePosted(number, "text", maybe(one(TIES)), maybe("was"), maybe("is"), "why");
            case RULING_STATED ->
                new OfficialFact.RulingStated(
                        number, Saying.typed("what"), Saying.of("notices.version-holds"), "why", "R");
            case NOTICE_STATED ->
                new OfficialFact.NoticeStated(
                        number,
                        Saying.typed("text"),
                        maybe(one(TIES)),
                        maybe(Saying.typed("was")),
                        maybe(Saying.typed("is")),
                        Saying.typed("why"));
            case NOTICE_TOLD -> new OfficialFact.NoticeTold(number, club(), yes());
            case HALL_STOPPED -> new DrawFact.HallStopped(maybe(LocalTime.of(13, 10)), "rain");
            case HEAT_DECIDED -> new OfficialFact.HeatDecided("wbgt", 280, "caution", "drink", "R");
            case CORRECTION_DECIDED ->
                new OfficialFact.CorrectionDecided(
                        one(TIES),
                        rubber(),
                        games(),
                        how(),
                        one(Arrays.asList(CorrectionChoice.values())),
                        number,
                        "why");
            case CASE_RULED ->
                new OfficialFact.CaseRuled(
                        "ineligible", one(TIES), club(), one(Arrays.asList(Penalty.values())), number);
            case TWO_PEOPLE -> new OfficialFact.TwoPeople(player(), player());
            case PROTEST_MADE ->
                new OfficialFact.ProtestMade(number, club(), maybe(one(TIES)), "text", maybe("20"), "R");
            default -> new OfficialFact.ProtestDecided(number, yes(), yes(), number);
        };
    }

    private <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    private <T> Optional<T> maybe(T value) {
        return yes() ? Optional.of(value) : Optional.empty();
    }

    private boolean yes() {
        return random.nextBoolean();
    }

    private ClubId club() {
        return one(CLUBS);
    }

    private PlayerId player() {
        return PlayerId.of(club().code() + (1 + random.nextInt(3)));
    }

    private String court() {
        return one(List.of("1", "2"));
    }

    private Side side() {
        return one(List.of(Side.HOME, Side.AWAY));
    }

    private LocalTime time() {
        return LocalTime.of(9 + random.nextInt(8), 0);
    }

    private RubberNo rubber() {
        return one(List.of(RubberNo.of(1), RubberNo.of(2), RubberNo.of(3), RubberNo.of(4), RubberNo.DECIDER));
    }

    private How how() {
        return one(Arrays.asList(How.values()));
    }

    private List<Score> games() {
        return List.of(one(List.of(Score.of(15, 5), Score.of(5, 15), Score.of(15, 13))));
    }

    private String receipt() {
        return Integer.toHexString(random.nextInt(16)).repeat(64);
    }
}
