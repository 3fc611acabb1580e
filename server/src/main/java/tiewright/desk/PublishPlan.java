package tiewright.desk;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import tiewright.conditions.Conditions;
import tiewright.event.ClubId;
import tiewright.event.Court;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.FactKind;
import tiewright.event.OrderOfPlay;
import tiewright.event.Refusal;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.TieId;

/**
 * A whole order of play goes out under one numbered notice, with everything it changes. What has begun stays, and so does a
 * published start within the freeze window of the conditions, unless a tie that is not over keeps one of its clubs. Ties that are cut, and conditions that change after the first
 * sealed sheet, need a ruling: it is given with it.
 *
 * @param placed where and when each rubber is played
 * @param cuts what is not played as the draw has it
 * @param conditions those to play under from now on; empty = as they are
 * @param seed with which the plan was searched, empty if it was not
 * @param by who publishes it, as it will be printed
 * @param told clubs that know already of starts earlier than published, or agreed to them
 */
public record PublishPlan(
        List<Placed> placed,
        Cuts cuts,
        Optional<Conditions> conditions,
        int slotMinutes,
        String seed,
        String reason,
        String by,
        Set<ClubId> told)
        implements Decision {
    /** The rubbers of one tie, at least one. */
    public record Placed(TieId tie, SortedMap<RubberNo, OrderOfPlay.Place> rubbers) {
        public Placed {
            rubbers = java.util.Collections.unmodifiableSortedMap(new TreeMap<>(rubbers));
        }

        LocalTime start() {
            return rubbers.values().stream()
                    .map(OrderOfPlay.Place::start)
                    .min(Comparator.naturalOrder())
                    .orElseThrow();
        }

        /** The court of its first rubber; the others lie beside it. */
        String court() {
            return rubbers.values().iterator().next().court();
        }
    }

    /**
     * @param off not played at all and counted nowhere
     * @param shared not played, every rubber void: a drawn tie
     * @param later played on another day, so without a time today
     */
    public record Cuts(List<TieId> off, List<TieId> shared, List<TieId> later) {
        public static final Cuts NONE = new Cuts(List.of(), List.of(), List.of());

        public Cuts {
            off = List.copyOf(off);
            shared = List.copyOf(shared);
            later = List.copyOf(later);
        }

        boolean isNone() {
            return off.isEmpty() && shared.isEmpty() && later.isEmpty();
        }

        List<TieId> all() {
            List<TieId> all = new ArrayList<>(off);
            all.addAll(shared);
            all.addAll(later);
            return all;
        }
    }

    public PublishPlan {
        placed = List.copyOf(placed);
        told = Set.copyOf(told);
    }

    /** Nobody was told of anything beforehand. */
    public PublishPlan(
            List<Placed> placed,
            Cuts cuts,
            Optional<Conditions> conditions,
            int slotMinutes,
            String seed,
            String reason,
            String by) {
        this(placed, cuts, conditions, slotMinutes, seed, reason, by, Set.of());
    }

    public PublishPlan tellingBefore(Set<ClubId> clubs) {
        return new PublishPlan(placed, cuts, conditions, slotMinutes, seed, reason, by, clubs);
    }

    /** Whoever has to be told of it once it is published: the same clubs that its notice then names. Sorted by code. */
    public List<ClubId> concerned(Event event) {
        return new PlanFacts(event, this, moved(event)).concerned();
    }

    /** The ties that it gives another time or court, in its order. */
    public List<TieId> moves(Event event) {
        return moved(event).stream().map(Placed::tie).toList();
    }

    /** Clubs whose ties it begins before their published starts; each has to be told beforehand. Sorted by code. */
    public List<ClubId> earlier(Event event) {
        Earlier earlier = new Earlier(event, told);
        return moved(event).stream()
                .flatMap(one -> event.tie(one.tie()).stream().flatMap(tie -> earlier.clubs(tie, one.start()).stream()))
                .distinct()
                .sorted(Comparator.comparing(ClubId::code))
                .toList();
    }

    /** It is what stands already. */
    public boolean isPublished(Event event) {
        return moved(event).isEmpty() && cuts.isNone();
    }

    private List<Placed> moved(Event event) {
        return placed.stream()
                .filter(one -> event.tie(one.tie())
                        .filter(tie -> changes(event, tie, one))
                        .isPresent())
                .toList();
    }

    @Override
    public Outcome decide(Event event, Given given) {
        Role role = given.by().role();
        List<Placed> moved = moved(event);
        Earlier earlier = new Earlier(event, told);
        Asked asked = new Asked()
                .unless(role == Role.ORGANISER || role == Role.REFEREE, Refusal.of("desk.organiser-or-referee-only"))
                .text("reason", reason, Asked.LONG)
                .text("by", by, Asked.SHORT)
                .unless(!moved.isEmpty() || !cuts.isNone(), Refusal.of("desk.plan-unchanged"));
        placed.forEach(one -> asked.all(possible(event, one)));
        moved.forEach(one -> asked.all(
                new Moving(event, given.now()).whyNot(event.tie(one.tie()).orElseThrow(), one.start())));
        moved.forEach(one -> asked.all(earlier.untold(event.tie(one.tie()).orElseThrow(), one.start())));
        cuts.all().forEach(tie -> asked.all(cuttable(event, tie)));
        if (!asked.isFine()) {
            return asked.refused();
        }
        PlanFacts facts = new PlanFacts(event, this, moved);
        return After.accepted(event, given, facts.facts(), facts.notes());
    }

    private static boolean changes(Event event, Tie tie, Placed one) {
        boolean sameRubbers = event.order().rubbers(tie.id()).equals(one.rubbers());
        return !sameRubbers || (!tie.isInPlay() && !tie.start().equals(Optional.of(one.start())));
    }

    private static List<Refusal> possible(Event event, Placed one) {
        if (event.tie(one.tie()).isEmpty()) {
            return List.of(Refusal.of("desk.no-such-tie").with("tie", one.tie()));
        }
        return one.rubbers().values().stream()
                .map(OrderOfPlay.Place::court)
                .distinct()
                .filter(court -> Optional.ofNullable(event.courts().get(court))
                        .filter(Court::usable)
                        .isEmpty())
                .map(court -> Refusal.of("desk.plan-court-gone").with("court", court))
                .toList();
    }

    private static List<Refusal> cuttable(Event event, TieId id) {
        Optional<Tie> tie = event.tie(id);
        if (tie.isEmpty()) {
            return List.of(Refusal.of("desk.no-such-tie").with("tie", id));
        }
        return tie.get().isInPlay() ? List.of(Refusal.of("desk.plan-cuts-begun").with("tie", id)) : List.of();
    }

    /** Somebody published other times, moved a court or called a tie meanwhile: this was reckoned from what no longer is. */
    @Override
    public boolean isStaledBy(Fact fact) {
        FactKind kind = fact.kind();
        return kind == FactKind.TIE_TIMED
                || kind == FactKind.PLAN_PUBLISHED
                || kind == FactKind.TIE_CALLED_OFF
                || kind == FactKind.COURT_SET
                || kind == FactKind.CONDITIONS_PUBLISHED;
    }
}
