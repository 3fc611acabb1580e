package tiewright.http.visit;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.http.pieces.Chart;

/** Puts what stands on courts into a chart. */
public final class Charts {
    /** One thing on one court. */
    public record At(LocalTime start, String court, Chart.Entry entry) {}

    private Charts() {}

    /** @param courts also those on which nothing stands */
    public static Chart of(String id, String caption, List<String> courts, List<At> all) {
        TreeSet<String> names = new TreeSet<>(TextOrder.NUMBERS_BY_VALUE);
        names.addAll(courts);
        all.forEach(one -> names.add(one.court()));
        List<String> columns = List.copyOf(names);
        SortedMap<LocalTime, List<List<Chart.Entry>>> rows = new TreeMap<>();
        for (At one : all) {
            rows.computeIfAbsent(one.start(), start -> empty(columns.size()))
                    .get(columns.indexOf(one.court()))
                    .add(one.entry());
        }
        return new Chart(
                id,
                caption,
                columns.stream().map(Charts::heading).toList(),
                rows.entrySet().stream()
                        .map(row -> new Chart.Row(HallClock.said(row.getKey()), row.getValue()))
                        .toList());
    }

    private static List<List<Chart.Entry>> empty(int columns) {
        List<List<Chart.Entry>> cells = new ArrayList<>();
        for (int i = 0; i < columns; i++) {
            cells.add(new ArrayList<>());
        }
        return cells;
    }

    private static String heading(String court) {
        return court.isEmpty() ? "No court yet" : court.matches("\\d+") ? "Court " + court : court;
    }

    /** The codes of the clubs, or where they will come from. */
    public static String shortly(Tie tie) {
        return side(tie, Side.HOME) + " v " + side(tie, Side.AWAY);
    }

    private static String side(Tie tie, Side side) {
        return tie.club(side)
                .map(Object::toString)
                .or(() -> tie.slot(side).from().map(Object::toString))
                .orElse("");
    }
}
