package tiewright.ledger;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import tiewright.conditions.Conditions;
import tiewright.conditions.Preset;
import tiewright.conditions.Setting;
import tiewright.conditions.Withdrawal;
import tiewright.event.ClubId;
import tiewright.event.CorrectionChoice;
import tiewright.event.DrawFact;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.Fact;
import tiewright.event.How;
import tiewright.event.NamesKept;
import tiewright.event.OfficialFact;
import tiewright.event.Pair;
import tiewright.event.Penalty;
import tiewright.event.PlayFact;
import tiewright.event.PlayerId;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.Saying;
import tiewright.event.SetUpFact;
import tiewright.event.Sheet;
import tiewright.event.Side;
import tiewright.event.Slot;
import tiewright.event.SlotSource;
import tiewright.event.Stage;
import tiewright.event.TieId;
import tiewright.scoring.Score;

/** At least one fact of every kind, with everything given and with everything left out, in awkward words. */
final class ExampleFacts {
    private static final ClubId ONE = ClubId.of("SHV|1");
    private static final ClubId TWO = ClubId.of("Zoë's=club");
    private static final PlayerId ANA = PlayerId.of("p-1");
    private static final PlayerId BEN = PlayerId.of("選手 2");
    private static final TieId TIE = TieId.of("A-1-2");
    private static final ExchangeId SHEETS = ExchangeId.sheets(TIE);
    private static final ExchangeId DECIDER = ExchangeId.decider(TIE);
    private static final RubberNo FIRST = RubberNo.of(1);
    private static final LocalTime AT = LocalTime.of(9, 30);
    private static final String WORDS = "Line one,\nline \"two\"; 'three' = 4 %\t🏸 ";
    private static final Saying SAYING = Saying.of("notices.time")
            .with("court", WORDS)
            .with("parts", List.of(Saying.typed(WORDS), Saying.of("notices.tie").withEach("ties", List.of(1, "{}=;,"))))
            .with("none", List.of());
    private static final String HEX = "0123456789abcdef".repeat(4);

    private ExampleFacts() {}

    static List<Fact> all() {
        return java.util.stream.Stream.of(setUp(), draw(), exchange(), play(), official())
                .flatMap(List::stream)
                .toList();
    }

    private static List<Fact> setUp() {
        return List.of(
                new SetUpFact.EventDescribed(
                        WORDS,
                        LocalDate.of(2026, 2, 28),
                        "",
                        ZoneId.of("Asia/Kolkata"),
                        AT,
                        Optional.of(LocalTime.of(23, 59, 59))),
                new SetUpFact.EventDescribed(
                        "N", LocalDate.MIN.withYear(1), "V", ZoneId.of("+05:30"), LocalTime.MIDNIGHT, Optional.empty()),
                new SetUpFact.ConditionsPublished(1, Conditions.of(Preset.CLUB_DAY), OptionalInt.empty()),
                new SetUpFact.ConditionsPublished(
                        2, Conditions.of(Preset.CLUB_DAY).with(Setting.RUBBERS, "7"), OptionalInt.of(3)),
                new SetUpFact.ConditionsRead(ONE, 2),
                new SetUpFact.ClubEntered(ONE, WORDS, Optional.of(""), OptionalInt.of(1)),
                new SetUpFact.ClubEntered(TWO, "Two", Optional.empty(), OptionalInt.empty()),
                new SetUpFact.ClubRemoved(ClubId.of("gone")),
                new SetUpFact.PlayerEntered(
                        ANA, ONE, OptionalInt.of(1), Optional.of(AT), Optional.of(AT.plusHours(1)), true),
                new SetUpFact.PlayerEntered(BEN, TWO, OptionalInt.empty(), Optional.empty(), Optional.empty(), false),
                new SetUpFact.PlayerRemoved(PlayerId.of("gone")),
                new SetUpFact.CourtSet("Court 1", Optional.of(AT), Optional.of(AT.plusHours(8)), true),
                new SetUpFact.CourtSet("2", Optional.empty(), Optional.empty(), false),
                new SetUpFact.CheckedIn(ANA, true),
                new SetUpFact.LinkIssued("L1", Role.CAPTAIN, Optional.of(ONE), Optional.of(ANA), WORDS, HEX),
                new SetUpFact.LinkIssued("L2", Role.DESK, Optional.empty(), Optional.empty(), "desk 2", HEX),
                new SetUpFact.LinkRevoked("L2"),
                new SetUpFact.LinkLetIn("L1"),
                new SetUpFact.OpeningChosen(true, Optional.of("Ola"), Optional.of("L2")),
                new SetUpFact.SafetyDescribed(WORDS, "", "112"),
                new SetUpFact.DeletionDated(LocalDate.of(2026, 3, 28), NamesKept.INITIALS),
                new SetUpFact.DataErased(new TreeMap<>(java.util.Map.of("film", 3, "half_life", 1))),
                new SetUpFact.DataErased(new TreeMap<>()),
                new SetUpFact.OpeningChosen(false, Optional.empty()));
    }

    private static List<Fact> draw() {
        TreeMap<String, List<ClubId>> pools = new TreeMap<>();
        pools.put("A", List.of(TWO, ONE));
        pools.put("B=2", List.of());
        return List.of(
                new DrawFact.PoolsDrawn(WORDS, "Wim", pools),
                new DrawFact.PoolsDrawn("", "", new TreeMap<>()),
                new DrawFact.KnockoutDrawn("seven swans", "Wim"),
                new DrawFact.TieArranged(TIE, Stage.POOL, Optional.of("A"), 1, Slot.of(ONE), Slot.of(TWO)),
                new DrawFact.TieArranged(
                        TieId.of("SF1"),
                        Stage.KNOCKOUT,
                        Optional.empty(),
                        2,
                        Slot.from(SlotSource.place("B=2", 1)),
                        Slot.from(SlotSource.loser(TIE)).filledBy(ONE)),
                new DrawFact.TieTimed(TIE, Optional.of(AT), Optional.of("Court 1")),
                new DrawFact.TieTimed(TIE, Optional.empty(), Optional.empty()),
                new DrawFact.PlanPublished(1, 2, 20, "-7", WORDS, "Zoë"),
                new DrawFact.PlanPublished(2, 3, 1, "", "", ""),
                new DrawFact.RubberTimed(TIE, FIRST, AT, "Court 1", Optional.empty()),
                new DrawFact.RubberTimed(TIE, RubberNo.DECIDER, LocalTime.MIDNIGHT, "2", Optional.of(TWO)),
                new DrawFact.TieCalledOff(TIE, 4),
                new DrawFact.SlotFilled(TieId.of("SF1"), Side.HOME, TWO),
                new DrawFact.TieRestarted(TIE, Optional.of(ONE), Optional.empty(), 4),
                new DrawFact.SlotKept(TieId.of("SF1"), Side.AWAY, ONE, 5));
    }

    private static List<Fact> exchange() {
        Sheet gappy =
                Sheet.of(List.of(Optional.of(Pair.of(ANA, BEN)), Optional.empty(), Optional.of(Pair.of("x", "y"))));
        return List.of(
                new ExchangeFact.SheetSealed(SHEETS, ONE, HEX, true),
                new ExchangeFact.SheetReturned(SHEETS, ONE, WORDS),
                new ExchangeFact.SheetHandedIn(SHEETS, ONE),
                new ExchangeFact.OpeningAsked(DECIDER, TWO),
                new ExchangeFact.SideRuled(SHEETS, TWO, true, 12),
                new ExchangeFact.SheetsOpened(
                        SHEETS,
                        gappy,
                        Optional.of(HEX),
                        Sheet.of(List.of(Optional.empty())),
                        Optional.empty(),
                        Optional.empty()),
                new ExchangeFact.SheetsOpened(
                        DECIDER,
                        Sheet.decider(Pair.of(BEN, ANA)),
                        Optional.empty(),
                        Sheet.decider(Pair.of("v", "w")),
                        Optional.of(HEX),
                        Optional.of(AT)),
                new ExchangeFact.PairReplaced(SHEETS, ONE, FIRST, Optional.of(Pair.of("x", "z")), "injury", "Ref"),
                new ExchangeFact.PairReplaced(DECIDER, ONE, RubberNo.DECIDER, Optional.empty(), "no-show", ""),
                new ExchangeFact.ClubTold(SHEETS, TWO));
    }

    private static List<Fact> play() {
        return List.of(
                new PlayFact.CourtCalled(TIE, Optional.of(FIRST), "Court 1"),
                new PlayFact.CourtCalled(TIE, Optional.empty(), "2"),
                new PlayFact.CallTakenBack(TIE, Optional.of(RubberNo.DECIDER), WORDS),
                new PlayFact.CallTakenBack(TIE, Optional.empty(), ""),
                new PlayFact.CardEntered(
                        TIE, FIRST, List.of(Score.of(21, 19), Score.of(0, 21), Score.of(30, 29)), How.PLAYED),
                new PlayFact.CardEntered(TIE, RubberNo.DECIDER, List.of(), How.WALKOVER_AWAY),
                new PlayFact.CardEntered(
                        TIE, FIRST, List.of(Score.of(8, 11)), How.RETIRED_HOME, List.of(Score.of(8, 6))),
                new PlayFact.CardCorrected(TIE, FIRST, List.of(Score.of(11, 3)), How.RETIRED_HOME, WORDS),
                new PlayFact.CardCorrected(
                        TIE,
                        RubberNo.DECIDER,
                        List.of(Score.of(11, 8)),
                        How.RETIRED_AWAY,
                        List.of(Score.of(6, 8)),
                        "",
                        OptionalInt.of(7)),
                new PlayFact.CardTakenBack(TIE, FIRST, WORDS),
                new PlayFact.CardTakenBack(TIE, FIRST, WORDS, OptionalInt.of(12)),
                new PlayFact.PlayStopped(TIE, FIRST),
                new PlayFact.PlayResumed(TIE, RubberNo.DECIDER));
    }

    private static List<Fact> official() {
        return List.of(
                new OfficialFact.ClubWithdrawn(ONE, Optional.of(TIE), Withdrawal.ANNUL, 1),
                new OfficialFact.ClubWithdrawn(TWO, Optional.empty(), Withdrawal.AWARD, 2),
                new OfficialFact.LotDrawn("A", List.of(TWO, ONE), "Wim"),
                new OfficialFact.TableSigned("A", List.of(ONE, TWO), WORDS),
                new OfficialFact.EventSigned(List.of(), "Ref"),
                new OfficialFact.RulingGiven(1, WORDS, WORDS, WORDS, "Ref"),
                new OfficialFact.NoticePosted(1, WORDS, Optional.of(TIE), Optional.of("10:00"), Optional.of(""), WORDS),
                new OfficialFact.NoticePosted(2, "t", Optional.empty(), Optional.empty(), Optional.empty(), ""),
                new OfficialFact.RulingStated(2, SAYING, Saying.typed(""), WORDS, "Ref"),
                new OfficialFact.NoticeStated(
                        3, SAYING, Optional.of(TIE), Optional.of(Saying.typed(WORDS)), Optional.of(SAYING), SAYING),
                new OfficialFact.NoticeStated(
                        4, SAYING, Optional.empty(), Optional.empty(), Optional.empty(), Saying.typed("")),
                new OfficialFact.NoticeTold(2, ONE, true),
                new OfficialFact.NoticeTold(2, TWO, false),
                new DrawFact.HallStopped(Optional.of(LocalTime.of(13, 10)), WORDS),
                new DrawFact.HallStopped(Optional.empty(), ""),
                new OfficialFact.HeatDecided("wbgt", 305, "caution", WORDS, "Zoë"),
                new OfficialFact.HeatDecided("air", -12, "below", "", ""),
                new OfficialFact.CorrectionDecided(
                        TIE, FIRST, List.of(Score.of(7, 11)), How.PLAYED, CorrectionChoice.REPLAY, 6, WORDS),
                new OfficialFact.CorrectionDecided(
                        TIE, RubberNo.DECIDER, List.of(), How.VOID, CorrectionChoice.LET_STAND, 7, ""),
                new OfficialFact.SignatureWithdrawn(Optional.of("A"), 8),
                new OfficialFact.SignatureWithdrawn(Optional.empty(), 8),
                new OfficialFact.CaseRuled("ineligible", TIE, ONE, Penalty.RUBBERS, 9),
                new OfficialFact.TwoPeople(PlayerId.of("N1"), PlayerId.of("S1")),
                new OfficialFact.ProtestMade(1, ONE, Optional.of(TIE), WORDS, Optional.of("20"), "Ana"),
                new OfficialFact.ProtestMade(2, TWO, Optional.empty(), "t", Optional.empty(), ""),
                new OfficialFact.ProtestDecided(1, true, true, 10));
    }
}
