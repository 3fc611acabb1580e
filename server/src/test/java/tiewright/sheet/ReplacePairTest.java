package tiewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static tiewright.sheet.Asked.DECIDER;
import static tiewright.sheet.Asked.N;
import static tiewright.sheet.Asked.SHEETS;
import static tiewright.sheet.Asked.opened;
import static tiewright.sheet.Asked.why;
import static tiewright.sheet.Asked.without;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.conditions.Setting;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.How;
import tiewright.event.Pair;
import tiewright.event.PlayFact;
import tiewright.event.RubberNo;
import tiewright.event.RubberScore;
import tiewright.event.Side;
import tiewright.event.TieId;

class ReplacePairTest {
    private static final RubberNo FOUR = RubberNo.of(4);

    private static ReplacePair replace(int rubber, String pair, String door) {
        return new ReplacePair(SHEETS, N, RubberNo.of(rubber), pair(pair), door, "R. Jansen");
    }

    private static Optional<Pair> pair(String pair) {
        return pair.equals("-") ? Optional.empty() : Optional.of(Pair.of("N" + pair.charAt(0), "N" + pair.charAt(1)));
    }

    /** A day with ten in club N, so that somebody is left to come in. */
    private static Days desk() {
        return opened().player("N9", "N", 9).by(Days.desk());
    }

    private static Optional<Pair> home(Days day, int rubber) {
        return day.tie("A1").opened().get(RubberNo.of(rubber)).home();
    }

    private static Optional<How> how(Days day, int rubber) {
        return day.tie("A1")
                .card(RubberNo.of(rubber))
                .score(RubberNo.of(rubber))
                .map(RubberScore::how);
    }

    @Test
    void a_pair_changes_through_a_door_with_who_approved_it() {
        Days day = desk().does(replace(4, "79", "injury"));
        assertThat(home(day, 4)).contains(Pair.of("N7", "N9"));
        assertThat(day.event().exchange(SHEETS).replacements().get(0).fact().approvedBy())
                .isEqualTo("R. Jansen");
        assertThat(day.event().exchange(SHEETS).opened().orElseThrow().home().pair(FOUR))
                .as("what was opened stays on record")
                .contains(Pair.of("N7", "N8"));
    }

    @Test
    void nothing_is_replaced_before_the_opening_or_by_others_than_officials() {
        assertThat(why(Asked.bothSealed().by(Days.desk()), replace(4, "79", "injury")))
                .containsExactly("not-opened");
        for (Actor by : List.of(Days.captain("N"), Days.player("N"), Days.volunteer("c"))) {
            assertThat(why(desk().by(by), replace(4, "79", "injury"))).containsExactly("officials-only");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "injury-illness-no-show, no-show, ''",
        "injury-illness-no-show, substitution, door-closed",
        "free-substitution, substitution, ''",
        "none, injury, door-closed",
        "none, clerical, ''",
        "referee-and-doctor, no-show, door-closed",
        "referee-and-doctor, illness, ''",
        "none, weather, door"
    })
    void the_conditions_say_which_doors_are_open(String setting, String door, String code) {
        Days day = desk().with(Setting.CHANGES_AFTER_OPENING, setting).by(Days.referee());
        assertThat(why(day, replace(4, "79", door))).isEqualTo(code.isEmpty() ? List.of() : List.of(code));
    }

    @Test
    void referee_and_doctor_means_the_referee() {
        Days day = desk().with(Setting.CHANGES_AFTER_OPENING, "referee-and-doctor");
        assertThat(why(day, replace(4, "79", "illness"))).containsExactly("referee-only");
    }

    @Test
    void somebody_must_have_approved_it() {
        assertThat(why(desk(), new ReplacePair(SHEETS, N, FOUR, pair("79"), "injury", " ")))
                .containsExactly("name");
    }

    @Test
    void the_new_pair_is_of_the_squad_here_and_not_playing_elsewhere() {
        assertThat(why(desk(), replace(4, "67", "injury"))).containsExactly("player-twice");
        assertThat(why(desk().with(Setting.MAX_RUBBERS_PER_PLAYER, "2"), replace(4, "67", "injury")))
                .isEmpty();
        assertThat(why(without(desk(), "N9"), replace(4, "79", "injury"))).containsExactly("absent");
        assertThat(why(
                        desk(),
                        new ReplacePair(SHEETS, N, FOUR, Optional.of(Pair.of("N7", "S1")), "injury", "R. Jansen")))
                .containsExactly("other-squad");
        assertThat(why(desk(), replace(4, "78", "injury"))).containsExactly("same-pair");
        assertThat(why(desk(), replace(5, "79", "injury"))).containsExactly("no-rubber");
    }

    @Test
    void once_the_card_is_in_only_a_slip_of_the_pen_is_put_right() {
        Days day = desk().card("A1", "4", "11-5");
        assertThat(why(day, replace(4, "79", "injury"))).containsExactly("rubber-over");
        assertThat(why(day, replace(4, "-", "clerical"))).containsExactly("rubber-over");
        day.does(replace(4, "79", "clerical"));
        assertThat(how(day, 4)).as("the score stands").contains(How.PLAYED);
    }

    @Test
    void without_a_pair_the_rubber_is_a_walkover_and_with_one_again_it_is_not() {
        Days day = desk().does(replace(4, "-", "no-show"));
        assertThat(how(day, 4)).contains(How.WALKOVER_HOME);
        day.does(replace(4, "79", "clerical"));
        assertThat(how(day, 4)).isEmpty();
        assertThat(home(day, 4)).contains(Pair.of("N7", "N9"));
    }

    @Test
    void the_same_gap_on_both_sides_is_void() {
        Days day = desk().does(replace(4, "-", "no-show"))
                .does(new ReplacePair(SHEETS, Asked.S, FOUR, Optional.empty(), "illness", "R. Jansen"));
        assertThat(how(day, 4)).contains(How.VOID);
    }

    @Test
    void a_gap_stays_where_it_is_or_everybody_moves_up_as_the_conditions_say() {
        Days stays = desk().does(replace(2, "-", "no-show"));
        assertThat(home(stays, 2)).isEmpty();
        assertThat(home(stays, 4)).contains(Pair.of("N7", "N8"));
        assertThat(how(stays, 2)).contains(How.WALKOVER_HOME);
        Days moves = desk().with(Setting.SHORT_SQUAD, "move-up").does(replace(2, "-", "no-show"));
        assertThat(home(moves, 1)).contains(Pair.of("N1", "N2"));
        assertThat(home(moves, 2)).contains(Pair.of("N5", "N6"));
        assertThat(home(moves, 3)).contains(Pair.of("N7", "N8"));
        assertThat(home(moves, 4)).isEmpty();
        assertThat(how(moves, 4)).contains(How.WALKOVER_HOME);
        assertThat(how(moves, 2)).isEmpty();
    }

    @Test
    void nobody_moves_up_from_a_court_to_which_a_rubber_was_called() {
        Days day = desk().with(Setting.SHORT_SQUAD, "move-up")
                .fact(new PlayFact.CourtCalled(TieId.of("A1"), Optional.of(RubberNo.of(3)), "1"))
                .does(replace(2, "-", "no-show"));
        assertThat(home(day, 2)).isEmpty();
        assertThat(home(day, 3)).contains(Pair.of("N5", "N6"));
    }

    @Test
    void a_decider_pair_is_replaced_in_its_own_exchange() {
        Days day = Asked.level()
                .by(Days.captain("N"))
                .does(Asked.sealDecider("N", "1", "2"))
                .by(Days.captain("S"))
                .does(Asked.sealDecider("S", "1", "2"))
                .by(Days.desk())
                .at("10:35")
                .does(new OpenSheets(DECIDER));
        day.does(
                new ReplacePair(DECIDER, N, RubberNo.DECIDER, Optional.of(Pair.of("N3", "N4")), "injury", "R. Jansen"));
        assertThat(day.tie("A1").opened().get(RubberNo.DECIDER).pair(Side.HOME)).contains(Pair.of("N3", "N4"));
        assertThat(why(day, new ReplacePair(SHEETS, N, RubberNo.DECIDER, pair("56"), "injury", "R. Jansen")))
                .containsExactly("no-rubber");
    }

    /** Play stands still for somebody who is hurt: the rubber has begun, and whoever began it goes on or nobody does. */
    @Test
    void in_a_rubber_that_has_begun_nobody_is_replaced_but_by_a_slip_of_the_pen_or_where_substitution_is_free() {
        Days day = desk().fact(new PlayFact.PlayStopped(TieId.of("A1"), FOUR));
        assertThat(why(day, replace(4, "79", "injury"))).containsExactly("rubber-began");
        assertThat(why(day, replace(4, "-", "clerical"))).containsExactly("rubber-began");
        assertThat(why(day, replace(4, "79", "clerical"))).isEmpty();
        assertThat(why(day, replace(3, "59", "injury"))).isEmpty();
        assertThat(why(
                        day.with(Setting.CHANGES_AFTER_OPENING, "free-substitution")
                                .by(Days.referee()),
                        replace(4, "79", "injury")))
                .isEmpty();
    }

    @Test
    void only_a_change_of_the_same_clubs_pairs_in_the_same_exchange_makes_a_form_stale() {
        ReplacePair form = replace(4, "79", "injury");
        assertThat(form.isStaledBy(replaced(SHEETS, N))).isTrue();
        assertThat(form.isStaledBy(replaced(SHEETS, Asked.S))).isFalse();
        assertThat(form.isStaledBy(replaced(DECIDER, N))).isFalse();
        assertThat(form.isStaledBy(new PlayFact.PlayStopped(TieId.of("A1"), FOUR)))
                .isFalse();
    }

    private static ExchangeFact.PairReplaced replaced(ExchangeId exchange, ClubId club) {
        return new ExchangeFact.PairReplaced(exchange, club, RubberNo.of(1), Optional.empty(), "injury", "R. Jansen");
    }

    @Test
    void a_club_that_is_not_in_the_tie_has_no_pair_there() {
        ReplacePair stranger =
                new ReplacePair(SHEETS, ClubId.of("X"), FOUR, Optional.of(Pair.of("X1", "X2")), "injury", "R. Jansen");
        assertThat(why(desk(), stranger)).isNotEmpty();
        assertThat(why(desk(), new ReplacePair(ExchangeId.sheets(TieId.of("A9")), N, FOUR, pair("79"), "injury", "R")))
                .isNotEmpty();
    }
}
