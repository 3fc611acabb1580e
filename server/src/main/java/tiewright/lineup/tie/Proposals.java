package tiewright.lineup.tie;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Sheet;
import tiewright.lineup.Budget;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Reason;
import tiewright.lineup.Wish;
import tiewright.lineup.Wishes;
import tiewright.lineup.decider.DeciderAdvice;

/**
 * Which sheet should the captain hand in, and what is a sheet of the captain's own worth?
 *
 * <p>Wherever there are few enough legal sheets every one of them is tried, so that the proposal is proven best and its
 * runners-up and their cost are exact; only beyond that the search proposes.
 */
public final class Proposals {
    /** Sheets shown unless more are asked for. */
    public static final int USUAL_COUNT = 3;

    private final Board board;
    private final Budget budget;

    private Proposals(LineupProblem problem, Budget budget) {
        this.board = new Board(problem);
        this.budget = budget;
    }

    public static Proposal propose(LineupProblem problem, Budget budget) {
        return propose(problem, budget, USUAL_COUNT);
    }

    /**
     * The best sheets that the conditions and every wish allow.
     *
     * @param count how many at most, 1 or more
     */
    public static Proposal propose(LineupProblem problem, Budget budget, int count) {
        if (count < 1) {
            throw new IllegalArgumentException("a proposal of " + count + " sheets");
        }
        return new Proposals(problem, budget).propose(count);
    }

    /**
     * What a sheet of the captain's own is worth, whatever the wishes and whatever it costs. Whether the conditions allow it
     * is asked of {@link tiewright.sheet.SheetRules}.
     *
     * @throws IllegalArgumentException if it names a pair that cannot play, or a rubber that there is not
     */
    public static Evaluation evaluate(LineupProblem problem, Sheet sheet, Budget budget) {
        return new Proposals(problem, budget).evaluate(sheet);
    }

    private Proposal propose(int count) {
        if (board.filled() == 0) {
            return new Proposal.Impossible(List.of(), List.of(Reason.of("nobody-to-name")));
        }
        Ranking ranking = ranking(count + 1);
        if (ranking.best().isEmpty()) {
            return impossible();
        }
        List<int[]> lines = ranking.best().stream().map(Ranking.Ranked::line).toList();
        Optional<Keeping> keeping =
                ranking.complete() ? PromiseNotes.keeping(board, lines.get(0), budget.stop()) : Optional.empty();
        List<int[]> shown = lines.stream().map(this::shuffledIfFree).toList();
        List<int[]> all = new ArrayList<>(shown);
        Optional<int[]> kept = keeping.filter(
                        one -> one.missing() < board.owed().missing(lines.get(0)))
                .map(Keeping::line)
                .filter(line -> lines.stream().limit(count).noneMatch(other -> Arrays.equals(line, other)))
                .map(this::shuffledIfFree);
        kept.ifPresent(all::add);
        Doubt doubt = new Doubt(board, all, budget.seed());
        SheetNotes notes = new SheetNotes(board, ranking, orderMatters());
        List<ProposedSheet> sheets = sheets(shown.subList(0, Math.min(count, shown.size())), doubt, notes);
        List<Reason> more = new ArrayList<>(PromiseNotes.costs(board, lines.get(0), keeping));
        more.addAll(notes.wishCosts());
        nextBest(shown, doubt).ifPresent(more::add);
        sheets.set(0, sheets.get(0).saying(more));
        Optional<DeciderAdvice> decider = decider(shown.get(0));
        List<Reason> ofAll = new ArrayList<>(notes.ofAll());
        decider.flatMap(DeciderAdvice::best).ifPresent(first -> {
            ofAll.add(Reason.of("decider-likely").with("chance", sheets.get(0).level()));
            ofAll.add(keepFresh(first.pair(), lines.get(0)));
        });
        return new Proposal.Proposed(
                sheets,
                orderMatters(),
                ranking.complete(),
                ranking.tried(),
                kept.map(line -> against(shown.get(0), 0, line, doubt, notes)),
                decider,
                PromiseNotes.ofAll(board),
                ofAll);
    }

    private List<ProposedSheet> sheets(List<int[]> shown, Doubt doubt, SheetNotes notes) {
        List<ProposedSheet> sheets = new ArrayList<>();
        for (int i = 0; i < shown.size(); i++) {
            sheets.add(against(shown.get(0), i + 1, shown.get(i), doubt, notes));
        }
        return sheets;
    }

    private ProposedSheet against(int[] first, int rank, int[] line, Doubt doubt, SheetNotes notes) {
        return proposed(
                rank,
                line,
                doubt,
                cost(first, line),
                Doubt.better(doubt.worths(line), doubt.worths(first)),
                notes.of(line));
    }

    /** The best sheets: all tried if there are few enough; else those tried, and the one that the search finds. */
    private Ranking ranking(int count) {
        Ranking every = Ranking.of(board, orderMatters(), count, budget.stop());
        Optional<int[]> found = every.complete() ? Optional.empty() : LineupSolver.best(board, budget);
        if (found.isEmpty()) {
            return every;
        }
        List<Ranking.Ranked> best = new ArrayList<>();
        best.add(new Ranking.Ranked(found.get(), Merit.of(board, found.get()), -1));
        every.best().stream()
                .filter(ranked -> !Arrays.equals(ranked.line(), found.get()))
                .forEach(best::add);
        best.sort(Comparator.comparing(Ranking.Ranked::merit).reversed());
        return new Ranking(best.subList(0, Math.min(count, best.size())), every.tried(), false);
    }

    private boolean orderMatters() {
        return board.orderMatters();
    }

    private int[] shuffledIfFree(int[] line) {
        if (orderMatters()) {
            return line;
        }
        List<Integer> pairs = new ArrayList<>(
                Arrays.stream(line).boxed().limit(board.filled()).toList());
        Collections.shuffle(pairs, new Random(budget.seed()));
        int[] shuffled = line.clone();
        IntStream.range(0, pairs.size()).forEach(rubber -> shuffled[rubber] = pairs.get(rubber));
        return shuffled;
    }

    private Proposal impossible() {
        List<Wish> conflict = Conflict.smallest(board.problem());
        List<Reason> reasons = new ArrayList<>();
        reasons.add(Reason.of(conflict.isEmpty() ? "no-sheet-found" : "wishes-conflict"));
        conflict.forEach(wish -> reasons.add(SheetNotes.wish("wish", wish)));
        reasons.add(Reason.of("must-fill")
                .with("rubbers", board.filled())
                .with("players", board.players().size()));
        return new Proposal.Impossible(conflict, reasons);
    }

    private Optional<Reason> nextBest(List<int[]> shown, Doubt doubt) {
        if (shown.size() < 2) {
            return Optional.of(Reason.of("only-sheet"));
        }
        double cost = cost(shown.get(0), shown.get(1));
        double beats = Doubt.better(doubt.worths(shown.get(1)), doubt.worths(shown.get(0)));
        String kind = cost < SheetNotes.WORTH_SAYING ? "next-best-equal" : "next-best";
        return Optional.of(
                Reason.of(kind).costing(cost, board.problem().purpose().aim()).with("beats", beats));
    }

    /** Below a billionth it is rounding. */
    private double cost(int[] best, int[] other) {
        double cost = board.worth().of(best) - board.worth().of(other);
        return cost < 1.0 / Merit.BILLION ? 0 : cost;
    }

    private Optional<DeciderAdvice> decider(int[] line) {
        boolean level = board.levelWorth().ourPair(line).isPresent() && TieOutcomes.canBeLevel(board, line);
        return level
                ? Optional.of(DeciderAdvice.planned(board.problem(), board.sheet(line), Set.of()))
                : Optional.empty();
    }

    /** Held back where the best sheet names neither of them: that was weighed against what they would add to the rubbers. */
    private Reason keepFresh(Pair pair, int[] line) {
        List<PlayerId> named = board.sheet(line).players();
        boolean heldBack = !named.contains(pair.first()) && !named.contains(pair.second());
        return Reason.of(heldBack ? "decider-held-back" : "decider-keep-fresh").with("players", pair.players());
    }

    private Evaluation evaluate(Sheet sheet) {
        int[] line = board.line(sheet);
        List<int[]> best = board.filled() == 0
                ? List.of()
                : ranking(1).best().stream().map(Ranking.Ranked::line).toList();
        List<int[]> both = new ArrayList<>(best);
        both.add(line);
        Doubt doubt = new Doubt(board, both, budget.seed());
        double cost = best.isEmpty() ? 0 : cost(best.get(0), line);
        double beats = best.isEmpty() ? 0.5 : Doubt.better(doubt.worths(line), doubt.worths(best.get(0)));
        List<Reason> reasons = new SheetNotes(board, new Ranking(List.of(), 0, false), orderMatters()).of(line);
        return new Evaluation(proposed(0, line, doubt, cost, beats, reasons), notGranted(sheet));
    }

    private List<Wish> notGranted(Sheet sheet) {
        return board.problem().wishes().stream()
                .filter(wish -> !Wishes.grants(wish, board.problem().ours(), sheet))
                .toList();
    }

    private ProposedSheet proposed(int rank, int[] line, Doubt doubt, double cost, double beats, List<Reason> reasons) {
        Sheet sheet = board.sheet(line);
        List<ProposedSheet.Line> lines = IntStream.range(0, line.length)
                .mapToObj(r -> doubt.rubberOf(line, r))
                .toList();
        double[] drawn = doubt.chances(line);
        return new ProposedSheet(
                rank,
                sheet,
                lines,
                board.worth().of(line),
                board.worth().chance(line),
                board.worth().level(line),
                Doubt.low(drawn),
                Doubt.high(drawn),
                cost,
                beats,
                reasons);
    }
}
