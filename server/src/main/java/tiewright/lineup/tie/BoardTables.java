package tiewright.lineup.tie;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tiewright.event.Pair;
import tiewright.lineup.Belief;
import tiewright.lineup.DrawnChance;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Meetings;

/**
 * Our pairs against those that the other club may send, by number.
 *
 * @param expected the sheets that they may send as numbers of their pairs, rubber 1 first
 * @param weights of these sheets
 * @param meetings with their doubt: a row for each of our pairs, a column for each of theirs
 * @param chances the same at their means
 * @param bits what each meeting would teach, where that counts; else no rows
 */
record BoardTables(
        List<Pair> opponents,
        int[][] expected,
        double[] weights,
        DrawnChance[][] meetings,
        double[][] chances,
        double[][] bits) {
    static BoardTables of(LineupProblem problem, List<Pair> pairs, Meetings known) {
        List<Pair> opponents = opponents(problem.belief());
        DrawnChance[][] meetings = pairs.stream()
                .map(ours -> opponents.stream()
                        .map(theirs -> known.rubber(ours, theirs))
                        .toArray(DrawnChance[]::new))
                .toArray(DrawnChance[][]::new);
        return new BoardTables(
                opponents,
                expected(problem, opponents),
                problem.belief().sheets().stream()
                        .mapToDouble(Belief.Expected::weight)
                        .toArray(),
                meetings,
                means(meetings),
                problem.purpose().learning() ? bits(problem, pairs, opponents) : new double[0][]);
    }

    /** The same for some of our pairs. */
    BoardTables rows(int[] pairs) {
        return new BoardTables(
                opponents,
                expected,
                weights,
                Arrays.stream(pairs).mapToObj(pair -> meetings[pair]).toArray(DrawnChance[][]::new),
                Arrays.stream(pairs).mapToObj(pair -> chances[pair]).toArray(double[][]::new),
                bits.length == 0
                        ? bits
                        : Arrays.stream(pairs).mapToObj(pair -> bits[pair]).toArray(double[][]::new));
    }

    private static List<Pair> opponents(Belief belief) {
        return belief.sheets().stream()
                .flatMap(expected -> expected.sheet().pairs().values().stream())
                .flatMap(Optional::stream)
                .distinct()
                .sorted(Comparator.naturalOrder())
                .toList();
    }

    private static double[][] means(DrawnChance[][] table) {
        return Arrays.stream(table)
                .map(row -> Arrays.stream(row).mapToDouble(DrawnChance::mean).toArray())
                .toArray(double[][]::new);
    }

    private static double[][] bits(LineupProblem problem, List<Pair> pairs, List<Pair> opponents) {
        return pairs.stream()
                .map(ours -> opponents.stream()
                        .mapToDouble(theirs -> Learning.bits(problem, ours, theirs))
                        .toArray())
                .toArray(double[][]::new);
    }

    private static int[][] expected(LineupProblem problem, List<Pair> opponents) {
        int[][] lines =
                new int[problem.belief().sheets().size()][problem.rules().rubbers()];
        for (int line = 0; line < lines.length; line++) {
            for (int rubber = 0; rubber < problem.rules().rubbers(); rubber++) {
                lines[line][rubber] = problem.belief()
                        .pair(line, rubber + 1)
                        .map(opponents::indexOf)
                        .orElse(Board.EMPTY);
            }
        }
        return lines;
    }
}
