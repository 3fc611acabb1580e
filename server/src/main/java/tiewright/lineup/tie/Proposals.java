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

    /** With two here it can only be that they may stand in no rubber of these kinds. */
    private String nobody() {
        return board.problem().ours().present().size() < 2 ? "nobody-to-name" : "nobody-for-a-kind";
    }

    private Proposal propose(int count) {
        if (board.seating().count() == 0) {
            return new Proposal.Impossible(List.of(), List.of(Reason.of(nobody())));
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
        Optional<int[]> kept = kept(keeping, lines, count);
        kept.ifPresent(all::add);
        Doubt doubt = new Doubt(board);
        SheetNotes notes = new SheetNotes(board, ranking, orderMatters());
        Describing describing = new Describing(board, doubt);
        List<ProposedSheet> sheets = describing.all(shown.subList(0, Math.min(count, shown.size())), notes);
        List<Reason> more = new ArrayList<>(PromiseNotes.costs(board, lines.get(0), keeping));
        more.addAll(notes.wishCosts());
        nextBest(shown, describing).ifPresent(more::add);
        sheets.set(0, sheets.get(0).saying(more));
        Optional<DeciderAdvice> decider = decider(shown.get(0));
        return new Proposal.Proposed(
                sheets,
                orderMatters(),
                ranking.complete(),
                ranking.tried(),
                kept.map(line -> describing.beside(shown.get(0), 0, line, notes.of(line))),
                decider,
                PromiseNotes.ofAll(board),
                ofAll(notes, decider, sheets.get(0), lines.get(0)));
    }

    /** A sheet that keeps more of what is promised, where it is not among those shown. */
    private Optional<int[]> kept(Optional<Keeping> keeping, List<int[]> lines, int count) {
        return keeping.filter(one -> one.missing() < board.owed().missing(lines.get(0)))
                .map(Keeping::line)
                .filter(line -> lines.stream().limit(count).noneMatch(other -> Arrays.equals(line, other)))
                .map(this::shuffledIfFree);
    }

    private List<Reason> ofAll(SheetNotes notes, Optional<DeciderAdvice> decider, ProposedSheet best, int[] line) {
        List<Reason> ofAll = new ArrayList<>(notes.ofAll());
        decider.flatMap(DeciderAdvice::best).ifPresent(first -> {
            ofAll.add(Reason.of("decider-likely").with("chance", best.level()));
            ofAll.add(keepFresh(first.pair(), line));
        });
        return ofAll;
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
                Arrays.stream(line).filter(pair -> pair != Board.EMPTY).boxed().toList());
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
                .with("rubbers", board.seating().count())
                .with("players", board.players().size()));
        return new Proposal.Impossible(conflict, reasons);
    }

    private Optional<Reason> nextBest(List<int[]> shown, Describing describing) {
        if (shown.size() < 2) {
            return Optional.of(Reason.of("only-sheet"));
        }
        double cost = describing.cost(shown.get(0), shown.get(1));
        double beats = describing.beats(shown.get(1), shown.get(0));
        String kind = cost < SheetNotes.WORTH_SAYING ? "next-best-equal" : "next-best";
        return Optional.of(
                Reason.of(kind).costing(cost, board.problem().purpose().aim()).with("beats", beats));
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
        List<int[]> best = board.seating().count() == 0
                ? List.of()
                : ranking(1).best().stream().map(Ranking.Ranked::line).toList();
        Doubt doubt = new Doubt(board);
        Describing describing = new Describing(board, doubt);
        List<Reason> reasons = new SheetNotes(board, new Ranking(List.of(), 0, false), orderMatters()).of(line);
        return new Evaluation(
                best.isEmpty() ? describing.alone(line, reasons) : describing.beside(best.get(0), 0, line, reasons),
                notGranted(sheet));
    }

    private List<Wish> notGranted(Sheet sheet) {
        return board.problem().wishes().stream()
                .filter(wish -> !Wishes.grants(wish, board.problem().ours(), sheet))
                .toList();
    }
}
