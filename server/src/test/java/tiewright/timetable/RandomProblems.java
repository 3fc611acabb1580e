package tiewright.timetable;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import tiewright.draw.Berger;

/** Problems of any kind, small enough to look at. */
final class RandomProblems {
    private RandomProblems() {}

    static PlanProblem any(Random random) {
        int clubs = 3 + random.nextInt(4);
        int rubbers = 1 + random.nextInt(3);
        List<PlanTie> ties = ties(random, clubs, 1 + random.nextInt(3), rubbers);
        int courts = 1 + random.nextInt(4);
        boolean whole = random.nextBoolean();
        PlanProblem problem = whole
                ? Problems.sideBySide(courts, 1 + random.nextInt(Math.min(courts, rubbers)), ties)
                : Problems.rubberByRubber(courts, ties);
        problem = problem.withRest(random.nextInt(3) * 15);
        problem = random.nextBoolean() ? Problems.closing(problem, "10:30") : problem;
        problem = random.nextBoolean() ? Problems.together(problem) : problem;
        long playing =
                ties.stream().flatMap(tie -> tie.clubs().stream()).distinct().count();
        problem = whole && playing >= 3 && random.nextBoolean() ? Problems.umpires(problem) : problem;
        return random.nextBoolean() ? withHours(problem, random) : problem;
    }

    static List<PlanTie> ties(Random random, int clubs, int rounds, int rubbers) {
        List<PlanTie> ties = new ArrayList<>();
        List<List<Berger.Pairing>> table = Berger.rounds(clubs);
        for (int round = 0; round < Math.min(rounds, table.size()); round++) {
            for (Berger.Pairing pairing : table.get(round)) {
                if (random.nextInt(5) > 0 || ties.isEmpty()) {
                    ties.add(Problems.tie("P", round + 1, "C" + pairing.home() + "-C" + pairing.away(), rubbers));
                }
            }
        }
        if (random.nextBoolean()) {
            ties.add(Problems.knockout(
                    "F", 1, rubbers, ties.stream().map(tie -> tie.id().code()).toArray(String[]::new)));
        }
        return ties;
    }

    private static PlanProblem withHours(PlanProblem problem, Random random) {
        List<PlanCourt> courts = new ArrayList<>(problem.courts());
        courts.set(0, new PlanCourt("1", Optional.of(LocalTime.of(9, 10 * random.nextInt(5))), Optional.empty()));
        return problem.withCourts(courts);
    }
}
