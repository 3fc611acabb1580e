package tiewright.http;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import tiewright.event.Event;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.TieId;
import tiewright.event.VisibleEvent;
import tiewright.timetable.Budget;
import tiewright.timetable.Pin;
import tiewright.timetable.PlanProblem;
import tiewright.timetable.Planned;
import tiewright.timetable.Planner;
import tiewright.timetable.Replan;

/** What the search for an order of play answers those who may publish one. Cannot be made for anybody else. */
final class PlanAnswers {
    private final Event event;

    PlanAnswers(Event event, VisibleEvent visible) {
        Role role = visible.viewer().role();
        if (role != Role.ORGANISER && role != Role.REFEREE) {
            throw new IllegalStateException("only the organiser or the referee may ask this");
        }
        this.event = event;
    }

    /** A search for an order of play over the event as it stands now. */
    Function<Budget, Planned> planning(PlanAsk asked, List<Pin> pins) {
        PlanProblem problem =
                PlanProblem.of(event, asked.asked(event.conditions().freezeMinutes(), pins));
        return budget -> Planner.plan(problem, budget);
    }

    /** When a tie, or one rubber of it, is over that is put on so many courts by hand. */
    LocalTime endOfPin(TieId tie, Optional<RubberNo> rubber, LocalTime start, int courts, PlanAsk asked) {
        PlanProblem problem = PlanProblem.of(event, asked.asked(0, List.of()));
        return start.plusMinutes((long) slots(tie, rubber, courts) * problem.slotMinutes());
    }

    private int slots(TieId tie, Optional<RubberNo> rubber, int courts) {
        int rubbers = rubber.isPresent()
                ? 1
                : event.tie(tie).map(one -> event.progress(one).left().size()).orElse(1);
        return Math.max(1, (rubbers + courts - 1) / Math.max(1, courts));
    }

    /** A search for ways to go on after something broke. */
    Function<Budget, Planning.Ways> replanning(BreakAsk asked) {
        PlanProblem.Asked wanted = asked.asked(event.conditions().freezeMinutes());
        return budget -> new Planning.Ways(Replan.options(event, wanted, budget), Replan.fault(event, wanted));
    }
}
