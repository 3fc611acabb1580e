package tiewright.standings;

/**
 * What the conditions of play say about a table.
 *
 * @param points what a tie counts
 * @param procedure how level clubs are parted
 * @param shape what a tie consists of
 */
public record TableRules(PointsForTie points, Procedure procedure, TieShape shape) {

    int tiePoints(Result result) {
        return switch (result) {
            case WON -> points.won();
            case DRAWN -> points.drawn();
            case LOST, LOST_BY_BOTH -> points.lost();
        };
    }
}
