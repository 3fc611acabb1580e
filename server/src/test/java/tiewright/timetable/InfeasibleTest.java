package tiewright.timetable;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.TieId;
import tiewright.wording.TimetableWords;

/** What cannot be is said in one sentence that names the culprits and nobody else. */
class InfeasibleTest {
    private static final PlanProblem FINE = Problems.sideBySide(2, 1, Problems.rounds("A-B C-D / A-C B-D", 1));

    private static String said(PlanProblem problem) {
        Planned planned = Planner.plan(problem, Budget.ofSteps(500, 1));
        assertThat(planned.kind()).isEqualTo(Planned.Kind.IMPOSSIBLE);
        return TimetableWords.ofCodes()
                .sentence(((Planned.Impossible) planned).why().because());
    }

    private static Pin pin(String tie, String start, String court) {
        LocalTime at = LocalTime.parse(start);
        return new Pin(TieId.of(tie), Optional.empty(), at, at.plusMinutes(20), List.of(court), Pin.Why.BY_HAND);
    }

    @Test
    void a_court_that_closes_before_it_opens() {
        List<PlanCourt> courts = List.of(
                PlanCourt.always("1"),
                new PlanCourt("Annex", Optional.of(LocalTime.of(12, 0)), Optional.of(LocalTime.of(10, 0))));
        assertThat(said(FINE.withCourts(courts))).isEqualTo("Court Annex closes at 10:00, before it opens at 12:00.");
    }

    @Test
    void a_club_in_two_ties_at_once() {
        assertThat(said(FINE.pinned(pin("A-B", "09:20", "1")).pinned(pin("A-C", "09:30", "2"))))
                .isEqualTo("A would be in two ties at once: A-B at 09:20 and A-C at 09:30.");
    }

    @Test
    void two_ties_on_one_court_and_too_short_a_rest() {
        assertThat(said(FINE.pinned(pin("A-B", "09:20", "1")).pinned(pin("C-D", "09:30", "1"))))
                .isEqualTo("Court 1 cannot hold tie A-B at 09:20 and tie C-D at 09:30.");
        assertThat(said(FINE.withRest(30).pinned(pin("A-B", "09:20", "1")).pinned(pin("A-C", "10:00", "1"))))
                .isEqualTo("A would have less than 30 minutes between tie A-B at 09:20 and tie A-C at 10:00.");
        assertThat(Planner.plan(
                                FINE.withRest(20)
                                        .pinned(pin("A-B", "09:20", "1"))
                                        .pinned(pin("A-C", "10:00", "1")),
                                Budget.ofSteps(500, 1))
                        .kind())
                .isEqualTo(Planned.Kind.FOUND);
    }

    @Test
    void a_start_in_the_past() {
        assertThat(said(FINE.pinned(pin("A-B", "08:40", "1"))))
                .isEqualTo("Tie A-B is put at 08:40, which is past: it is 09:00.");
    }

    @Test
    void an_impossible_rest_names_the_club_its_ties_the_rest_and_the_closing() {
        PlanProblem problem =
                Problems.closing(Problems.sideBySide(4, 1, Problems.rounds("A-B C-D / A-C / A-D", 1)), "11:00");
        assertThat(said(problem.withRest(60)))
                .isEqualTo(
                        "These cannot all hold from 09:00 on: the 3 ties of A, 60 minutes of rest, the closing at 11:00.");
        assertThat(Planner.plan(problem.withRest(20), Budget.ofSteps(500, 1)).kind())
                .isEqualTo(Planned.Kind.FOUND);
    }

    @Test
    void a_late_club_is_named_only_where_it_matters() {
        PlanProblem problem = Problems.closing(Problems.sideBySide(1, 1, Problems.rounds("A-B / C-D", 1)), "10:00");
        PlanProblem late =
                problem.withNotBefore(Map.of(ClubId.of("B"), LocalTime.of(9, 50), ClubId.of("C"), LocalTime.of(9, 10)));
        assertThat(said(late))
                .isEqualTo(
                        "These cannot all hold from 09:00 on: ties A-B, B not here before 09:50, the closing at 10:00.");
    }

    @Test
    void pins_that_leave_no_room_are_found_by_trying() {
        PlanProblem problem = Problems.closing(Problems.sideBySide(1, 1, Problems.rounds("A-B C-D", 1)), "09:50");
        assertThat(said(problem.pinned(pin("A-B", "09:10", "1"))))
                .isEqualTo(
                        "These cannot all hold from 09:00 on: ties A-B, C-D, tie A-B at 09:10 on 1, the closing at 09:50.");
    }

    @Test
    void a_final_put_before_its_semi_finals_is_named_and_nobody_else() {
        List<PlanTie> ties = List.of(
                Problems.knockout("SF1", 1, 1),
                Problems.knockout("SF2", 1, 1),
                Problems.knockout("F", 2, 1, "SF1", "SF2"));
        assertThat(said(Problems.sideBySide(2, 1, ties).withRest(10).pinned(pin("F", "09:20", "1"))))
                .isEqualTo("Tie F is put at 09:20, and what must come before it cannot be over by then: put it later.");
    }

    @Test
    void nothing_to_plan_on_nothing() {
        assertThat(said(FINE.withCourts(List.of()))).startsWith("There is no court");
        assertThat(said(FINE.withTies(List.of()))).isEqualTo("No tie is left to be planned.");
        assertThat(said(Problems.umpires(Problems.sideBySide(1, 1, Problems.rounds("A-B", 1)))))
                .startsWith("Clubs cannot umpire");
        assertThat(said(FINE.withTies(List.of(Problems.tie("P", 1, "A-A", 1)))))
                .isEqualTo("A would play against itself in tie A-A.");
    }
}
