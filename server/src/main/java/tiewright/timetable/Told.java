package tiewright.timetable;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.MayPlay;
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
        List<TieId> ties = new ArrayList<>(notPlayed);
        plan.problem().ties().stream()
                .map(PlanTie::id)
                .filter(tie -> rulesChange || isMoved(plan, tie))
                .forEach(ties::add);
        return MayPlay.of(event, ties);
    }

    private boolean isMoved(Plan plan, TieId id) {
        Optional<Tie> tie = event.tie(id);
        List<Assignment> places = plan.of(id);
        boolean pinned = places.stream()
                .allMatch(place ->
                        place.pinned().filter(why -> why != Pin.Why.BY_HAND).isPresent());
        Optional<LocalTime> start =
                tie.filter(Tie::isInPlay).flatMap(Tie::start).or(() -> plan.start(id));
        Optional<LocalTime> published = tie.flatMap(Tie::start);
        List<String> courts = places.stream()
                .flatMap(place -> place.lines(plan.problem().slotMinutes()).stream())
                .sorted(Comparator.comparing(Assignment.Line::rubber))
                .map(Assignment.Line::court)
                .distinct()
                .toList();
        boolean same = published.equals(start)
                && tie.filter(one -> event.order().courts(one).equals(courts)).isPresent();
        return !pinned && !same;
    }

    int people(Set<ClubId> clubs) {
        return clubs.stream()
                .mapToInt(club -> Math.max(1, event.squad(club).size()))
                .sum();
    }
}
