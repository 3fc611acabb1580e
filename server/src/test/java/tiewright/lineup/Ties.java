package tiewright.lineup;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import tiewright.conditions.DeciderKind;
import tiewright.conditions.OrderOfStrength;
import tiewright.conditions.Plays;
import tiewright.conditions.RubberKind;
import tiewright.conditions.RubberKinds;
import tiewright.conditions.RubberWeights;
import tiewright.conditions.TieRubbers;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.rating.Estimate;
import tiewright.rating.Prior;
import tiewright.rating.Rating;
import tiewright.rating.Strengths;
import tiewright.scoring.Format;

/** Ties for tests: players a1, a2, … against b1, b2, …, ranked in that order. */
public final class Ties {
    private Ties() {}

    public static TieRules rules(int rubbers) {
        return rules(rubbers, OrderOfStrength.NONE);
    }

    public static TieRules rules(int rubbers, OrderOfStrength order) {
        return rules(rubbers, 1, order);
    }

    public static TieRules rules(int rubbers, int most, OrderOfStrength order) {
        return rules(rubbers, most, order, DeciderKind.ANY_TWO);
    }

    public static TieRules rules(int rubbers, int most, OrderOfStrength order, DeciderKind decider) {
        return new TieRules(
                TieRubbers.alike(rubbers), most, order, Format.sideOut(11), 1, decider, Format.sideOut(11), 0.5);
    }

    /** The same rules with rubbers of these kinds. */
    public static TieRules withKinds(TieRules rules, List<RubberKind> kinds) {
        return with(rules, new TieRubbers(kinds.size(), rules.each().weights(), new RubberKinds(kinds)));
    }

    private static TieRules with(TieRules rules, TieRubbers each) {
        return new TieRules(
                each,
                rules.mostPerPlayer(),
                rules.order(),
                rules.scoring(),
                rules.bestOf(),
                rules.decider(),
                rules.deciderScoring(),
                rules.drawWorth());
    }

    /** The same squad, each member stating something by chance. */
    public static Squad stating(Squad squad, Random random) {
        return new Squad(squad.members().stream()
                .map(member -> new Squad.Member(
                        member.id(),
                        member.rank(),
                        member.present(),
                        random.nextInt(6) == 0 ? Optional.empty() : Optional.of(Plays.values()[random.nextInt(2)])))
                .toList());
    }

    /** The same tie with rubbers of these weights. */
    public static LineupProblem weighing(LineupProblem problem, Integer... weights) {
        TieRules rules = problem.rules();
        return new LineupProblem(
                with(
                        rules,
                        new TieRubbers(
                                rules.rubbers(),
                                new RubberWeights(List.of(weights)),
                                rules.each().kinds())),
                problem.ours(),
                problem.theirs(),
                problem.belief(),
                problem.wishes(),
                problem.purpose(),
                problem.freshness(),
                problem.strengths());
    }

    /** Full squads against each other without wishes, the other club straight. */
    public static LineupProblem problem(int rubbers, int players, Strengths strengths) {
        return LineupProblem.of(
                rules(rubbers), squad("a", players), squad("b", players), strengths, LineupProblem.Against.STRAIGHT, 1);
    }

    public static Squad squad(String club, int players) {
        return new Squad(IntStream.rangeClosed(1, players)
                .mapToObj(i -> Squad.Member.of(club + i, i))
                .toList());
    }

    public static Strengths even() {
        return Rating.fit(Prior.none(), List.of()).atBestGuess();
    }

    /** Forms of a1, a2, …, sure, everybody else even. */
    public static Strengths forms(double... ofOurs) {
        return forms(0, ofOurs);
    }

    public static Strengths forms(double sd, double[] ofOurs) {
        Map<PlayerId, Estimate> forms = new HashMap<>();
        IntStream.range(0, ofOurs.length)
                .forEach(i -> forms.put(PlayerId.of("a" + (i + 1)), Estimate.of(ofOurs[i], sd)));
        return Rating.fit(new Prior(forms, Map.of()), List.of()).atBestGuess();
    }

    /** Forms of both clubs and extras of our pairs, drawn; chances by the best guess. */
    public static Strengths random(Random random, int players) {
        return doubted(random, players).atBestGuess();
    }

    /** The same, chances by the mean over what the strengths could be. */
    public static Strengths doubted(Random random, int players) {
        Map<PlayerId, Estimate> forms = new HashMap<>();
        Map<Pair, Estimate> extras = new HashMap<>();
        for (int i = 1; i <= players; i++) {
            forms.put(PlayerId.of("a" + i), Estimate.of(4 * random.nextGaussian(), 3));
            forms.put(PlayerId.of("b" + i), Estimate.of(4 * random.nextGaussian(), 3));
            for (int j = i + 1; j <= players; j++) {
                if (random.nextInt(3) == 0) {
                    extras.put(Pair.of("a" + i, "a" + j), Estimate.of(3 * random.nextGaussian(), 2));
                }
            }
        }
        return Rating.fit(new Prior(forms, extras), List.of());
    }
}
