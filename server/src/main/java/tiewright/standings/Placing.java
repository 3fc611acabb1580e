package tiewright.standings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import tiewright.event.ClubId;

/** Follows a procedure from tie points to the last lot and keeps the way that each club went. */
final class Placing {
    /** @param place from 1, shared where a lot is needed */
    record Placed(int club, int place, Reason reason) {}

    private final List<ClubId> clubs;
    private final Tallies tallies;
    private final Procedure procedure;
    private final List<LotDrawn> lots;
    private final List<Placed> placed = new ArrayList<>();

    private Placing(List<ClubId> clubs, Tallies tallies, Procedure procedure, List<LotDrawn> lots) {
        this.clubs = clubs;
        this.tallies = tallies;
        this.procedure = procedure;
        this.lots = lots;
    }

    /** Every club of the list once, by place, those that share one in the order of the list. */
    static List<Placed> of(List<ClubId> clubs, Tallies tallies, Procedure procedure, List<LotDrawn> lots) {
        Placing placing = new Placing(clubs, tallies, procedure, lots);
        if (!clubs.isEmpty()) {
            placing.compare(IntStream.range(0, clubs.size()).toArray(), Procedure.TIE_POINTS, List.of());
        }
        return placing.placed;
    }

    private void place(int[] level, Procedure.At at, List<Line> lines) {
        if (level.length == 1) {
            placed.add(new Placed(level[0], placed.size() + 1, new Reason(lines)));
            return;
        }
        Procedure.Move move = procedure.move(level.length, at);
        if (move.criterion().isPresent()) {
            compare(level, move, lines);
        } else {
            drawLots(level, lines);
        }
    }

    private void compare(int[] level, Procedure.Move move, List<Line> before) {
        Criterion criterion = move.criterion().orElseThrow();
        Value[] values = tallies.values(criterion, level);
        Integer[] order = IntStream.range(0, level.length).boxed().toArray(Integer[]::new);
        Arrays.sort(
                order,
                Comparator.comparing((Integer i) -> values[i]).reversed()); // stable: equal ones keep their order
        List<Line> lines = and(before, line(criterion, level, values, order));
        for (int from = 0; from < order.length; ) {
            int to = from + 1;
            while (to < order.length && values[order[to]].compareTo(values[order[from]]) == 0) {
                to++;
            }
            int[] part = Arrays.stream(order, from, to).mapToInt(i -> level[i]).toArray();
            place(part, part.length == level.length ? move.ifStillLevel() : move.ifSeparated(), lines);
            from = to;
        }
    }

    private Line line(Criterion criterion, int[] level, Value[] values, Integer[] order) {
        List<ClubValue> ranked = Arrays.stream(order)
                .map(i -> new ClubValue(clubs.get(level[i]), values[i]))
                .toList();
        boolean between = level.length == 2 && criterion.equals(Criterion.HEAD_TO_HEAD);
        return new Line.Compared(criterion, ranked, between ? tiesAmong(level) : List.of());
    }

    private List<TieBetween> tiesAmong(int[] level) {
        return tallies.among(level).stream()
                .sorted(Comparator.comparing(CountedTie::tie))
                .map(tie -> new TieBetween(
                        tie.tie(),
                        clubs.get(tie.home()),
                        clubs.get(tie.away()),
                        tie.result(),
                        tie.forHome().rubbers(),
                        tie.forAway().rubbers()))
                .toList();
    }

    /** Places the group by the lot drawn among just these clubs, or lets them share. */
    private void drawLots(int[] level, List<Line> before) {
        List<ClubId> names = Arrays.stream(level).mapToObj(clubs::get).toList();
        Optional<LotDrawn> drawn = LotDrawn.among(names, lots);
        if (drawn.isPresent()) {
            Reason reason = new Reason(and(before, new Line.ByLot(drawn.get())));
            drawn.get().order().forEach(club -> placed.add(new Placed(clubs.indexOf(club), placed.size() + 1, reason)));
        } else {
            Reason reason = new Reason(and(before, new Line.LotNeeded(names)));
            int shared = placed.size() + 1;
            Arrays.stream(level).forEach(club -> placed.add(new Placed(club, shared, reason)));
        }
    }

    private static List<Line> and(List<Line> before, Line line) {
        List<Line> lines = new ArrayList<>(before);
        lines.add(line);
        return lines;
    }
}
