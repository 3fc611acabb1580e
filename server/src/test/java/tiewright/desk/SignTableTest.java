package tiewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.conditions.Withdrawal;
import tiewright.event.Because;
import tiewright.event.Card;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.How;
import tiewright.event.OfficialFact;
import tiewright.event.RubberNo;
import tiewright.event.TieId;

/** When a table can be made final, and what then holds: common practice, no source. */
class SignTableTest {
    private final Days day = Days.aDay()
            .clubs("N", "S", "E")
            .poolTie("A1", "A", 1, "N", "S")
            .poolTie("A2", "A", 2, "S", "E")
            .poolTie("A3", "A", 3, "N", "E")
            .knockoutTie("F", 1, "A-1", "A-2")
            .opened("A1")
            .opened("A2")
            .opened("A3")
            .cards("A1", "11-0", "11-0", "11-0", "0-11")
            .cards("A2", "11-0", "11-0", "11-0", "0-11");

    private static final SignTable SIGN = new SignTable("A", "R. Official");

    private Days finished() {
        return day.cards("A3", "11-0", "11-0", "11-0", "0-11");
    }

    private static CorrectCard correct(String tie, int rubber, String games, String reason) {
        return new CorrectCard(TieId.of(tie), RubberNo.of(rubber), Days.games(games), How.PLAYED, reason);
    }

    private static CorrectCard byRuling(int ruling, String tie, int rubber, String games) {
        return new CorrectCard(
                TieId.of(tie), RubberNo.of(rubber), Days.games(games), How.PLAYED, "swapped", OptionalInt.of(ruling));
    }

    @Test
    void the_signed_order_fills_the_knockout() {
        finished().does(SIGN);
        assertThat(day.event().signedTables().get("A").order())
                .containsExactly(ClubId.of("N"), ClubId.of("S"), ClubId.of("E"));
        assertThat(day.tie("F").home().club()).contains(ClubId.of("N"));
        assertThat(day.tie("F").away().club()).contains(ClubId.of("S"));
    }

    @Test
    void every_tie_is_finished_and_nothing_held() {
        day.cards("A3", "11-0", "11-0", "11-0");
        assertThat(Why.not(day, SIGN)).containsExactly("desk.pool-not-finished");
        day.card("A3", "4", "11-0")
                .by(Days.volunteer("V"))
                .card("A3", "4", "0-11")
                .by(Days.desk());
        assertThat(Why.not(day, SIGN)).containsExactly("desk.pool-has-held");
        day.by(Days.referee()).does(correct("A3", 4, "11-0", "card"));
        assertThat(Why.not(day, SIGN)).isEmpty();
    }

    @Test
    void a_lot_is_drawn_first_where_only_a_lot_parts() {
        Days level = Days.aDay()
                .clubs("N", "S")
                .with(Setting.DECIDER, "none")
                .with(Setting.TIE_POINTS, "2/1/0")
                .poolTie("A1", "A", 1, "N", "S")
                .opened("A1")
                .cards("A1", "11-0", "11-0", "0-11", "0-11");
        assertThat(Why.not(level, SIGN)).containsExactly("desk.lot-needed");
        level.fact(new OfficialFact.LotDrawn("A", List.of(ClubId.of("S"), ClubId.of("N")), "W. Witness"))
                .does(SIGN);
        assertThat(level.event().signedTables().get("A").order()).containsExactly(ClubId.of("S"), ClubId.of("N"));
    }

    @Test
    void ties_of_a_club_that_withdrew_are_not_waited_for() {
        day.fact(new OfficialFact.ClubWithdrawn(ClubId.of("E"), Optional.of(TieId.of("A2")), Withdrawal.AWARD, 1));
        assertThat(Why.not(day, SIGN)).isEmpty();
    }

    @Test
    void an_official_signs_by_name() {
        finished();
        assertThat(Why.not(day, new SignTable("A", " "))).containsExactly("desk.text-missing.by");
        assertThat(Why.not(day, new SignTable("B", "R"))).containsExactly("desk.no-such-pool");
        assertThat(Why.not(day.by(Days.captain("N")), SIGN)).containsExactly("desk.officials-only");
    }

    @Test
    void a_signed_table_is_changed_only_by_a_ruling_and_may_then_be_signed_again() {
        finished().does(SIGN);
        assertThat(Why.not(day, SIGN)).containsExactly("desk.signed-already");
        assertThat(Why.not(day, correct("A1", 1, "0-11", "swapped"))).containsExactly("desk.table-is-signed");
        assertThat(Why.not(day, byRuling(1, "A1", 1, "0-11"))).containsExactly("desk.no-such-ruling");
        day.fact(new OfficialFact.RulingGiven(1, "A1", "correct the record", "swapped", "R"));
        assertThat(Why.not(day, correct("A1", 1, "0-11", "by ruling 1")))
                .as("a ruling is chosen, not typed")
                .containsExactly("desk.table-is-signed");
        assertThat(Why.not(day, byRuling(2, "A1", 1, "0-11"))).containsExactly("desk.no-such-ruling");
        assertThat(Why.not(day, new TakeBackCard(TieId.of("A1"), RubberNo.of(1), "never played")))
                .containsExactly("desk.table-is-signed");
        assertThat(Why.not(day, new TakeBackCard(TieId.of("A1"), RubberNo.of(1), "never played", OptionalInt.of(1))))
                .isEmpty();
        day.does(byRuling(1, "A1", 1, "0-11"))
                .does(byRuling(1, "A1", 2, "0-11"))
                .does(byRuling(1, "A1", 3, "0-11"));
        assertThat(day.tie("A1").card(RubberNo.of(1)).entries())
                .last()
                .extracting(Card.Entry::because)
                .isEqualTo(new Because("swapped", OptionalInt.of(1)));
        assertThat(day.tie("F").home().club()).as("the signed order stays").contains(ClubId.of("N"));
        day.does(SIGN);
        assertThat(day.tie("F").home().club()).contains(ClubId.of("S"));
    }

    @Test
    void a_signed_tie_takes_an_equal_entry_and_no_other() {
        finished().does(SIGN).by(Days.volunteer("V"));
        RecordCard equal = new RecordCard(TieId.of("A1"), RubberNo.of(1), Days.games("11-0"), How.PLAYED);
        RecordCard other = new RecordCard(TieId.of("A1"), RubberNo.of(1), Days.games("11-1"), How.PLAYED);
        assertThat(Why.not(day, equal)).isEmpty();
        assertThat(Why.not(day, other)).containsExactly("desk.table-is-signed");
    }

    @Test
    void the_winner_of_a_knockout_tie_goes_on_and_a_correction_moves_nobody_in_silence() {
        Days cup = Days.aDay()
                .clubs("N", "S", "E", "W")
                .knockoutTie("SF1", 1, "N", "S")
                .knockoutTie("SF2", 1, "E", "W")
                .knockoutTie("F", 2, "winner-SF1", "winner-SF2")
                .opened("SF1")
                .opened("SF2")
                .cards("SF1", "11-0", "11-0")
                .does(new RecordCard(TieId.of("SF1"), RubberNo.of(3), Days.games("11-9"), How.PLAYED));
        assertThat(cup.tie("F").home().club()).contains(ClubId.of("N"));
        cup.card("SF1", "4", "0-11").does(correct("SF1", 1, "0-11", "swapped"));
        assertThat(Why.not(cup, correct("SF1", 2, "0-11", "swapped"))).containsExactly("desk.clubs-would-move");
        cup.fact(new OfficialFact.RulingGiven(1, "SF1", "correct the record", "swapped", "R"))
                .does(byRuling(1, "SF1", 2, "0-11"));
        assertThat(cup.tie("F").home().club()).contains(ClubId.of("S"));
        cup.cards("SF2", "11-0", "11-0")
                .does(new RecordCard(TieId.of("SF2"), RubberNo.of(3), Days.games("11-9"), How.PLAYED))
                .opened("F");
        assertThat(Why.not(cup, correct("SF2", 1, "11-1", "misread"))).isEmpty();
        cup.does(correct("SF2", 1, "0-11", "swapped"));
        cup.card("SF2", "4", "0-11").does(new TakeBackCard(TieId.of("SF2"), RubberNo.of(4), "not played"));
    }

    @Test
    void another_club_does_not_take_over_a_tie_that_has_begun_without_a_ruling() {
        Days cup = Days.aDay()
                .clubs("N", "S", "E")
                .knockoutTie("SF", 1, "N", "S")
                .knockoutTie("F", 2, "winner-SF", "E")
                .with(Setting.RUBBERS, "1")
                .opened("SF")
                .does(new RecordCard(TieId.of("SF"), RubberNo.of(1), Days.games("11-9"), How.PLAYED))
                .opened("F");
        assertThat(Why.not(cup, correct("SF", 1, "9-11", "swapped"))).containsExactly("desk.next-tie-has-begun");
        assertThat(Why.not(cup, correct("SF", 1, "11-8", "misread"))).isEmpty();
        cup.fact(new OfficialFact.RulingGiven(1, "SF", "let it stand", "found late", "R"))
                .does(byRuling(1, "SF", 1, "9-11"));
        assertThat(cup.tie("F").home().club()).contains(ClubId.of("N"));
    }
}
