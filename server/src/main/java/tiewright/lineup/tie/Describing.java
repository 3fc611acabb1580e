package tiewright.lineup.tie;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import tiewright.event.Sheet;
import tiewright.lineup.Reason;

/** Sheets as they are shown: what each is worth, how sure that is, and how it stands beside the best. */
final class Describing {
    private final Board board;
    private final Doubt doubt;

    Describing(Board board, Doubt doubt) {
        this.board = board;
        this.doubt = doubt;
    }

    /** The first is the best; ranks from 1. */
    List<ProposedSheet> all(List<int[]> shown, SheetNotes notes) {
        List<ProposedSheet> sheets = new ArrayList<>();
        for (int i = 0; i < shown.size(); i++) {
            sheets.add(beside(shown.get(0), i + 1, shown.get(i), notes.of(shown.get(i))));
        }
        return sheets;
    }

    ProposedSheet beside(int[] best, int rank, int[] line, List<Reason> reasons) {
        return proposed(rank, line, new Beside(cost(best, line), beats(line, best)), reasons);
    }

    /** Where there is no best to compare it with. */
    ProposedSheet alone(int[] line, List<Reason> reasons) {
        return proposed(0, line, new Beside(0, 0.5), reasons);
    }

    /** What a sheet costs against the best, and the chance that it is worth more all the same. */
    private record Beside(double cost, double beats) {}

    double beats(int[] line, int[] best) {
        return Doubt.better(doubt.worths(line), doubt.worths(best));
    }

    /** Below a billionth it is rounding. */
    double cost(int[] best, int[] other) {
        double cost = board.worth().of(best) - board.worth().of(other);
        return cost < 1.0 / Merit.BILLION ? 0 : cost;
    }

    private ProposedSheet proposed(int rank, int[] line, Beside best, List<Reason> reasons) {
        Sheet sheet = board.sheet(line);
        List<ProposedSheet.Line> lines = IntStream.range(0, line.length)
                .mapToObj(r -> doubt.rubberOf(line, r))
                .toList();
        double[] drawn = doubt.chances(line);
        return new ProposedSheet(
                rank,
                sheet,
                lines,
                board.worth().of(line),
                board.worth().chance(line),
                board.worth().level(line),
                Doubt.low(drawn),
                Doubt.high(drawn),
                best.cost(),
                best.beats(),
                reasons);
    }
}
