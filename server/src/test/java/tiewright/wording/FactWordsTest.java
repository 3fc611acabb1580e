package tiewright.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Conditions;
import tiewright.conditions.Preset;
import tiewright.conditions.Withdrawal;
import tiewright.event.ClubId;
import tiewright.event.CorrectionChoice;
import tiewright.event.DrawFact;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.Fact;
import tiewright.event.FactKind;
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

class FactWordsTest {
    private static final ClubId N = ClubId.of("N");
    private static final ClubId S = ClubId.of("S");
    private static final PlayerId N1 = PlayerId.of("N1");
    private static final TieId TIE = TieId.of("A1");
    private static final ExchangeId SHEETS = ExchangeId.sheets(TIE);
    private static final String SECRET = "5ec4e7".repeat(10) + "5ec4";
    private static final Sheet SHEET = Sheet.of(List.of(Optional.of(Pair.of("N1", "N2"))));

    private final FactWords words = new FactWords(new Words(
            Language.ENGLISH, player -> "Name of " + player, club -> "Club " + club, ZoneId.of("Europe/Vienna")));

    private static final List<Fact> ALL = List.of(
            new SetUpFact.EventDescribed(
                    "Cup", LocalDate.of(2027, 6, 12), "Hall", ZoneId.of("UTC"), LocalTime.of(9, 0), Optional.empty()),
            new SetUpFact.ConditionsPublished(1, Conditions.of(Preset.TIMED), OptionalInt.empty()),
            new SetUpFact.ConditionsPublished(2, Conditions.of(Preset.TIMED), OptionalInt.of(3)),
            new SetUpFact.ConditionsRead(N, 1),
            new SetUpFact.ClubEntered(N, "Norden", Optional.empty(), OptionalInt.empty()),
            new SetUpFact.ClubRemoved(N),
            new SetUpFact.PlayerEntered(N1, N, OptionalInt.empty(), Optional.empty(), Optional.empty(), false),
            new SetUpFact.PlayerRemoved(N1),
            new SetUpFact.CourtSet("1", Optional.empty(), Optional.empty(), true),
            new SetUpFact.CourtSet("1", Optional.empty(), Optional.empty(), false),
            new SetUpFact.CheckedIn(N1, true),
            new SetUpFact.CheckedIn(N1, false),
            new SetUpFact.LinkIssued("L1", Role.DESK, Optional.empty(), Optional.empty(), "desk 1", SECRET),
            new SetUpFact.LinkRevoked("L1"),
            new SetUpFact.LinkLetIn("L2"),
            new SetUpFact.OpeningChosen(false, Optional.empty()),
            new SetUpFact.SafetyDescribed("By the door", "In the foyer", "112"),
            new SetUpFact.DeletionDated(LocalDate.of(2031, 6, 1), NamesKept.CODES),
            new SetUpFact.DeletionDated(LocalDate.of(2031, 6, 1), NamesKept.INITIALS),
            new SetUpFact.DataErased(new TreeMap<>(Map.of("person", 16, "film", 0))),
            new SetUpFact.OpeningChosen(true, Optional.empty()),
            new SetUpFact.OpeningChosen(true, Optional.of("Ines")),
            new DrawFact.PoolsDrawn("three red hats", "Ines", new TreeMap<>(Map.of("A", List.of(N, S)))),
            new DrawFact.KnockoutDrawn("three red hats", "Ines"),
            new DrawFact.TieArranged(
                    TIE, Stage.POOL, Optional.of("A"), 1, Slot.of(N), Slot.from(SlotSource.place("B", 2))),
            new DrawFact.TieTimed(TIE, Optional.of(LocalTime.of(9, 40)), Optional.empty()),
            new DrawFact.PlanPublished(2, 7, 20, "11", "two courts under water", "Ines"),
            new DrawFact.RubberTimed(TIE, RubberNo.of(1), LocalTime.of(9, 40), "2", Optional.empty()),
            new DrawFact.RubberTimed(TIE, RubberNo.of(1), LocalTime.of(9, 40), "2", Optional.of(N)),
            new DrawFact.TieCalledOff(TIE, 6),
            new DrawFact.SlotFilled(TIE, Side.AWAY, S),
            new ExchangeFact.SheetSealed(SHEETS, N, SECRET, true),
            new ExchangeFact.SheetReturned(ExchangeId.decider(TIE), N, "two players are gone"),
            new ExchangeFact.SheetHandedIn(SHEETS, N),
            new ExchangeFact.OpeningAsked(SHEETS, N),
            new ExchangeFact.SideRuled(SHEETS, N, false, 4),
            new ExchangeFact.SideRuled(SHEETS, N, true, 4),
            new ExchangeFact.SheetsOpened(SHEETS, SHEET, Optional.of(SECRET), SHEET, Optional.of(SECRET)),
            new ExchangeFact.PairReplaced(SHEETS, N, RubberNo.of(2), Optional.empty(), "injury", "Ines"),
            new ExchangeFact.ClubTold(SHEETS, N),
            new ExchangeFact.ClubTold(SHEETS, N, false),
            new PlayFact.CourtCalled(TIE, Optional.empty(), "2"),
            new PlayFact.CallTakenBack(TIE, Optional.of(RubberNo.of(1)), "wrong court"),
            new PlayFact.CardEntered(TIE, RubberNo.of(1), List.of(Score.of(11, 7)), How.RETIRED_AWAY),
            new PlayFact.CardCorrected(TIE, RubberNo.DECIDER, List.of(Score.of(7, 11)), How.PLAYED, "read upside down"),
            new PlayFact.CardTakenBack(TIE, RubberNo.of(1), "never played"),
            new OfficialFact.ClubWithdrawn(N, Optional.empty(), Withdrawal.AWARD, 5),
            new OfficialFact.LotDrawn("A", List.of(S, N), "Ines"),
            new OfficialFact.TableSigned("A", List.of(S, N), "Ines"),
            new OfficialFact.EventSigned(List.of(S, N), "Ines"),
            new OfficialFact.RulingGiven(6, "tie A1", "It stands.", "Condition 7", "Ines"),
            new OfficialFact.NoticePosted(
                    7, "Lunch is later", Optional.empty(), Optional.empty(), Optional.empty(), "rain"),
            new OfficialFact.RulingStated(
                    6, Saying.of("notices.the-conditions"), Saying.typed("It stands."), "Condition 7", "Ines"),
            new OfficialFact.NoticeStated(
                    7,
                    Saying.of("notices.tie").with("tie", TIE),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Saying.typed("rain")),
            new OfficialFact.NoticeTold(7, N, true),
            new OfficialFact.NoticeTold(7, N, false),
            new DrawFact.HallStopped(Optional.of(LocalTime.of(13, 10)), "Rain"),
            new DrawFact.HallStopped(Optional.empty(), ""),
            new OfficialFact.HeatDecided("wbgt", 305, "caution", "Longer breaks", "Ines"),
            new OfficialFact.HeatDecided("air", 181, "below", "Play on", "Ines"),
            new DrawFact.TieRestarted(TIE, Optional.of(N), Optional.empty(), 8),
            new DrawFact.SlotKept(TIE, Side.HOME, N, 8),
            new PlayFact.PlayStopped(TIE, RubberNo.of(1)),
            new PlayFact.PlayResumed(TIE, RubberNo.DECIDER),
            correction(CorrectionChoice.LET_STAND),
            correction(CorrectionChoice.REPLAY),
            correction(CorrectionChoice.RECORD_ONLY),
            new OfficialFact.SignatureWithdrawn(Optional.of("A"), 8),
            new OfficialFact.SignatureWithdrawn(Optional.empty(), 8),
            new OfficialFact.TwoPeople(PlayerId.of("N1"), PlayerId.of("S1")),
            new OfficialFact.CaseRuled("ineligible", TIE, N, Penalty.NONE, 9),
            new OfficialFact.CaseRuled("ineligible", TIE, N, Penalty.RUBBERS, 9),
            new OfficialFact.CaseRuled("ineligible", TIE, N, Penalty.TIE, 9),
            new OfficialFact.ProtestMade(1, N, Optional.empty(), "The net was too high", Optional.empty(), "Ana"),
            new OfficialFact.ProtestDecided(1, true, true, 9),
            new OfficialFact.ProtestDecided(1, false, false, 9));

    private static Fact correction(CorrectionChoice choice) {
        return new OfficialFact.CorrectionDecided(
                TIE, RubberNo.of(1), List.of(Score.of(5, 11)), How.PLAYED, choice, 8, "card");
    }

    @Test
    void has_a_sentence_for_every_kind_of_fact() {
        EnumSet<FactKind> said = EnumSet.noneOf(FactKind.class);
        for (Fact fact : ALL) {
            assertThat(words.sentence(fact)).isNotBlank().doesNotContain("{", "Optional", "null");
            said.add(fact.kind());
        }
        assertThat(said).containsExactlyInAnyOrder(FactKind.values());
    }

    @Test
    void tells_no_receipt_no_secret_and_no_name_of_a_sheet() {
        for (Fact fact : ALL) {
            assertThat(words.sentence(fact)).doesNotContain(SECRET);
            if (fact instanceof ExchangeFact) {
                assertThat(words.sentence(fact)).doesNotContain("Name of", "N1", "N2");
            }
        }
    }

    @Test
    void says_what_happened_in_plain_words() {
        assertThat(words.sentence(new PlayFact.CardEntered(
                        TIE, RubberNo.of(1), List.of(Score.of(11, 7), Score.of(9, 11)), How.PLAYED)))
                .isEqualTo("Card of tie A1, rubber 1: 11-7, 9-11.");
        assertThat(words.sentence(new DrawFact.TieTimed(TIE, Optional.of(LocalTime.of(9, 40)), Optional.empty())))
                .isEqualTo("Tie A1: start 09:40, court none yet.");
        assertThat(words.sentence(new ExchangeFact.SheetSealed(SHEETS, N, SECRET, true)))
                .isEqualTo("Club N sealed a sheet for the rubbers of tie A1.");
    }

    /** Also of a row of an older version, which has the number behind the words. */
    @Test
    void says_by_which_ruling_a_card_was_changed() {
        RubberNo one = RubberNo.of(1);
        List<Score> games = List.of(Score.of(11, 7));
        assertThat(words.sentence(new PlayFact.CardCorrected(
                        TIE, one, games, How.PLAYED, List.of(), "read upside down", OptionalInt.of(3))))
                .isEqualTo("Card of tie A1, rubber 1, settled as 11-7: read upside down, ruling 3")
                .isEqualTo(words.sentence(
                        new PlayFact.CardCorrected(TIE, one, games, How.PLAYED, "read upside down, ruling 3")));
        assertThat(words.sentence(
                        new PlayFact.CardCorrected(TIE, one, games, How.PLAYED, List.of(), "", OptionalInt.of(3))))
                .isEqualTo("Card of tie A1, rubber 1, settled as 11-7: ruling 3");
        assertThat(words.sentence(new PlayFact.CardTakenBack(TIE, one, "never played", OptionalInt.of(4))))
                .isEqualTo("Card of tie A1, rubber 1, taken back: never played, ruling 4");
        assertThat(words.sentence(new PlayFact.CardTakenBack(TIE, one, "never played")))
                .isEqualTo("Card of tie A1, rubber 1, taken back: never played");
    }
}
