package tiewright.timetable;

import java.time.LocalTime;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import tiewright.event.Event;
import tiewright.event.Tie;

/**
 * How many courts a tie had by what was published.
 *
 * @param open ties that are still to be played
 */
record PublishedWidth(Event event, List<Tie> open) {
    /** Empty where nothing says so: then any width agrees with what was published. */
    Optional<Integer> on(List<String> courts) {
        return ofMost().or(() -> leftToEach(courts));
    }

    /** Of ties whose rubbers have courts of their own. */
    private Optional<Integer> ofMost() {
        return open.stream()
                .filter(tie -> !event.order().rubbers(tie.id()).isEmpty() && !tie.isInPlay())
                .map(tie -> event.order().courts(tie).size())
                .collect(Collectors.groupingBy(courts -> courts, TreeMap::new, Collectors.counting()))
                .entrySet()
                .stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey);
    }

    /** Where one court alone stands for each: as many as leave all that begin at one time a place of their own. */
    private Optional<Integer> leftToEach(List<String> courts) {
        Map<LocalTime, TreeSet<Integer>> first = new HashMap<>();
        for (Tie tie : open) {
            int court = tie.court().map(courts::indexOf).orElse(-1);
            if (court >= 0 && !tie.isInPlay()) {
                tie.start()
                        .ifPresent(start -> first.computeIfAbsent(start, any -> new TreeSet<>())
                                .add(court));
            }
        }
        return first.values().stream()
                .flatMap(taken -> taken.stream()
                        .flatMap(court -> Optional.ofNullable(taken.higher(court)).map(next -> next - court).stream()))
                .min(Comparator.naturalOrder())
                .map(width -> Math.min(width, event.conditions().rubbers()));
    }
}
