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

/** Our pairs against those that the other club may send, by number: who they are, the chances, and what each meeting would teach. */
record BoardTables(LineupProblem problem, List<Pair> pairs, List<Pair> opponents) {
    static BoardTables of(LineupProblem problem, List<Pair> pairs) {
        return new BoardTables(problem, pairs, opponents(problem.belief()));
    }

    private static List<Pair> opponents(Belief belief) {
        return belief.sheets().stream()
                .flatMap(expected -> expected.sheet().pairs().values().stream())
                .flatMap(Optional::stream)
                .distinct()
                .sorted(Comparator.naturalOrder())
                .toList();
    }

    DrawnChance[][] meetings(Meetings known) {
        DrawnChance[][] table = new DrawnChance[pairs.size()][opponents.size()];
        for (int i = 0; i < pairs.size(); i++) {
            for (int j = 0; j < opponents.size(); j++) {
                table[i][j] = known.rubber(pairs.get(i), opponents.get(j));
            }
        }
        return table;
    }

    static double[][] means(DrawnChance[][] table) {
        return Arrays.stream(table)
                .map(row -> Arrays.stream(row).mapToDouble(DrawnChance::mean).toArray())
                .toArray(double[][]::new);
    }

    double[] weights() {
        return problem.belief().sheets().stream()
                .mapToDouble(Belief.Expected::weight)
                .toArray();
    }

    double[][] bits() {
        double[][] table = new double[pairs.size()][opponents.size()];
        for (int i = 0; i < pairs.size(); i++) {
            for (int j = 0; j < opponents.size(); j++) {
                table[i][j] = Learning.bits(problem, pairs.get(i), opponents.get(j));
            }
        }
        return table;
    }

    /** The sheets that they may send as numbers of their pairs, rubber 1 first. */
    int[][] expected() {
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
