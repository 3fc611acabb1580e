package tiewright.event;

import java.time.Instant;
import java.time.LocalTime;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;

/**
 * What was published of the order of play, and what changed in it: nothing that was ever published is lost.
 *
 * @param plans whole plans in the order in which they were published
 * @param rubbers where and when each rubber of a planned tie stands; a tie that was moved by hand since has none
 * @param changes every start and court that was given, oldest first
 * @param others the clubs that a notice concerns beside those of the changes under it, by its number
 * @param told the clubs that were told of a notice, by its number
 * @param stop the last stop of all play, until somebody said that it goes on; its time may be over
 */
public record OrderOfPlay(
        List<Plan> plans,
        Map<TieId, SortedMap<RubberNo, Place>> rubbers,
        List<Change> changes,
        Map<Integer, List<ClubId>> others,
        Map<Integer, Set<ClubId>> told,
        Optional<Stop> stop) {
    static final OrderOfPlay NONE =
            new OrderOfPlay(List.of(), Map.of(), List.of(), Map.of(), Map.of(), Optional.empty());

    /**
     * Play stands still on every court.
     *
     * @param until a time of the event's day
     */
    public record Stop(LocalTime until, String reason) {}

    /**
     * A whole plan that was published under one notice.
     *
     * @param changesBefore how many changes there were before it: those after them belong to its notice
     */
    public record Plan(
            int version,
            int notice,
            int slotMinutes,
            String seed,
            String reason,
            String by,
            Instant at,
            int changesBefore) {}

    /**
     * The published start and court of one rubber.
     *
     * @param umpires the club on duty, where clubs umpire
     */
    public record Place(LocalTime start, String court, Optional<ClubId> umpires) {
        public Place(LocalTime start, String court) {
            this(start, court, Optional.empty());
        }
    }

    /** The published start and courts of a tie; both empty while it has none. */
    public record Times(Optional<LocalTime> start, List<String> courts) {
        static final Times NONE = new Times(Optional.empty(), List.of());

        public Times {
            courts = List.copyOf(courts);
        }

        public boolean isNone() {
            return start.isEmpty() && courts.isEmpty();
        }
    }

    /**
     * One change.
     *
     * @param between who was to meet at that moment, clubs or where they would come from
     * @param clubs the clubs of the tie at that moment, as far as they were known
     * @param notice the notice that told of it; empty for a first time given without one
     * @param calledOff the tie will not be played
     */
    public record Change(
            TieId tie,
            Saying between,
            List<ClubId> clubs,
            Times before,
            Times after,
            OptionalInt notice,
            boolean calledOff,
            Instant at) {
        public Change {
            clubs = List.copyOf(clubs);
        }

        /** Something else than before: the same time published again changes nothing. */
        boolean isOne() {
            return calledOff || !before.equals(after);
        }

        Change under(int number) {
            return new Change(tie, between, clubs, before, after, OptionalInt.of(number), calledOff, at);
        }

        Change off() {
            return new Change(tie, between, clubs, before, after, notice, true, at);
        }

        Change onto(List<String> courts) {
            return new Change(tie, between, clubs, before, new Times(after.start(), courts), notice, calledOff, at);
        }
    }

    public OrderOfPlay {
        plans = List.copyOf(plans);
        rubbers = Collections.unmodifiableMap(new LinkedHashMap<>(rubbers));
        changes = List.copyOf(changes);
        others = Collections.unmodifiableMap(new LinkedHashMap<>(others));
        told = Collections.unmodifiableMap(new LinkedHashMap<>(told));
    }

    /** The plan that holds now. */
    public Optional<Plan> plan() {
        return plans.isEmpty() ? Optional.empty() : Optional.of(plans.get(plans.size() - 1));
    }

    /** The stop of play that holds at this moment. */
    public Optional<Stop> stop(Optional<SetUpFact.EventDescribed> about, Instant now) {
        return stop.filter(
                one -> about.filter(day -> now.isBefore(day.at(one.until()))).isPresent());
    }

    /** What a notice changed, in the order of the ties. */
    public List<Change> under(int notice) {
        return changes.stream()
                .filter(change -> change.notice().equals(OptionalInt.of(notice)))
                .toList();
    }

    /** Everything that changed for a tie after its first time, oldest first. */
    public List<Change> of(TieId tie) {
        return changes.stream().filter(change -> change.tie().equals(tie)).toList();
    }

    /** The clubs that a notice concerns. */
    public Set<ClubId> concerned(int notice) {
        Set<ClubId> clubs = new TreeSet<>(java.util.Comparator.comparing(ClubId::code));
        under(notice).forEach(change -> clubs.addAll(change.clubs()));
        clubs.addAll(others.getOrDefault(notice, List.of()));
        return clubs;
    }

    /** The tie had a time before, so that a new one is a change for those who read the old one. */
    public boolean hadTime(TieId tie) {
        return of(tie).stream().anyMatch(change -> !change.after().isNone());
    }

    public Set<ClubId> told(int notice) {
        return told.getOrDefault(notice, Set.of());
    }

    /** The rubbers of a tie as planned; empty where only the tie has a time. */
    public SortedMap<RubberNo, Place> rubbers(TieId tie) {
        return rubbers.getOrDefault(tie, Collections.emptySortedMap());
    }

    /** The courts that the tie stands on: those of its rubbers where they are planned, else its own. */
    public List<String> courts(Tie tie) {
        SortedMap<RubberNo, Place> places = rubbers(tie.id());
        return places.isEmpty() ? tie.court().stream().toList() : courts(places);
    }

    /** The clubs that umpire rubbers of the tie; empty where none were named. */
    public List<ClubId> umpires(TieId tie) {
        return rubbers(tie).values().stream()
                .flatMap(place -> place.umpires().stream())
                .distinct()
                .toList();
    }

    static List<String> courts(SortedMap<RubberNo, Place> places) {
        return places.values().stream().map(Place::court).distinct().toList();
    }
}
