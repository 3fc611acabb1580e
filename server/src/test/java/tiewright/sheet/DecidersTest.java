package tiewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static tiewright.sheet.Asked.DECIDER;
import static tiewright.sheet.Asked.N;
import static tiewright.sheet.Asked.level;
import static tiewright.sheet.Asked.sealDecider;
import static tiewright.sheet.Asked.why;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tiewright.conditions.Setting;
import tiewright.event.Days;
import tiewright.event.How;
import tiewright.event.Pair;
import tiewright.event.PlayFact;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;

class DecidersTest {
    private static Days with(String decider) {
        return level().with(Setting.DECIDER, decider).by(Days.captain("N"));
    }

    private static Sheet nobody() {
        TreeMap<RubberNo, Optional<Pair>> pairs = new TreeMap<>();
        pairs.put(RubberNo.DECIDER, Optional.empty());
        return new Sheet(pairs);
    }

    @Test
    void there_is_none_where_the_conditions_have_none() {
        assertThat(why(Days.oneTie().with(Setting.DECIDER, "none").by(Days.captain("N")), sealDecider("N", "1", "2")))
                .containsExactly("no-decider");
    }

    @Test
    void an_odd_number_of_rubbers_has_none_until_one_is_void() {
        Days odd = Days.oneTie().with(Setting.RUBBERS, "3").by(Days.captain("N"));
        assertThat(why(odd, sealDecider("N", "1", "2"))).containsExactly("no-decider");
        odd.fact(new PlayFact.CardEntered(DECIDER.tie(), RubberNo.of(3), List.of(), How.VOID));
        assertThat(why(odd, sealDecider("N", "1", "2"))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"any-two", "singles-turns"})
    void any_two_may_be_named_even_before_the_tie_begins(String kind) {
        Days early = Days.oneTie().with(Setting.DECIDER, kind).by(Days.captain("N"));
        assertThat(why(early, sealDecider("N", "1", "2"))).isEmpty();
        assertThat(why(early, sealDecider("N", "1", "8"))).isEmpty();
    }

    @Test
    void one_from_each_waits_for_the_pairs_and_then_takes_one_of_each() {
        Days early = Days.oneTie().with(Setting.DECIDER, "one-from-each").by(Days.captain("N"));
        assertThat(why(early, sealDecider("N", "1", "3"))).containsExactly("decider-needs-pairs");
        Days open = with("one-from-each");
        assertThat(why(open, sealDecider("N", "1", "3"))).isEmpty();
        assertThat(why(open, sealDecider("N", "1", "2"))).containsExactly("same-rubber");
        open.by(Days.desk()).player("N9", "N", 9).by(Days.captain("N"));
        assertThat(why(open, sealDecider("N", "1", "9"))).containsExactly("no-rubber-played");
    }

    @Test
    void a_decider_is_not_left_empty_while_somebody_can_play_it() {
        assertThat(why(with("any-two"), new SealSheet(DECIDER, N, nobody(), Asked.SECRET)))
                .containsExactly("decider-empty");
        Days alone = Asked.without(with("any-two"), "N2", "N3", "N4", "N5", "N6", "N7", "N8")
                .by(Days.captain("N"));
        assertThat(why(alone, new SealSheet(DECIDER, N, nobody(), Asked.SECRET)))
                .isEmpty();
    }

    @Test
    void a_decider_pair_is_one_rubber_and_no_sheet_of_the_tie() {
        assertThat(why(with("any-two"), new SealSheet(DECIDER, N, Asked.straight("N"), Asked.SECRET)))
                .containsExactly("rubbers");
    }

    @Test
    void the_order_of_strength_does_not_bind_a_decider() {
        assertThat(why(with("any-two").with(Setting.ORDER_OF_STRENGTH, "rank-sum"), sealDecider("N", "7", "8")))
                .isEmpty();
    }
}
