package tiewright.scoring;

import java.util.Arrays;

/**
 * The Markov chain of one game: states are points and turn (see {@link ServeOrder}), and what a state is worth is solved exactly.
 *
 * <p>With the points fixed the turns form a ring: x[t] = c[t] + d[t] x[t+1], where d is the chance to hand over without a
 * point. One sweep round the ring solves it. In an open-ended game only the difference matters from (target-1)-all on, so level, one
 * ahead and one behind are three rings that refer to each other: one small linear system. All other points are solved
 * backwards from there. For side-out doubles to n that makes 4n^2 + 8 states and two ends (DeFord and Ethier, arXiv 2303.02942).
 */
final class Lattice {
    private final Format format;
    private final ServeOrder order;
    private final double[] serve;
    private final int turns;
    private final int width;
    private final boolean open;

    Lattice(Format format, ServeOrder order, double serve1, double serve2) {
        this.format = format;
        this.order = order;
        this.turns = order.turns();
        this.open = format.isOpenEnded();
        this.width = open ? format.target() : format.mostPoints();
        this.serve = new double[turns];
        for (int turn = 0; turn < turns; turn++) {
            serve[turn] = order.servesOne(turn) ? serve1 : serve2;
        }
    }

    int size() {
        return (width * width + 3) * turns;
    }

    /** Where a state that is not over lives. Points of an open-ended game past (target-1)-all are folded back. */
    int index(int one, int two, int turn) {
        int cell;
        if (open && Math.min(one, two) >= width - 1) {
            cell = width * width + (one == two ? 0 : one > two ? 1 : 2);
        } else {
            cell = one * width + two;
        }
        return cell * turns + turn;
    }

    /**
     * Solves x = reward + mean of x after the next rally, for every state.
     *
     * @param reward one number a state, by {@link #index}
     * @param won what an end is worth that side one wins; the other end is worth 0
     */
    double[] solve(double[] reward, double won) {
        double[] x = new double[size()];
        if (open) {
            solveTwoAhead(reward, won, x);
        }
        double[] c = new double[turns];
        double[] d = new double[turns];
        for (int one = width - 1; one >= 0; one--) {
            for (int two = width - 1; two >= 0; two--) {
                boolean done = format.isOver(one, two) || (open && one == width - 1 && two == width - 1);
                if (!done) {
                    solveRing(one, two, reward, won, x, c, d);
                }
            }
        }
        return x;
    }

    private void solveRing(int one, int two, double[] reward, double won, double[] x, double[] c, double[] d) {
        for (int turn = 0; turn < turns; turn++) {
            boolean servesOne = order.servesOne(turn);
            boolean receiverScores = order.receiverScores(one, two, turn);
            double point = serve[turn] * value(one + (servesOne ? 1 : 0), two + (servesOne ? 0 : 1), turn, won, x);
            double lost = receiverScores
                    ? (1 - serve[turn])
                            * value(one + (servesOne ? 0 : 1), two + (servesOne ? 1 : 0), order.next(turn), won, x)
                    : 0;
            c[turn] = reward[index(one, two, turn)] + point + lost;
            d[turn] = receiverScores ? 0 : 1 - serve[turn];
        }
        sweep(c, d, x, index(one, two, 0));
    }

    /** Writes the solution of x[t] = c[t] + d[t] x[t+1], t taken round, from {@code at} on. */
    private void sweep(double[] c, double[] d, double[] x, int at) {
        double sum = 0;
        double product = 1;
        for (int turn = 0; turn < turns; turn++) {
            sum += product * c[turn];
            product *= d[turn];
        }
        double next = sum / (1 - product);
        for (int turn = turns - 1; turn >= 0; turn--) {
            next = c[turn] + d[turn] * next;
            x[at + turn] = next;
        }
    }

    private double value(int one, int two, int turn, double won, double[] x) {
        if (format.isOver(one, two)) {
            return one > two ? won : 0;
        }
        return x[index(one, two, turn)];
    }

    private void solveTwoAhead(double[] reward, double won, double[] x) {
        int base = width * width * turns;
        int n = 3 * turns;
        double[][] rows = new double[n][n + 1];
        int level = width - 1;
        for (int turn = 0; turn < turns; turn++) {
            addRow(level, level, turn, reward, won, base, rows);
            addRow(level + 1, level, turn, reward, won, base, rows);
            addRow(level, level + 1, turn, reward, won, base, rows);
        }
        System.arraycopy(LinearSystem.solve(rows), 0, x, base, n);
    }

    private void addRow(int one, int two, int turn, double[] reward, double won, int base, double[][] rows) {
        boolean servesOne = order.servesOne(turn);
        boolean receiverScores = order.receiverScores(one, two, turn);
        int at = index(one, two, turn);
        double[] row = rows[at - base];
        row[at - base] += 1;
        row[row.length - 1] += reward[at];
        addTerm(one + (servesOne ? 1 : 0), two + (servesOne ? 0 : 1), turn, serve[turn], won, base, row);
        int add = receiverScores ? 1 : 0;
        addTerm(
                one + (servesOne ? 0 : add),
                two + (servesOne ? add : 0),
                order.next(turn),
                1 - serve[turn],
                won,
                base,
                row);
    }

    private void addTerm(int one, int two, int turn, double chance, double won, int base, double[] row) {
        if (format.isOver(one, two)) {
            row[row.length - 1] += one > two ? chance * won : 0;
        } else {
            row[index(one, two, turn) - base] -= chance;
        }
    }

    /** The chance that the points ever stand so, when the game begins with {@code start}. */
    double reach(int start, int one, int two) {
        double[][] below = new double[two + 1][turns];
        double[] visits = new double[turns];
        below[0][start] = 1;
        for (int i = 0; ; i++) {
            for (int j = 0; j <= two; j++) {
                if (i == one && j == two) {
                    return Arrays.stream(below[j]).sum();
                }
                pass(i, j, below, visits);
            }
        }
    }

    /** Empties the ring at i-j: what entered it leaves to (i+1)-j, which takes its place, and to i-(j+1). */
    private void pass(int i, int j, double[][] entered, double[] visits) {
        double[] ring = entered[j];
        if (format.isOver(i, j)) {
            Arrays.fill(ring, 0);
            return;
        }
        countVisits(i, j, ring, visits);
        Arrays.fill(ring, 0);
        for (int turn = 0; turn < turns; turn++) {
            move(order.servesOne(turn), j, turn, visits[turn] * serve[turn], entered);
            if (order.receiverScores(i, j, turn)) {
                move(!order.servesOne(turn), j, order.next(turn), visits[turn] * (1 - serve[turn]), entered);
            }
        }
    }

    private static void move(boolean toOne, int j, int turn, double chance, double[][] entered) {
        if (toOne) {
            entered[j][turn] += chance;
        } else if (j + 1 < entered.length) {
            entered[j + 1][turn] += chance;
        }
    }

    /** Mean number of rallies played with these points and this turn. */
    private void countVisits(int i, int j, double[] entered, double[] visits) {
        double sum = 0;
        double product = 1;
        for (int turn = 0; turn < turns; turn++) {
            double kept = order.receiverScores(i, j, turn) ? 0 : 1 - serve[turn];
            sum = (sum + entered[turn]) * kept;
            product *= kept;
        }
        double handed = sum / (1 - product); // from the last turn to turn 0, over all rounds
        for (int turn = 0; turn < turns; turn++) {
            visits[turn] = entered[turn] + handed;
            handed = visits[turn] * (order.receiverScores(i, j, turn) ? 0 : 1 - serve[turn]);
        }
    }
}
