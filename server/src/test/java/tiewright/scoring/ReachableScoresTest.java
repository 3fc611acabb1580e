package tiewright.scoring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tiewright.Seed;

/** Every rally of every game is played by {@link PlainGame}; what comes out is exactly what {@link Legality} accepts. */
class ReachableScoresTest {
    @Test
    void legal_scores_are_the_ones_that_play_can_reach() {
        Seed seed = Seed.fresh();
        Random random = seed.random();
        for (int i = 0; i < 150; i++) {
            Format format = RandomFormat.of(random, 15);
            int most = format.target() + 9;
            Set<PlainGame> all = playEverything(format, most);
            assertThat(accepted(most, score -> Legality.game(format, score).isEmpty()))
                    .as("%s: final scores of %s", seed, format.code())
                    .isEqualTo(scores(all, true, most));
            assertThat(accepted(most, score -> Legality.retired(format, score).isEmpty()))
                    .as("%s: unfinished scores of %s", seed, format.code())
                    .isEqualTo(scores(all, false, most));
        }
    }

    @Test
    void the_state_of_a_game_follows_the_rules_as_played() {
        Seed seed = Seed.fresh();
        Random random = seed.random();
        for (int i = 0; i < 500; i++) {
            Format format = RandomFormat.of(random, 15);
            GameState state = GameState.start(format, SideNo.TWO);
            PlainGame game = PlainGame.start(format, 2);
            for (int rally = 0; rally < 80 && !game.ended(); rally++) {
                boolean one = random.nextBoolean();
                state = state.after(one ? SideNo.ONE : SideNo.TWO);
                game = game.rallyTo(one ? 1 : 2);
                assertThat(List.of(state.score(), state.serving().ordinal() + 1, state.serverNumber(), state.isOver()))
                        .as("%s: %s", seed, format.code())
                        .isEqualTo(List.of(game.score(), game.side(), game.server(), game.ended()));
            }
        }
    }

    private static Set<PlainGame> playEverything(Format format, int most) {
        Set<PlainGame> seen = new HashSet<>(Set.of(PlainGame.start(format, 1), PlainGame.start(format, 2)));
        Deque<PlainGame> open = new ArrayDeque<>(seen);
        while (!open.isEmpty()) {
            PlainGame game = open.pop();
            if (!game.ended() && Math.max(game.one(), game.two()) <= most) {
                game.both().stream().filter(seen::add).forEach(open::push);
            }
        }
        return seen;
    }

    private static Set<Score> scores(Set<PlainGame> games, boolean ended, int most) {
        return games.stream()
                .filter(game -> game.ended() == ended && Math.max(game.one(), game.two()) <= most)
                .map(PlainGame::score)
                .collect(Collectors.toSet());
    }

    private static Set<Score> accepted(int most, Predicate<Score> legal) {
        return IntStream.rangeClosed(0, most)
                .boxed()
                .flatMap(one -> IntStream.rangeClosed(0, most).mapToObj(two -> new Score(one, two)))
                .filter(legal)
                .collect(Collectors.toSet());
    }
}
