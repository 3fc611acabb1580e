package tiewright.standings;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.event.ClubId;

/**
 * What a club needs in the ties left.
 *
 * @param places over everything that can still happen
 * @param mayNeedLot somewhere in it a lot decides
 * @param exact every place of the range can happen; otherwise it is a bound: no place outside it can
 * @param tooMany too many ties are left to go through them all, so the range is a bound and the cases may be missing
 * @param tiesLeft ties of the table still open, the club's own among them
 * @param through how many clubs go through, if that was asked
 * @param cases by the club's own results, won first
 */
public record NeedsReport(
        ClubId club,
        PlaceRange places,
        boolean mayNeedLot,
        boolean exact,
        boolean tooMany,
        int tiesLeft,
        OptionalInt through,
        Optional<Prospect> prospect,
        List<NeedsCase> cases) {
    public NeedsReport {
        cases = List.copyOf(cases);
    }

    /** The club has so many ties left that only "all won" and "all lost" stand among the cases. */
    public boolean onlyEnds() {
        return cases.stream().anyMatch(one -> one.results().size() > CaseBook.MOST_OWN_TIES);
    }
}
