package tiewright.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Seeding;
import tiewright.event.SlotSource;

/** Where seeds and byes stand in a knockout, by two published rules. Each case is drawn from sixty spoken seeds. */
class SeedLinesTest {
  private static final int DRAWS = 60;

  /** Winners of so many pools; the first of pool A is seed 1. */
  private static KnockoutDraw.Shape winnersOf(int pools, Seeding seeding) {
    return new KnockoutDraw.Shape(pools(pools), 1, seeding, false);
  }

  private static List<String> pools(int count) {
    return IntStream.range(0, count).mapToObj(i -> String.valueOf((char) ('A' + i))).toList();
  }

  private static List<KnockoutPlan> draws(KnockoutDraw.Shape shape) {
    return IntStream.range(0, DRAWS)
        .mapToObj(i -> ((KnockoutResult.Planned) KnockoutDraw.draw(shape, "oak " + i)).plan())
        .toList();
  }

  /** Every line, from 1, on which these seeds stood in one of the draws. */
  private static Set<Integer> lines(List<KnockoutPlan> draws, int fromSeed, int toSeed) {
    List<String> pools = pools(16);
    return draws.stream()
        .flatMap(plan -> IntStream.rangeClosed(fromSeed, toSeed)
            .mapToObj(seed -> 1 + plan.lines().indexOf(Optional.of(SlotSource.place(pools.get(seed - 1), 1)))))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** ITF Pro Circuit Rulebook 2015, Women's Circuit, p. 63: 1 on line 1, 2 on line 16, 3 and 4 drawn for lines 5 and 12. */
  @Test
  void four_seeds_of_a_tennis_draw_of_16() {
    List<KnockoutPlan> draws = draws(winnersOf(16, Seeding.TENNIS));
    assertThat(lines(draws, 1, 1)).containsExactly(1);
    assertThat(lines(draws, 2, 2)).containsExactly(16);
    assertThat(lines(draws, 3, 3)).containsExactly(5, 12);
    assertThat(lines(draws, 4, 4)).containsExactly(5, 12);
  }

  /** The same page: byes go to the seeds in order. Twelve of sixteen lines: seeds 1 to 4 meet nobody in the first round. */
  @Test
  void byes_of_a_tennis_draw_go_to_the_seeds_in_order() {
    for (KnockoutPlan plan : draws(winnersOf(12, Seeding.TENNIS))) {
      Set<Integer> byes = IntStream.rangeClosed(1, 16).boxed().filter(line -> plan.lines().get(line - 1).isEmpty())
          .collect(Collectors.toSet());
      assertThat(byes).as(plan.seed()).containsExactlyInAnyOrder(2, 15, 6, 11);
    }
  }

  /** The same page: beyond the seeds byes are evenly spread. Six of eight lines: one bye in each half. */
  @Test
  void byes_of_a_small_tennis_draw_are_spread_over_its_halves() {
    for (KnockoutPlan plan : draws(winnersOf(6, Seeding.TENNIS))) {
      assertThat(plan.lines().subList(0, 4)).as(plan.seed()).containsOnlyOnce(Optional.empty());
      assertThat(plan.lines().subList(4, 8)).as(plan.seed()).containsOnlyOnce(Optional.empty());
    }
  }

  /** ITTF Regulations 3.6.2 (rule known from a translation): 3-4 at the bottom of the first half and the top of the second. */
  @Test
  void four_seeds_of_a_table_tennis_draw_of_8() {
    List<KnockoutPlan> draws = draws(winnersOf(8, Seeding.HALVES));
    assertThat(lines(draws, 1, 1)).containsExactly(1);
    assertThat(lines(draws, 2, 2)).containsExactly(8);
    assertThat(lines(draws, 3, 4)).containsExactly(4, 5);
  }

  /** ITTF Regulations 3.6.2: 5-8 at the bottoms of the odd quarters and the tops of the even ones. */
  @Test
  void eight_seeds_of_a_table_tennis_draw_of_16() {
    List<KnockoutPlan> draws = draws(winnersOf(16, Seeding.HALVES));
    assertThat(lines(draws, 1, 1)).containsExactly(1);
    assertThat(lines(draws, 2, 2)).containsExactly(16);
    assertThat(lines(draws, 3, 4)).containsExactly(8, 9);
    for (int seed = 5; seed <= 8; seed++) {
      assertThat(lines(draws, seed, seed)).as("seed %d", seed).containsExactly(4, 5, 12, 13);
    }
  }
}
