package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.Chart;
import tiewright.http.pieces.NavLink;

/**
 * The order of play as it is published.
 *
 * @param chart empty rows while nothing has a time
 * @param legend what the codes in the chart stand for
 * @param more lists and calendars made from the same times
 */
public record ChartView(Chart chart, List<String> legend, List<NavLink> more) {
    public ChartView {
        legend = List.copyOf(legend);
        more = List.copyOf(more);
    }
}
