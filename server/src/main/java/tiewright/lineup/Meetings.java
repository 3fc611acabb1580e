package tiewright.lineup;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tiewright.conditions.DeciderKind;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.rating.Draws;
import tiewright.rating.EdgeCurve;
import tiewright.rating.Estimate;
import tiewright.rating.Joint;
import tiewright.rating.Rated;
import tiewright.scoring.Format;

/**
 * Our chances wherever two pairs of a tie may meet, in the rubbers and in the decider, each with its doubt; each worked out once, by
 * whoever asks first. Not for several threads.
 */
public final class Meetings {
    private static final double NUDGE = 0.5; // rallies per 100, for slopes

    private final LineupProblem problem;
    private final Joint joint;
    private final EdgeCurve rubber;
    private final EdgeCurve decider;
    private final Map<List<Pair>, Double> rises = new HashMap<>();
    private final Map<Met, DrawnChance> met = new HashMap<>();

    /** @param tired by how much more theirs are tired than ours */
    private record Met(Rated ours, Rated theirs, boolean decider, double tired) {}

    public Meetings(LineupProblem problem) {
        this(problem, List.of());
    }

    /** @param others pairs that stand in no squad any more, where they have been named */
    public Meetings(LineupProblem problem, Collection<Pair> others) {
        this.problem = problem;
        TieRules rules = problem.rules();
        this.joint = problem.strengths().joint(pairs(problem, others));
        this.rubber = problem.strengths().curve(rules.scoring(), rules.bestOf());
        this.decider = problem.strengths().curve(rules.deciderScoring(), 1);
    }

    /** Every pair of either club, whoever is here, so that all questions about a tie are answered by the same draws. */
    private static List<Rated> pairs(LineupProblem problem, Collection<Pair> others) {
        Set<Pair> pairs = new LinkedHashSet<>();
        for (Squad squad : List.of(problem.ours(), problem.theirs())) {
            List<PlayerId> players =
                    squad.members().stream().map(Squad.Member::id).toList();
            for (int i = 0; i < players.size(); i++) {
                for (int j = i + 1; j < players.size(); j++) {
                    pairs.add(Pair.of(players.get(i), players.get(j)));
                }
            }
        }
        problem.belief()
                .sheets()
                .forEach(expected -> expected.sheet().pairs().values().stream()
                        .flatMap(Optional::stream)
                        .sorted()
                        .forEach(pairs::add));
        pairs.addAll(others);
        List<Rated> rated = new ArrayList<>(pairs.stream().map(Rated::together).toList());
        if (problem.rules().decider() == DeciderKind.SINGLES_TURNS) {
            pairs.forEach(pair -> rated.add(Rated.inTurns(pair)));
        }
        return rated;
    }

    /** In a rubber, as fresh as both are when the tie begins. */
    public DrawnChance rubber(Pair own, Pair other) {
        Freshness fresh = problem.freshness();
        double tired = fresh.loss(other) - fresh.loss(own);
        return met.computeIfAbsent(new Met(Rated.together(own), Rated.together(other), false, tired), this::chance);
    }

    private DrawnChance chance(Met met) {
        TieRules rules = problem.rules();
        Format scoring = met.decider() ? rules.deciderScoring() : rules.scoring();
        double mean = problem.strengths()
                .chance(scoring, met.decider() ? 1 : rules.bestOf(), edge(met.ours(), met.theirs(), met.tired()));
        EdgeCurve curve = met.decider() ? decider : rubber;
        return new DrawnChance(mean, () -> draws(curve, met.ours(), met.theirs(), met.tired()));
    }

    /** By how much that chance grows for each rally in 100 that our pair is stronger. */
    public double rise(Pair own, Pair other) {
        return rises.computeIfAbsent(List.of(own, other), any -> {
            Estimate edge = edge(
                    Rated.together(own),
                    Rated.together(other),
                    problem.freshness().loss(other) - problem.freshness().loss(own));
            return (chance(edge, NUDGE) - chance(edge, -NUDGE)) / (2 * NUDGE);
        });
    }

    private double chance(Estimate edge, double more) {
        TieRules rules = problem.rules();
        return problem.strengths().chance(rules.scoring(), rules.bestOf(), Estimate.of(edge.mean() + more, edge.sd()));
    }

    /**
     * In the decider.
     *
     * @param loss what our pair has lost by then, in rallies per 100; {@code otherLoss} what theirs has
     */
    public DrawnChance decider(Pair own, double loss, Pair other, double otherLoss) {
        return met.computeIfAbsent(new Met(inDecider(own), inDecider(other), true, otherLoss - loss), this::chance);
    }

    /** In the decider, as fresh as both are when the tie begins. */
    public DrawnChance decider(Pair own, Pair other) {
        Freshness fresh = problem.freshness();
        return decider(own, fresh.loss(own), other, fresh.loss(other));
    }

    /** How much stronger the first of two pairs is in the decider, both rested. */
    public Estimate edgeInDecider(Pair one, Pair other) {
        return joint.edge(inDecider(one), inDecider(other));
    }

    private Rated inDecider(Pair pair) {
        return new Rated(pair, problem.rules().decider() != DeciderKind.SINGLES_TURNS);
    }

    private Estimate edge(Rated ours, Rated theirs, double tired) {
        Estimate rated = joint.edge(ours, theirs);
        return Estimate.of(rated.mean() + tired, rated.sd());
    }

    private double[] draws(EdgeCurve curve, Rated ours, Rated theirs, double tired) {
        double[] own = joint.draws(ours);
        double[] other = joint.draws(theirs);
        double[] chances = new double[Draws.COUNT];
        for (int i = 0; i < chances.length; i++) {
            chances[i] = curve.chance(own[i] - other[i] + tired);
        }
        return chances;
    }
}
