package tiewright.timetable;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import tiewright.event.ClubId;
import tiewright.event.TieId;

/** What was given contradicts itself, before anything is searched. Each fault is two or three things that cannot both be. */
final class InputFaults {
    private final PlanProblem problem;

    private InputFaults(PlanProblem problem) {
        this.problem = problem;
    }

    /** The first fault; empty if there is none. */
    static Optional<Infeasible> of(PlanProblem problem) {
        InputFaults faults = new InputFaults(problem);
        return Stream.of(faults.courts(), faults.hours(), faults.ties(), faults.pins())
                .flatMap(Optional::stream)
                .findFirst()
                .map(because -> new Infeasible(because, true, Optional.empty()));
    }

    private Optional<Reason> courts() {
        if (problem.courts().isEmpty()) {
            return Optional.of(Reason.of("no-courts"));
        }
        if (problem.courts().size() > PlanProblem.MOST_COURTS) {
            return Optional.of(Reason.of("too-many-courts").with("most", PlanProblem.MOST_COURTS));
        }
        return problem.courts().stream()
                .filter(court -> court.from().isPresent()
                        && court.until().isPresent()
                        && !court.until().get().isAfter(court.from().get()))
                .findFirst()
                .map(court -> Reason.of("court-closes-before-it-opens")
                        .with("court", court.name())
                        .with("from", court.from().get())
                        .with("until", court.until().get()));
    }

    private Optional<Reason> hours() {
        return problem.closes()
                .filter(closes -> !closes.isAfter(problem.start()))
                .map(closes -> Reason.of("start-after-closing")
                        .with("start", problem.start())
                        .with("closes", closes));
    }

    private Optional<Reason> ties() {
        if (problem.ties().isEmpty()) {
            return Optional.of(Reason.of("nothing-left"));
        }
        long clubs = problem.ties().stream()
                .flatMap(tie -> tie.clubs().stream())
                .distinct()
                .count();
        if (problem.umpires() && clubs < 3) {
            return Optional.of(Reason.of("nobody-to-umpire").with("count", clubs));
        }
        for (PlanTie tie : problem.ties()) {
            if (tie.home().isPresent() && tie.home().equals(tie.away())) {
                return Optional.of(Reason.of("club-against-itself")
                        .with("club", tie.home().get())
                        .with("tie", tie.id()));
            }
            if (waitsForItself(tie.id(), tie.id(), new HashSet<>())) {
                return Optional.of(Reason.of("tie-waits-for-itself").with("tie", tie.id()));
            }
        }
        return Optional.empty();
    }

    private boolean waitsForItself(TieId tie, TieId of, Set<TieId> seen) {
        return find(of).stream()
                .flatMap(found -> found.after().stream())
                .anyMatch(source -> source.equals(tie) || seen.add(source) && waitsForItself(tie, source, seen));
    }

    private Optional<PlanTie> find(TieId id) {
        return problem.ties().stream().filter(tie -> tie.id().equals(id)).findFirst();
    }

    private Optional<Reason> pins() {
        List<Pin> pins = problem.pins().stream()
                .filter(pin -> find(pin.tie()).isPresent())
                .toList();
        for (Pin pin : pins) {
            Optional<Reason> fault = alone(pin);
            for (Pin other : pins) {
                boolean byHand = pin.why() == Pin.Why.BY_HAND || other.why() == Pin.Why.BY_HAND;
                if (fault.isEmpty() && byHand && pins.indexOf(pin) < pins.indexOf(other)) {
                    fault = both(pin, other);
                }
            }
            if (fault.isPresent()) {
                return fault;
            }
        }
        return Optional.empty();
    }

    private Optional<Reason> alone(Pin pin) {
        for (String court : pin.courts()) {
            if (problem.courts().stream().noneMatch(known -> known.name().equals(court))) {
                return Optional.of(
                        Reason.of("no-such-court").with("court", court).with("tie", pin.tie()));
            }
        }
        return pin.why() == Pin.Why.BY_HAND && pin.start().isBefore(problem.start())
                ? Optional.of(Reason.of("start-in-the-past")
                        .with("tie", pin.tie())
                        .with("start", pin.start())
                        .with("now", problem.start()))
                : Optional.empty();
    }

    private Optional<Reason> both(Pin pin, Pin other) {
        Reason at = Reason.of("")
                .with("one", pin.tie())
                .with("other", other.tie())
                .with("start", pin.start())
                .with("otherStart", other.start());
        int minutes = between(pin, other);
        Optional<String> court =
                pin.courts().stream().filter(other.courts()::contains).findFirst();
        if (minutes < 0 && court.isPresent()) {
            return Optional.of(new Reason("timetable.court-twice", at.data()).with("court", court.get()));
        }
        Optional<ClubId> club = pin.tie().equals(other.tie()) ? Optional.empty() : club(pin, other);
        if (club.isEmpty()) {
            return Optional.empty();
        }
        if (minutes < 0) {
            return Optional.of(new Reason("timetable.club-twice", at.data()).with("club", club.get()));
        }
        return minutes < problem.restMinutes()
                ? Optional.of(new Reason("timetable.rest-too-short", at.data())
                        .with("club", club.get())
                        .with("rest", problem.restMinutes()))
                : Optional.empty();
    }

    /** Minutes from the end of the one to the start of the other, whichever comes first; negative where they are on court at once. */
    private int between(Pin pin, Pin other) {
        int base = Clock.minute(problem.start());
        int start = Clock.minute(pin.start(), base);
        int otherStart = Clock.minute(other.start(), base);
        return Math.max(start - (otherStart + other.minutes()), otherStart - (start + pin.minutes()));
    }

    /** A club that has to play both. */
    private Optional<ClubId> club(Pin pin, Pin other) {
        return find(pin.tie()).stream()
                .flatMap(tie -> tie.clubs().stream())
                .filter(one ->
                        find(other.tie()).stream().anyMatch(tie -> tie.clubs().contains(one)))
                .findFirst();
    }
}
