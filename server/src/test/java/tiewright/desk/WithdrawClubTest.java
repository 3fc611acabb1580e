package tiewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.conditions.Setting;
import tiewright.conditions.Withdrawal;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.How;
import tiewright.event.PrivateNote;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.TieId;
import tiewright.standings.PoolTables;
import tiewright.standings.Standings;

/**
 * A club goes home. The three treatments are those of published conditions; which one holds an official says. What they
 * do to a table is tried in the room of the tables.
 */
class WithdrawClubTest {
    private final Days day = Days.aDay()
            .clubs("N", "S", "E")
            .poolTie("A1", "A", 1, "N", "S")
            .poolTie("A2", "A", 2, "S", "E")
            .poolTie("A3", "A", 3, "N", "E")
            .opened("A1")
            .opened("A2")
            .cards("A1", "11-0", "11-0", "11-0", "0-11")
            .cards("A2", "1-11", "0-11", "0-11", "11-0");

    private static WithdrawClub withdraw(String club, Withdrawal treatment) {
        return new WithdrawClub(ClubId.of(club), treatment, "two players hurt", "R. Official");
    }

    @ParameterizedTest
    @CsvSource({"ANNUL, 2", "KEEP, 3", "AWARD, 3"})
    void is_a_ruling_and_the_table_follows_its_treatment(Withdrawal treatment, int rows) {
        day.does(withdraw("E", treatment));
        assertThat(day.event().rulings())
                .singleElement()
                .satisfies(ruling -> assertThat(ruling.number()).isEqualTo(1));
        assertThat(day.event().withdrawals().get(ClubId.of("E")).afterTie()).contains(TieId.of("A2"));
        assertThat(Standings.of(PoolTables.input(day.event(), "A")).rows()).hasSize(rows);
        assertThat(Why.not(day, new SignTable("A", "R"))).isEmpty();
    }

    @Test
    void has_a_numbered_notice_for_the_club_that_it_would_have_met() {
        day.does(withdraw("E", Withdrawal.KEEP));
        assertThat(day.event().notices())
                .singleElement()
                .satisfies(posted -> assertThat(Days.said(posted.notice().text()))
                        .isEqualTo(
                                "Withdrawal of Club E. Its finished ties stand; the others are not played. Ruling 1."));
        assertThat(day.event().order().concerned(1)).extracting(ClubId::code).containsExactly("N");
    }

    @Test
    void its_notice_concerns_whoever_stands_elsewhere_in_the_table_too() {
        Days pool = Days.aDay()
                .clubs("N", "S", "E", "W", "X", "Y")
                .poolTie("A1", "A", 1, "N", "S")
                .poolTie("A2", "A", 2, "W", "E")
                .poolTie("B1", "B", 1, "X", "Y")
                .opened("A1")
                .cards("A1", "11-0", "11-0", "11-0", "0-11");
        pool.does(withdraw("E", Withdrawal.AWARD));
        assertThat(pool.event().order().concerned(1))
                .extracting(ClubId::code)
                .as("W wins its tie by 4-0 and passes N and S; the other pool stays as it is")
                .containsExactly("N", "S", "W");
    }

    @Test
    void its_notice_concerns_those_who_read_now_whom_they_may_meet_later() {
        Days cup = Days.aDay()
                .clubs("N", "S", "E", "W")
                .with(Setting.RUBBERS, "1")
                .knockoutTie("SF1", 1, "N", "S")
                .knockoutTie("SF2", 1, "E", "W")
                .knockoutTie("F", 2, "winner-SF1", "winner-SF2")
                .does(withdraw("E", Withdrawal.KEEP));
        assertThat(cup.tie("F").away().club()).contains(ClubId.of("W"));
        assertThat(cup.event().order().concerned(1)).extracting(ClubId::code).containsExactly("N", "S", "W");
    }

    @Test
    void an_awarded_tie_counts_for_the_other_club() {
        day.does(withdraw("E", Withdrawal.AWARD));
        assertThat(Standings.of(PoolTables.input(day.event(), "A")).row(ClubId.of("N")))
                .hasValueSatisfying(row -> assertThat(row.tiesWon()).isEqualTo(2));
    }

    @Test
    void sheets_sealed_for_ties_that_will_not_be_played_go_back_unseen() {
        ExchangeId exchange = ExchangeId.sheets(TieId.of("A3"));
        day.fact(new ExchangeFact.SheetSealed(exchange, ClubId.of("N"), "0".repeat(64), false));
        day.does(withdraw("E", Withdrawal.KEEP));
        assertThat(day.event().exchange(exchange).home().isIn()).isFalse();
        assertThat(day.notes()).containsExactly(new PrivateNote.SheetDropped(exchange, ClubId.of("N")));
    }

    /** A pair can be sealed for a decider before the tie is level, also while its sheets are open. */
    @Test
    void pairs_sealed_for_a_decider_that_will_not_be_played_go_back_unseen() {
        ExchangeId exchange = ExchangeId.decider(TieId.of("A3"));
        day.opened("A3").fact(new ExchangeFact.SheetSealed(exchange, ClubId.of("N"), "0".repeat(64), false));
        day.does(withdraw("E", Withdrawal.KEEP));
        assertThat(day.event().exchange(exchange).home().isIn()).isFalse();
        assertThat(day.notes()).containsExactly(new PrivateNote.SheetDropped(exchange, ClubId.of("N")));
    }

    @Test
    void in_the_knockout_the_other_club_goes_on_now_and_in_later_rounds() {
        Days cup = Days.aDay()
                .clubs("N", "S", "E", "W")
                .with(Setting.RUBBERS, "1")
                .knockoutTie("SF1", 1, "N", "S")
                .knockoutTie("SF2", 1, "E", "W")
                .knockoutTie("F", 2, "winner-SF1", "winner-SF2")
                .opened("SF2");
        cup.does(new RecordCard(TieId.of("SF2"), RubberNo.of(1), Days.games("11-0"), How.PLAYED));
        cup.does(withdraw("E", Withdrawal.KEEP));
        assertThat(cup.tie("F").away().club()).contains(ClubId.of("E"));
        cup.opened("SF1").does(new RecordCard(TieId.of("SF1"), RubberNo.of(1), Days.games("11-9"), How.PLAYED));
        assertThat(cup.event().progress(cup.tie("F")).winner()).contains(Side.HOME);
        assertThat(cup.tie("F").card(RubberNo.of(1)).score(RubberNo.of(1)))
                .hasValueSatisfying(score -> assertThat(score.how()).isEqualTo(How.WALKOVER_AWAY));
        assertThat(FinalPlacing.champion(cup.event())).contains(ClubId.of("N"));
        assertThat(Why.not(cup, withdraw("N", Withdrawal.KEEP))).containsExactly("desk.club-has-won");
    }

    @Test
    void a_knockout_tie_begun_is_lost_with_every_rubber_left_the_decider_too() {
        Days cup = Days.aDay()
                .clubs("N", "S")
                .knockoutTie("F", 1, "N", "S")
                .opened("F")
                .cards("F", "11-0", "11-0");
        cup.does(withdraw("N", Withdrawal.KEEP));
        assertThat(cup.event().progress(cup.tie("F")).winner()).contains(Side.AWAY);
        assertThat(cup.event().progress(cup.tie("F")).won(Side.HOME)).isEqualTo(2);
    }

    @Test
    void a_volunteers_card_brings_no_walkover_that_nobody_ordered() {
        Days cup = Days.aDay()
                .clubs("N", "S", "E")
                .with(Setting.RUBBERS, "1")
                .knockoutTie("SF1", 1, "N", "S")
                .knockoutTie("F", 2, "winner-SF1", "E")
                .does(withdraw("E", Withdrawal.KEEP))
                .opened("SF1")
                .by(Days.volunteer("V"));
        cup.does(new RecordCard(TieId.of("SF1"), RubberNo.of(1), Days.games("11-9"), How.PLAYED));
        assertThat(cup.tie("F").cards()).isEmpty();
        assertThat(DoNext.of(cup.event(), cup.now()))
                .extracting(DoNext.Item::kind)
                .contains(DoNext.Kind.WALKOVER_TO_ENTER);
    }

    @Test
    void refuses_a_club_that_is_not_there_or_gone_and_a_ruling_without_reason_or_name() {
        assertThat(Why.not(day, withdraw("X", Withdrawal.KEEP))).containsExactly("desk.no-such-club");
        assertThat(Why.not(day, new WithdrawClub(ClubId.of("E"), Withdrawal.KEEP, "", "")))
                .containsExactly("desk.text-missing.reason", "desk.text-missing.by");
        assertThat(Why.not(day.by(Days.captain("E")), withdraw("E", Withdrawal.KEEP)))
                .containsExactly("desk.officials-only");
        day.by(Days.desk()).does(withdraw("E", Withdrawal.KEEP));
        assertThat(Why.not(day, withdraw("E", Withdrawal.AWARD))).containsExactly("desk.withdrawn-already");
    }

    @Test
    void a_signed_table_keeps_the_results_of_a_club_that_leaves_later() {
        day.opened("A3").cards("A3", "11-0", "11-0", "11-0", "11-0").does(new SignTable("A", "R"));
        assertThat(Why.not(day, withdraw("E", Withdrawal.ANNUL))).containsExactly("desk.annul-after-signing");
        assertThat(Why.not(day, withdraw("E", Withdrawal.KEEP))).isEmpty();
        day.does(new SignEvent("R"));
        assertThat(Why.not(day, withdraw("E", Withdrawal.KEEP))).contains("desk.withdrawal-after-the-end");
    }
}
