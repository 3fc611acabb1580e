package tiewright.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GameStateTest {
    private static final Format ELEVEN = Format.sideOut(11);

    /**
     * USA Pickleball rule summary (in Pickleball Magazine 5-3): only the serving side scores, both partners serve except one only at the
     * start, called 0-0-2. The walk was worked out by hand from these rules.
     */
    @Test
    void the_calls_of_a_side_out_game() {
        GameState state = GameState.start(ELEVEN, SideNo.ONE);
        List<String> calls = new ArrayList<>(List.of(called(state)));
        for (GameState next : walk(state, "AABBBAABAABB")) {
            calls.add(called(next));
            state = next;
        }
        assertThat(calls)
                .containsExactly(
                        "A 0-0-2", "A 1-0-2", "A 2-0-2", "B 0-2-1", "B 1-2-1", "B 2-2-1", "B 2-2-2", "A 2-2-1",
                        "A 2-2-2", "A 3-2-2", "A 4-2-2", "B 2-4-1", "B 3-4-1");
        assertThat(state.score()).isEqualTo(new Score(4, 3));
    }

    /** USA Pickleball rulebook 2025, 12.B.1.b-c: in rally scoring the last point is won on serve. */
    @Test
    void the_receiving_side_cannot_score_the_last_point() {
        Format format = Format.parse("rally-11-serve-last").orElseThrow();
        GameState tenEight = last(GameState.start(format, SideNo.ONE), "A".repeat(10) + "B".repeat(8));
        assertThat(called(tenEight)).isEqualTo("B 8-10");
        GameState served = tenEight.after(SideNo.ONE);
        assertThat(called(served)).isEqualTo("A 10-8");
        assertThat(served.isOver()).isFalse();
        assertThat(served.after(SideNo.ONE).winner()).contains(SideNo.ONE);
        GameState plain = last(GameState.start(Format.rally(11), SideNo.ONE), "A".repeat(10) + "B".repeat(8) + "A");
        assertThat(plain.winner()).contains(SideNo.ONE);
    }

    /**
     * USA Pickleball rule summary (in Pickleball Magazine 5-3): with even own points the side's first server of the game stands right, with odd
     * ones left; after a side-out the first serve comes from the right.
     */
    @Test
    void a_side_out_server_stands_where_the_points_say() {
        GameState state = GameState.start(ELEVEN, SideNo.ONE);
        for (GameState next : walk(state, "AABBBAABAABBABABABBBABAABBABA")) {
            boolean evenServer = next.serving().pointsIn(next.score()) % 2 == 0;
            boolean firstServerServes = next.server() == Court.RIGHT;
            assertThat(next.servesFrom() == Court.RIGHT).as(called(next)).isEqualTo(evenServer == firstServerServes);
            if (next.serving() != state.serving()) {
                assertThat(next.servesFrom()).as(called(next)).isEqualTo(Court.RIGHT);
            }
            boolean evenReceiver = next.serving().other().pointsIn(next.score()) % 2 == 0;
            assertThat(next.receiver() == next.servesFrom()).as(called(next)).isEqualTo(evenReceiver);
            state = next;
        }
    }

    @Test
    void the_partner_serves_second_from_where_he_or_she_stands() {
        GameState state = last(GameState.start(ELEVEN, SideNo.ONE), "BB");
        assertThat(called(state)).isEqualTo("B 1-0-1");
        assertThat(state.server()).isEqualTo(Court.RIGHT);
        assertThat(state.servesFrom()).isEqualTo(Court.LEFT);
        GameState second = state.after(SideNo.ONE);
        assertThat(called(second)).isEqualTo("B 1-0-2");
        assertThat(second.server()).isEqualTo(Court.LEFT);
        assertThat(second.servesFrom()).isEqualTo(Court.RIGHT);
    }

    /** BWF Laws of Badminton 11 (from memory): right on even, left on odd own points; players change only on points won on serve. */
    @Test
    void a_rally_server_stands_right_on_even_points() {
        GameState state = GameState.start(Format.rally(21), SideNo.ONE);
        for (GameState next : walk(state, "AABABBABBBAABABAAB")) {
            boolean even = next.serving().pointsIn(next.score()) % 2 == 0;
            assertThat(next.servesFrom()).as(called(next)).isEqualTo(even ? Court.RIGHT : Court.LEFT);
            boolean lostServe = next.serving() != state.serving();
            assertThat(List.of(next.crossedOne(), next.crossedTwo())
                            .equals(List.of(state.crossedOne(), state.crossedTwo())))
                    .as(called(next))
                    .isEqualTo(lostServe);
            state = next;
        }
    }

    @Test
    void no_rally_follows_the_end() {
        GameState over = last(GameState.start(ELEVEN, SideNo.ONE), "A".repeat(11));
        assertThat(over.winner()).contains(SideNo.ONE);
        assertThatThrownBy(() -> over.after(SideNo.ONE)).isInstanceOf(IllegalStateException.class);
    }

    /**
     * DeFord and Ethier, arXiv 2303.02942: a side-out doubles game to n, two ahead, has 4n^2 + 10 states, two of them ends, when points past
     * (n-1)-all are told apart only by the difference.
     */
    @ParameterizedTest
    @CsvSource({"11, 494", "15, 910"})
    void the_published_number_of_states(int target, int states) {
        Format format = Format.sideOut(target);
        Set<String> seen = new HashSet<>();
        Deque<GameState> open =
                new ArrayDeque<>(List.of(GameState.start(format, SideNo.ONE), GameState.start(format, SideNo.TWO)));
        while (!open.isEmpty()) {
            GameState state = open.pop();
            if (seen.add(folded(state)) && !state.isOver()) {
                open.push(state.after(SideNo.ONE));
                open.push(state.after(SideNo.TWO));
            }
        }
        assertThat(seen).hasSize(states);
    }

    private static String folded(GameState state) {
        if (state.isOver()) {
            return state.winner().orElseThrow().toString();
        }
        int one = state.score().home();
        int two = state.score().away();
        int past = Math.max(0, Math.min(one, two) - (state.format().target() - 1));
        return (one - past) + "-" + (two - past) + state.serving() + state.serverNumber();
    }

    private static List<GameState> walk(GameState from, String winners) {
        List<GameState> states = new ArrayList<>();
        GameState state = from;
        for (char winner : winners.toCharArray()) {
            state = state.after(winner == 'A' ? SideNo.ONE : SideNo.TWO);
            states.add(state);
        }
        return states;
    }

    private static GameState last(GameState from, String winners) {
        return walk(from, winners).get(winners.length() - 1);
    }

    private static String called(GameState state) {
        return (state.serving() == SideNo.ONE ? "A " : "B ") + state.call();
    }
}
