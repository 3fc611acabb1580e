package tiewright.timetable;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tiewright.event.ClubId;

/**
 * Published starts that are too near to be moved stay, as far as they can: not where a club is still in another tie or has not
 * rested, and not where something that must come before is not over. Those are given free, and it is said why.
 *
 * @param problem without the pins that cannot stand
 * @param moved a reason for each of these
 */
record FrozenStarts(PlanProblem problem, List<Reason> moved) {
    private static final int TRIES = 20;

    static FrozenStarts of(PlanProblem problem) {
        List<Pin> frozen = frozen(problem);
        List<Pin> kept = new ArrayList<>(problem.pins());
        kept.removeAll(frozen);
        if (frozen.isEmpty() || allStand(problem) || !hasPlan(problem.withPins(kept))) {
            return new FrozenStarts(problem, List.of());
        }
        List<Reason> moved = new ArrayList<>();
        for (Pin pin : frozen) {
            Optional<Reason> clash = clash(problem, pin, kept);
            List<Pin> more = new ArrayList<>(kept);
            more.add(pin);
            if (clash.isEmpty() && hasPlan(problem.withPins(more))) {
                kept = more;
            } else {
                moved.add(Reason.of("frozen-cannot-stand")
                        .with("tie", pin.tie())
                        .with("start", pin.published().orElse(pin.start()))
                        .with("because", clash.orElseGet(() -> before(problem, pin))));
            }
        }
        return new FrozenStarts(problem.withPins(kept), List.copyOf(moved));
    }

    /** Pins of ties that are still to come, in the order of their starts. */
    private static List<Pin> frozen(PlanProblem problem) {
        return problem.pins().stream()
                .filter(pin -> pin.why() == Pin.Why.FROZEN && tie(problem, pin).isPresent())
                .sorted(Comparator.comparing(pin -> Clock.minute(pin.start(), Clock.minute(problem.start()))))
                .toList();
    }

    private static boolean allStand(PlanProblem problem) {
        return problem.pins().stream()
                        .filter(pin ->
                                pin.why() == Pin.Why.FROZEN && tie(problem, pin).isPresent())
                        .allMatch(pin -> clash(problem, pin, problem.pins()).isEmpty())
                && hasPlan(problem);
    }

    private static boolean hasPlan(PlanProblem problem) {
        Board board = new Board(problem);
        return Starts.plain(board).isPresent() || Starts.best(board, TRIES, 1).isPresent();
    }

    /** Another pinned tie with a club of this one, or from which a club comes, that is not over and rested in time. */
    private static Optional<Reason> clash(PlanProblem problem, Pin pin, List<Pin> others) {
        return others.stream()
                .filter(other ->
                        !other.tie().equals(pin.tie()) && tie(problem, other).isPresent())
                .flatMap(other -> clash(problem, pin, other).stream())
                .findFirst();
    }

    private static Optional<Reason> clash(PlanProblem problem, Pin pin, Pin other) {
        int base = Clock.minute(problem.start());
        int start = Clock.minute(pin.start(), base);
        int otherStart = Clock.minute(other.start(), base);
        int between = Math.max(start - otherStart - other.minutes(), otherStart - start - pin.minutes());
        PlanTie tie = tie(problem, pin).orElseThrow();
        PlanTie second = tie(problem, other).orElseThrow();
        Optional<ClubId> club =
                tie.clubs().stream().filter(second.clubs()::contains).findFirst();
        if (club.isPresent() && between < problem.restMinutes()) {
            return Optional.of(Reason.of("frozen-club")
                    .with("club", club.get())
                    .with("other", second.id())
                    .with("start", other.start())
                    .with("end", other.end())
                    .with("rest", problem.restMinutes()));
        }
        boolean comesFrom = tie.after().contains(second.id());
        return comesFrom && start < otherStart + other.minutes() + problem.restMinutes()
                ? Optional.of(
                        Reason.of("frozen-source").with("other", second.id()).with("end", other.end()))
                : Optional.empty();
    }

    private static Optional<PlanTie> tie(PlanProblem problem, Pin pin) {
        return problem.ties().stream().filter(tie -> tie.id().equals(pin.tie())).findFirst();
    }

    /** What has no place yet and must come before. */
    private static Reason before(PlanProblem problem, Pin pin) {
        PlanTie tie = tie(problem, pin).orElseThrow();
        return problem.ties().stream()
                .filter(other -> tie.after().contains(other.id()))
                .findFirst()
                .map(source -> Reason.of("frozen-waits").with("other", source.id()))
                .orElse(Reason.of("frozen-before"));
    }
}
