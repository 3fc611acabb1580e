package tiewright.lineup.tie;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.lineup.Squad;
import tiewright.lineup.Wish;
import tiewright.lineup.Wishes;
import tiewright.sheet.StrengthOrder;

/**
 * Goes through every sheet that the conditions and the wishes allow, each once, as full as the squad allows and empty from
 * the bottom, in one fixed order.
 */
public final class SheetSearch {
    private final Board board;
    private final boolean eachOrder;
    private final Visitor visitor;
    private final List<Wish> musts = new ArrayList<>();
    private final List<List<Integer>> usable = new ArrayList<>(); // by rubber
    private final int[] first;
    private final int[] second;
    private final int[] rankSums;
    private final int[] left;
    private final int[] line;
    private long steps;
    private final long mostSteps;

    /** Looks at a sheet; the line is used again afterwards. False ends the search. */
    public interface Visitor {
        boolean visit(int[] line);
    }

    /** How a search ended: all seen, ended by the visitor, or given up for being too long. */
    public enum End {
        ALL_SEEN,
        ENDED,
        TOO_LONG
    }

    /** @param eachOrder false: the same pairs in another order count as the same sheet, for places where order is worth nothing */
    private SheetSearch(Board board, List<Wish> wishes, boolean eachOrder, long mostSteps, Visitor visitor) {
        this.board = board;
        this.eachOrder = eachOrder;
        this.visitor = visitor;
        this.mostSteps = mostSteps;
        int count = board.pairs().size();
        this.first = new int[count];
        this.second = new int[count];
        this.rankSums = new int[count];
        this.left = new int[board.players().size()];
        java.util.Arrays.fill(left, board.rules().mostPerPlayer());
        this.line = new int[board.rules().rubbers()];
        java.util.Arrays.fill(line, Board.EMPTY);
        wishes.stream().filter(wish -> wish.kind() == Wish.Kind.MUST_PLAY).forEach(musts::add);
        Squad squad = board.problem().ours();
        for (int i = 0; i < count; i++) {
            Pair pair = board.pairs().get(i);
            first[i] = board.players().indexOf(pair.first());
            second[i] = board.players().indexOf(pair.second());
            rankSums[i] = squad.rank(pair.first()) + squad.rank(pair.second());
        }
        for (int rubber = 0; rubber < line.length; rubber++) {
            usable.add(usable(rubber, wishes));
        }
    }

    /** Pairs that may stand in a rubber, and that no wish bars. */
    private List<Integer> usable(int rubber, List<Wish> wishes) {
        Squad squad = board.problem().ours();
        return IntStream.range(0, first.length)
                .filter(i -> board.seating().admits(rubber, board.pairs().get(i))
                        && wishes.stream()
                                .noneMatch(wish ->
                                        Wishes.bars(wish, squad, board.pairs().get(i))))
                .boxed()
                .toList();
    }

    public static End run(Board board, boolean eachOrder, long mostSteps, Visitor visitor) {
        return run(board, board.problem().wishes(), eachOrder, mostSteps, visitor);
    }

    /** With other wishes than those of the board's problem. */
    public static End run(Board board, List<Wish> wishes, boolean eachOrder, long mostSteps, Visitor visitor) {
        SheetSearch search = new SheetSearch(board, wishes, eachOrder, mostSteps, visitor);
        boolean on = search.place(0);
        return on ? End.ALL_SEEN : search.steps > mostSteps ? End.TOO_LONG : End.ENDED;
    }

    private boolean place(int rubber) {
        if (rubber == line.length) {
            return !musts.stream().allMatch(this::isNamed) || visitor.visit(line);
        }
        if (!board.seating().fills(rubber)) {
            return place(rubber + 1);
        }
        for (int pair : usable.get(rubber)) {
            if (fits(pair, rubber) && !(++steps <= mostSteps && goesOn(pair, rubber))) {
                return false;
            }
        }
        return true;
    }

    private boolean goesOn(int pair, int rubber) {
        left[first[pair]]--;
        left[second[pair]]--;
        line[rubber] = pair;
        boolean on = place(rubber + 1);
        line[rubber] = Board.EMPTY;
        left[first[pair]]++;
        left[second[pair]]++;
        return on;
    }

    private boolean fits(int pair, int rubber) {
        if (left[first[pair]] == 0 || left[second[pair]] == 0) {
            return false;
        }
        int above = board.seating().above(rubber);
        if (above < 0) {
            return true;
        }
        int next = line[above];
        int top = board.seating().top(rubber);
        if (!eachOrder && pair < next) {
            return false;
        }
        return !isBroken(true, line[top], pair) && !isBroken(above == top, next, pair);
    }

    private boolean isBroken(boolean isTop, int upper, int pair) {
        return upper != Board.EMPTY
                && StrengthOrder.isBroken(board.rules().order(), isTop, rankSums[upper], rankSums[pair]);
    }

    private boolean isNamed(Wish mustPlay) {
        PlayerId player = mustPlay.players().get(0);
        for (int pair : line) {
            if (pair != Board.EMPTY && board.pairs().get(pair).has(player)) {
                return true;
            }
        }
        return false;
    }
}
