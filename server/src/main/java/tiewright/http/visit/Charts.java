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
import tiewright.wording.Words;

/** Puts what stands on courts into a chart. */
public final class Charts {
    /** One thing on one court. */
    public record At(LocalTime start, String court, Chart.Entry entry) {}

    /** @param words in whose language its courts are named */
    public record Named(Words words, String id, String caption) {}

    private Charts() {}

    /** @param courts also those on which nothing stands */
    public static Chart of(Named named, List<String> courts, List<At> all) {
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
                named.id(),
                named.caption(),
                columns.stream().map(court -> heading(named.words(), court)).toList(),
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

    private static String heading(Words words, String court) {
        if (court.isEmpty()) {
            return words.say("page-visit.no-court-yet");
        }
        return court.matches("\\d+") ? words.say("page-visit.court", "court", court) : court;
    }

    /** The codes of the clubs, or where they will come from. */
    public static String shortly(Words words, Tie tie) {
        return words.say("page-visit.v", "home", side(tie, Side.HOME), "away", side(tie, Side.AWAY));
    }

    private static String side(Tie tie, Side side) {
        return tie.club(side)
                .map(Object::toString)
                .or(() -> tie.slot(side).from().map(Object::toString))
                .orElse("");
    }
}
