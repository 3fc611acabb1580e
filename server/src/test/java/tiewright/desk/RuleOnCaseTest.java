package tiewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.correction.CupDay;
import tiewright.correction.Penalties;
import tiewright.correction.RulingNeeded;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Directory;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.Penalty;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.Side;
import tiewright.event.TieId;

/**
 * Found late: an ineligible player, a wrong order. Published consequences range from letting it stand (captains' page of the
 * Cherokee tennis league) over losing the rubbers (HDBL rule 5) to losing the tie (a ruling under the Hesse doubles rule,
 * second-hand); nothing is applied without a ruling.
 */
class RuleOnCaseTest {
    private static final ClubId N = ClubId.of("N");
    private static final TieId A1 = TieId.of("A1");

    private static Days played() {
        return Days.oneTie()
                .opened("A1")
                .cards("A1", "11-5", "11-5", "11-5", "5-11")
                .by(Days.referee());
    }

    private static List<RulingNeeded.Case> cases(Days day) {
        return RulingNeeded.of(day.event(), day.directory());
    }

    private static RuleOnCase rule(String what, Penalty penalty) {
        return new RuleOnCase(what, A1, N, penalty, "condition 30", "R. Referee");
    }

    /** N3 played for N and stands, under another code, on the list of S too. */
    private static Days inTwoSquads() {
        Days day = played();
        assertThat(cases(day)).isEmpty();
        day.player("S9", "S", 9);
        day.named("S9", "player n3");
        return day;
    }

    @Test
    void a_player_of_two_squads_found_after_play_is_listed_with_the_rubber_and_nothing_is_applied() {
        Days day = inTwoSquads();
        assertThat(cases(day)).singleElement().satisfies(one -> {
            assertThat(one.kind()).isEqualTo(RulingNeeded.Kind.INELIGIBLE);
            assertThat(one.club()).isEqualTo(N);
            assertThat(one.rubbers()).containsExactly(RubberNo.of(2));
            assertThat(one.players()).containsExactly(PlayerId.of("N3"));
        });
        assertThat(day.event().progress(day.tie("A1")).won(Side.HOME)).isEqualTo(3);
        assertThat(DoNext.of(day.event(), day.directory(), day.now()))
                .extracting(DoNext.Item::kind)
                .contains(DoNext.Kind.RULING_NEEDED);
    }

    @Test
    void both_published_consequences_are_told_before_one_is_chosen() {
        Days day = inTwoSquads();
        RulingNeeded.Case one = cases(day).get(0);
        assertThat(Penalties.tie(day.event(), day.given(), one, Penalty.NONE))
                .satisfies(tie -> assertThat(tie.rubbersWon(Side.HOME) + "-" + tie.rubbersWon(Side.AWAY))
                        .isEqualTo("3-1"));
        assertThat(Penalties.tie(day.event(), day.given(), one, Penalty.RUBBERS))
                .satisfies(tie -> assertThat(tie.rubbersWon(Side.HOME) + "-" + tie.rubbersWon(Side.AWAY))
                        .isEqualTo("2-2"));
        assertThat(Penalties.tie(day.event(), day.given(), one, Penalty.TIE))
                .satisfies(tie -> assertThat(tie.rubbersWon(Side.HOME) + "-" + tie.rubbersWon(Side.AWAY))
                        .isEqualTo("0-4"));
        assertThat(Penalties.announced(day.event(), one))
                .as("no setting says it")
                .isEmpty();
    }

    @Test
    void a_ruling_applies_what_it_says_and_settles_the_case() {
        Days day = inTwoSquads().does(rule("ineligible", Penalty.RUBBERS));
        assertThat(day.event().progress(day.tie("A1")).won(Side.AWAY)).isEqualTo(2);
        assertThat(day.event().rulings()).singleElement().satisfies(ruling -> {
            assertThat(Days.said(ruling.about())).isEqualTo("The sheet of Club N in tie A1");
            assertThat(Days.said(ruling.ruling())).isEqualTo("Club N loses rubber 2.");
            assertThat(ruling.toString()).doesNotContain("N3", "Player");
        });
        assertThat(cases(day)).isEmpty();
        assertThat(Why.not(day, rule("ineligible", Penalty.RUBBERS))).containsExactly("desk.no-such-case");
    }

    @Test
    void letting_it_stand_is_a_ruling_too() {
        Days day = inTwoSquads().does(rule("ineligible", Penalty.NONE));
        assertThat(day.event().progress(day.tie("A1")).won(Side.HOME)).isEqualTo(3);
        assertThat(day.event().disputes().cases()).hasSize(1);
        assertThat(cases(day)).isEmpty();
    }

    @Test
    void an_order_found_wrong_after_play_is_listed_with_what_the_conditions_announce() {
        Days day = Days.oneTie()
                .with(Setting.ORDER_OF_STRENGTH, "rank-sum")
                .with(Setting.WRONG_ORDER_LATE, "forfeit-rubbers")
                .by(Days.referee());
        Sheet wrong = Sheet.of(List.of(
                Optional.of(Pair.of("N3", "N4")),
                Optional.of(Pair.of("N1", "N2")),
                Optional.of(Pair.of("N5", "N6")),
                Optional.of(Pair.of("N7", "N8"))));
        day.opened(ExchangeId.sheets(A1), wrong, Days.straight("S", 4)).cards("A1", "11-5", "11-5", "11-5", "5-11");
        RulingNeeded.Case one = cases(day).get(0);
        assertThat(cases(day)).hasSize(1);
        assertThat(one.kind()).isEqualTo(RulingNeeded.Kind.WRONG_ORDER);
        assertThat(one.rubbers()).containsExactly(RubberNo.of(2));
        assertThat(Penalties.announced(day.event(), one)).contains(Penalty.RUBBERS);
        day.fact(new ExchangeFact.PairReplaced(
                ExchangeId.sheets(A1), N, RubberNo.of(4), Optional.of(Pair.of("N7", "N8")), "injury", "R"));
        assertThat(cases(day)).as("an official changed the pairs").isEmpty();
    }

    @Test
    void is_refused_without_a_reason_and_for_others_than_those_who_rule() {
        Days day = inTwoSquads();
        assertThat(Why.not(day, new RuleOnCase("ineligible", A1, N, Penalty.TIE, " ", "")))
                .containsExactly("desk.text-missing.reason", "desk.text-missing.by");
        assertThat(Why.not(day, new RuleOnCase("wrong-order", A1, N, Penalty.TIE, "x", "R")))
                .containsExactly("desk.no-such-case");
        assertThat(Why.not(day.by(Days.desk()), rule("ineligible", Penalty.TIE)))
                .containsExactly("desk.rulers-only");
    }

    @Test
    void where_others_have_gone_on_the_rubbers_are_corrected_one_by_one() {
        Days day = CupDay.advanced().by(Days.referee());
        day.player("W9", "W", 9).named("W9", "Player N3");
        assertThat(RulingNeeded.of(day.event(), day.directory()))
                .extracting(RulingNeeded.Case::tie)
                .contains(A1);
        assertThat(Why.not(day, rule("ineligible", Penalty.RUBBERS))).containsExactly("desk.case-reaches-others");
        assertThat(Why.not(day, rule("ineligible", Penalty.NONE))).isEmpty();
    }

    @Test
    void names_are_needed_for_what_only_names_tell() {
        assertThat(RulingNeeded.of(inTwoSquads().event(), Directory.EMPTY)).isEmpty();
    }
}
