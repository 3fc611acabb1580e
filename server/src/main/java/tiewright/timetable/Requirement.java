package tiewright.timetable;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Something that an organiser could give up, and the problem without it. */
record Requirement(Reason said, UnaryOperator<PlanProblem> without) {
    PlanProblem dropped(PlanProblem problem) {
        return without.apply(problem);
    }

    @Override
    public boolean equals(@org.jspecify.annotations.Nullable Object other) {
        return other instanceof Requirement requirement && requirement.said.equals(said);
    }

    @Override
    public int hashCode() {
        return said.hashCode();
    }

    /** Those of a problem; what is easiest to give up comes first. */
    static List<Requirement> of(PlanProblem problem) {
        List<Requirement> all = new ArrayList<>();
        if (problem.lastRoundTogether()) {
            all.add(new Requirement(Reason.of("culprit-together"), Requirement::apart));
        }
        for (Pin pin : problem.pins()) {
            if (pin.why() == Pin.Why.BY_HAND) {
                all.add(new Requirement(
                        Reason.of("culprit-pin")
                                .with("tie", pin.tie())
                                .with("start", pin.start())
                                .with("courts", pin.courts()),
                        p -> p.withPins(p.pins().stream()
                                .filter(other -> !other.equals(pin))
                                .toList())));
            }
        }
        if (!problem.notBefore().published().isEmpty()) {
            all.add(new Requirement(
                    Reason.of("culprit-published"), p -> p.with(p.notBefore().withPublished(Map.of()))));
        }
        problem.notBefore()
                .clubs()
                .forEach((club, time) -> all.add(new Requirement(
                        Reason.of("culprit-late-club").with("club", club).with("start", time),
                        p -> p.with(p.notBefore().without(club)))));
        if (problem.restMinutes() > 0) {
            all.add(new Requirement(Reason.of("culprit-rest").with("rest", problem.restMinutes()), p -> p.withRest(0)));
        }
        if (problem.courts().stream().anyMatch(court -> isLimited(problem, court))) {
            all.add(new Requirement(
                    Reason.of("culprit-court-hours").with("courts", limited(problem)), Requirement::alwaysOpen));
        }
        problem.closes()
                .ifPresent(closes -> all.add(new Requirement(
                        Reason.of("culprit-closing").with("closes", closes), Requirement::neverClosed)));
        return all;
    }

    private static boolean isLimited(PlanProblem problem, PlanCourt court) {
        boolean late =
                court.from().filter(from -> from.isAfter(problem.start())).isPresent();
        return late
                || court.until()
                        .filter(until -> problem.closes().map(until::isBefore).orElse(true))
                        .isPresent();
    }

    private static List<String> limited(PlanProblem problem) {
        return problem.courts().stream()
                .filter(court -> isLimited(problem, court))
                .map(PlanCourt::name)
                .toList();
    }

    private static PlanProblem alwaysOpen(PlanProblem p) {
        return p.withCourts(
                p.courts().stream().map(court -> PlanCourt.always(court.name())).toList());
    }

    private static PlanProblem neverClosed(PlanProblem p) {
        return p.with(p.slots().closing(Optional.empty()));
    }

    private static PlanProblem apart(PlanProblem p) {
        return p.with(p.manner().together(false));
    }
}
