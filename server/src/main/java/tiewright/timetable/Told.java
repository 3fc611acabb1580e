package tiewright.timetable;

import java.time.LocalTime;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.Side;
import tiewright.event.Slot;
import tiewright.event.SlotSource;
import tiewright.event.Tie;
import tiewright.event.TieId;

/** Who must be told of a new plan: those whose tie has another time or court than published, or is not played, or is played otherwise. */
final class Told {
    private final Event event;

    Told(Event event) {
        this.event = event;
    }

    /** @param rulesChange then everybody who still plays */
    Set<ClubId> clubs(Plan plan, List<TieId> notPlayed, boolean rulesChange) {
        Set<ClubId> clubs = new LinkedHashSet<>();
        for (PlanTie tie : plan.problem().ties()) {
            if (rulesChange || isMoved(plan, tie.id())) {
                addClubs(tie.id(), clubs);
            }
        }
        notPlayed.forEach(tie -> addClubs(tie, clubs));
        return clubs;
    }

    private boolean isMoved(Plan plan, TieId id) {
        Optional<Tie> tie = event.tie(id);
        List<Assignment> places = plan.of(id);
        boolean pinned = places.stream()
                .allMatch(place ->
                        place.pinned().filter(why -> why != Pin.Why.BY_HAND).isPresent());
        Optional<LocalTime> published = tie.flatMap(Tie::start);
        boolean sameCourt = tie.flatMap(Tie::court)
                .map(court -> places.stream().anyMatch(place -> place.courts().contains(court)))
                .orElse(false);
        return !pinned && !(published.isPresent() && published.equals(plan.start(id)) && sameCourt);
    }

    /** The clubs of a tie, or all that may still come to it. */
    private void addClubs(TieId id, Set<ClubId> clubs) {
        for (Tie tie : event.tie(id).stream().toList()) {
            for (Side side : Side.values()) {
                Slot slot = tie.slot(side);
                slot.club().ifPresentOrElse(clubs::add, () -> slot.from().ifPresent(from -> addSources(from, clubs)));
            }
        }
    }

    private void addSources(SlotSource from, Set<ClubId> clubs) {
        if (from.kind() == SlotSource.Kind.POOL_PLACE) {
            clubs.addAll(event.pools().getOrDefault(from.of(), List.of()));
        } else {
            addClubs(TieId.of(from.of()), clubs);
        }
    }

    int people(Set<ClubId> clubs) {
        return clubs.stream()
                .mapToInt(club -> Math.max(1, event.squad(club).size()))
                .sum();
    }
}
