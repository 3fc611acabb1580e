package tiewright.conditions;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** The names that a {@code level_teams} value may hold. */
public final class LevelSteps {
    /** The four procedures with a name of their own. */
    public static final List<String> NAMED =
            List.of("overall-difference", "among-level-ratio", "head-to-head-points", "rubbers-won");

    private static final List<String> FIGURES = List.of(
            "rubbers-difference",
            "games-difference",
            "points-difference",
            "rubbers-won",
            "games-won",
            "points-won",
            "rubbers-ratio",
            "games-ratio",
            "points-ratio");

    private LevelSteps() {}

    /** Every step of a list: figures over all ties or only among the level clubs, and the steps that steer. */
    public static Set<String> steps() {
        Set<String> steps = new TreeSet<>(FIGURES);
        FIGURES.forEach(figure -> steps.add(figure + "-among"));
        steps.addAll(List.of("head-to-head", "head-to-head-among", "restart", "two-left-head-to-head", "lots"));
        steps.add("ties-won-among");
        return steps;
    }

    static boolean isLegal(String value) {
        return NAMED.contains(value) || (!value.isEmpty() && steps().containsAll(List.of(value.split(">", -1))));
    }
}
