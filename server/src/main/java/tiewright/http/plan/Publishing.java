package tiewright.http.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import tiewright.conditions.Conditions;
import tiewright.desk.PublishPlan;
import tiewright.event.Club;
import tiewright.event.ClubId;
import tiewright.event.OrderOfPlay;
import tiewright.event.RubberNo;
import tiewright.event.TieId;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.ChoiceList;
import tiewright.http.pieces.Option;
import tiewright.http.visit.Form;
import tiewright.http.visit.Tried;
import tiewright.timetable.Assignment;
import tiewright.timetable.Cut;
import tiewright.timetable.Pin;
import tiewright.timetable.Plan;
import tiewright.timetable.ReplanOption;

/** What a found plan, or an option for a broken day, comes to when it is published. */
final class Publishing {
    private static final String TOLD = "told";

    private Publishing() {}

    static PublishPlan of(Plan plan, String reason, String by) {
        return new PublishPlan(
                placed(plan),
                PublishPlan.Cuts.NONE,
                Optional.empty(),
                plan.problem().slotMinutes(),
                Long.toString(plan.seed()),
                reason,
                by);
    }

    static PublishPlan of(ReplanOption option, String reason, String by) {
        Optional<Conditions> conditions = option.conditions();
        return new PublishPlan(
                placed(option.plan()),
                cuts(option),
                conditions,
                option.plan().problem().slotMinutes(),
                Long.toString(option.plan().seed()),
                reason,
                by);
    }

    /** The clubs that a person ticked as told of a start earlier than published. */
    static ChoiceList told(String label, String hint, Collection<Club> clubs, Tried tried) {
        return new ChoiceList(
                TOLD,
                label,
                hint,
                tried.error(TOLD),
                true,
                clubs.stream()
                        .map(club -> Option.of(
                                club.id().code(),
                                club.name(),
                                tried.isChosen(TOLD, club.id().code(), false)))
                        .toList());
    }

    static Set<ClubId> told(Form form, VisibleEvent event) {
        return event.clubs().stream()
                .map(Club::id)
                .filter(club -> form.texts(TOLD).contains(club.code()))
                .collect(Collectors.toSet());
    }

    private static PublishPlan.Cuts cuts(ReplanOption option) {
        List<TieId> later = option.nextDay().map(Publishing::ties).orElse(List.of());
        return option.cut() == Cut.SHARED_POINTS
                ? new PublishPlan.Cuts(List.of(), option.notPlayed(), later)
                : new PublishPlan.Cuts(
                        option.notPlayed().stream()
                                .filter(tie -> !later.contains(tie))
                                .toList(),
                        List.of(),
                        later);
    }

    private static List<TieId> ties(Plan plan) {
        return plan.assignments().stream().map(Assignment::tie).distinct().toList();
    }

    /** What is in play or frozen stays as it was published, so it is not published again. */
    private static List<PublishPlan.Placed> placed(Plan plan) {
        Map<TieId, SortedMap<RubberNo, OrderOfPlay.Place>> ties = new LinkedHashMap<>();
        for (Assignment assignment : plan.assignments()) {
            boolean stays =
                    assignment.pinned().filter(why -> why != Pin.Why.BY_HAND).isPresent();
            if (!stays) {
                assignment
                        .lines(plan.problem().slotMinutes())
                        .forEach(line -> ties.computeIfAbsent(line.tie(), tie -> new TreeMap<>())
                                .put(line.rubber(), new OrderOfPlay.Place(line.start(), line.court(), line.umpires())));
            }
        }
        List<PublishPlan.Placed> placed = new ArrayList<>();
        ties.forEach((tie, rubbers) -> placed.add(new PublishPlan.Placed(tie, rubbers)));
        return placed;
    }
}
