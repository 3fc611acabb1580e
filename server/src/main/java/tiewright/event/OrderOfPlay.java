package tiewright.event;

import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * What was published of the order of play, and what changed in it: nothing that was ever published is lost.
 *
 * @param plans whole plans in the order in which they were published
 * @param rubbers where and when each rubber of a planned tie stands; a tie that was moved by hand since has none
 * @param changes every start and court that was given, oldest first
 * @param others the clubs that a notice concerns beside those of the changes under it, by its number
 * @param told the clubs that were told of a notice, by its number
 */
public record OrderOfPlay(
        List<Plan> plans,
        Map<TieId, SortedMap<RubberNo, Place>> rubbers,
        List<Change> changes,
        Map<Integer, List<ClubId>> others,
        Map<Integer, Set<ClubId>> told) {
    static final OrderOfPlay NONE = new OrderOfPlay(List.of(), Map.of(), List.of(), Map.of(), Map.of());

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

    OrderOfPlay published(DrawFact.PlanPublished fact, Instant at) {
        Plan plan = new Plan(
                fact.version(),
                fact.notice(),
                fact.slotMinutes(),
                fact.seed(),
                fact.reason(),
                fact.by(),
                at,
                changes.size());
        return new OrderOfPlay(more(plans, plan), rubbers, changes, others, told);
    }

    OrderOfPlay timed(Tie tie, Saying between, DrawFact.TieTimed fact, Instant at) {
        Times after = new Times(fact.start(), fact.court().stream().toList());
        return changed(tie, change(tie, between, after, at));
    }

    OrderOfPlay calledOff(Tie tie, Saying between, Instant at) {
        return changed(tie, change(tie, between, Times.NONE, at).off());
    }

    private Change change(Tie tie, Saying between, Times after, Instant at) {
        List<ClubId> clubs = Stream.of(tie.home().club(), tie.away().club())
                .flatMap(Optional::stream)
                .toList();
        Times before = new Times(tie.start(), courts(tie));
        return new Change(tie.id(), between, clubs, before, after, OptionalInt.empty(), false, at);
    }

    private OrderOfPlay changed(Tie tie, Change change) {
        Map<TieId, SortedMap<RubberNo, Place>> rest = new LinkedHashMap<>(rubbers);
        rest.remove(tie.id());
        return new OrderOfPlay(plans, rest, more(changes, change), others, told);
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

    private static List<String> courts(SortedMap<RubberNo, Place> places) {
        return places.values().stream().map(Place::court).distinct().toList();
    }

    OrderOfPlay placed(DrawFact.RubberTimed fact) {
        Map<TieId, SortedMap<RubberNo, Place>> all = new LinkedHashMap<>(rubbers);
        SortedMap<RubberNo, Place> places = new TreeMap<>(rubbers(fact.tie()));
        places.put(fact.rubber(), new Place(fact.start(), fact.court(), fact.umpires()));
        all.put(fact.tie(), Collections.unmodifiableSortedMap(places));
        List<Change> now = new ArrayList<>(changes);
        int last = now.size() - 1;
        if (last >= 0
                && now.get(last).tie().equals(fact.tie())
                && now.get(last).notice().isEmpty()) {
            now.set(last, now.get(last).onto(courts(places)));
        }
        return new OrderOfPlay(plans, all, now, others, told);
    }

    /** The notice of a plan tells of all that changed with it; any other of the last change of its tie. */
    OrderOfPlay noticed(OfficialFact.NoticeStated notice) {
        Optional<Plan> its = plan().filter(plan -> plan.notice() == notice.number());
        return its.map(plan -> byPlan(plan, notice.number()))
                .orElseGet(() ->
                        notice.tie().map(tie -> byTie(tie, notice.number())).orElse(this))
                .concerning(notice);
    }

    private OrderOfPlay concerning(OfficialFact.NoticeStated notice) {
        if (notice.clubs().isEmpty()) {
            return this;
        }
        Map<Integer, List<ClubId>> all = new LinkedHashMap<>(others);
        all.put(notice.number(), notice.clubs());
        return new OrderOfPlay(plans, rubbers, changes, all, told);
    }

    private OrderOfPlay byPlan(Plan plan, int number) {
        List<Change> linked = new ArrayList<>(changes.subList(0, plan.changesBefore()));
        changes.subList(plan.changesBefore(), changes.size()).stream()
                .filter(Change::isOne)
                .map(change -> change.under(number))
                .forEach(linked::add);
        return new OrderOfPlay(plans, rubbers, linked, others, told);
    }

    private OrderOfPlay byTie(TieId tie, int number) {
        int last = changes.size() - 1;
        if (last < 0
                || changes.get(last).notice().isPresent()
                || !changes.get(last).tie().equals(tie)) {
            return this;
        }
        List<Change> linked = new ArrayList<>(changes);
        linked.set(last, changes.get(last).under(number));
        return new OrderOfPlay(plans, rubbers, linked, others, told);
    }

    OrderOfPlay told(OfficialFact.NoticeTold fact) {
        Map<Integer, Set<ClubId>> all = new LinkedHashMap<>(told);
        Set<ClubId> clubs = new java.util.LinkedHashSet<>(told(fact.notice()));
        if (fact.told()) {
            clubs.add(fact.club());
        } else {
            clubs.remove(fact.club());
        }
        all.put(fact.notice(), Collections.unmodifiableSet(clubs));
        return new OrderOfPlay(plans, rubbers, changes, others, all);
    }

    private static <T> List<T> more(List<T> list, T one) {
        List<T> all = new ArrayList<>(list);
        all.add(one);
        return all;
    }
}
