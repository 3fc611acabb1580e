package tiewright.event;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How much is held that must be deleted on a date: counts, never contents. A kind is called like its table, such as {@code film}.
 *
 * @param all everything, by kind
 * @param ofClubs what belongs to one club, as far as a single club's count tells nobody anything
 */
public record Held(SortedMap<String, Integer> all, SortedMap<ClubId, SortedMap<String, Integer>> ofClubs) {
    public Held {
        all = Collections.unmodifiableSortedMap(new TreeMap<>(all));
        SortedMap<ClubId, SortedMap<String, Integer>> clubs = new TreeMap<>();
        ofClubs.forEach((club, counts) -> clubs.put(club, Collections.unmodifiableSortedMap(new TreeMap<>(counts))));
        ofClubs = Collections.unmodifiableSortedMap(clubs);
    }

    public boolean isNothing() {
        return all.values().stream().allMatch(count -> count == 0);
    }
}
