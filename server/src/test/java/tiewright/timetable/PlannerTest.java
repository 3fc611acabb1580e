package tiewright.timetable;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.Seed;
import tiewright.event.ClubId;
import tiewright.event.TieId;

class PlannerTest {
    /**
     * One tie at a time, all-play-all: the most ties that can be guaranteed between two of one club is floor((n - 3) / 2) (W.
     * Suksompong, Scheduling asynchronous round-robin tournaments, arXiv 1804.04504; the formula from memory, for n = 4 to 6
     * tried out here).
     */
    @ParameterizedTest
    @CsvSource({"4,0", "5,1", "6,1"})
    void as_many_ties_between_two_of_one_club_as_published_and_no_more(int clubs, int between) {
        Board can = oneAtATime(clubs, between);
        Board cannot = oneAtATime(clubs, between + 1);
        int end = can.base() + clubs * (clubs - 1) / 2 * 20;
        assertThat(ExactSearch.plan(can, end, 5_000_000)).isEqualTo(ExactSearch.End.FOUND);
        assertThat(ExactSearch.plan(cannot, end, 50_000_000)).isEqualTo(ExactSearch.End.NONE);
    }

    private static Board oneAtATime(int clubs, int between) {
        List<PlanTie> ties = new ArrayList<>();
        for (int home = 1; home <= clubs; home++) {
            for (int away = home + 1; away <= clubs; away++) {
                ties.add(Problems.tie("P", 1, "C" + home + "-C" + away, 1));
            }
        }
        return new Board(Problems.sideBySide(1, 1, ties).withRest(20 * between));
    }

    /** Small days: the search ends as early as any plan can, tried out, and never before the bound. */
    @Test
    void ends_as_early_as_the_best_of_all_plans_on_small_days() {
        int judged = 0;
        for (int round = 0; round < 60; round++) {
            Random random = Seed.random(round);
            PlanProblem problem = small(random);
            Board board = new Board(problem);
            Plan plan = Problems.plan(problem, Budget.ofSteps(3_000, round));
            assertThat(plan.score().breaches()).as(Seed.rerun(round)).isZero();
            int end = board.base() + Math.toIntExact(plan.score().of(Part.LENGTH));
            assertThat(plan.bound().minutes()).as(Seed.rerun(round)).isLessThanOrEqualTo(end - board.base());
            ExactSearch.End earlier = ExactSearch.plan(board, end - 1, 2_000_000);
            assertThat(earlier).as(Seed.rerun(round)).isNotEqualTo(ExactSearch.End.FOUND);
            judged += earlier == ExactSearch.End.NONE ? 1 : 0;
        }
        assertThat(judged).isGreaterThan(50);
    }

    /** Somebody with a pencil: when each rubber begins, how many of its tie begin later, and how many courts stand empty meanwhile. */
    @Test
    void no_tie_is_split_over_two_starts_while_courts_for_its_other_rubbers_stand_empty() {
        int split = 0;
        for (int round = 0; round < 24; round++) {
            Random random = Seed.random(round);
            int courts = 2 + random.nextInt(4);
            int rubbers = 2 + random.nextInt(3);
            boolean together = random.nextBoolean();
            List<PlanTie> ties = RandomProblems.ties(random, 3 + random.nextInt(3), 1 + random.nextInt(2), rubbers);
            PlanProblem problem = together
                    ? ProblemReader.widest(Problems.sideBySide(courts, 1, ties), rubbers)
                    : Problems.rubberByRubber(courts, ties);
            Begins begins = new Begins(Problems.plan(problem, Budget.ofSteps(500, round)), problem);
            for (PlanTie tie : ties) {
                int later = begins.later(tie);
                split += later > 0 ? 1 : 0;
                assertThat(later > 0 && courts - begins.takenAtFirst(tie) >= (together ? later : 1))
                        .as(Seed.rerun(round) + ", tie " + tie.id() + " " + begins.of())
                        .isFalse();
            }
        }
        assertThat(split).as("ties that have more rubbers than courts").isPositive();
    }

    /** At which minutes the rubbers of each tie begin. */
    private record Begins(Map<TieId, List<Integer>> of) {
        Begins(Plan plan, PlanProblem problem) {
            this(new TreeMap<>());
            for (Assignment one : plan.assignments()) {
                for (int i = 0; i < one.rubbers().size(); i++) {
                    int minute =
                            one.start().toSecondOfDay() / 60 + i / one.courts().size() * problem.slotMinutes();
                    of.computeIfAbsent(one.tie(), any -> new ArrayList<>()).add(minute);
                }
            }
        }

        private int first(PlanTie tie) {
            return Collections.min(of.get(tie.id()));
        }

        int later(PlanTie tie) {
            return (int) of.get(tie.id()).stream()
                    .filter(minute -> minute > first(tie))
                    .count();
        }

        /** How many rubbers of whatever tie begin with it: all slots are alike and begin together. */
        int takenAtFirst(PlanTie tie) {
            return (int) of.values().stream()
                    .flatMap(List::stream)
                    .filter(minute -> minute == first(tie))
                    .count();
        }
    }

    private static PlanProblem small(Random random) {
        int rubbers = 1 + random.nextInt(2);
        List<PlanTie> ties = RandomProblems.ties(random, 3 + random.nextInt(3), 1 + random.nextInt(2), rubbers);
        int courts = 1 + random.nextInt(3);
        PlanProblem problem = Problems.sideBySide(courts, 1 + random.nextInt(Math.min(courts, rubbers)), ties);
        return (random.nextBoolean() ? Problems.together(problem) : problem).withRest(20 * random.nextInt(3));
    }

    @Test
    void the_same_seed_gives_the_same_plan_and_better_plans_are_told() {
        PlanProblem problem = Problems.sideBySide(4, 4, Problems.rounds("A-F B-E C-D / F-D E-C A-B / B-F C-A D-E", 4))
                .withRest(10);
        List<PlanScore> told = new ArrayList<>();
        Plan one = Problems.plan(problem, Budget.ofSteps(6_000, 7).telling(told::add));
        assertThat(Problems.plan(problem, Budget.ofSteps(6_000, 7)).assignments())
                .isEqualTo(one.assignments());
        assertThat(told).isNotEmpty();
        assertThat(told.get(told.size() - 1)).isEqualTo(one.score());
    }

    @Test
    void a_stopped_search_gives_the_best_so_far() {
        Budget budget = Budget.ofSteps(Integer.MAX_VALUE, 1);
        budget.stop().press();
        Plan plan = Problems.plan(Problems.sideBySide(1, 1, Problems.rounds("A-B C-D / A-C B-D / A-D B-C", 1)), budget);
        assertThat(plan.score().breaches()).isZero();
    }

    @Test
    void plans_rubber_by_rubber_on_whatever_court_is_next() {
        PlanProblem problem = Problems.rubberByRubber(3, Problems.rounds("A-B C-D", 3));
        Plan plan = Problems.plan(problem, Budget.ofSteps(3_000, 1));
        assertThat(plan.slots()).isEqualTo(2); // six rubbers on three courts
        assertThat(plan.endsAtTheBound()).isTrue();
    }

    @Test
    void a_club_on_duty_does_not_play_and_has_one_tie() {
        PlanProblem problem = Problems.umpires(
                        Problems.sideBySide(3, 1, Problems.rounds("A-B C-D E-F / A-C B-E D-F", 1)))
                .withRest(0);
        Plan plan = Problems.plan(problem, Budget.ofSteps(5_000, 1));
        assertThat(plan.breaches()).isEmpty();
        assertThat(plan.assignments())
                .allSatisfy(tie -> assertThat(tie.umpires()).isPresent());
        assertThat(plan.slots()).isEqualTo(3); // six clubs: two ties at once and their umpires
    }

    @Test
    void a_final_waits_for_its_semi_finals_and_the_rest() {
        List<PlanTie> ties = List.of(
                Problems.knockout("SF1", 1, 2),
                Problems.knockout("SF2", 1, 2),
                Problems.knockout("F", 2, 2, "SF1", "SF2"));
        Plan plan = Problems.plan(Problems.sideBySide(4, 2, ties).withRest(30), Budget.ofSteps(1_000, 1));
        assertThat(plan.start(TieId.of("F"))).contains(LocalTime.of(10, 0)); // over at 9:20, rested at 9:50
        assertThat(plan.endsAtTheBound()).isTrue();
        assertThat(plan.why(TieId.of("F")).get(0).code()).isEqualTo("timetable.why-source");
    }

    @Test
    void explains_every_slot_before_a_tie() {
        PlanProblem problem =
                Problems.sideBySide(1, 1, Problems.rounds("A-B / A-C", 1)).withRest(20);
        Plan plan = Problems.plan(problem, Budget.ofSteps(1_000, 1));
        assertThat(plan.why(TieId.of("A-B"))).extracting(Reason::code).containsExactly("timetable.why-first");
        assertThat(plan.why(TieId.of("A-C")))
                .extracting(Reason::code)
                .containsExactly("timetable.why-club-plays", "timetable.why-club-rests");
        assertThat(plan.why(TieId.of("A-C")).get(1).data()).containsEntry("club", ClubId.of("A"));
    }

    @Test
    void a_pin_stays_and_the_others_go_round_it() {
        Pin pin = new Pin(
                TieId.of("C-D"),
                Optional.empty(),
                LocalTime.of(9, 20),
                LocalTime.of(9, 40),
                List.of("1"),
                Pin.Why.BY_HAND);
        Plan plan = Problems.plan(
                Problems.sideBySide(1, 1, Problems.rounds("A-B C-D E-F", 1)).pinned(pin), Budget.ofSteps(1_000, 1));
        assertThat(plan.start(TieId.of("C-D"))).contains(LocalTime.of(9, 20));
        assertThat(plan.finish()).isEqualTo("10:00");
        assertThat(plan.breaches()).isEmpty();
    }

    @Test
    void few_ties_take_few_steps_and_nobody_searches_longer_than_was_asked() {
        PlanProblem one = Problems.sideBySide(1, 1, List.of(Problems.tie("A", 1, "A1-A2", 2)));
        assertThat(Budget.usual(1).enoughFor(one).steps()).isEqualTo(3_500);
        assertThat(Budget.ofSteps(100, 1).enoughFor(one).steps()).isEqualTo(100);
        assertThat(Budget.usual(one, 1).steps()).isEqualTo(3_500);
    }
}
