package tiewright.correction;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.conditions.Setting;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.How;
import tiewright.event.Penalty;
import tiewright.event.PlayFact;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.TieId;
import tiewright.event.TieScore;

/**
 * What a sheet that was not as it should be may cost: to let it stand, to lose the rubbers, to lose the tie. That a lost rubber counts as
 * a walkover is common practice, no source.
 */
class PenaltiesTest {
    private static final TieId A1 = TieId.of("A1");

    /** Three of four rubbers are played, all of them won by N. */
    private static Days played() {
        return Days.oneTie().opened("A1").cards("A1", "11-5", "11-6", "11-7");
    }

    private static RulingNeeded.Case sheetOf(String club, RulingNeeded.Kind kind, int... rubbers) {
        TreeSet<RubberNo> concerned = new TreeSet<>();
        for (int rubber : rubbers) {
            concerned.add(RubberNo.of(rubber));
        }
        return new RulingNeeded.Case(kind, A1, ClubId.of(club), concerned, Set.of());
    }

    private static RulingNeeded.Case sheetOf(String club, int... rubbers) {
        return sheetOf(club, RulingNeeded.Kind.INELIGIBLE, rubbers);
    }

    private static String score(Days day, RulingNeeded.Case one, Penalty penalty) {
        TieScore after = Penalties.tie(day.event(), day.given(), one, penalty);
        return after.rubbersWon(Side.HOME) + "-" + after.rubbersWon(Side.AWAY);
    }

    @ParameterizedTest
    @CsvSource({"fix-or-stands, NONE", "forfeit-rubbers, RUBBERS", "lose-tie, TIE"})
    void the_conditions_announce_what_a_wrong_order_costs_and_nothing_else(String value, Penalty penalty) {
        Days day = played().with(Setting.WRONG_ORDER_LATE, value);
        assertThat(Penalties.announced(day.event(), sheetOf("N", RulingNeeded.Kind.WRONG_ORDER, 1)))
                .isEqualTo(Optional.of(penalty));
        assertThat(Penalties.announced(day.event(), sheetOf("N", 1))).isEmpty();
        assertThat(Penalties.announced(day.event(), sheetOf("N", RulingNeeded.Kind.TOO_OFTEN, 1)))
                .isEmpty();
    }

    @Test
    void an_order_that_is_only_counted_anew_is_left_to_the_ruling() {
        Days day = played().with(Setting.WRONG_ORDER_LATE, "re-score-in-order");
        assertThat(Penalties.announced(day.event(), sheetOf("N", RulingNeeded.Kind.WRONG_ORDER, 1)))
                .isEmpty();
    }

    @Test
    void a_club_at_home_loses_nothing_its_rubbers_or_all() {
        Days day = played();
        assertThat(score(day, sheetOf("N", 1, 2), Penalty.NONE)).isEqualTo("3-0");
        assertThat(score(day, sheetOf("N", 1, 2), Penalty.RUBBERS)).isEqualTo("1-2");
        assertThat(score(day, sheetOf("N", 1, 2), Penalty.TIE)).isEqualTo("0-4");
    }

    @Test
    void a_guest_loses_to_the_club_at_home() {
        Days day = played();
        assertThat(score(day, sheetOf("S", 4), Penalty.RUBBERS)).isEqualTo("4-0");
    }

    @Test
    void a_rubber_with_a_card_is_corrected_by_the_ruling_and_one_without_is_entered() {
        Days day = played();
        assertThat(Penalties.facts(day.event(), sheetOf("N", 3, 4), Penalty.NONE, 7))
                .isEmpty();
        assertThat(Penalties.facts(day.event(), sheetOf("N", 3, 4), Penalty.RUBBERS, 7))
                .containsExactly(
                        new PlayFact.CardCorrected(
                                A1,
                                RubberNo.of(3),
                                Days.games("0-11"),
                                How.WALKOVER_HOME,
                                List.of(),
                                "",
                                OptionalInt.of(7)),
                        new PlayFact.CardEntered(A1, RubberNo.of(4), Days.games("0-11"), How.WALKOVER_HOME));
        assertThat(Penalties.facts(day.event(), sheetOf("S", 4), Penalty.RUBBERS, 7))
                .isEqualTo(
                        List.of(new PlayFact.CardEntered(A1, RubberNo.of(4), Days.games("11-0"), How.WALKOVER_AWAY)));
    }
}
