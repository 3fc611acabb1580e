package tiewright.lineup.tie;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tiewright.event.Pair;
import tiewright.event.Sheet;
import tiewright.lineup.Belief;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Meetings;

/**
 * What each of our pairs can do against each pair that is expected of the other club.
 *
 * @param ours as the sheet names them, rubber by rubber
 * @param theirs in the order of the first sheet that is expected
 * @param chances from 0 to 1 that ours wins their rubber, mean over what the strengths could well be: a row for each of ours, a column for each of theirs
 */
public record PairGrid(List<Pair> ours, List<Pair> theirs, List<List<Double>> chances) {
    public PairGrid {
        ours = List.copyOf(ours);
        theirs = List.copyOf(theirs);
        chances = chances.stream().map(List::copyOf).toList();
    }

    public static PairGrid of(LineupProblem problem, Sheet sheet) {
        Set<Pair> theirs = new LinkedHashSet<>();
        for (Belief.Expected expected : problem.belief().sheets()) {
            expected.sheet().pairs().values().stream().flatMap(Optional::stream).forEach(theirs::add);
        }
        List<Pair> ours =
                sheet.pairs().values().stream().flatMap(Optional::stream).toList();
        Meetings meetings = new Meetings(problem, ours);
        return new PairGrid(
                ours,
                List.copyOf(theirs),
                ours.stream()
                        .map(own -> theirs.stream()
                                .map(other -> meetings.rubber(own, other).mean())
                                .toList())
                        .toList());
    }
}
