package tiewright.lineup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import tiewright.conditions.DeciderKind;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Sheet;
import tiewright.rating.Estimate;
import tiewright.rating.RallyModel;

/**
 * Who should play the decider? A small blind game: our pairs that may play it against theirs.
 *
 * @param candidates all of them, the best first; empty where nobody is named (no decider, singles in turns, nobody here)
 * @param chance what the game is worth: our chance if both sides choose well
 */
public record DeciderAdvice(List<Candidate> candidates, double chance, List<Reason> notes) {
  /** A pair counts as within noise of the best unless it is weaker with at least this chance. */
  private static final double SURE = 0.9;

  public DeciderAdvice {
    candidates = List.copyOf(candidates);
    notes = List.copyOf(notes);
  }

  /**
   * One pair.
   *
   * @param weight how often to send it; 0 = never
   * @param chance against the mix that is best for them
   * @param low lower end of the 95 % interval from the doubt about the strengths
   * @param asBest chance that it is at least as strong as the first pair
   * @param hurt one of the two is marked hurt: ask before naming, nobody is barred
   */
  public record Candidate(
      int rank, Pair pair, double weight, double chance, double low, double high, double asBest, Verdict verdict, boolean hurt) {}

  /** What to make of a pair. */
  public enum Verdict {
    /** The only pair within reach of the best. */
    BEST("best"),
    /** Within noise of the best: choose who wants it. */
    EITHER("either"),
    /** Weaker, as far as anybody can tell. */
    BEHIND("behind");

    private final String code;

    Verdict(String code) {
      this.code = code;
    }

    public String code() {
      return code;
    }
  }

  /**
   * Advice for a tie.
   *
   * @param ourSheet the opened or planned sheet, where the conditions want one player from each of two pairs
   * @param theirSheet theirs, if it is open
   * @param hurt players marked hurt
   */
  public static DeciderAdvice of(LineupProblem problem, Optional<Sheet> ourSheet, Optional<Sheet> theirSheet, Set<PlayerId> hurt) {
    DeciderKind kind = problem.rules().decider();
    List<Pair> ours =
        DeciderPairs.allowed(kind, problem.ours(), ourSheet).stream().filter(pair -> Wishes.allow(problem, pair)).toList();
    List<Pair> theirs = DeciderPairs.allowed(kind, problem.theirs(), theirSheet);
    boolean named = kind == DeciderKind.ANY_TWO || kind == DeciderKind.ONE_FROM_EACH;
    if (!named || ours.isEmpty() || theirs.isEmpty()) {
      double chance = named ? (ours.isEmpty() ? 0 : 1) : new Board(problem).levelWorth().of(new int[0]);
      return new DeciderAdvice(List.of(), chance, List.of(Reason.of("decider-nobody-named").with("kind", kind.code())));
    }
    return new Game(problem, ours, theirs).advice(hurt);
  }

  /** The game laid out and solved. */
  private static final class Game {
    private final LineupProblem problem;
    private final List<Pair> ours;
    private final List<Pair> theirs;
    private final MatrixGame solved;

    Game(LineupProblem problem, List<Pair> ours, List<Pair> theirs) {
      this.problem = problem;
      this.ours = ours;
      this.theirs = theirs;
      EdgeCurve curve = new EdgeCurve(problem.rules().deciderScoring(), 1);
      double[] ourRating = ratings(ours);
      double[] theirRating = ratings(theirs);
      double[][] payoff = new double[ours.size()][theirs.size()];
      for (int i = 0; i < payoff.length; i++) {
        for (int j = 0; j < payoff[i].length; j++) {
          payoff[i][j] = curve.chance(ourRating[i] - theirRating[j]);
        }
      }
      this.solved = MatrixGame.solve(payoff);
    }

    private double[] ratings(List<Pair> pairs) {
      return pairs.stream().mapToDouble(pair -> problem.strengths().rating(pair).mean()).toArray();
    }

    DeciderAdvice advice(Set<PlayerId> hurt) {
      double[] weights = solved.row();
      List<Candidate> unordered = new ArrayList<>();
      Pair strongest = LevelWorth.best(problem.strengths(), ours).orElseThrow();
      for (int i = 0; i < ours.size(); i++) {
        unordered.add(candidate(ours.get(i), weights[i], strongest, hurt));
      }
      List<Candidate> ordered = new ArrayList<>(unordered);
      ordered.sort(Comparator.comparingDouble(Candidate::chance).reversed().thenComparing(Comparator.comparingDouble(Candidate::weight).reversed()).thenComparing(Candidate::pair));
      List<Candidate> ranked = IntStream.range(0, ordered.size()).mapToObj(i -> judged(ordered, i)).toList();
      double chance = IntStream.range(0, ranked.size()).mapToDouble(i -> ranked.get(i).weight() * ranked.get(i).chance()).sum();
      return new DeciderAdvice(ranked, chance, notes(ranked, hurt));
    }

    private static List<Reason> notes(List<Candidate> ranked, Set<PlayerId> hurt) {
      Candidate first = ranked.get(0);
      List<Reason> notes = new ArrayList<>();
      notes.add(Reason.of(first.verdict() == Verdict.BEST ? "decider-clear" : "decider-either").with("pair", first.pair()));
      List<PlayerId> ask =
          hurt.stream().filter(player -> ranked.stream().anyMatch(near -> near.verdict() != Verdict.BEHIND && near.pair().has(player))).sorted().toList();
      if (!ask.isEmpty()) {
        notes.add(Reason.of("decider-hurt").with("players", ask));
      }
      return notes;
    }

    /** Mean and ends of the chance against their mix; their mix is nearly always a single pair. */
    private Candidate candidate(Pair pair, double weight, Pair strongest, Set<PlayerId> hurt) {
      double[] against = solved.column();
      double[] ends = new double[3];
      for (int j = 0; j < against.length; j++) {
        if (against[j] > 0) {
          Estimate edge = problem.strengths().edge(pair, theirs.get(j));
          double[] edges = {edge.mean(), edge.low(), edge.high()};
          for (int k = 0; k < edges.length; k++) {
            ends[k] += against[j] * RallyModel.rubberChance(problem.rules().deciderScoring(), 1, edges[k]);
          }
        }
      }
      boolean marked = hurt.stream().anyMatch(pair::has);
      double asBest = pair.equals(strongest) ? 1 : problem.strengths().chanceAsStrong(pair, strongest);
      return new Candidate(0, pair, weight, ends[0], ends[1], ends[2], asBest, Verdict.BEHIND, marked);
    }

    private static Candidate judged(List<Candidate> ordered, int place) {
      Candidate it = ordered.get(place);
      boolean near = it.asBest() > 1 - SURE;
      boolean alone = ordered.stream().filter(other -> other.asBest() > 1 - SURE).count() == 1;
      Verdict verdict = !near ? Verdict.BEHIND : alone ? Verdict.BEST : Verdict.EITHER;
      return new Candidate(place + 1, it.pair(), it.weight(), it.chance(), it.low(), it.high(), it.asBest(), verdict, it.hurt());
    }
  }

  /** The pair to send first, if anybody is named. */
  public Optional<Candidate> best() {
    return candidates.stream().findFirst();
  }

  /** The pairs among which nobody can tell, the best first; one where it is clear. */
  public List<Pair> withinNoise() {
    return candidates.stream().filter(candidate -> candidate.verdict() != Verdict.BEHIND).map(Candidate::pair).toList();
  }
}
