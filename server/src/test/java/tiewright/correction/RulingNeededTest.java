package tiewright.correction;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Directory;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.OfficialFact;
import tiewright.event.Pair;
import tiewright.event.Penalty;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.TieId;

/** What is found wrong with sheets after they were opened. The three kinds are our own reading of the rules of sheets, no source. */
class RulingNeededTest {
    private static final ClubId N = ClubId.of("N");
    private static final ClubId S = ClubId.of("S");
    private static final TieId A1 = TieId.of("A1");
    private static final ExchangeId SHEETS = ExchangeId.sheets(A1);

    private static Days opened() {
        return Days.oneTie().opened("A1");
    }

    /** One who is on the list of S too, by another code, has the name of a player of N. */
    private static Days twice(String player) {
        return opened().player("S9", "S", 9).named("S9", "Player " + player);
    }

    private static List<String> cases(Days day) {
        return RulingNeeded.of(day.event(), day.directory()).stream()
                .map(one -> one.kind().code() + " " + one.tie() + " " + one.club() + " " + one.rubbers() + " "
                        + one.players())
                .toList();
    }

    private static RulingNeeded.Case only(Days day) {
        List<RulingNeeded.Case> all = RulingNeeded.of(day.event(), day.directory());
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    @Test
    void sheets_that_keep_the_conditions_need_nobody() {
        assertThat(cases(opened())).isEmpty();
    }

    @Test
    void one_name_in_two_squads_is_found_once_with_each_rubber_top_down() {
        assertThat(cases(twice("N1"))).containsExactly("ineligible A1 N [1] [N1]");
        assertThat(cases(twice("N4").player("S10", "S", 10).named("S10", "Player N2")))
                .containsExactly("ineligible A1 N [1, 2] [N2, N4]");
        assertThat(cases(opened().player("S9", "S", 9).named("S9", "Player N30")))
                .as("another name")
                .isEmpty();
        assertThat(cases(opened().player("N9", "N", 9).named("N9", "Player N1")))
                .as("twice in one squad is not two squads")
                .isEmpty();
    }

    @Test
    void both_sides_are_looked_at() {
        Days day = opened().player("N9", "N", 9).named("N9", "Player S3");
        assertThat(cases(day)).containsExactly("ineligible A1 S [2] [S3]");
    }

    @Test
    void nothing_is_said_before_a_sheet_is_opened_or_without_the_names() {
        Days closed = Days.oneTie().player("S9", "S", 9).named("S9", "Player N1");
        assertThat(cases(closed)).isEmpty();
        assertThat(RulingNeeded.of(twice("N1").event(), Directory.EMPTY)).isEmpty();
    }

    @Test
    void who_is_said_to_be_two_people_is_no_case_and_no_namesake_any_more() {
        Days day = twice("N1");
        assertThat(RulingNeeded.namesakes(day.event(), day.directory(), only(day)))
                .isEqualTo(Map.of(PlayerId.of("N1"), List.of(PlayerId.of("S9"))));
        RulingNeeded.Case before = only(day);
        day.fact(new OfficialFact.TwoPeople(PlayerId.of("N1"), PlayerId.of("S9")));
        assertThat(cases(day)).isEmpty();
        assertThat(RulingNeeded.namesakes(day.event(), day.directory(), before)).isEmpty();
    }

    @Test
    void a_ruling_settles_its_own_kind_tie_and_club_and_nothing_else() {
        assertThat(cases(ruled("ineligible", A1, N))).isEmpty();
        assertThat(cases(ruled("wrong-order", A1, N))).hasSize(1);
        assertThat(cases(ruled("ineligible", TieId.of("A2"), N))).hasSize(1);
        assertThat(cases(ruled("ineligible", A1, S))).hasSize(1);
    }

    private static Days ruled(String what, TieId tie, ClubId club) {
        return twice("N1").by(Days.referee()).fact(new OfficialFact.CaseRuled(what, tie, club, Penalty.NONE, 1));
    }

    @Test
    void a_stronger_pair_below_a_weaker_one_is_found_until_an_official_changes_that_clubs_pairs() {
        Days day = Days.oneTie().with(Setting.ORDER_OF_STRENGTH, "rank-sum");
        day.opened(SHEETS, swapped("N"), Days.straight("S", 4));
        assertThat(cases(day)).containsExactly("wrong-order A1 N [2] []");
        assertThat(RulingNeeded.namesakes(day.event(), day.directory(), only(day)))
                .as("a name is not what was found")
                .isEmpty();
        day.fact(replaced(S, "S7", "S8"));
        assertThat(cases(day)).hasSize(1);
        day.fact(replaced(N, "N7", "N8"));
        assertThat(cases(day)).isEmpty();
    }

    @Test
    void where_the_conditions_do_not_ask_for_an_order_none_is_wrong() {
        Days day = Days.oneTie().with(Setting.ORDER_OF_STRENGTH, "none");
        day.opened(SHEETS, swapped("N"), Days.straight("S", 4));
        assertThat(cases(day)).isEmpty();
    }

    private static Sheet swapped(String club) {
        return Sheet.of(List.of(
                Optional.of(Pair.of(club + "3", club + "4")),
                Optional.of(Pair.of(club + "1", club + "2")),
                Optional.of(Pair.of(club + "5", club + "6")),
                Optional.of(Pair.of(club + "7", club + "8"))));
    }

    private static ExchangeFact.PairReplaced replaced(ClubId club, String one, String other) {
        return new ExchangeFact.PairReplaced(
                SHEETS, club, RubberNo.of(4), Optional.of(Pair.of(one, other)), "injury", "R. Referee");
    }

    @Test
    void who_stands_in_more_rubbers_than_allowed_is_found_with_them_and_an_empty_place_is_no_fault() {
        Days day = Days.oneTie();
        Sheet often = Sheet.of(List.of(
                Optional.of(Pair.of("N1", "N2")),
                Optional.of(Pair.of("N1", "N4")),
                Optional.of(Pair.of("N5", "N6")),
                Optional.empty()));
        day.opened(SHEETS, often, Days.straight("S", 4));
        assertThat(cases(day))
                .singleElement()
                .satisfies(one -> assertThat(one).startsWith("too-often A1 N ").endsWith(" [N1]"));
    }
}
