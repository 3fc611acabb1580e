package tiewright.timetable;

import java.util.Optional;

/** Before which minute of the day can a tie not begin, and for whose sake? */
record Readiness(PlanProblem problem) {
    /** A club of the tie is not here before, or its start was published for then. */
    int minute(PlanTie tie) {
        return Math.max(here(tie), published(tie));
    }

    /** It is the published start that keeps it. */
    boolean isPublished(PlanTie tie) {
        return published(tie) > here(tie);
    }

    private int here(PlanTie tie) {
        return tie.clubs().stream()
                .flatMap(club -> Optional.ofNullable(problem.notBefore().clubs().get(club)).stream())
                .mapToInt(Clock::minute)
                .max()
                .orElse(0);
    }

    private int published(PlanTie tie) {
        return Optional.ofNullable(problem.notBefore().published().get(tie.id()))
                .map(start -> Clock.minute(start, Clock.minute(problem.start())))
                .orElse(0);
    }
}
