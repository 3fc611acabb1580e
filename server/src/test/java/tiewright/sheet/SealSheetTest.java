package tiewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static tiewright.sheet.Asked.N;
import static tiewright.sheet.Asked.SECRET;
import static tiewright.sheet.Asked.SHEETS;
import static tiewright.sheet.Asked.seal;
import static tiewright.sheet.Asked.sheet;
import static tiewright.sheet.Asked.straight;
import static tiewright.sheet.Asked.why;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tiewright.conditions.Setting;
import tiewright.conditions.Withdrawal;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Exchange;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.Fact;
import tiewright.event.OfficialFact;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.SetUpFact;
import tiewright.event.Side;
import tiewright.event.TieId;

class SealSheetTest {
    private static Days captainN() {
        return Days.oneTie().by(Days.captain("N"));
    }

    private static Exchange.SideOfExchange home(Days day) {
        return day.event().exchange(SHEETS).side(Side.HOME);
    }

    @Test
    void a_sealed_sheet_is_a_receipt_for_all_and_a_kept_sheet_for_nobody() {
        Days day = captainN().does(seal("N"));
        assertThat(home(day).receipt()).contains(Receipt.of(SECRET, TieId.of("A1"), N, straight("N")));
        assertThat(home(day).atDesk()).isTrue();
        assertThat(day.notes()).containsExactly(new PrivateNote.SheetKept(SHEETS, N, straight("N"), SECRET));
        Fact sealed = day.facts().get(day.facts().size() - 1).fact();
        assertThat(sealed).isInstanceOf(ExchangeFact.SheetSealed.class);
        assertThat(sealed.toString()).doesNotContain("N1");
    }

    @Test
    void a_later_sheet_replaces_and_is_counted() {
        Days day = captainN().does(seal("N")).at("09:10").does(seal("N", sheet("N", "78 56 34 12")));
        assertThat(home(day).sealed()).isEqualTo(2);
        assertThat(home(day).sealedAt()).contains(Days.moment("09:10"));
        assertThat(home(day).receipt()).contains(Receipt.of(SECRET, TieId.of("A1"), N, sheet("N", "78 56 34 12")));
    }

    @Test
    void only_the_own_captain_seals_and_nobody_else_learns_anything() {
        for (Actor by : List.of(
                Days.captain("S"),
                Days.player("N"),
                Days.desk(),
                Days.organiser(),
                Days.referee(),
                Days.volunteer("court 1"))) {
            Days day = Days.oneTie().by(by);
            assertThat(why(day, seal("N", sheet("N", "12 12 12 12")))).containsExactly("not-yours");
            assertThat(day.refusals(seal("N")).get(0).data()).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "abc", "0123456789ABCDEF0123456789ABCDEF0123456789ABCDEF0123456789ABCDEF"})
    void refuses_a_secret_that_is_none(String secret) {
        assertThat(why(captainN(), new SealSheet(SHEETS, N, straight("N"), secret)))
                .containsExactly("secret");
    }

    @Test
    void tells_the_own_captain_every_fault_at_once() {
        assertThat(why(captainN(), new SealSheet(SHEETS, N, sheet("N", "12 13 56 -"), "")))
                .containsExactly("player-twice", "not-full", "secret");
    }

    @Test
    void refuses_a_tie_that_is_unknown_foreign_or_without_its_clubs() {
        Days day = captainN().knockoutTie("F", 1, "N", "winner-SF1").clubs("W").poolTie("A2", "A", 2, "S", "W");
        assertThat(why(day, new SealSheet(ExchangeId.sheets(TieId.of("X")), N, straight("N"), SECRET)))
                .containsExactly("no-tie");
        assertThat(why(day, new SealSheet(ExchangeId.sheets(TieId.of("A2")), N, straight("N"), SECRET)))
                .containsExactly("not-in-tie");
        assertThat(why(day, new SealSheet(ExchangeId.sheets(TieId.of("F")), N, straight("N"), SECRET)))
                .containsExactly("other-club-unknown");
    }

    @Test
    void can_be_filed_long_before_and_without_a_published_start() {
        Days day = captainN().poolTie("A2", "A", 2, "S", "N");
        assertThat(why(day, new SealSheet(ExchangeId.sheets(TieId.of("A2")), N, straight("N"), SECRET)))
                .isEmpty();
    }

    @Test
    void refuses_once_opened_and_once_the_tie_is_over() {
        assertThat(why(Asked.opened().by(Days.captain("N")), seal("N"))).containsExactly("opened");
        Days over = captainN()
                .by(Days.desk())
                .cards("A1", "11-5", "11-5", "11-5", "5-11")
                .by(Days.captain("N"));
        assertThat(why(over, seal("N"))).containsExactly("tie-finished");
    }

    @Test
    void refuses_when_a_club_has_withdrawn() {
        Days day =
                captainN().fact(new OfficialFact.ClubWithdrawn(ClubId.of("S"), Optional.empty(), Withdrawal.ANNUL, 1));
        assertThat(why(day, seal("N"))).containsExactly("withdrawn");
    }

    @Test
    void the_whole_minute_of_the_deadline_and_the_grace_are_in_time() {
        assertThat(why(captainN().at("09:50:59"), seal("N"))).isEmpty();
        assertThat(why(captainN().at("09:51"), seal("N"))).containsExactly("late-grace");
        Days noGrace = captainN().with(Setting.LATE_SHEET, "forfeit");
        assertThat(why(noGrace.at("09:45:59"), seal("N"))).isEmpty();
        assertThat(why(noGrace.at("09:46"), seal("N"))).containsExactly("late-forfeit");
    }

    @ParameterizedTest
    @CsvSource({
        "desk-receipt, late-desk-receipt", "shown-receipt, late-shown-receipt", "last-legal, late-last-legal",
        "strength-order, late-strength-order", "referee-fills, late-referee-fills", "forfeit, late-forfeit"
    })
    void a_late_sheet_hears_what_the_conditions_say(String setting, String code) {
        assertThat(why(captainN().with(Setting.LATE_SHEET, setting).at("09:46"), seal("N")))
                .containsExactly(code);
    }

    @Test
    void a_sheet_that_is_in_may_be_replaced_until_the_opening_but_never_with_open_eyes() {
        Days waiting = captainN().does(seal("N")).at("09:55");
        assertThat(why(waiting, seal("N"))).isEmpty();
        Days ruled = waiting.fact(new ExchangeFact.SideRuled(SHEETS, Asked.S, false, 1));
        assertThat(why(ruled, seal("N"))).containsExactly("replace-closed");
        Days foreseen = captainN()
                .with(Setting.LATE_SHEET, "strength-order")
                .does(seal("N"))
                .at("09:46");
        assertThat(why(foreseen, seal("N"))).containsExactly("replace-closed");
    }

    @Test
    void refuses_a_side_that_was_ruled() {
        assertThat(why(captainN().fact(new ExchangeFact.SideRuled(SHEETS, N, true, 1)), seal("N")))
                .containsExactly("ruled");
    }

    @Test
    void a_form_is_stale_when_what_it_was_made_of_has_changed() {
        SealSheet form = seal("N");
        assertThat(form.isStaledBy(new ExchangeFact.SheetSealed(SHEETS, N, SECRET, false)))
                .isTrue();
        assertThat(form.isStaledBy(new ExchangeFact.SheetSealed(SHEETS, Asked.S, SECRET, false)))
                .isFalse();
        assertThat(form.isStaledBy(new ExchangeFact.SheetSealed(Asked.DECIDER, N, SECRET, false)))
                .isFalse();
        assertThat(form.isStaledBy(new ExchangeFact.SheetsOpened(
                        SHEETS, straight("N"), Optional.empty(), straight("S"), Optional.empty())))
                .isTrue();
        assertThat(form.isStaledBy(Asked.player("N9", "N", OptionalInt.empty(), "", "")))
                .isTrue();
        assertThat(form.isStaledBy(Asked.player("S9", "S", OptionalInt.empty(), "", "")))
                .isFalse();
        assertThat(form.isStaledBy(new SetUpFact.CheckedIn(PlayerId.of("N1"), false)))
                .isTrue();
        assertThat(form.isStaledBy(new SetUpFact.CheckedIn(PlayerId.of("N1"), true)))
                .isFalse();
        assertThat(form.isStaledBy(new SetUpFact.CheckedIn(PlayerId.of("S1"), false)))
                .isFalse();
    }
}
