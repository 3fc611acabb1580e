package tiewright.lineup;

import java.util.List;
import java.util.Optional;
import tiewright.conditions.DeciderKind;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Sheet;

/** Which pairs do the wishes leave, and which sheets grant them? */
public final class Wishes {
    private Wishes() {}

    /** Wishes are about rubbers; apart holds in the decider too, unless its two play it one at a time. */
    public static boolean allowInDecider(LineupProblem problem, Pair pair) {
        return problem.wishes().stream()
                .noneMatch(wish -> bindsDecider(wish, problem.rules().decider()) && bars(wish, problem.ours(), pair));
    }

    private static boolean bindsDecider(Wish wish, DeciderKind kind) {
        return switch (wish.kind()) {
            case TOGETHER, MUST_PLAY -> false;
            case APART -> kind != DeciderKind.SINGLES_TURNS;
            case MUST_REST -> true;
        };
    }

    public static boolean bars(Wish wish, Squad squad, Pair pair) {
        PlayerId one = wish.players().get(0);
        PlayerId other = wish.players().get(wish.players().size() - 1);
        return switch (wish.kind()) {
            case TOGETHER -> isBinding(wish, squad) && pair.has(one) != pair.has(other);
            case APART -> pair.has(one) && pair.has(other);
            case MUST_REST -> pair.has(one);
            case MUST_PLAY -> false;
        };
    }

    public static boolean grants(Wish wish, Squad squad, Sheet sheet) {
        boolean barred =
                sheet.pairs().values().stream().flatMap(Optional::stream).anyMatch(pair -> bars(wish, squad, pair));
        return !barred
                && (wish.kind() != Wish.Kind.MUST_PLAY
                        || sheet.players().contains(wish.players().get(0)));
    }

    /** A wish for two players to play together binds nobody while one of them is absent. */
    public static boolean isBinding(Wish wish, Squad squad) {
        return wish.kind() != Wish.Kind.TOGETHER || wish.players().stream().allMatch(squad::isPresent);
    }

    public static List<Wish> idle(LineupProblem problem) {
        return problem.wishes().stream()
                .filter(wish -> !isBinding(wish, problem.ours()))
                .toList();
    }
}
