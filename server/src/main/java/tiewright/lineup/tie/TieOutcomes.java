package tiewright.lineup.tie;

/** What a sheet leaves open against what the other club may send. */
final class TieOutcomes {
    private TieOutcomes() {}

    /** Can the rubbers finish level against any sheet that is expected? */
    static boolean canBeLevel(Board board, int[] line) {
        for (int[] theirs : board.expectedLines()) {
            int counted = 0;
            for (int rubber = 0; rubber < line.length; rubber++) {
                counted += line[rubber] != Board.EMPTY || theirs[rubber] != Board.EMPTY ? 1 : 0;
            }
            if (counted % 2 == 0) {
                return true;
            }
        }
        return false;
    }
}
