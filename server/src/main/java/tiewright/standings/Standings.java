package tiewright.standings;

import java.util.List;
import tiewright.event.ClubId;

/**
 * Who is ahead, and why?
 *
 * <p>A table begins with tie points. Clubs level on them are taken through the level-teams procedure of the conditions,
 * step by step: a step places at once all clubs whose values differ, equal ones stay level and go on. Where the list ends
 * they share the place until a lot is drawn. The order of the ties has no influence; clubs that share a place stand in
 * the order of the entries. Cost: one pass over the ties for each step of each group.
 */
public final class Standings {
    private Standings() {}

    /** The table as the finished ties stand. */
    public static Table of(TableInput input) {
        Counting counting = Counting.of(input);
        List<ClubId> clubs = counting.clubs();
        Tallies tallies = new Tallies(clubs.size(), counting.counted());
        Sums sums = Sums.of(tallies);
        List<Row> rows = Placing.of(clubs, tallies, input.rules().procedure(), input.lots()).stream()
                .map(placed -> sums.row(placed, clubs.get(placed.club())))
                .toList();
        return new Table(rows, counting.open().size());
    }
}
