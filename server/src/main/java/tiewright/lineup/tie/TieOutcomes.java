package tiewright.lineup.tie;

import java.util.ArrayList;
import java.util.List;
import tiewright.conditions.RubberWeights;

/** What a sheet leaves open against what the other club may send. */
final class TieOutcomes {
    private TieOutcomes() {}

    /** Can the rubbers finish level against any sheet that is expected? */
    static boolean canBeLevel(Board board, int[] line) {
        RubberWeights weights = board.rules().each().weights();
        for (int[] theirs : board.expectedLines()) {
            List<Integer> counted = new ArrayList<>();
            for (int rubber = 0; rubber < line.length; rubber++) {
                if (line[rubber] != Board.EMPTY || theirs[rubber] != Board.EMPTY) {
                    counted.add(weights.of(rubber + 1));
                }
            }
            if (new RubberWeights(counted).canBeLevel(counted.size())) {
                return true;
            }
        }
        return false;
    }
}
