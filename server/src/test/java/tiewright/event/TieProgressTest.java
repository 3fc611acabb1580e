package tiewright.event;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.conditions.Setting;

/** How far a tie has come: four rubbers and a decider as on a club day, unless a test says otherwise. */
class TieProgressTest {
    private static TieProgress of(Days day) {
        return day.event().progress(day.tie("A1"));
    }

    private static Days won(String... rubbers) {
        Days day = Days.oneTie();
        for (int i = 0; i < rubbers.length; i++) {
            card(day, i + 1, rubbers[i]);
        }
        return day;
    }

    /** {@code h}, {@code a}: home or away wins; {@code v}: void; {@code -}: nothing yet. */
    private static void card(Days day, int number, String who) {
        String no = Integer.toString(number);
        switch (who) {
            case "h" -> day.card("A1", no, "15-3");
            case "a" -> day.card("A1", no, "3-15");
            case "v" -> day.card("A1", no, "", How.VOID);
            default -> {}
        }
    }

    private static Days rubbers(int count, String letters) {
        Days day = Days.oneTie().with(Setting.RUBBERS, Integer.toString(count));
        for (int i = 0; i < letters.length(); i++) {
            card(day, i + 1, letters.substring(i, i + 1));
        }
        return day;
    }

    @Test
    void a_tie_of_which_nothing_is_known_has_all_its_rubbers_left() {
        TieProgress none = of(Days.oneTie());
        assertThat(none.left()).isEqualTo(RubberNo.upTo(4));
        assertThat(none.finished()).isFalse();
        assertThat(none.winner()).isEmpty();
        assertThat(none.toWin()).isEqualTo(3);
        assertThat(none.rubbers()).isEmpty();
        assertThat(none.awaitsDecider()).isFalse();
    }

    @Test
    void one_rubber_short_of_the_last_is_not_finished() {
        TieProgress three = of(won("h", "h", "a"));
        assertThat(three.finished()).isFalse();
        assertThat(three.left()).containsExactly(RubberNo.of(4));
        assertThat(three.winner()).isEmpty();
        assertThat(three.won(Side.HOME)).isEqualTo(2);
        assertThat(three.won(Side.AWAY)).isEqualTo(1);
        TieProgress four = of(won("h", "h", "a", "h"));
        assertThat(four.finished()).isTrue();
        assertThat(four.winner()).contains(Side.HOME);
        assertThat(of(won("a", "h", "a", "a")).winner()).contains(Side.AWAY);
    }

    /** By hand: 6 of 13 are not more than half, 4 + 3 are. */
    @Test
    void a_tie_of_weighed_rubbers_is_won_by_more_than_half_of_the_weight() {
        Days day = Days.oneTie().with(Setting.RUBBERS, "3").with(Setting.RUBBER_WEIGHTS, "6/4/3");
        assertThat(of(day).toWin()).isEqualTo(7);
        card(day, 1, "h");
        card(day, 2, "a");
        assertThat(of(day).weightWon(Side.HOME)).isEqualTo(6);
        assertThat(of(day).weightOpen()).isEqualTo(3);
        card(day, 3, "a");
        assertThat(of(day).finished()).isTrue();
        assertThat(of(day).deciderNeeded()).isFalse();
        assertThat(of(day).winner()).contains(Side.AWAY);
        assertThat(of(day).won(Side.HOME)).isEqualTo(1);
    }

    @Test
    void one_heavy_rubber_against_all_others_asks_for_the_decider_which_weighs_one() {
        Days day = Days.oneTie().with(Setting.RUBBER_WEIGHTS, "3/1/1/1");
        card(day, 1, "h");
        card(day, 2, "a");
        card(day, 3, "a");
        card(day, 4, "a");
        assertThat(of(day).awaitsDecider()).isTrue();
        day.card("A1", "D", "15-3");
        assertThat(of(day).winner()).contains(Side.HOME);
        assertThat(of(day).weightWon(Side.HOME)).isEqualTo(4);
    }

    /** A void rubber weighs nothing: 3 + 1 + 1 are played for, and 3 are more than half of it. */
    @Test
    void a_void_rubber_weighs_nothing() {
        Days day = Days.oneTie().with(Setting.RUBBER_WEIGHTS, "3/1/1/1");
        card(day, 1, "h");
        card(day, 2, "a");
        card(day, 3, "a");
        card(day, 4, "v");
        assertThat(of(day).toWin()).isEqualTo(3);
        assertThat(of(day).deciderNeeded()).isFalse();
        assertThat(of(day).winner()).contains(Side.HOME);
    }

    @Test
    void where_play_stops_it_stops_by_weight() {
        Days day = Days.oneTie().with(Setting.RUBBER_WEIGHTS, "5/1/1/1").with(Setting.STOP_WHEN_DECIDED, "all");
        card(day, 2, "a");
        assertThat(of(day).finished()).isFalse();
        card(day, 1, "h");
        assertThat(of(day).finished()).isTrue();
        assertThat(of(day).left()).isEmpty();
        assertThat(of(day).winner()).contains(Side.HOME);
    }

    @Test
    void a_level_tie_waits_for_its_decider_and_is_won_with_it() {
        Days level = won("h", "a", "a", "h");
        assertThat(of(level).deciderNeeded()).isTrue();
        assertThat(of(level).awaitsDecider()).isTrue();
        assertThat(of(level).left()).containsExactly(RubberNo.DECIDER);
        level.card("A1", "D", "3-15");
        assertThat(of(level).deciderNeeded()).isTrue();
        assertThat(of(level).awaitsDecider()).isFalse();
        assertThat(of(level).finished()).isTrue();
        assertThat(of(level).winner()).contains(Side.AWAY);
        assertThat(of(level).rubbers()).last().matches(score -> score.rubber().isDecider());
    }

    @Test
    void a_decider_whose_cards_differ_is_held_and_awaited() {
        Days level = won("h", "a", "a", "h").card("A1", "D", "3-15").card("A1", "D", "4-15");
        assertThat(of(level).held()).containsExactly(RubberNo.DECIDER);
        assertThat(of(level).finished()).isFalse();
        assertThat(of(level).awaitsDecider()).isTrue();
    }

    @Test
    void without_a_decider_in_the_conditions_a_level_tie_is_drawn() {
        Days level = won("h", "a", "a", "h").with(Setting.DECIDER, "none");
        assertThat(of(level).canComeToDecider()).isFalse();
        assertThat(of(level).deciderNeeded()).isFalse();
        assertThat(of(level).finished()).isTrue();
        assertThat(of(level).winner()).isEmpty();
    }

    /** A card of a decider that was entered before the tie stopped being level counts for nothing. */
    @Test
    void a_decider_that_is_not_needed_does_not_count() {
        Days day = won("h", "a", "a", "a").card("A1", "D", "15-3");
        assertThat(of(day).rubbers()).hasSize(4);
        assertThat(of(day).won(Side.HOME)).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({
        "4, '',    true,  false",
        "4, hhaa,  true,  true",
        "4, hhav,  true,  false",
        "4, havv,  true,  true",
        "3, '',    false, false",
        "3, hah,   false, false",
        "3, hav,   true,  true",
        "3, hhv,   true,  false",
        "3, v,     true,  false",
        "3, vvv,   true,  true",
        "1, v,     true,  true",
        "1, h,     false, false"
    })
    void a_void_rubber_of_an_odd_number_makes_a_decider_possible(
            int rubbers, String letters, boolean possible, boolean needed) {
        TieProgress progress = of(rubbers(rubbers, letters));
        assertThat(progress.canComeToDecider()).isEqualTo(possible);
        assertThat(progress.deciderNeeded()).isEqualTo(needed);
        assertThat(of(rubbers(rubbers, letters).with(Setting.DECIDER, "none")).canComeToDecider())
                .isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "4, '', 3",
        "4, v, 2",
        "4, vv, 2",
        "4, vvv, 1",
        "4, vvvv, 1",
        "5, '', 3",
        "5, v, 3",
        "5, vv, 2",
        "1, '', 1"
    })
    void a_void_rubber_makes_fewer_enough(int rubbers, String letters, int toWin) {
        assertThat(of(rubbers(rubbers, letters)).toWin()).isEqualTo(toWin);
    }

    @Test
    void a_void_rubber_is_known_and_won_by_nobody() {
        TieProgress progress = of(won("v", "h"));
        assertThat(progress.left()).containsExactly(RubberNo.of(3), RubberNo.of(4));
        assertThat(progress.won(Side.HOME)).isEqualTo(1);
        assertThat(progress.won(Side.AWAY)).isZero();
    }

    @Test
    void a_tie_stops_when_decided_only_where_the_conditions_say_so() {
        Days two = won("h", "h", "-", "-").with(Setting.STOP_WHEN_DECIDED, "all");
        assertThat(of(two).finished()).isFalse();
        card(two, 3, "h");
        assertThat(of(two).finished()).isTrue();
        assertThat(of(two).left()).isEmpty();
        assertThat(of(two).winner()).contains(Side.HOME);
        assertThat(of(two.with(Setting.STOP_WHEN_DECIDED, "none")).finished()).isFalse();
        assertThat(of(two.with(Setting.STOP_WHEN_DECIDED, "knockout")).finished())
                .isFalse();
    }

    @Test
    void with_a_void_rubber_it_stops_one_win_earlier() {
        Days day = won("v", "a", "-", "-").with(Setting.STOP_WHEN_DECIDED, "all");
        assertThat(of(day).finished()).isFalse();
        card(day, 3, "a");
        assertThat(of(day).finished()).isTrue();
        assertThat(of(day).winner()).contains(Side.AWAY);
    }

    @Test
    void a_knockout_tie_stops_where_only_the_knockout_does() {
        Days day = Days.aDay()
                .with(Setting.STOP_WHEN_DECIDED, "knockout")
                .clubs("N", "S")
                .knockoutTie("F", 1, "N", "S")
                .cards("F", "3-15", "3-15", "3-15");
        assertThat(day.event().progress(day.tie("F")).finished()).isTrue();
        assertThat(day.event().progress(day.tie("F")).winner()).contains(Side.AWAY);
    }

    @Test
    void a_held_rubber_keeps_a_decided_tie_open() {
        Days day = won("h", "h", "h").with(Setting.STOP_WHEN_DECIDED, "all").card("A1", "4", "3-15");
        assertThat(of(day).finished()).isTrue();
        day.card("A1", "3", "3-15");
        assertThat(of(day).held()).containsExactly(RubberNo.of(3));
        assertThat(of(day).finished()).isFalse();
        assertThat(of(day).winner()).isEmpty();
    }

    @Test
    void a_held_rubber_of_a_level_tie_is_waited_for_before_any_decider() {
        Days day = won("h", "a", "a", "h").card("A1", "4", "3-15");
        assertThat(of(day).held()).containsExactly(RubberNo.of(4));
        assertThat(of(day).deciderNeeded()).isFalse();
    }

    @Test
    void the_tables_get_it_once_both_clubs_are_known() {
        Days day = won("h", "a", "h", "h");
        assertThat(of(day).score(day.tie("A1")))
                .contains(new TieScore(TieId.of("A1"), ClubId.of("N"), ClubId.of("S"), of(day).rubbers(), true));
        Days cup = Days.aDay().clubs("N").knockoutTie("F", 1, "N", "A-2");
        assertThat(cup.event().progress(cup.tie("F")).score(cup.tie("F"))).isEmpty();
    }

    @Test
    void a_walkover_and_a_retirement_are_won_by_the_side_that_goes_on() {
        Days day = Days.oneTie().card("A1", "1", "0-15", How.WALKOVER_HOME).card("A1", "2", "15-9", How.RETIRED_HOME);
        assertThat(of(day).won(Side.AWAY)).isEqualTo(2);
        assertThat(of(day).rubbers())
                .extracting(RubberScore::how)
                .isEqualTo(List.of(How.WALKOVER_HOME, How.RETIRED_HOME));
    }

    @Test
    void a_tie_reads_its_own_sides() {
        Tie tie = Days.oneTie().opened("A1").tie("A1");
        assertThat(tie.club(Side.HOME)).contains(ClubId.of("N"));
        assertThat(tie.club(Side.AWAY)).contains(ClubId.of("S"));
        assertThat(tie.sideOf(ClubId.of("N"))).contains(Side.HOME);
        assertThat(tie.sideOf(ClubId.of("S"))).contains(Side.AWAY);
        assertThat(tie.sideOf(ClubId.of("X"))).isEmpty();
        assertThat(tie.has(ClubId.of("X"))).isFalse();
        assertThat(tie.court()).contains("1");
        assertThat(tie.opened().get(RubberNo.of(1)).pair(Side.HOME)).contains(Pair.of("N1", "N2"));
        assertThat(tie.opened().get(RubberNo.of(1)).pair(Side.AWAY)).contains(Pair.of("S1", "S2"));
        assertThat(tie.isDeciderOpened()).isFalse();
        Days decider = Days.oneTie()
                .opened(
                        ExchangeId.decider(TieId.of("A1")),
                        Sheet.decider(Pair.of("N1", "N2")),
                        Sheet.decider(Pair.of("S1", "S2")));
        assertThat(decider.tie("A1").isDeciderOpened()).isTrue();
        assertThat(decider.tie("A1").isOpened()).isFalse();
        assertThat(Days.aDay().knockoutTie("F", 1, "N", "A-1").tie("F").isReady())
                .isFalse();
        assertThat(Days.aDay().knockoutTie("F", 1, "A-1", "N").tie("F").isReady())
                .isFalse();
    }
}
