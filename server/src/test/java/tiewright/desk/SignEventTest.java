package tiewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.How;
import tiewright.event.OfficialFact;
import tiewright.event.RubberNo;
import tiewright.event.TieId;

/** The end of the day: two pools of three, semi-finals, third place, final. One rubber a tie keeps it short. */
class SignEventTest {
    private final Days day = Days.aDay().with(Setting.RUBBERS, "1").clubs("A", "B", "C", "D", "E", "F");

    private void pool(String pool, String first, String second, String third) {
        play(pool + ".1", pool, first, second, "11-5");
        play(pool + ".2", pool, second, third, "11-6");
        play(pool + ".3", pool, first, third, "11-7");
    }

    private void play(String tie, String pool, String home, String away, String score) {
        day.poolTie(tie, pool, 1, home, away).opened(tie).cards(tie, score);
    }

    private void knockout(String tie, String score) {
        day.opened(tie).does(new RecordCard(TieId.of(tie), RubberNo.of(1), Days.games(score), How.PLAYED));
    }

    private void bracket(boolean thirdPlace) {
        day.knockoutTie("SF1", 1, "P-1", "Q-2").knockoutTie("SF2", 1, "Q-1", "P-2");
        if (thirdPlace) {
            day.knockoutTie("P3", 2, "loser-SF1", "loser-SF2");
        }
        day.knockoutTie("F", 2, "winner-SF1", "winner-SF2");
    }

    private void signPools() {
        day.does(new SignTable("P", "R")).does(new SignTable("Q", "R"));
    }

    private List<String> placing() {
        return FinalPlacing.of(day.event()).stream().map(ClubId::code).toList();
    }

    private void poolsPlayed() {
        pool("P", "A", "B", "C");
        pool("Q", "D", "E", "F");
    }

    /** By hand: quarters to A, B, C, D over E, F, G, H; semis to A and C; A wins, D is third; E and G win the placing semis, G fifth, F seventh. */
    @Test
    void every_club_plays_until_the_end_and_its_last_tie_says_its_place() {
        Days eight = Days.aDay().with(Setting.RUBBERS, "1").clubs("A", "B", "C", "D", "E", "F", "G", "H");
        eight.knockoutTie("QF1", 1, "A", "E")
                .knockoutTie("QF2", 1, "B", "F")
                .knockoutTie("QF3", 1, "C", "G")
                .knockoutTie("QF4", 1, "D", "H")
                .knockoutTie("SF1", 2, "winner-QF1", "winner-QF2")
                .knockoutTie("SF2", 2, "winner-QF3", "winner-QF4")
                .placingTie("PS1", 2, "loser-QF1", "loser-QF2")
                .placingTie("PS2", 2, "loser-QF3", "loser-QF4")
                .knockoutTie("P3", 3, "loser-SF1", "loser-SF2")
                .placingTie("P5", 3, "winner-PS1", "winner-PS2")
                .placingTie("P7", 3, "loser-PS1", "loser-PS2")
                .knockoutTie("F", 3, "winner-SF1", "winner-SF2");
        List<String> ties = List.of("QF1", "QF2", "QF3", "QF4", "SF1", "SF2", "PS1", "PS2", "P3", "P5", "P7", "F");
        List<String> scores =
                List.of("11-5", "11-5", "11-5", "11-5", "11-5", "11-5", "11-5", "11-5", "5-11", "5-11", "11-9", "11-9");
        for (int i = 0; i < ties.size(); i++) {
            assertThat(FinalPlacing.of(eight.event())).isEmpty();
            eight.opened(ties.get(i))
                    .does(new RecordCard(TieId.of(ties.get(i)), RubberNo.of(1), Days.games(scores.get(i)), How.PLAYED));
        }
        assertThat(FinalPlacing.of(eight.event()).stream().map(ClubId::code))
                .containsExactly("A", "C", "D", "B", "G", "E", "F", "H");
    }

    @Test
    void champion_runner_up_third_fourth_then_the_pools() {
        poolsPlayed();
        bracket(true);
        assertThat(Why.not(day, new SignEvent("R")))
                .containsExactly("desk.table-not-signed", "desk.table-not-signed", "desk.knockout-not-finished");
        signPools();
        knockout("SF1", "5-11");
        knockout("SF2", "11-5");
        knockout("F", "11-9");
        assertThat(Why.not(day, new SignEvent("R"))).containsExactly("desk.knockout-not-finished");
        assertThat(placing()).isEmpty();
        knockout("P3", "9-11");
        day.does(new SignEvent("R. Official"));
        assertThat(day.event().signed().orElseThrow().order().stream().map(ClubId::code))
                .containsExactly("E", "D", "B", "A", "C", "F");
        assertThat(Why.not(day, new SignEvent("R"))).containsExactly("desk.event-signed-already");
        assertThat(Why.not(day, new SignTable("P", "R"))).contains("desk.signed-already");
        assertThat(DoNext.of(day.event(), day.now())).isEmpty();
    }

    private List<String> said() {
        return FinalPlacing.said(day.event()).stream().map(Days::said).toList();
    }

    @Test
    void third_and_fourth_have_a_reason_with_and_without_a_tie_for_third() {
        poolsPlayed();
        bracket(false);
        signPools();
        knockout("SF1", "5-11");
        knockout("SF2", "11-5");
        knockout("F", "11-9");
        assertThat(said())
                .startsWith(
                        "1. Club E: beat Club D 1-0 in tie F.",
                        "2. Club D: lost to Club E 0-1 in tie F.",
                        "3. Club A: lost to Club E 0-1 in tie SF1; ahead of Club B by the place in the pool, 1 against 2.",
                        "4. Club B: lost to Club D 0-1 in tie SF2; behind Club A by the place in the pool, 2 against 1.");
        assertThat(said()).hasSize(6).last().asString().startsWith("6. Club F: 3rd of pool Q; ");
    }

    @Test
    void a_tie_for_third_is_the_reason_for_third_and_fourth() {
        poolsPlayed();
        bracket(true);
        signPools();
        knockout("SF1", "5-11");
        knockout("SF2", "11-5");
        knockout("F", "11-9");
        knockout("P3", "9-11");
        assertThat(said())
                .contains("3. Club B: beat Club A 1-0 in tie P3.", "4. Club A: lost to Club B 0-1 in tie P3.");
        day.does(new SignEvent("R. Official"));
        OfficialFact.NoticeStated notice = day.event().notices().get(0).notice();
        assertThat(Days.said(notice.after().orElseThrow())).isEqualTo(String.join(" ", said()));
        assertThat(Days.said(notice.reason())).isEqualTo("Signed by R. Official.");
    }

    /** By hand: A has 11-5 and 11-7, ten points in two ties; D 11-5 and 11-9, eight; C has 13-22, F 18-22. */
    @Test
    void clubs_of_one_place_in_two_pools_are_parted_by_a_figure_that_a_pencil_gives() {
        pool("P", "A", "B", "C");
        play("Q.1", "Q", "D", "E", "11-5");
        play("Q.2", "Q", "E", "F", "11-9");
        play("Q.3", "Q", "D", "F", "11-9");
        signPools();
        String points = " by points difference per tie in the pool, ";
        assertThat(said())
                .startsWith("1. Club A: 1st of pool P; ahead of Club D" + points + "+5.00 against +4.00.")
                .endsWith("6. Club C: 3rd of pool P; behind Club F" + points + "-4.50 against -2.00.");
    }

    @Test
    void losers_of_one_round_are_ordered_by_their_place_in_the_pool() {
        poolsPlayed();
        bracket(false);
        signPools();
        knockout("SF1", "5-11");
        knockout("SF2", "11-5");
        knockout("F", "11-9");
        assertThat(placing()).as("A was first of its pool, B second").containsExactly("E", "D", "A", "B", "C", "F");
    }

    @Test
    void clubs_of_different_pools_with_the_same_place_are_ordered_by_what_they_won_and_lost_there() {
        pool("P", "A", "B", "C");
        play("Q.1", "Q", "D", "E", "11-5");
        play("Q.2", "Q", "E", "F", "11-9");
        play("Q.3", "Q", "D", "F", "11-9");
        signPools();
        assertThat(placing())
                .as("B is a point down for its two ties, E four; F four, C nine")
                .containsExactly("A", "D", "B", "E", "F", "C");
    }

    @Test
    void a_held_card_in_the_final_keeps_the_event_open() {
        poolsPlayed();
        bracket(false);
        signPools();
        knockout("SF1", "11-5");
        knockout("SF2", "11-5");
        knockout("F", "11-9");
        day.by(Days.volunteer("V")).does(new RecordCard(TieId.of("F"), RubberNo.of(1), Days.games("9-11"), How.PLAYED));
        assertThat(Why.not(day.by(Days.organiser()), new SignEvent("R"))).containsExactly("desk.knockout-not-finished");
    }

    @Test
    void after_the_signature_only_a_ruling_changes_a_card() {
        poolsPlayed();
        signPools();
        day.does(new SignEvent("R"));
        assertThat(Why.not(
                        day,
                        new CorrectCard(TieId.of("P.1"), RubberNo.of(1), Days.games("11-4"), How.PLAYED, "misread")))
                .containsExactly("desk.event-is-signed");
        assertThat(Why.not(day, new SignTable("P", "R"))).contains("desk.event-is-signed");
    }

    @Test
    void a_level_final_without_a_decider_is_said_so() {
        Days cup = Days.aDay()
                .clubs("N", "S")
                .with(Setting.DECIDER, "none")
                .knockoutTie("F", 1, "N", "S")
                .opened("F")
                .cards("F", "11-0", "11-0", "0-11", "0-11");
        assertThat(Why.not(cup, new SignEvent("R"))).containsExactly("desk.knockout-level");
        assertThat(DoNext.of(cup.event(), cup.now()))
                .extracting(DoNext.Item::kind)
                .contains(DoNext.Kind.KNOCKOUT_LEVEL);
        assertThat(Why.not(Days.aDay(), new SignEvent("")))
                .containsExactly("desk.text-missing.by", "desk.nothing-played");
        assertThat(Why.not(cup.by(Days.captain("N")), new SignEvent("R"))).contains("desk.officials-only");
    }
}
