package tiewright.standings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Single rules of a procedure, each with a near-miss. */
class ProcedureTest {
    /**
     * A, B and C beat one another. Rubbers A 7-3, B 4-6, C 4-6: A is parted, B and C stay level. B beat C, but C has the
     * better games and points, also in the tie between them the better points.
     */
    private static Pool circle() {
        String narrow = "11-9/0-11/11-9";
        return Pool.of("A", "B", "C")
                .tie("A", "B", "11-0/11-0", "11-0/11-0", "11-0/11-0", "11-0/11-0", "11-0/11-0")
                .tie("B", "C", narrow, narrow, narrow, narrow, "0-11/0-11")
                .tie("C", "A", "11-0/11-0", "11-0/11-0", "11-0/11-0", "11-0/0-11/0-11", "11-0/0-11/0-11");
    }

    private static String order(String levelTeams) {
        return Pool.order(circle().table(Rules.of(levelTeams, "1/0/0", Rules.shape(5, false, 2, 11))));
    }

    @Test
    void after_a_step_the_list_goes_on_with_the_next_step() {
        assertThat(order("rubbers-difference>games-difference>lots")).isEqualTo("A C B");
        assertThat(order("rubbers-difference>lots")).isEqualTo("A (B C)");
        assertThat(order("rubbers-won>points-won>lots")).isEqualTo("A C B");
    }

    @Test
    void whenever_two_are_left_their_tie_comes_first() {
        assertThat(order("two-left-head-to-head>rubbers-difference>games-difference>lots"))
                .isEqualTo("A B C");
        assertThat(order("overall-difference")).isEqualTo("A B C");
    }

    @Test
    void two_left_holds_from_its_place_in_the_list_on() {
        assertThat(order("rubbers-difference>two-left-head-to-head>games-difference>lots"))
                .isEqualTo("A B C");
        assertThat(order("rubbers-difference>games-difference>two-left-head-to-head>lots"))
                .isEqualTo("A C B");
    }

    @Test
    void restart_takes_those_still_level_back_to_the_top() {
        assertThat(order("head-to-head>rubbers-ratio-among>points-ratio-among>lots"))
                .isEqualTo("A C B");
        assertThat(order("head-to-head>rubbers-ratio-among>points-ratio-among>restart>lots"))
                .isEqualTo("A B C");
        assertThat(order("restart>head-to-head>rubbers-ratio-among>points-ratio-among>lots"))
                .isEqualTo("A B C");
        assertThat(order("among-level-ratio")).isEqualTo("A B C");
    }

    @Test
    void restart_leaves_alone_what_comes_after_it() {
        assertThat(order("head-to-head>restart>rubbers-difference>points-difference>lots"))
                .isEqualTo("A C B");
        assertThat(order("head-to-head>rubbers-difference>restart>points-difference>lots"))
                .isEqualTo("A B C");
    }

    @Test
    void a_list_without_lots_ends_like_one_with() {
        assertThat(order("rubbers-difference")).isEqualTo("A (B C)");
    }

    @Test
    void only_a_known_list_is_a_procedure() {
        assertThat(Procedure.parse("head-to-head>games-ratio-among>lots")).isPresent();
        for (String text : new String[] {
            "", ">", "head-to-head>", "overall", "lots>nothing", "rubbers-ratio-all", "head-to-head-among-among"
        }) {
            assertThat(Procedure.parse(text)).as(text).isEmpty();
        }
    }

    @Test
    void a_lot_counts_only_among_just_those_it_was_drawn_among() {
        TableRules rules = Rules.of("rubbers-difference>lots", "1/0/0", Rules.shape(5, false, 2, 11));
        assertThat(Pool.order(circle().lot("W. Itness", "C", "B").table(rules))).isEqualTo("A C B");
        assertThat(Pool.order(circle().lot("W. Itness", "C", "B", "A").table(rules)))
                .isEqualTo("A (B C)");
        assertThat(Pool.order(circle().lot("W. Itness", "C", "B")
                        .lot("W. Itness", "B", "C")
                        .table(rules)))
                .isEqualTo("A B C");
    }

    @Test
    void a_ratio_with_nothing_lost_ranks_first_and_level_with_others_of_the_kind() {
        Value nothingLost = new Value(Form.RATIO, 1, 0);
        assertThat(nothingLost).isGreaterThan(new Value(Form.RATIO, 1_000_000, 1));
        assertThat(nothingLost.compareTo(new Value(Form.RATIO, 7, 0))).isZero();
        assertThat(nothingLost.compareTo(new Value(Form.RATIO, 0, 0))).isZero();
        assertThat(new Value(Form.RATIO, 2, 3).compareTo(new Value(Form.RATIO, 4, 6)))
                .isZero();
        assertThat(new Value(Form.RATIO, 2, 3)).isLessThan(new Value(Form.RATIO, 201, 301));
    }
}
