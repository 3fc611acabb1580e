package tiewright.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tiewright.Seed;

/** The chain against games that {@link PlainGame} plays: all rallies at once, with their chances, and one by one, by dice. */
class ChainByForceTest {
    /** What a brute-force run adds up. */
    private static final class Sums {
        double win;
        double mean;
        double square;
        final Map<Score, Double> ends = new HashMap<>();

        void add(PlainGame game, int rallies, double chance) {
            win += game.one() > game.two() ? chance : 0;
            mean += chance * rallies;
            square += chance * rallies * rallies;
            ends.merge(game.score(), chance, Double::sum);
        }
    }

    @Test
    void equals_the_sum_over_all_games() {
        Seed seed = Seed.fresh();
        Random random = seed.random();
        for (int i = 0; i < 60; i++) {
            Format format = RandomFormat.of(random, 12);
            double serve1 = 0.2 + 0.6 * random.nextDouble();
            double serve2 = 0.2 + 0.6 * random.nextDouble();
            Chain chain = Chain.of(format, serve1, serve2);
            for (SideNo first : SideNo.values()) {
                Sums sums = everyRally(format, first, serve1, serve2);
                String name = seed + ": " + format.code() + " " + serve1 + " " + serve2 + " " + first;
                assertThat(chain.winChance(first)).as(name).isCloseTo(sums.win, within(1e-10));
                assertThat(chain.rallies(first).mean()).as(name).isCloseTo(sums.mean, within(1e-7));
                assertThat(chain.rallies(first).sd())
                        .as(name)
                        .isCloseTo(Math.sqrt(sums.square - sums.mean * sums.mean), within(1e-5));
                for (Score score : List.copyOf(sums.ends.keySet()).subList(0, Math.min(12, sums.ends.size()))) {
                    assertThat(chain.chanceOf(first, score))
                            .as(name + " " + score)
                            .isCloseTo(sums.ends.get(score), within(1e-10));
                }
            }
        }
    }

    /** Pushes all chance through the rallies until as good as nothing is left. */
    private static Sums everyRally(Format format, SideNo first, double serve1, double serve2) {
        Sums sums = new Sums();
        Map<PlainGame, Double> now = Map.of(PlainGame.start(format, first.ordinal() + 1), 1.0);
        double left = 1;
        for (int rally = 1; left > 1e-13; rally++) {
            Map<PlainGame, Double> next = new HashMap<>();
            for (Map.Entry<PlainGame, Double> entry : now.entrySet()) {
                double one = entry.getKey().side() == 1 ? serve1 : 1 - serve2;
                push(entry.getKey().rallyTo(1), entry.getValue() * one, rally, next, sums);
                push(entry.getKey().rallyTo(2), entry.getValue() * (1 - one), rally, next, sums);
            }
            now = next;
            left = now.values().stream().mapToDouble(Double::doubleValue).sum();
        }
        return sums;
    }

    private static void push(PlainGame game, double chance, int rally, Map<PlainGame, Double> next, Sums sums) {
        if (game.ended()) {
            sums.add(game, rally, chance);
        } else {
            next.merge(game, chance, Double::sum);
        }
    }

    @Test
    void agrees_with_games_played_by_dice() {
        Seed seed = Seed.fresh();
        Random random = seed.random();
        int games = 40_000;
        for (String code :
                List.of("side-out-11", "rally-15", "rally-21-cap-30", "rally-11-serve-last", "side-out-7-by-1")) {
            Format format = Format.parse(code).orElseThrow();
            Chain chain = Chain.of(format, .47, .41);
            Sums sums = new Sums();
            for (int i = 0; i < games; i++) {
                play(format, .47, .41, random, 1.0 / games, sums);
            }
            double win = chain.winChance(SideNo.ONE);
            Rallies rallies = chain.rallies(SideNo.ONE);
            assertThat(sums.win)
                    .as("%s: %s", seed, code)
                    .isCloseTo(win, within(5 * Math.sqrt(win * (1 - win) / games)));
            assertThat(sums.mean)
                    .as("%s: %s", seed, code)
                    .isCloseTo(rallies.mean(), within(5 * rallies.sd() / Math.sqrt(games)));
            assertThat(Math.sqrt(sums.square - sums.mean * sums.mean))
                    .as("%s: %s", seed, code)
                    .isCloseTo(rallies.sd(), within(0.04 * rallies.sd()));
        }
    }

    private static void play(Format format, double serve1, double serve2, Random random, double weight, Sums sums) {
        PlainGame game = PlainGame.start(format, 1);
        int rallies = 0;
        while (!game.ended()) {
            boolean serverWins = random.nextDouble() < (game.side() == 1 ? serve1 : serve2);
            game = game.rallyTo(serverWins ? game.side() : 3 - game.side());
            rallies++;
        }
        sums.add(game, rallies, weight);
    }

    @Test
    void final_scores_make_up_the_whole() {
        Seed seed = Seed.fresh();
        Random random = seed.random();
        for (int i = 0; i < 40; i++) {
            Format format = RandomFormat.of(random, 15);
            double serve1 = 0.3 + 0.4 * random.nextDouble();
            double serve2 = 0.3 + 0.4 * random.nextDouble();
            Chain chain = Chain.of(format, serve1, serve2);
            Map<Score, Double> ends = chain.finalScores(SideNo.TWO, 120);
            double won = ends.entrySet().stream()
                    .filter(e -> e.getKey().home() > e.getKey().away())
                    .mapToDouble(Map.Entry::getValue)
                    .sum();
            assertThat(ends.values().stream().mapToDouble(Double::doubleValue).sum())
                    .as("%s: %s", seed, format.code())
                    .isCloseTo(1, within(1e-9));
            assertThat(won).as("%s: %s", seed, format.code()).isCloseTo(chain.winChance(SideNo.TWO), within(1e-9));
        }
    }

    @Test
    void every_state_is_worth_the_mean_of_what_follows() {
        Seed seed = Seed.fresh();
        Random random = seed.random();
        for (int i = 0; i < 400; i++) {
            Format format = RandomFormat.of(random, 12);
            double serve1 = 0.2 + 0.6 * random.nextDouble();
            double serve2 = 0.2 + 0.6 * random.nextDouble();
            Chain chain = Chain.of(format, serve1, serve2);
            GameState state = GameState.start(format, SideNo.ONE);
            while (!state.isOver()) {
                double one = state.serving() == SideNo.ONE ? serve1 : 1 - serve2;
                GameState won = state.after(SideNo.ONE);
                GameState lost = state.after(SideNo.TWO);
                String name = seed + ": " + state;
                double rest = one * chain.rallies(won).mean()
                        + (1 - one) * chain.rallies(lost).mean();
                assertThat(chain.winChance(state))
                        .as(name)
                        .isCloseTo(one * chain.winChance(won) + (1 - one) * chain.winChance(lost), within(1e-12));
                assertThat(chain.rallies(state).mean()).as(name).isCloseTo(1 + rest, within(1e-9));
                assertThat(chain.importance(state))
                        .as(name)
                        .isCloseTo(chain.winChance(won) - chain.winChance(lost), within(1e-15));
                state = random.nextBoolean() ? won : lost;
            }
        }
    }

    /** First to n, even rallies: a rally decides exactly when the other 2n - 2 split evenly, C(2n-2, n-1) / 2^(2n-2); binomial, standard. */
    @Test
    void the_first_rally_matters_as_often_as_the_others_split_evenly() {
        Format format = Format.parse("rally-11-by-1").orElseThrow();
        double importance = Chain.of(format, .5, .5).importance(GameState.start(format, SideNo.ONE));
        assertThat(importance).isCloseTo(184_756.0 / 1_048_576, within(1e-14));
    }

    /** Two ahead, even rallies: one ahead wins 3 of 4, so a rally at level moves the chance by one half. */
    @Test
    void a_rally_at_level_moves_the_chance_by_one_half() {
        Format format = Format.rally(11);
        GameState state = GameState.start(format, SideNo.ONE);
        for (char winner : "AB".repeat(14).toCharArray()) {
            state = state.after(winner == 'A' ? SideNo.ONE : SideNo.TWO);
        }
        assertThat(state.call()).isEqualTo("14-14");
        assertThat(Chain.of(format, .5, .5).importance(state)).isCloseTo(.5, within(1e-14));
    }

    @Test
    void late_rallies_of_a_side_out_game_matter_more() {
        Format format = Format.sideOut(11);
        Chain chain = Chain.of(format, .45, .45);
        GameState start = GameState.start(format, SideNo.ONE);
        GameState state = start;
        for (char winner : ("A".repeat(10) + "B".repeat(10) + "AA").toCharArray()) {
            state = state.after(winner == 'A' ? SideNo.ONE : SideNo.TWO);
        }
        assertThat(state.call()).isEqualTo("10-9-1");
        assertThat(chain.importance(start)).isGreaterThan(0);
        assertThat(chain.importance(state)).isGreaterThan(2 * chain.importance(start));
    }
}
