package tiewright.lineup.decider;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.conditions.DeciderKind;
import tiewright.event.Pair;
import tiewright.lineup.Belief;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Wishes;
import tiewright.rating.RallyModel;

/**
 * Our chance in the decider, should the rubbers finish level: our best pair against theirs as fresh as each would be, which is
 * what this blind game is worth as long as a stronger pair is stronger against everybody. Without a decider there is none.
 */
public final class LevelWorth {
    private final LineupProblem problem;
    private final Optional<Closers> ours;
    private final int[] first; // of each pair of ours, as the closers number players; below 0 = never sent
    private final int[] second;
    private final List<Optional<Sent>> theirPair = new ArrayList<>(); // by sheet of theirs
    private final int[] theirs; // by sheet of theirs: which of the different strengths
    private final double[] theirStrengths;
    private final Map<Double, Double> chances = new HashMap<>();

    public LevelWorth(LineupProblem problem, List<Pair> pairs) {
        this.problem = problem;
        DeciderKind kind = problem.rules().decider();
        List<Belief.Expected> expected = problem.belief().sheets();
        this.theirs = new int[expected.size()];
        if (kind == DeciderKind.NONE) {
            this.ours = Optional.empty();
            this.first = this.second = new int[0];
            this.theirStrengths = new double[0];
            expected.forEach(sheet -> theirPair.add(Optional.empty()));
            return;
        }
        List<Pair> sent = DeciderPairs.all(problem.ours()).stream()
                .filter(pair -> Wishes.allowInDecider(problem, pair))
                .toList();
        Closers own = new Closers(kind, problem.strengths(), problem.freshness(), sent);
        this.ours = Optional.of(own);
        this.first = pairs.stream().mapToInt(pair -> own.player(pair.first())).toArray();
        this.second = pairs.stream().mapToInt(pair -> own.player(pair.second())).toArray();
        this.theirStrengths =
                theirs(new Closers(kind, problem.strengths(), problem.freshness(), DeciderPairs.all(problem.theirs())));
    }

    /** Who plays it for them after each of their sheets, and the different strengths that this gives. */
    private double[] theirs(Closers closers) {
        List<Double> different = new ArrayList<>();
        for (int i = 0; i < theirs.length; i++) {
            int[] rubbers = closers.rubbers(problem.belief().sheets().get(i).sheet());
            int best = closers.best(rubbers);
            double strength = best == Closers.NOBODY ? Double.NEGATIVE_INFINITY : closers.strength(best, rubbers);
            theirPair.add(closers.sent(rubbers));
            if (!different.contains(strength)) {
                different.add(strength);
            }
            theirs[i] = different.indexOf(strength);
        }
        return different.stream().mapToDouble(strength -> strength).toArray();
    }

    /**
     * Our chance after this sheet of ours, for each sheet of theirs; 0 where there is no decider.
     *
     * @param line the numbers of its pairs, rubber 1 first; below 0 = nobody
     */
    public double[] of(int[] line) {
        double[] all = new double[theirs.length];
        if (ours.isEmpty()) {
            return all;
        }
        int[] rubbers = rubbers(line);
        int best = ours.get().best(rubbers);
        double[] different = new double[theirStrengths.length];
        for (int i = 0; i < different.length; i++) {
            different[i] = best == Closers.NOBODY ? 0 : chance(ours.get().strength(best, rubbers) - theirStrengths[i]);
        }
        Arrays.setAll(all, i -> different[theirs[i]]);
        return all;
    }

    private double chance(double edge) {
        if (edge == Double.POSITIVE_INFINITY) {
            return 1;
        }
        return chances.computeIfAbsent(
                edge, e -> RallyModel.rubberChance(problem.rules().deciderScoring(), 1, e));
    }

    private int[] rubbers(int[] line) {
        int[] rubbers = new int[ours.orElseThrow().players()];
        for (int rubber = 0; rubber < line.length; rubber++) {
            if (line[rubber] >= 0) {
                mark(rubbers, first[line[rubber]], rubber);
                mark(rubbers, second[line[rubber]], rubber);
            }
        }
        return rubbers;
    }

    private static void mark(int[] rubbers, int player, int rubber) {
        if (player >= 0) {
            rubbers[player] |= 1 << rubber;
        }
    }

    /**
     * A pair in the decider.
     *
     * @param loss how much of their strength the two have lost by then, in rallies per 100
     */
    public record Sent(Pair pair, double loss) {}

    /** Who would play it for us after this sheet; empty where no pair is named for it. */
    public Optional<Sent> ourPair(int[] line) {
        return ours.flatMap(closers -> closers.sent(rubbers(line)));
    }

    /** Who would play it for them after that sheet of theirs. */
    public Optional<Sent> theirPair(int sheet) {
        return theirPair.get(sheet);
    }
}
