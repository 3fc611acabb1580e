package tiewright.standings;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import tiewright.event.ClubId;
import tiewright.event.TieScore;

/**
 * What does a club need in the ties left?
 *
 * <p>Goes through every way in which the open ties can end, rubber by rubber and game by game, and follows the club
 * through the level-teams procedure in each. The points of games not yet played are left open: differences of points are
 * worked out exactly (see {@link PointSplits}), sums and ratios of points within bounds. What is called certain holds
 * whatever the points are. Foreseen is that all rubbers left are played, retired or walked over; a withdrawal, an
 * annulled result, a rubber that both sides leave empty, a walkover that brings no game and a tie of which nothing is played
 * are not.
 */
public final class Needs {
    /** Combinations of outcomes to go through at most, unless somebody has more time: about a second. */
    public static final int USUAL_MOST = 200_000;

    private final List<ClubId> clubs;
    private final ClubId club;
    private final PlaceFinder finder;
    private final List<CountedTie> counted;
    private final List<TieScore> open;
    private final List<List<OpenOutcome>> outcomes;
    private final OptionalInt through;

    private Needs(TableInput input, Counting counting, ClubId club, OptionalInt through) {
        this.clubs = counting.clubs();
        this.club = club;
        this.through = through;
        this.finder = new PlaceFinder(clubs, clubs.indexOf(club), input.rules(), input.lots());
        this.counted = counting.counted();
        this.open = Stream.concat(
                        counting.open().stream().filter(tie -> tie.has(club)),
                        counting.open().stream().filter(tie -> !tie.has(club)))
                .toList();
        TieCounter counter = new TieCounter(clubs, input.rules());
        this.outcomes = open.stream()
                .map(tie -> OpenOutcomes.of(tie, counter, input.rules()))
                .toList();
    }

    /**
     * @param through how many clubs of this table go through, if the question is about that
     * @param most combinations of outcomes to go through at most; beyond them the answer is a bound and says so
     * @return empty if the club has no row in this table
     */
    public static Optional<NeedsReport> of(TableInput input, ClubId club, OptionalInt through, int most) {
        Counting counting = Counting.of(input);
        if (!counting.clubs().contains(club)) {
            return Optional.empty();
        }
        return Optional.of(new Needs(input, counting, club, through).report(most));
    }

    /** With {@link #USUAL_MOST} combinations. */
    public static Optional<NeedsReport> of(TableInput input, ClubId club, OptionalInt through) {
        return of(input, club, through, USUAL_MOST);
    }

    private NeedsReport report(int most) {
        CaseBook book = new CaseBook(club, open, through);
        Combinations all = new Combinations(counted, outcomes);
        if (all.count() <= most) {
            all.forEach((ties, ending) -> book.note(ending, finder.find(ties, ending)));
            return report(book.all(), false, book.cases());
        }
        Combinations results = new Combinations(
                counted, outcomes.stream().map(Needs::onePerResultInPoints).toList());
        if (results.count() <= most) {
            results.forEach((ties, ending) -> book.note(ending, finder.findByTiePoints(ties)));
            return report(book.all(), true, book.cases());
        }
        return report(finder.bound(counted, outcomes), true, List.of());
    }

    private NeedsReport report(Outlook all, boolean tooMany, List<NeedsCase> cases) {
        Optional<Prospect> prospect =
                through.isPresent() ? Optional.of(Prospect.of(all.places(), through.getAsInt())) : Optional.empty();
        return new NeedsReport(
                club, all.places(), all.mayNeedLot(), all.isExact(), tooMany, open.size(), through, prospect, cases);
    }

    private static List<OpenOutcome> onePerResultInPoints(List<OpenOutcome> outcomes) {
        Map<List<Object>, OpenOutcome> each = new LinkedHashMap<>();
        outcomes.forEach(outcome -> each.putIfAbsent(
                List.of(
                        outcome.tie().result(),
                        outcome.tie().forHome().tiePoints(),
                        outcome.tie().forAway().tiePoints()),
                outcome));
        return List.copyOf(each.values());
    }
}
