package tiewright.event;

import java.util.Collections;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How much is held that must be deleted on a date: counts, never contents. A kind is called like its table, such as {@code film}.
 *
 * @param all everything, by kind
 * @param ofClubs what belongs to one club, as far as a single club's count tells nobody anything
 */
public record Held(SortedMap<String, Integer> all, SortedMap<ClubId, SortedMap<String, Integer>> ofClubs) {
    private static final Set<String> TOLD = Set.of("person", "hurt", "past_game", "sheet");

    public Held {
        all = Collections.unmodifiableSortedMap(new TreeMap<>(all));
        SortedMap<ClubId, SortedMap<String, Integer>> clubs = new TreeMap<>();
        ofClubs.forEach((club, counts) -> clubs.put(club, Collections.unmodifiableSortedMap(new TreeMap<>(counts))));
        ofClubs = Collections.unmodifiableSortedMap(clubs);
    }

    /**
     * What may be told to others than the clubs: nothing of what a club notes for itself, not even how much. A kind that is not
     * known to be everybody's is not told.
     */
    public SortedMap<String, Integer> told() {
        SortedMap<String, Integer> told = new TreeMap<>(all);
        told.keySet().retainAll(TOLD);
        return told;
    }

    public boolean isNothing() {
        return all.values().stream().allMatch(count -> count == 0);
    }
}
