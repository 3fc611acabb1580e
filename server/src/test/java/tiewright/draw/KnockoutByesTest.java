package tiewright.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Seeding;

/** ITF Pro Circuit Rulebook 2015, Women's Circuit, p. 63: byes go to the seeds in order, the rest are evenly spread. */
class KnockoutByesTest {
    /** The winners of so many pools, drawn from sixty spoken seeds; the first of pool A is seed 1. */
    private static List<KnockoutPlan> draws(int pools) {
        List<String> names =
                IntStream.range(0, pools).mapToObj(PoolDraw::poolName).toList();
        KnockoutDraw.Shape shape = new KnockoutDraw.Shape(names, 1, Seeding.TENNIS, false);
        return IntStream.range(0, 60)
                .mapToObj(i -> ((KnockoutResult.Planned) KnockoutDraw.draw(shape, "oak " + i)).plan())
                .toList();
    }

    /** Twelve clubs on 16 lines: seeds 1 to 4, on lines 1, 16, 5 and 12, meet nobody in the first round. */
    @Test
    void four_byes_go_to_the_four_seeds() {
        for (KnockoutPlan plan : draws(12)) {
            Set<Integer> byes = IntStream.rangeClosed(1, 16)
                    .boxed()
                    .filter(line -> plan.lines().get(line - 1).isEmpty())
                    .collect(Collectors.toSet());
            assertThat(byes).as(plan.seed()).containsExactlyInAnyOrder(2, 15, 6, 11);
        }
    }

    /** Eleven clubs on 16 lines: the fifth bye stands beside none of the others and leaves no quarter with more than two. */
    @Test
    void byes_beyond_the_seeds_are_spread() {
        for (KnockoutPlan plan : draws(11)) {
            for (int quarter = 0; quarter < 4; quarter++) {
                assertThat(plan.lines().subList(4 * quarter, 4 * quarter + 4).stream()
                                .filter(Optional::isEmpty)
                                .count())
                        .as("%s, quarter %d", plan.seed(), quarter + 1)
                        .isBetween(1L, 2L);
            }
            for (int match = 0; match < 8; match++) {
                assertThat(plan.lines().subList(2 * match, 2 * match + 2))
                        .as(plan.seed())
                        .isNotEqualTo(List.of(Optional.empty(), Optional.empty()));
            }
        }
    }
}
