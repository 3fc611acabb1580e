package tiewright.timetable;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import tiewright.conditions.TiePlay;
import tiewright.event.ClubId;
import tiewright.event.RubberNo;
import tiewright.event.Stage;
import tiewright.event.TieId;

/** Problems in a few words; invented by us unless said otherwise. */
final class Problems {
    private Problems() {}

    /** Whole ties, one slot long, from 09:00 in slots of 20 minutes; nothing closes and nobody needs rest. */
    static PlanProblem sideBySide(int courts, int courtsPerTie, List<PlanTie> ties) {
        return PlanProblem.free(
                new Slots(LocalTime.of(9, 0), 20, 0, Optional.empty()),
                courts(courts),
                ties,
                Manner.of(TiePlay.SIDE_BY_SIDE).onCourts(courtsPerTie));
    }

    static PlanProblem rubberByRubber(int courts, List<PlanTie> ties) {
        return PlanProblem.free(
                new Slots(LocalTime.of(9, 0), 20, 0, Optional.empty()),
                courts(courts),
                ties,
                Manner.of(TiePlay.RUBBER_BY_RUBBER));
    }

    static List<PlanCourt> courts(int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(i -> PlanCourt.always("" + i))
                .toList();
    }

    /** A tie of pool P, such as {@code A-F} in round 1, with so many rubbers. */
    static PlanTie tie(String pool, int round, String clubs, int rubbers) {
        String[] sides = clubs.split("-");
        return new PlanTie(
                TieId.of(clubs),
                Stage.POOL,
                Optional.of(pool),
                round,
                Optional.of(ClubId.of(sides[0])),
                Optional.of(ClubId.of(sides[1])),
                RubberNo.upTo(rubbers),
                false,
                Set.of());
    }

    /** Rounds of one pool P parted by a slash: {@code A-F B-E / F-D E-C}. */
    static List<PlanTie> rounds(String text, int rubbers) {
        List<PlanTie> ties = new ArrayList<>();
        String[] rounds = text.split(" / ");
        for (int round = 0; round < rounds.length; round++) {
            for (String clubs : rounds[round].split(" ")) {
                ties.add(tie("P", round + 1, clubs, rubbers));
            }
        }
        return ties;
    }

    static PlanTie knockout(String id, int round, int rubbers, String... after) {
        return new PlanTie(
                TieId.of(id),
                Stage.KNOCKOUT,
                Optional.empty(),
                round,
                Optional.empty(),
                Optional.empty(),
                RubberNo.upTo(rubbers),
                false,
                Set.of(after).stream().map(TieId::of).collect(Collectors.toSet()));
    }

    static PlanProblem closing(PlanProblem p, String closes) {
        return p.with(p.slots().closing(Optional.of(LocalTime.parse(closes))));
    }

    static PlanProblem together(PlanProblem p) {
        return p.with(p.manner().together(true));
    }

    static PlanProblem umpires(PlanProblem p) {
        return p.with(p.manner().umpired(true));
    }

    /** A plan whatever became of it. */
    static Plan plan(PlanProblem problem, Budget budget) {
        Planned planned = Planner.plan(problem, budget);
        return switch (planned.kind()) {
            case FOUND -> ((Planned.Found) planned).plan();
            case BROKEN -> ((Planned.Broken) planned).plan();
            case IMPOSSIBLE -> ((Planned.Impossible) planned).asIs().orElseThrow(() -> new AssertionError(planned));
        };
    }
}
