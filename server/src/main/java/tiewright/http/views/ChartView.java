package tiewright.http.views;

import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.Chart;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.WallTable;

/**
 * The order of play as it is published.
 *
 * @param wall empty rows while nothing has a time
 * @param rubbers when each rubber is planned, where the order of play says so
 * @param legend what the codes in the chart stand for
 * @param more lists and calendars made from the same times
 */
public record ChartView(WallTable wall, Optional<Chart> rubbers, List<String> legend, List<NavLink> more) {
    public ChartView {
        legend = List.copyOf(legend);
        more = List.copyOf(more);
    }
}
