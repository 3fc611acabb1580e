package tiewright.rating;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.scoring.Format;

/**
 * Simulation-based calibration (Cook, Gelman and Rubin, J. Comput. Graph. Statist. 15, 2006, from memory): strengths are
 * thrown from the prior, games played by dice, and what the fit says is held against what was thrown. {@code -Dmany=true}
 * makes the runs many.
 */
class CalibrationTest {
    private static final boolean MANY = Boolean.getBoolean("many");
    private static final List<Format> FORMATS = List.of(Format.sideOut(11), Format.rally(15), Format.sideOut(7));

    /** How often the truth was inside. */
    private static final class Held {
        private int inside;
        private int all;

        void see(Estimate estimate, double truth) {
            all++;
            inside += truth >= estimate.low() && truth <= estimate.high() ? 1 : 0;
        }

        double share() {
            return (double) inside / all;
        }
    }

    @Test
    void intervals_of_95_percent_hold_93_to_97() {
        Seed seed = Seed.fresh();
        Map<String, Held> held = new HashMap<>();
        int runs = MANY ? 3000 : 700;
        for (int run = 0; run < runs; run++) {
            Random random = new Random(seed.value() * 1_000_003 + run);
            List<PlayerId> ours = World.club("a", 6);
            List<PlayerId> theirs = World.club("b", 6);
            Map<PlayerId, Estimate> judged = new HashMap<>();
            ours.forEach(player -> judged.put(player, Estimate.of(4 * random.nextGaussian(), Prior.RATED_FORM_SD)));
            Prior prior = new Prior(judged, Map.of());
            World world = World.from(prior, random, List.of(ours, theirs));
            for (int game = 0; game < 40; game++) {
                world.play(FORMATS.get(game % 3), world.anyPair(ours), world.anyPair(theirs), game % 4 == 0);
            }
            Strengths found = Rating.fit(prior, world.evidence());
            for (List<PlayerId> club : List.of(ours, theirs)) {
                club.forEach(player -> see(held, "form", found.form(player), world.form(player)));
                World.pairs(club).forEach(pair -> {
                    see(held, "extra", found.extra(pair), world.extra(pair));
                    see(held, "rating", found.rating(pair), world.rating(pair));
                });
            }
            for (int i = 0; i < 10; i++) {
                Pair one = world.anyPair(ours);
                Pair other = world.anyPair(theirs);
                see(held, "edge", found.edge(one, other), world.rating(one) - world.rating(other));
            }
            for (Format.Kind kind : Format.Kind.values()) {
                found.serving(kind).ifPresent(estimate -> see(held, "serving", estimate, world.serve(kind)));
            }
        }
        held.forEach((what, count) -> System.out.printf("%s: %.4f of %d%n", what, count.share(), count.all));
        assertThat(held).hasSize(5);
        held.forEach((what, count) ->
                assertThat(count.share()).as("%s, %s", what, seed).isBetween(0.93, 0.97));
    }

    private static void see(Map<String, Held> held, String what, Estimate estimate, double truth) {
        held.computeIfAbsent(what, any -> new Held()).see(estimate, truth);
    }

    /** Eight players, every pair 400 rallies against changing opponents, all of them even: no more than 5 % of pairs look special. */
    @Test
    void equal_pairs_are_seldom_called_special() {
        Seed seed = Seed.fresh();
        int flagged = 0;
        int all = 0;
        int runs = 200;
        for (int run = 0; run < runs; run++) {
            for (Ratings.Line line : special(new Random(seed.value() * 1_000_003 + run), 0)) {
                all++;
                assertThat(line.verdict()).isIn(Verdict.ABOVE, Verdict.BELOW, Verdict.NO_DIFFERENCE);
                flagged += line.verdict() == Verdict.NO_DIFFERENCE ? 0 : 1;
            }
        }
        System.out.printf("flagged %d of %d equal pairs%n", flagged, all);
        assertThat(all).isEqualTo(runs * 28);
        assertThat((double) flagged / all).as("%s", seed).isLessThanOrEqualTo(0.05);
    }

    /** The same with one pair that wins ten rallies in a hundred more than its players would: found in at least 80 % of the runs. */
    @Test
    void a_pair_that_is_ten_in_a_hundred_better_is_mostly_found() {
        Seed seed = Seed.fresh();
        int found = 0;
        int runs = 200;
        for (int run = 0; run < runs; run++) {
            List<Ratings.Line> lines = special(new Random(seed.value() * 1_000_003 + run), 10);
            found += lines.get(0).verdict() == Verdict.ABOVE ? 1 : 0;
        }
        System.out.printf("found %d of %d planted pairs%n", found, runs);
        assertThat((double) found / runs).as("%s", seed).isGreaterThanOrEqualTo(0.8);
    }

    /** The chemistry of the pairs of the first club; the first of them has this extra. */
    private static List<Ratings.Line> special(Random random, double extra) {
        List<PlayerId> ours = World.club("a", 8);
        List<PlayerId> theirs = World.club("b", 8);
        World world = World.even(random, List.of(ours, theirs))
                .plant(World.pairs(ours).get(0), extra);
        for (Pair pair : World.pairs(ours)) {
            for (int game = 0; game < 10; game++) {
                world.film(Format.sideOut(11), pair, world.anyPair(theirs), 40);
            }
        }
        return Ratings.of(Prior.none(), world.evidence(), List.of(ours)).lines().stream()
                .filter(line -> line.kind() == Ratings.Kind.CHEMISTRY)
                .toList();
    }
}
