package tiewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.desk.DoNext.Kind;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.How;
import tiewright.event.Pair;
import tiewright.event.PlayFact;
import tiewright.event.RubberNo;
import tiewright.event.SetUpFact;
import tiewright.event.Sheet;
import tiewright.event.TieId;
import tiewright.wording.DoNextWords;

/**
 * One list of what to do next, each item once it is due and gone when it is done. The tie starts at 10:00, its sheets are
 * due at 09:45. The minutes are common practice, no source.
 */
class DoNextTest {
    private static final ExchangeId SHEETS = ExchangeId.sheets(TieId.of("A1"));
    private final Days day = Days.oneTie().with(Setting.LATE_SHEET, "forfeit").with(Setting.GRACE_MINUTES, "0");

    private List<Kind> kinds(Days at) {
        List<DoNext.Item> items = DoNext.of(at.event(), at.now());
        DoNextWords words = DoNextWords.of(at.event());
        items.forEach(words::sentence);
        assertThat(items).extracting(DoNext.Item::kind).isSorted();
        return items.stream()
                .map(DoNext.Item::kind)
                .filter(kind -> kind != Kind.CONDITIONS_UNREAD)
                .toList();
    }

    private String sentence(Kind kind) {
        return DoNext.of(day.event(), day.now()).stream()
                .filter(item -> item.kind() == kind)
                .map(DoNextWords.of(day.event())::sentence)
                .findFirst()
                .orElse("nothing");
    }

    private Days sealed(String club) {
        return day.fact(new ExchangeFact.SheetSealed(SHEETS, ClubId.of(club), "0".repeat(64), false));
    }

    @Test
    void a_sheet_is_missing_half_an_hour_before_the_deadline_and_late_from_it_on() {
        assertThat(kinds(day.at("09:14"))).isEmpty();
        assertThat(kinds(day.at("09:15"))).containsExactly(Kind.SHEET_MISSING);
        assertThat(sentence(Kind.SHEET_MISSING)).isEqualTo("Tie A1: no sheet yet from Club N, Club S; due by 09:45.");
        sealed("N").at("09:45");
        assertThat(kinds(day)).containsExactly(Kind.SHEET_LATE);
        assertThat(sentence(Kind.SHEET_LATE)).contains("no sheet from Club S.");
    }

    @Test
    void a_sheet_that_was_replaced_looks_like_one_that_was_not() {
        sealed("N").at("09:20");
        List<DoNext.Item> once = DoNext.of(day.event(), day.now());
        sealed("N");
        assertThat(DoNext.of(day.event(), day.now())).isEqualTo(once);
    }

    @Test
    void both_sheets_in_are_opened_at_the_deadline() {
        sealed("N");
        sealed("S").at("09:44");
        assertThat(kinds(day)).isEmpty();
        assertThat(kinds(day.at("09:45"))).containsExactly(Kind.SHEETS_TO_OPEN);
    }

    @Test
    void a_sheet_on_the_phone_is_handed_in_at_the_deadline() {
        sealed("N").fact(new ExchangeFact.SheetSealed(SHEETS, ClubId.of("S"), "0".repeat(64), true));
        assertThat(kinds(day.at("09:44"))).isEmpty();
        assertThat(kinds(day.at("09:45"))).containsExactly(Kind.SHEET_ON_PHONE);
    }

    @Test
    void an_opened_tie_is_called_when_a_court_is_free() {
        day.opened("A1");
        assertThat(kinds(day.at("09:49"))).isEmpty();
        assertThat(kinds(day.at("09:50"))).containsExactly(Kind.TIE_TO_CALL);
        assertThat(sentence(Kind.TIE_TO_CALL)).isEqualTo("Tie A1 can be called: rubber 1 to court 1.");
        day.does(new CallToCourt(TieId.of("A1"), RubberNo.of(1), "1"));
        assertThat(kinds(day)).isEmpty();
        day.card("A1", "1", "11-4");
        assertThat(sentence(Kind.TIE_TO_CALL)).isEqualTo("Tie A1 can be called: rubber 2 to court 1.");
    }

    @Test
    void a_tie_not_called_after_the_minutes_of_the_conditions_is_late() {
        day.opened("A1")
                .fact(new SetUpFact.CourtSet("1", Optional.empty(), Optional.empty(), false))
                .fact(new SetUpFact.CourtSet("2", Optional.empty(), Optional.empty(), false));
        assertThat(kinds(day.at("10:09"))).isEmpty();
        assertThat(kinds(day.at("10:10"))).containsExactly(Kind.TIE_LATE);
    }

    @Test
    void a_tie_whose_clubs_are_known_and_that_has_no_time_among_ties_that_have_is_given_one() {
        day.poolTie("A9", "A", 3, "N", "S");
        assertThat(kinds(day.at("08:00"))).containsExactly(Kind.TIE_WITHOUT_TIME);
        assertThat(sentence(Kind.TIE_WITHOUT_TIME))
                .isEqualTo("Tie A9 has no time yet. The organiser gives it one and tells both clubs.");
        day.timed("A9", "15:00", "2");
        assertThat(kinds(day)).isEmpty();
    }

    @Test
    void a_card_is_missing_when_its_rubber_takes_long() {
        // as older ledgers hold it: the whole tie, one rubber after the other on one court
        day.opened("A1").at("10:00").fact(new PlayFact.CourtCalled(TieId.of("A1"), Optional.empty(), "1"));
        assertThat(kinds(day.at("10:24"))).isEmpty();
        assertThat(kinds(day.at("10:25"))).containsExactly(Kind.CARD_MISSING);
        day.card("A1", "1", "11-0");
        assertThat(kinds(day.at("10:49")))
                .as("the second rubber began when the first ended")
                .isEmpty();
        assertThat(kinds(day.at("10:50"))).containsExactly(Kind.CARD_MISSING);
        assertThat(sentence(Kind.CARD_MISSING)).contains("rubber 2", "10:25");
    }

    @Test
    void a_held_card_stands_first() {
        day.opened("A1")
                .at("10:00")
                .card("A1", "1", "11-0")
                .by(Days.volunteer("V"))
                .card("A1", "1", "0-11");
        assertThat(kinds(day)).containsExactly(Kind.CARD_HELD, Kind.TIE_TO_CALL);
    }

    @Test
    void a_level_tie_needs_its_decider_pairs() {
        day.opened("A1").at("10:40").cards("A1", "11-0", "11-0", "0-11", "0-11");
        assertThat(kinds(day)).containsExactly(Kind.DECIDER_NEEDED);
        assertThat(sentence(Kind.DECIDER_NEEDED)).contains("by 10:45");
        ExchangeId decider = ExchangeId.decider(TieId.of("A1"));
        for (String club : List.of("N", "S")) {
            day.fact(new ExchangeFact.SheetSealed(decider, ClubId.of(club), "0".repeat(64), false));
        }
        assertThat(kinds(day.at("10:45"))).containsExactly(Kind.DECIDER_TO_OPEN);
        day.opened(decider, Sheet.decider(Pair.of("N1", "N2")), Sheet.decider(Pair.of("S1", "S2")));
        assertThat(kinds(day)).containsExactly(Kind.TIE_TO_CALL);
    }

    @Test
    void a_finished_pool_is_signed_and_a_level_one_drawn() {
        day.opened("A1").at("10:40").cards("A1", "11-0", "11-0", "11-0", "0-11");
        assertThat(kinds(day)).containsExactly(Kind.TABLE_TO_SIGN);
        day.does(new SignTable("A", "R"));
        assertThat(kinds(day)).containsExactly(Kind.EVENT_TO_SIGN);
        Days level = Days.oneTie()
                .with(Setting.DECIDER, "none")
                .with(Setting.TIE_POINTS, "2/1/0")
                .opened("A1")
                .at("11:00")
                .cards("A1", "11-0", "11-0", "0-11", "0-11");
        assertThat(kinds(level)).containsExactly(Kind.LOT_NEEDED);
    }

    @Test
    void slots_that_stand_wrong_are_told() {
        Days cup = Days.aDay()
                .clubs("N", "S", "E")
                .with(Setting.RUBBERS, "1")
                .knockoutTie("SF", 1, "N", "S")
                .knockoutTie("F", 2, "winner-SF", "E")
                .opened("SF")
                .cards("SF", "11-9");
        assertThat(kinds(cup)).as("a card brought in by hand fills nothing").contains(Kind.SLOT_TO_FILL);
        cup.fact(new tiewright.event.DrawFact.SlotFilled(TieId.of("F"), tiewright.event.Side.HOME, ClubId.of("N")));
        cup.opened("F")
                .fact(new tiewright.event.PlayFact.CardCorrected(
                        TieId.of("SF"), RubberNo.of(1), Days.games("9-11"), How.PLAYED, "x"));
        assertThat(kinds(cup)).contains(Kind.SLOT_DISPUTED);
    }

    @Test
    void nothing_is_asked_for_a_tie_of_a_club_that_withdrew() {
        day.does(new WithdrawClub(ClubId.of("S"), tiewright.conditions.Withdrawal.ANNUL, "flood", "R"))
                .at("10:30");
        assertThat(kinds(day)).containsExactly(Kind.TABLE_TO_SIGN);
    }

    @Test
    void captains_tick_the_conditions_as_they_hold() {
        day.fact(new SetUpFact.ConditionsRead(ClubId.of("N"), day.event().conditionsVersion()))
                .fact(new SetUpFact.ConditionsRead(ClubId.of("S"), day.event().conditionsVersion() - 1));
        assertThat(sentence(Kind.CONDITIONS_UNREAD)).endsWith("by Club S.");
    }

    @Test
    void decider_sheets_nobody_needs_are_dropped_with_the_card_that_ends_the_tie() {
        ExchangeId decider = ExchangeId.decider(TieId.of("A1"));
        day.opened("A1")
                .fact(new ExchangeFact.SheetSealed(decider, ClubId.of("N"), "0".repeat(64), false))
                .cards("A1", "11-0", "11-0", "11-0");
        day.does(new RecordCard(TieId.of("A1"), RubberNo.of(4), Days.games("0-11"), How.PLAYED));
        assertThat(day.notes()).containsExactly(new tiewright.event.PrivateNote.SheetDropped(decider, ClubId.of("N")));
    }
}
