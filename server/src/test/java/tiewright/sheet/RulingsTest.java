package tiewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static tiewright.sheet.Asked.DECIDER;
import static tiewright.sheet.Asked.N;
import static tiewright.sheet.Asked.S;
import static tiewright.sheet.Asked.SHEETS;
import static tiewright.sheet.Asked.seal;
import static tiewright.sheet.Asked.sheet;
import static tiewright.sheet.Asked.straight;
import static tiewright.sheet.Asked.why;
import static tiewright.sheet.Asked.without;

import java.util.List;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.event.Actor;
import tiewright.event.Days;
import tiewright.event.Decision;
import tiewright.event.ExchangeFact;
import tiewright.event.OfficialFact;
import tiewright.event.PrivateNote;
import tiewright.event.Sheet;

class RulingsTest {
    private static final ForfeitSide FORFEIT = new ForfeitSide(SHEETS, S, "Nobody came", "R. Jansen");
    private static final SupplySide SUPPLY = new SupplySide(SHEETS, S, straight("S"), "From the envelope", "R. Jansen");

    private static Days lateS() {
        return Days.oneTie()
                .by(Days.captain("N"))
                .does(seal("N"))
                .by(Days.referee())
                .at("09:51");
    }

    @Test
    void a_supplied_side_is_a_numbered_ruling_and_a_kept_sheet_that_no_fact_names() {
        Days day = lateS().fact(new OfficialFact.RulingGiven(4, "x", "y", "z", "R. Jansen"))
                .does(SUPPLY);
        OfficialFact.RulingStated ruling = day.event().rulings().get(1);
        assertThat(ruling.number()).isEqualTo(5);
        assertThat(Days.said(ruling.about())).isEqualTo("The missing sheet of Club S, tie A1");
        assertThat(Days.said(ruling.ruling())).isEqualTo("The sheet of Club S is supplied.");
        assertThat(ruling.by()).isEqualTo("R. Jansen");
        assertThat(day.event().exchange(SHEETS).away().ruled())
                .contains(new ExchangeFact.SideRuled(SHEETS, S, false, 5));
        assertThat(day.notes()).endsWith(new PrivateNote.SheetKept(SHEETS, S, straight("S"), ""));
        assertThat(day.facts()
                        .subList(day.facts().size() - 2, day.facts().size())
                        .toString())
                .doesNotContain("S1");
    }

    @Test
    void a_supplied_side_obeys_the_same_rules_and_is_signed() {
        assertThat(why(lateS(), new SupplySide(SHEETS, S, sheet("S", "12 34 56 17"), "", " ")))
                .containsExactly("reason", "name", "player-twice");
        assertThat(why(lateS(), new ForfeitSide(SHEETS, S, " ", ""))).containsExactly("reason", "name");
    }

    @Test
    void no_ruling_before_the_clock_has_run_out() {
        for (Decision decision : List.of(FORFEIT, SUPPLY)) {
            assertThat(why(lateS().at("09:44"), decision)).containsExactly("still-time");
            assertThat(why(lateS().at("09:45"), decision)).containsExactly("grace-runs");
            assertThat(why(lateS().at("09:50:59"), decision)).containsExactly("grace-runs");
            assertThat(why(lateS().at("09:51"), decision)).isEmpty();
            assertThat(why(lateS().with(Setting.LATE_SHEET, "forfeit").at("09:46"), decision))
                    .isEmpty();
        }
    }

    @Test
    void no_ruling_where_there_is_no_deadline() {
        Days day = Days.aDay()
                .clubs("N", "S")
                .poolTie("A1", "A", 1, "N", "S")
                .by(Days.referee())
                .at("17:00");
        assertThat(why(day, FORFEIT)).containsExactly("no-deadline");
        assertThat(why(Asked.opened().by(Days.referee()), new ForfeitSide(DECIDER, S, "x", "y")))
                .containsExactly("not-level");
    }

    @Test
    void no_ruling_for_a_club_that_is_in_or_ruled() {
        assertThat(why(lateS(), new ForfeitSide(SHEETS, N, "x", "y"))).containsExactly("is-in");
        assertThat(why(lateS().does(FORFEIT), SUPPLY)).containsExactly("ruled");
    }

    @Test
    void a_sheet_that_stayed_on_a_lost_phone_can_be_ruled() {
        Days day = Days.oneTie()
                .by(Days.captain("S"))
                .does(new KeepOnPhone(SHEETS, S, Receipt.of(Asked.SECRET, SHEETS.tie(), S, straight("S"))))
                .by(Days.referee())
                .at("09:51");
        assertThat(why(day, SUPPLY)).isEmpty();
    }

    @Test
    void referee_and_organiser_rule_and_nobody_else() {
        assertThat(why(lateS().by(Days.organiser()), FORFEIT)).isEmpty();
        for (Actor by :
                List.of(Days.desk(), Days.captain("S"), Days.captain("N"), Days.volunteer("c"), Days.player("S"))) {
            assertThat(why(lateS().by(by), FORFEIT)).containsExactly("rulers-only");
            assertThat(why(lateS().by(by), SUPPLY)).containsExactly("rulers-only");
        }
    }

    @Test
    void the_last_legal_sheet_is_foreseen_where_the_conditions_say_so_and_never_an_illegal_one() {
        Days day = Days.oneTie()
                .with(Setting.LATE_SHEET, "last-legal")
                .opened("A1")
                .poolTie("A2", "A", 2, "S", "N");
        var second = tiewright.event.ExchangeId.sheets(tiewright.event.TieId.of("A2"));
        assertThat(LateSheets.foreseen(new SheetOf(day.event(), second, N, day.directory())))
                .contains(straight("N"));
        assertThat(LateSheets.foreseen(new SheetOf(
                        without(day, "N1").event(),
                        second,
                        N,
                        without(day, "N1").directory())))
                .isEmpty();
        assertThat(LateSheets.foreseen(new SheetOf(
                        Days.oneTie().opened("A1").event(),
                        SHEETS,
                        N,
                        Days.oneTie().opened("A1").directory())))
                .isEmpty();
    }

    @Test
    void strict_order_of_strength_pairs_from_the_top_and_leaves_the_bottom_empty() {
        Days day = Days.oneTie().with(Setting.LATE_SHEET, "strength-order").with(Setting.ORDER_OF_STRENGTH, "rank-sum");
        assertThat(LateSheets.foreseen(new SheetOf(day.event(), SHEETS, N, day.directory())))
                .contains(straight("N"));
        assertThat(LateSheets.foreseen(new SheetOf(
                        without(day, "N2", "N5").event(),
                        SHEETS,
                        N,
                        without(day, "N2", "N5").directory())))
                .contains(sheet("N", "13 46 78 -"));
    }

    @Test
    void strict_order_doubles_up_where_the_conditions_allow_it_and_stays_legal() {
        for (int here = 2; here <= 9; here++) {
            Days day = Days.aDay()
                    .club("N", here)
                    .club("S", 8)
                    .poolTie("A1", "A", 1, "N", "S")
                    .with(Setting.RUBBERS, "5")
                    .with(Setting.LATE_SHEET, "strength-order")
                    .with(Setting.MAX_RUBBERS_PER_PLAYER, "2")
                    .with(Setting.ORDER_OF_STRENGTH, "rank-sum");
            Sheet sheet = LateSheets.foreseen(new SheetOf(day.event(), SHEETS, N, day.directory()))
                    .orElseThrow();
            assertThat(sheet.pairs().values().stream().filter(java.util.Optional::isPresent))
                    .hasSize(Math.min(5, here));
        }
    }

    @Test
    void who_has_no_rank_stands_last_in_the_order_of_strength() {
        Days day = Days.aDay()
                .club("N", 7)
                .clubs("S")
                .fact(new tiewright.event.SetUpFact.PlayerEntered(
                        tiewright.event.PlayerId.of("N0"),
                        N,
                        java.util.OptionalInt.empty(),
                        java.util.Optional.empty(),
                        java.util.Optional.empty(),
                        false))
                .poolTie("A1", "A", 1, "N", "S")
                .with(Setting.LATE_SHEET, "strength-order")
                .with(Setting.ORDER_OF_STRENGTH, "none");
        Sheet sheet = LateSheets.foreseen(new SheetOf(day.event(), SHEETS, N, day.directory()))
                .orElseThrow();
        assertThat(sheet.pairs().values())
                .contains(java.util.Optional.of(tiewright.event.Pair.of("N7", "N0")))
                .contains(java.util.Optional.of(tiewright.event.Pair.of("N1", "N2")));
    }

    /** The strongest two stood in one rubber, and the decider asks for one from each of two. */
    @Test
    void a_sheet_that_would_not_be_legal_is_not_foreseen() {
        Days day = Asked.level().with(Setting.LATE_SHEET, "strength-order");
        assertThat(LateSheets.foreseen(new SheetOf(day.event(), Asked.DECIDER, N, day.directory())))
                .isPresent();
        day.with(Setting.DECIDER, "one-from-each");
        assertThat(LateSheets.foreseen(new SheetOf(day.event(), Asked.DECIDER, N, day.directory())))
                .isEmpty();
    }

    @Test
    void the_last_sheet_is_the_newest_of_the_same_kind_on_the_clubs_own_side() {
        Days day = Days.oneTie()
                .with(Setting.LATE_SHEET, "last-legal")
                .poolTie("A2", "A", 2, "S", "N")
                .poolTie("A3", "A", 3, "N", "S")
                .at("10:00")
                .opened(SHEETS, sheet("N", "12 34 56 78"), sheet("S", "12 34 56 78"))
                .at("11:00")
                .opened(
                        tiewright.event.ExchangeId.sheets(tiewright.event.TieId.of("A2")),
                        sheet("S", "13 24 57 68"),
                        sheet("N", "14 23 58 67"))
                .at("12:00")
                .opened(
                        Asked.DECIDER,
                        Sheet.decider(tiewright.event.Pair.of("N1", "N2")),
                        Sheet.decider(tiewright.event.Pair.of("S1", "S2")));
        var third = tiewright.event.ExchangeId.sheets(tiewright.event.TieId.of("A3"));
        assertThat(LateSheets.foreseen(new SheetOf(day.event(), third, N, day.directory())))
                .contains(sheet("N", "14 23 58 67"));
        assertThat(LateSheets.foreseen(new SheetOf(day.event(), third, S, day.directory())))
                .contains(sheet("S", "13 24 57 68"));
        Days gone = without(day, "N9");
        assertThat(LateSheets.foreseen(new SheetOf(gone.event(), third, N, gone.directory())))
                .isPresent();
    }

    @Test
    void an_older_sheet_is_foreseen_where_the_newer_is_not_legal_any_more() {
        Days day = Days.oneTie()
                .with(Setting.LATE_SHEET, "last-legal")
                .club("N", 9)
                .poolTie("A2", "A", 2, "S", "N")
                .poolTie("A3", "A", 3, "N", "S")
                .at("10:00")
                .opened(SHEETS, sheet("N", "12 34 56 78"), sheet("S", "12 34 56 78"))
                .at("11:00")
                .opened(
                        tiewright.event.ExchangeId.sheets(tiewright.event.TieId.of("A2")),
                        sheet("S", "12 34 56 78"),
                        sheet("N", "12 34 56 79"));
        var third = tiewright.event.ExchangeId.sheets(tiewright.event.TieId.of("A3"));
        assertThat(LateSheets.foreseen(new SheetOf(day.event(), third, N, day.directory())))
                .contains(sheet("N", "12 34 56 79"));
        assertThat(LateSheets.foreseen(new SheetOf(
                        without(day, "N9").event(), third, N, without(day, "N9").directory())))
                .contains(sheet("N", "12 34 56 78"));
    }
}
