package tiewright.timetable;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.draw.Berger;
import tiewright.event.ClubId;
import tiewright.event.TieId;

/** A plan never ends later than what somebody with a pencil puts together slot by slot. */
class StartsTest {
    private static List<PlanTie> pool(String pool, int clubs, int rubbers) {
        List<PlanTie> ties = new ArrayList<>();
        List<List<Berger.Pairing>> rounds = Berger.rounds(clubs);
        for (int round = 0; round < rounds.size(); round++) {
            for (Berger.Pairing pairing : rounds.get(round)) {
                ties.add(Problems.tie(pool, round + 1, pool + pairing.home() + "-" + pool + pairing.away(), rubbers));
            }
        }
        return ties;
    }

    @Test
    void pools_of_four_five_and_four_with_a_slot_of_rest_take_eleven_slots_on_two_courts() {
        List<PlanTie> ties = new ArrayList<>(pool("A", 4, 1));
        ties.addAll(pool("B", 5, 1));
        ties.addAll(pool("C", 4, 1));
        PlanProblem problem = Problems.sideBySide(2, 1, ties).withRest(20);
        for (long seed = 1; seed <= 3; seed++) {
            Plan plan = Problems.plan(problem, Budget.ofSteps(500, seed));
            assertThat(plan.slots()).as("seed " + seed).isEqualTo(11); // 22 ties on two courts
            assertThat(plan.endsAtTheBound()).isTrue();
        }
    }

    /**
     * All 28 ties in 28 slots with two between any two of a club: as many as can be guaranteed for eight clubs, floor((8 - 3) / 2) (W.
     * Suksompong, arXiv 1804.04504; the formula from memory).
     */
    @Test
    void eight_clubs_one_tie_at_a_time_take_28_slots() {
        List<PlanTie> ties = new ArrayList<>();
        for (int home = 1; home <= 8; home++) {
            for (int away = home + 1; away <= 8; away++) {
                ties.add(Problems.tie("P", 1, "C" + home + "-C" + away, 1));
            }
        }
        Plan plan = Problems.plan(Problems.sideBySide(1, 1, ties).withRest(40), Budget.ofSteps(500, 1));
        assertThat(plan.breaches()).isEmpty();
        assertThat(plan.slots()).isEqualTo(28);
    }

    @Test
    void no_day_ends_later_than_a_plain_greedy_plan() {
        for (int round = 0; round < 40; round++) {
            Random random = Seed.random(round);
            List<PlanTie> ties = new ArrayList<>();
            int rubbers = 1 + random.nextInt(4);
            for (int pool = 0; pool < 1 + random.nextInt(3); pool++) {
                ties.addAll(pool("" + (char) ('A' + pool), 3 + random.nextInt(4), rubbers));
            }
            int courts = 1 + random.nextInt(5);
            PlanProblem problem = Problems.sideBySide(courts, 1 + random.nextInt(Math.min(courts, rubbers)), ties)
                    .withRest(10 * random.nextInt(5));
            Plan plan = Problems.plan(problem, Budget.ofSteps(300, round));
            assertThat(plan.score().breaches()).as(Seed.rerun(round)).isZero();
            assertThat(plan.slots()).as(Seed.rerun(round)).isLessThanOrEqualTo(Greedy.slots(problem));
            assertThat(plan.bound().slots()).as(Seed.rerun(round)).isLessThanOrEqualTo(plan.slots());
        }
    }

    /** By itself: whole ties, earlier rounds first or those with most rounds to come, whoever is free and rested begins. */
    private static final class Greedy {
        private final PlanProblem problem;
        private final Map<ClubId, Integer> restedAt = new HashMap<>();
        private final Map<TieId, Integer> begun = new HashMap<>();
        private final int[] freeAt;
        private int end;

        private Greedy(PlanProblem problem) {
            this.problem = problem;
            this.freeAt = new int[problem.courts().size()];
        }

        static int slots(PlanProblem problem) {
            Comparator<PlanTie> byRound = Comparator.comparing(PlanTie::round);
            Comparator<PlanTie> byRest = Comparator.comparing(tie -> tie.round() - rounds(problem, tie));
            return Math.min(new Greedy(problem).play(byRound), new Greedy(problem).play(byRest.thenComparing(byRound)));
        }

        private static int rounds(PlanProblem problem, PlanTie tie) {
            return problem.ties().stream()
                    .filter(other -> other.pool().equals(tie.pool()))
                    .mapToInt(PlanTie::round)
                    .max()
                    .orElseThrow();
        }

        private int play(Comparator<PlanTie> order) {
            List<PlanTie> waiting = new ArrayList<>(problem.ties());
            waiting.sort(order);
            for (int slot = 0; !waiting.isEmpty(); slot++) {
                int now = slot * problem.slotMinutes();
                for (PlanTie tie : List.copyOf(waiting)) {
                    if (mayBegin(tie, now, waiting)) {
                        begin(tie, now);
                        waiting.remove(tie);
                    }
                }
            }
            return (end + problem.slotMinutes() - 1) / problem.slotMinutes();
        }

        private boolean mayBegin(PlanTie tie, int now, List<PlanTie> waiting) {
            boolean earlierWaits =
                    waiting.stream().anyMatch(other -> other.pool().equals(tie.pool()) && other.round() < tie.round());
            boolean rested = tie.clubs().stream().allMatch(club -> restedAt.getOrDefault(club, 0) <= now);
            return !earlierWaits && rested && free(now) >= problem.courtsPerTie();
        }

        private long free(int now) {
            return java.util.Arrays.stream(freeAt).filter(at -> at <= now).count();
        }

        private void begin(PlanTie tie, int now) {
            int waves = (tie.rubbers().size() + problem.courtsPerTie() - 1) / problem.courtsPerTie();
            int over = now + waves * problem.slotMinutes();
            begun.put(tie.id(), now);
            for (int court = 0, taken = 0; taken < problem.courtsPerTie(); court++) {
                if (freeAt[court] <= now) {
                    freeAt[court] = over;
                    taken++;
                }
            }
            tie.clubs().forEach(club -> restedAt.put(club, over + problem.restMinutes()));
            end = Math.max(end, over);
        }
    }

    /** Four clubs cannot have a tie between any two of theirs (the same paper: floor((4 - 3) / 2) = 0), so six slots are too few. */
    @Test
    void what_a_few_ties_cannot_do_is_proven_by_trying_everything() {
        PlanProblem problem = Problems.sideBySide(1, 1, Problems.rounds("A-B C-D A-C B-D A-D B-C", 1))
                .withRest(20);
        Plan plan = Problems.plan(problem, Budget.ofSteps(500, 1));
        assertThat(plan.slots()).isGreaterThan(6);
        assertThat(plan.bound().minutes())
                .isEqualTo(Math.toIntExact(plan.score().of(Part.LENGTH)));
        assertThat(plan.bound().because().code()).isEqualTo("timetable.bound-tried");
        assertThat(plan.explained().get(0).code()).isEqualTo("timetable.score-end");
    }
}
