package tiewright.lineup.decider;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.NormalDistribution;
import tiewright.conditions.DeciderKind;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Sheet;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Meetings;
import tiewright.lineup.Reason;
import tiewright.lineup.Wishes;
import tiewright.lineup.decider.DeciderAdvice.Candidate;
import tiewright.lineup.decider.DeciderAdvice.Sure;
import tiewright.lineup.decider.DeciderAdvice.Verdict;
import tiewright.lineup.game.MatrixGame;
import tiewright.rating.Estimate;
import tiewright.scoring.Format;

/**
 * The blind game of the decider, laid out and solved: a row for each pair of ours that may play it, a column for each of
 * theirs, each as strong as rest, the rubbers of the day and doubt leave it.
 */
final class DeciderGame {
    /** A pair counts as within noise of the best unless it is weaker with at least this chance. */
    private static final double SURE = 0.9;

    /** What a mark as hurt adds to the doubt about a pair, in rallies per 100: an assumption of ours. */
    private static final double HURT_SD = 3;

    private static final double TIRED = 0.5;

    private final LineupProblem problem;
    private final List<Pair> ours;
    private final List<Pair> theirs;
    private final Set<PlayerId> hurt;
    private final ToDoubleFunction<PlayerId> loss;
    private final Meetings meetings;
    private final double[][] payoff;
    private final MatrixGame solved;

    private DeciderGame(
            LineupProblem problem,
            List<Pair> ours,
            List<Pair> theirs,
            Set<PlayerId> hurt,
            ToDoubleFunction<PlayerId> loss) {
        this.problem = problem;
        this.ours = ours;
        this.theirs = theirs;
        this.hurt = hurt;
        this.loss = loss;
        this.meetings = new Meetings(problem);
        this.payoff = payoff();
        this.solved = MatrixGame.solve(payoff);
    }

    /** @param loss what a player has lost by then, in rallies per 100 */
    static DeciderAdvice advice(
            LineupProblem problem,
            Optional<Sheet> ourSheet,
            Optional<Sheet> theirSheet,
            Set<PlayerId> hurt,
            ToDoubleFunction<PlayerId> loss) {
        DeciderKind kind = problem.rules().decider();
        List<Pair> ours = DeciderPairs.allowed(kind, problem.ours(), ourSheet).stream()
                .filter(pair -> Wishes.allowInDecider(problem, pair))
                .toList();
        List<Pair> theirs = DeciderPairs.allowed(kind, problem.theirs(), theirSheet);
        if (kind == DeciderKind.NONE || ours.isEmpty() || theirs.isEmpty()) {
            double chance = kind == DeciderKind.NONE ? problem.rules().drawWorth() : ours.isEmpty() ? 0 : 1;
            return new DeciderAdvice(
                    List.of(),
                    chance,
                    Optional.empty(),
                    List.of(Reason.of("decider-nobody-named").with("kind", kind.code())));
        }
        return new DeciderGame(problem, ours, theirs, hurt, loss).advice();
    }

    private double[][] payoff() {
        Format scoring = problem.rules().deciderScoring();
        double[][] chances = new double[ours.size()][theirs.size()];
        for (int i = 0; i < chances.length; i++) {
            for (int j = 0; j < chances[i].length; j++) {
                chances[i][j] = problem.strengths().chance(scoring, 1, edge(ours.get(i), theirs.get(j)));
            }
        }
        return chances;
    }

    private double strength(Pair pair) {
        return Closers.strength(problem.rules().decider(), problem.strengths(), pair) - loss(pair);
    }

    private double loss(Pair pair) {
        return (loss.applyAsDouble(pair.first()) + loss.applyAsDouble(pair.second())) / 2;
    }

    private DeciderAdvice advice() {
        double[] weights = solved.row();
        Pair strongest =
                ours.stream().max(Comparator.comparingDouble(this::strength)).orElseThrow();
        List<Candidate> ordered = new ArrayList<>();
        for (int i = 0; i < ours.size(); i++) {
            ordered.add(candidate(ours.get(i), weights[i], strongest));
        }
        ordered.sort(Comparator.comparingDouble(Candidate::chance)
                .reversed()
                .thenComparing(Comparator.comparingDouble(Candidate::weight).reversed()));
        List<Candidate> ranked = IntStream.range(0, ordered.size())
                .mapToObj(i -> judged(ordered, i))
                .toList();
        double chance =
                ranked.stream().mapToDouble(one -> one.weight() * one.chance()).sum();
        return new DeciderAdvice(ranked, chance, Optional.of(sure()), notes(ranked));
    }

    /** The row whose worst entry is best. */
    private Sure sure() {
        int best = 0;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < payoff.length; i++) {
            double worst = java.util.Arrays.stream(payoff[i]).min().orElseThrow();
            if (worst > most) {
                best = i;
                most = worst;
            }
        }
        return new Sure(ours.get(best), most);
    }

    private List<Reason> notes(List<Candidate> ranked) {
        List<Reason> notes = new ArrayList<>();
        Candidate first = ranked.get(0);
        notes.add(Reason.of(first.verdict() == Verdict.BEST ? "decider-clear" : "decider-either")
                .with("pair", first.pair()));
        notes.add(Reason.of("decider-sure").with("pair", sure().pair()).with("chance", sure().guarantee()));
        List<PlayerId> near = near(ranked);
        List<PlayerId> ask = near.stream().filter(hurt::contains).toList();
        if (!ask.isEmpty()) {
            notes.add(Reason.of("decider-hurt").with("players", ask));
        }
        List<PlayerId> tired = near.stream()
                .filter(player ->
                        problem.freshness().loss(player) >= TIRED) // before a tie: not who is about to play it
                .toList();
        if (!tired.isEmpty()) {
            notes.add(Reason.of("decider-tired").with("players", tired));
        }
        return notes;
    }

    /** Everybody of a pair that may be the best, by code. */
    private static List<PlayerId> near(List<Candidate> ranked) {
        return ranked.stream()
                .filter(one -> one.verdict() != Verdict.BEHIND)
                .flatMap(one -> java.util.stream.Stream.of(
                        one.pair().first(), one.pair().second()))
                .distinct()
                .sorted()
                .toList();
    }

    /** Mean and ends of the chance against their mix; their mix is nearly always a single pair. */
    private Candidate candidate(Pair pair, double weight, Pair strongest) {
        double[] against = solved.column();
        Format scoring = problem.rules().deciderScoring();
        double[] ends = new double[3];
        for (int j = 0; j < against.length; j++) {
            if (against[j] > 0) {
                Estimate edge = edge(pair, theirs.get(j));
                ends[0] += against[j] * problem.strengths().chance(scoring, 1, edge);
                ends[1] += against[j] * problem.strengths().plainChance(scoring, 1, edge.low());
                ends[2] += against[j] * problem.strengths().plainChance(scoring, 1, edge.high());
            }
        }
        double asBest = pair.equals(strongest) ? 1 : chanceAsStrong(edge(pair, strongest));
        return new Candidate(
                0, pair, weight, ends[0], ends[1], ends[2], asBest, Verdict.BEHIND, loss(pair), isHurt(pair));
    }

    private boolean isHurt(Pair pair) {
        return hurt.stream().anyMatch(pair::has);
    }

    /** As fresh as they are; the doubt is that of the ratings, and more where somebody is marked hurt. */
    private Estimate edge(Pair one, Pair other) {
        Estimate rated = meetings.edgeInDecider(one, other);
        double marked = isHurt(one) != isHurt(other) ? HURT_SD : 0;
        return Estimate.of(rated.mean() - loss(one) + loss(other), Math.hypot(rated.sd(), marked));
    }

    private static double chanceAsStrong(Estimate ahead) {
        if (ahead.sd() == 0) {
            return ahead.mean() > 0 ? 1 : ahead.mean() < 0 ? 0 : 0.5;
        }
        return new NormalDistribution().cumulativeProbability(ahead.mean() / ahead.sd());
    }

    private static Candidate judged(List<Candidate> ordered, int place) {
        Candidate it = ordered.get(place);
        boolean near = it.asBest() > 1 - SURE;
        boolean alone =
                ordered.stream().filter(other -> other.asBest() > 1 - SURE).count() == 1;
        Verdict verdict = !near ? Verdict.BEHIND : alone ? Verdict.BEST : Verdict.EITHER;
        return new Candidate(
                place + 1,
                it.pair(),
                it.weight(),
                it.chance(),
                it.low(),
                it.high(),
                it.asBest(),
                verdict,
                it.loss(),
                it.hurt());
    }
}
