package tiewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.How;
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
