package tiewright.lineup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Which wishes cannot hold together under the conditions? */
final class Conflict {
  private static final long MOST_STEPS = 100_000;
  private static final int MOST_WISHES = 12;

  private Conflict() {}

  /**
   * A smallest set of wishes that no sheet can grant; the earliest such set in the order of the wishes.
   *
   * @return empty if they all can hold, or if no sheet at all is possible
   */
  static List<Wish> smallest(LineupProblem problem) {
    List<Wish> wishes = problem.wishes();
    if (canHold(problem, wishes) || !canHold(problem, List.of())) {
      return List.of();
    }
    return wishes.size() <= MOST_WISHES ? smallestOf(problem, wishes) : thinned(problem, wishes);
  }

  private static List<Wish> smallestOf(LineupProblem problem, List<Wish> wishes) {
    Comparator<Integer> small = Comparator.comparingInt(Integer::bitCount);
    Optional<List<Wish>> found =
        IntStream.range(1, 1 << wishes.size()).boxed().sorted(small)
            .map(chosen -> IntStream.range(0, wishes.size()).filter(i -> (chosen & 1 << i) != 0).mapToObj(wishes::get).toList())
            .filter(some -> !canHold(problem, some))
            .findFirst();
    return found.orElseThrow();
  }

  /** With many wishes: leaves out one after the other for as long as the rest still cannot hold. None can then be left out. */
  private static List<Wish> thinned(LineupProblem problem, List<Wish> wishes) {
    List<Wish> rest = new ArrayList<>(wishes);
    for (Wish wish : wishes) {
      rest.remove(wish);
      if (canHold(problem, rest)) {
        rest.add(wish);
      }
    }
    return List.copyOf(rest);
  }

  /** True also when it takes too long to tell. */
  private static boolean canHold(LineupProblem problem, List<Wish> wishes) {
    return SheetSearch.run(new Board(problem.withWishes(wishes)), true, MOST_STEPS, line -> false) != SheetSearch.End.ALL_SEEN;
  }
}
