package tiewright.lineup;

import java.util.List;
import tiewright.event.Pair;
import tiewright.event.PlayerId;

/** Which pairs do the wishes leave? */
final class Wishes {
  private Wishes() {}

  static boolean allow(LineupProblem problem, Pair pair) {
    return problem.wishes().stream().noneMatch(wish -> bars(wish, problem.ours(), pair));
  }

  static boolean bars(Wish wish, Squad squad, Pair pair) {
    PlayerId one = wish.players().get(0);
    PlayerId other = wish.players().get(wish.players().size() - 1);
    return switch (wish.kind()) {
      case TOGETHER -> isBinding(wish, squad) && pair.has(one) != pair.has(other);
      case APART -> pair.has(one) && pair.has(other);
      case MUST_REST -> pair.has(one);
      case MUST_PLAY -> false;
    };
  }

  /** A wish for two players to play together binds nobody while one of them is absent. */
  static boolean isBinding(Wish wish, Squad squad) {
    return wish.kind() != Wish.Kind.TOGETHER || wish.players().stream().allMatch(squad::isPresent);
  }

  static List<Wish> idle(LineupProblem problem) {
    return problem.wishes().stream().filter(wish -> !isBinding(wish, problem.ours())).toList();
  }
}
