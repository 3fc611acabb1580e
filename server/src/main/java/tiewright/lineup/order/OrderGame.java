package tiewright.lineup.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import tiewright.lineup.tie.TieOdds;

/**
 * The pairs are fixed on both sides; only their order is chosen, blind. What is that worth, and what if they go straight?
 *
 * <p>Only who meets whom counts, so every row and every column of this game holds the same numbers: the value is their
 * mean, and drawing the order by lot, each as likely as any other, is best for both (a game whose matrix is a Latin
 * square: Ferguson, Game Theory, part II, 2.5). That is exact, and nothing needs to be searched.
 */
public final class OrderGame {
    /** More pairs than this have too many orders to list. */
    public static final int MOST_PAIRS = 8;

    private final double[][] chances;
    private final int toWin;
    private final double levelWorth;
    private final List<Ordered> orders = new ArrayList<>();

    private OrderGame(double[][] chances, int toWin, double levelWorth) {
        this.chances = chances;
        this.toWin = toWin;
        this.levelWorth = levelWorth;
        addOrders(new int[chances.length], 0, 0);
    }

    /**
     * One order of our pairs.
     *
     * @param pairs our pairs by row number from 0, in rubber order
     * @param ifStraight our chance to win the tie when they play in the order of the columns
     * @param weight how often to play it against somebody who may play anything
     */
    public record Ordered(List<Integer> pairs, double ifStraight, double weight) {}

    /**
     * Works the game out.
     *
     * @param chances our chance in a rubber, a row for each pair of ours and a column for each of theirs; as many rows as
     *     columns, 1 to {@value #MOST_PAIRS}
     * @param toWin rubbers that win the tie
     * @param levelWorth our chance in the decider, when both sides are one rubber short of {@code toWin} and none is left
     * @throws IllegalArgumentException if the table is not square, too large, or holds something that is no chance, or if
     *     {@code toWin} is not 1 to the number of pairs
     */
    public static OrderGame of(double[][] chances, int toWin, double levelWorth) {
        int size = chances.length;
        if (size < 1 || size > MOST_PAIRS || Arrays.stream(chances).anyMatch(row -> row.length != size)) {
            throw new IllegalArgumentException("as many pairs of ours as of theirs, 1 to " + MOST_PAIRS);
        }
        if (Arrays.stream(chances).flatMapToDouble(Arrays::stream).anyMatch(chance -> !(chance >= 0 && chance <= 1))) {
            throw new IllegalArgumentException("a chance is 0 to 1");
        }
        if (toWin < 1 || toWin > size || !(levelWorth >= 0 && levelWorth <= 1)) {
            throw new IllegalArgumentException("rubbers to win: 1 to " + size + "; chance in the decider: 0 to 1");
        }
        return new OrderGame(chances, toWin, levelWorth);
    }

    private void addOrders(int[] order, int placed, int used) {
        if (placed == order.length) {
            orders.add(new Ordered(
                    Arrays.stream(order).boxed().toList(), winChance(order), 1.0 / factorial(order.length)));
            return;
        }
        for (int pair = 0; pair < order.length; pair++) {
            if ((used & 1 << pair) == 0) {
                order[placed] = pair;
                addOrders(order, placed + 1, used | 1 << pair);
            }
        }
    }

    private double winChance(int[] order) {
        double[] rubbers = new double[order.length];
        for (int rubber = 0; rubber < order.length; rubber++) {
            rubbers[rubber] = chances[order[rubber]][rubber];
        }
        double[] wins = TieOdds.wins(rubbers);
        double sum = 0;
        for (int won = 0; won <= order.length; won++) {
            boolean level = won == toWin - 1 && order.length - won == toWin - 1;
            sum += won >= toWin ? wins[won] : level ? wins[won] * levelWorth : 0;
        }
        return sum;
    }

    /** What both sides can make sure of by drawing lots. */
    public double value() {
        return orders.stream().mapToDouble(Ordered::ifStraight).average().orElseThrow();
    }

    /** Every order, by row numbers from low to high; the first is the order of the table. */
    public List<Ordered> orders() {
        return List.copyOf(orders);
    }

    /** Both sides in the order of the table. */
    public Ordered straight() {
        return orders.get(0);
    }

    /** Our best order if they surely play in the order of the table; the first of equals. */
    public Ordered bestReply() {
        Ordered best = orders.get(0);
        for (Ordered order : orders) {
            if (order.ifStraight() > best.ifStraight() + 1e-12) {
                best = order;
            }
        }
        return best;
    }

    /** Can the rubbers finish level, so that a decider counts? */
    public static boolean canBeLevel(int pairs, int toWin) {
        return pairs == 2 * (toWin - 1);
    }

    private static long factorial(int n) {
        return n < 2 ? 1 : n * factorial(n - 1);
    }
}
