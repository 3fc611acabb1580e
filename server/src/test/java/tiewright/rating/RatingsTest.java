package tiewright.rating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.scoring.Format;

class RatingsTest {
    private static final List<PlayerId> OURS = World.club("a", 4);
    private static final List<PlayerId> THEIRS = World.club("b", 4);

    private static Ratings.Line line(Evidence evidence, String... players) {
        return Ratings.of(Prior.none(), evidence, List.of(OURS, THEIRS)).lines().stream()
                .filter(line ->
                        line.players().stream().map(PlayerId::code).toList().equals(List.of(players)))
                .findFirst()
                .orElseThrow();
    }

    private static World world() {
        return World.even(new Random(3), List.of(OURS, THEIRS));
    }

    /** Normal prior and normal data by hand: 9 / (9 + 27.8) of 10, the root of 9 x 27.8 / 36.8; rounded as said to captains. */
    @Test
    void sixty_percent_of_ninety_rallies_is_a_best_guess_of_two_and_a_half() {
        Map<PlayerId, Estimate> known = new HashMap<>();
        List.of(OURS, THEIRS).forEach(club -> club.forEach(player -> known.put(player, Estimate.of(0, 1e-6))));
        Prior prior = new Prior(known, Map.of(Pair.of("b1", "b2"), Estimate.of(0, 1e-6)));
        FilmedGame film = new FilmedGame(
                Optional.empty(),
                Optional.empty(),
                Optional.of(World.DAY),
                Format.rally(21),
                Pair.of("a1", "a2"),
                Pair.of("b1", "b2"),
                Optional.empty(),
                new FilmedGame.Served(45, 27),
                new FilmedGame.Served(45, 18));
        Estimate extra = Rating.fit(prior, new Evidence(List.of(), List.of(film), Ageing.none()))
                .extra(Pair.of("a1", "a2"));
        assertThat(extra.mean()).isCloseTo(2.4, within(0.1));
        assertThat(extra.sd()).isCloseTo(2.6, within(0.05));
    }

    @Test
    void players_who_only_ever_pair_together_cannot_be_told_apart() {
        World world = world();
        for (int game = 0; game < 15; game++) {
            world.film(Format.sideOut(11), Pair.of("a1", "a2"), world.anyPair(THEIRS), 40);
            world.film(Format.sideOut(11), Pair.of("a3", "a4"), world.anyPair(THEIRS), 40);
        }
        Ratings.Line together = line(world.evidence(), "a1", "a2");
        assertThat(together.verdict()).isEqualTo(Verdict.CANNOT_TELL_APART);
        assertThat(together.estimate().sd())
                .as("the extra stays as doubtful as it was")
                .isGreaterThan(2.3);
        assertThat(together.whole().sd()).as("the pair as a whole does not").isLessThan(3);
        assertThat(together.seen().rallies()).isEqualTo(600);
    }

    /** Three equations, three forms: no matter how much film, nothing is left for chemistry. Four players make six. */
    @Test
    void three_who_rotate_among_themselves_are_not_enough_and_four_are() {
        World three = world();
        World four = world();
        for (Pair pair : World.pairs(OURS)) {
            for (int game = 0; game < 11; game++) {
                four.film(Format.sideOut(11), pair, four.anyPair(THEIRS), 40);
                if (!pair.has(OURS.get(3))) {
                    three.film(Format.sideOut(11), pair, three.anyPair(THEIRS), 40);
                }
            }
        }
        assertThat(line(three.evidence(), "a1", "a2").verdict()).isEqualTo(Verdict.CANNOT_TELL_APART);
        assertThat(line(four.evidence(), "a1", "a2").verdict())
                .isIn(Verdict.ABOVE, Verdict.BELOW, Verdict.NO_DIFFERENCE);
    }

    @Test
    void a_few_rallies_with_somebody_else_hardly_tell_two_apart() {
        World world = world();
        for (int game = 0; game < 20; game++) {
            world.film(Format.sideOut(11), Pair.of("a1", "a2"), world.anyPair(THEIRS), 40);
        }
        for (Pair pair : World.pairs(OURS)) {
            if (!pair.equals(Pair.of("a1", "a2"))) {
                world.film(Format.sideOut(11), pair, world.anyPair(THEIRS), 4);
            }
        }
        assertThat(line(world.evidence(), "a1", "a2").verdict()).isEqualTo(Verdict.CANNOT_TELL_APART);
    }

    @Test
    void below_the_thresholds_there_is_not_enough_film() {
        World world = world();
        world.film(Format.sideOut(11), Pair.of("a1", "a2"), Pair.of("b1", "b2"), 20)
                .film(Format.sideOut(11), Pair.of("a1", "a3"), Pair.of("b1", "b2"), 19)
                .film(Format.sideOut(11), Pair.of("a4", "a3"), Pair.of("b3", "b4"), 399)
                .film(Format.sideOut(11), Pair.of("a4", "a2"), Pair.of("b3", "b4"), 40)
                .play(Format.sideOut(11), Pair.of("a1", "a4"), Pair.of("b3", "b4"), false);
        Evidence evidence = world.evidence();
        assertThat(line(evidence, "a1").verdict()).as("39 rallies").isEqualTo(Verdict.NOT_ENOUGH_FILM);
        assertThat(line(evidence, "a1").seen().games()).isEqualTo(3);
        assertThat(line(evidence, "a2").verdict()).as("60 rallies").isEqualTo(Verdict.FIRST_LOOK);
        assertThat(line(evidence, "a4").verdict())
                .as("439 rallies")
                .isIn(Verdict.ABOVE, Verdict.BELOW, Verdict.NO_DIFFERENCE);
        assertThat(line(evidence, "a3", "a4").verdict()).as("399 rallies").isEqualTo(Verdict.NOT_ENOUGH_FILM);
        assertThat(line(evidence, "a3", "a4").seen().against())
                .containsExactly(new Seen.Opponents(Pair.of("b3", "b4"), 1, 399));
    }

    /** Scores say next to nothing of what serving is worth, so its usual value may stand in for it. */
    @Test
    void the_worth_of_serving_hardly_matters_for_a_score() {
        double usual = tiewright.scoring.RubberChance.of(Format.sideOut(11), 1, serve(0.47, 3), serve(0.47, -3));
        for (double base : new double[] {0.39, 0.43, 0.51, 0.55}) {
            assertThat(tiewright.scoring.RubberChance.of(Format.sideOut(11), 1, serve(base, 3), serve(base, -3)))
                    .isCloseTo(usual, within(0.025));
        }
    }

    private static double serve(double base, double edge) {
        return 1 / (1 + Math.exp(-Math.log(base / (1 - base)) - RallyModel.LOGIT_PER_RALLY * edge));
    }
}
