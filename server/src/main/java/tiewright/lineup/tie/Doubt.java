package tiewright.lineup.tie;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tiewright.event.Pair;
import tiewright.event.RubberNo;
import tiewright.lineup.EdgeCurve;
import tiewright.lineup.decider.LevelWorth;

/**
 * How sure is a tie chance? The strengths are drawn many times as they could well be, and the chance is worked out for each
 * draw. The same draws serve every sheet, so that two sheets can be compared.
 */
final class Doubt {
    private static final int DRAWS = 400;
    private static final double TAIL = 0.025;

    private final Board board;
    private final List<Pair> pairs;
    private final double[][] ratings;
    private final EdgeCurve rubber;
    private final EdgeCurve decider;

    Doubt(Board board, List<int[]> lines, long seed) {
        this.board = board;
        Set<Pair> all = new LinkedHashSet<>(board.opponents());
        for (int[] line : lines) {
            Arrays.stream(line)
                    .filter(pair -> pair != Board.EMPTY)
                    .forEach(pair -> all.add(board.pairs().get(pair)));
            board.levelWorth().ourPair(line).ifPresent(sent -> all.add(sent.pair()));
        }
        for (int sheet = 0; sheet < board.expectedLines().length; sheet++) {
            board.levelWorth().theirPair(sheet).ifPresent(sent -> all.add(sent.pair()));
        }
        this.pairs = new ArrayList<>(all);
        this.ratings = board.problem().strengths().draws(pairs, DRAWS, seed);
        this.rubber = new EdgeCurve(board.rules().scoring(), board.rules().bestOf());
        this.decider = new EdgeCurve(board.rules().deciderScoring(), 1);
    }

    /** The tie chance of a sheet in each draw. */
    double[] chances(int[] line) {
        return drawn(line, board.worth().win());
    }

    /** What the captain wants, in each draw. */
    double[] worths(int[] line) {
        return drawn(line, board.worth().aim());
    }

    /** One rubber of a sheet with its chance and how sure that is. */
    ProposedSheet.Line rubberOf(int[] line, int rubber) {
        Optional<Double> chance = board.rubberChance(line, rubber);
        RubberNo number = RubberNo.of(rubber + 1);
        return new ProposedSheet.Line(
                number,
                board.sheet(line).pair(number),
                chance,
                chance.map(known -> ProposedSheet.Range.of(rubber(line, rubber))));
    }

    /** Our chance in one rubber in each draw, mean over what the other club may send. */
    double[] rubber(int[] line, int rubber) {
        Numbers numbers = new Numbers(line);
        return Arrays.stream(ratings)
                .mapToDouble(rating -> numbers.mean(rating, rubber))
                .toArray();
    }

    private double[] drawn(int[] line, EndWorths ends) {
        Numbers numbers = new Numbers(line);
        double[] drawn = new double[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            drawn[i] = numbers.mean(ratings[i], ends);
        }
        return drawn;
    }

    /** One sheet with the columns of its pairs among the draws, and what rest and rubbers have cost each. */
    private final class Numbers {
        private final int[] ours;
        private final double[] ourLoss;
        private final int[] opponents =
                board.opponents().stream().mapToInt(pairs::indexOf).toArray();
        private final double[] theirLoss = board.opponents().stream()
                .mapToDouble(board.problem().freshness()::loss)
                .toArray();
        private final Optional<LevelWorth.Sent> sent;
        private final int sentColumn;
        private final int[] theirColumn =
                new int[board.expectedLines().length]; // by sheet of theirs; EMPTY = nobody plays the decider
        private final double[] theirDeciderLoss = new double[theirColumn.length];

        Numbers(int[] line) {
            this.ours = Arrays.stream(line)
                    .map(pair -> pair == Board.EMPTY
                            ? Board.EMPTY
                            : pairs.indexOf(board.pairs().get(pair)))
                    .toArray();
            this.ourLoss = Arrays.stream(line)
                    .mapToDouble(pair -> pair == Board.EMPTY
                            ? 0
                            : board.problem().freshness().loss(board.pairs().get(pair)))
                    .toArray();
            this.sent = board.levelWorth().ourPair(line);
            this.sentColumn = sent.map(one -> pairs.indexOf(one.pair())).orElse(Board.EMPTY);
            for (int i = 0; i < theirColumn.length; i++) {
                Optional<LevelWorth.Sent> theirs = board.levelWorth().theirPair(i);
                theirColumn[i] = theirs.map(one -> pairs.indexOf(one.pair())).orElse(Board.EMPTY);
                theirDeciderLoss[i] = theirs.map(LevelWorth.Sent::loss).orElse(0.0);
            }
        }

        double mean(double[] rating, EndWorths ends) {
            double sum = 0;
            for (int i = 0; i < board.expectedLines().length; i++) {
                sum += board.weights()[i]
                        * ends.mean(TieOdds.wins(rubbers(rating, board.expectedLines()[i])), level(rating, i));
            }
            return sum;
        }

        double mean(double[] rating, int rubber) {
            double sum = 0;
            for (int i = 0; i < board.expectedLines().length; i++) {
                sum += board.weights()[i] * chance(rating, rubber, board.expectedLines()[i][rubber]);
            }
            return Math.min(1, sum);
        }

        private double[] rubbers(double[] rating, int[] expected) {
            double[] rubbers = new double[ours.length];
            int counted = 0;
            for (int r = 0; r < ours.length; r++) {
                if (ours[r] != Board.EMPTY || expected[r] != Board.EMPTY) {
                    rubbers[counted++] = chance(rating, r, expected[r]);
                }
            }
            return Arrays.copyOf(rubbers, counted);
        }

        private double chance(double[] rating, int r, int their) {
            if (ours[r] == Board.EMPTY) {
                return 0;
            }
            return their == Board.EMPTY
                    ? 1
                    : rubber.chance(rating[ours[r]] - ourLoss[r] - rating[opponents[their]] + theirLoss[their]);
        }

        private double level(double[] rating, int sheet) {
            if (sent.isEmpty() || theirColumn[sheet] == Board.EMPTY) {
                return sent.isEmpty() ? 0 : 1;
            }
            double ours = rating[sentColumn] - sent.get().loss();
            return decider.chance(ours - rating[theirColumn[sheet]] + theirDeciderLoss[sheet]);
        }
    }

    /** Ends of the 95 % interval of what was drawn. */
    static double low(double[] drawn) {
        return sorted(drawn)[(int) (TAIL * drawn.length)];
    }

    static double high(double[] drawn) {
        return sorted(drawn)[drawn.length - 1 - (int) (TAIL * drawn.length)];
    }

    private static double[] sorted(double[] drawn) {
        double[] sorted = drawn.clone();
        Arrays.sort(sorted);
        return sorted;
    }

    /** In what share of the draws is the first better than the second? Equal ones count half. */
    static double better(double[] first, double[] second) {
        double sum = 0;
        for (int i = 0; i < first.length; i++) {
            sum += first[i] > second[i] ? 1 : first[i] == second[i] ? 0.5 : 0;
        }
        return sum / first.length;
    }
}
