package tiewright.timetable;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.conditions.TiePlay;
import tiewright.event.Event;
import tiewright.event.RubberNo;
import tiewright.event.SetUpFact;
import tiewright.event.Tie;

/** What cannot be moved: what was put somewhere by hand, what is in play, and what is frozen, in this order. */
final class PinReader {
    /** However long it has been on court, a rubber needs this much more, in minutes (common practice, no source). */
    private static final int LEAST_LEFT = 5;

    private final Event event;
    private final PlanAsked asked;
    private final PlanProblem problem;
    private final List<Tie> open;
    private final ZoneId zone;
    private final List<Pin> pins = new ArrayList<>();

    PinReader(Event event, PlanAsked asked, PlanProblem problem, List<Tie> open) {
        this.event = event;
        this.asked = asked;
        this.problem = problem;
        this.open = open;
        this.zone = event.about().map(SetUpFact.EventDescribed::zone).orElse(ZoneOffset.UTC);
    }

    List<Pin> pins() {
        asked.byHand().stream()
                .filter(pin -> open.stream().anyMatch(tie -> tie.id().equals(pin.tie())))
                .forEach(pins::add);
        asked.now().ifPresent(now -> {
            open.stream().filter(tie -> !isPinned(tie)).forEach(tie -> inPlay(tie, now));
            open.stream().filter(tie -> !isPinned(tie)).forEach(tie -> frozen(tie, now));
        });
        return List.copyOf(pins);
    }

    private boolean isPinned(Tie tie) {
        return pins.stream().anyMatch(pin -> pin.tie().equals(tie.id()));
    }

    private void inPlay(Tie tie, LocalTime now) {
        List<RubberNo> left = event.progress(tie).left();
        List<RubberNo> called =
                left.stream().filter(rubber -> court(tie, rubber).isPresent()).toList();
        if (problem.play() == TiePlay.RUBBER_BY_RUBBER) {
            called.forEach(rubber -> pins.add(
                    pin(tie, Optional.of(rubber), List.of(court(tie, rubber).orElseThrow()), end(tie, rubber, now))));
        } else if (!called.isEmpty() || !tie.cards().isEmpty()) {
            List<String> courts = called.isEmpty()
                    ? tie.court().filter(this::isUsable).stream().toList()
                    : courts(tie, called);
            if (!courts.isEmpty()) {
                LocalTime end = called.stream()
                        .map(rubber -> end(tie, rubber, now))
                        .max(Comparator.naturalOrder())
                        .orElse(now);
                int waves = Clock.roundedUp(left.size() - called.size(), courts.size());
                pins.add(pin(tie, Optional.empty(), courts, end.plusMinutes((long) waves * problem.slotMinutes())));
            }
        }
    }

    private List<String> courts(Tie tie, List<RubberNo> called) {
        return called.stream()
                .map(rubber -> court(tie, rubber).orElseThrow())
                .distinct()
                .toList();
    }

    private Pin pin(Tie tie, Optional<RubberNo> rubber, List<String> courts, LocalTime end) {
        LocalTime start = Stream.concat(
                        tie.calls().values().stream().map(call -> clock(call.at())), tie.start().stream())
                .filter(time -> time.isBefore(end))
                .min(Comparator.naturalOrder())
                .orElse(end.minusMinutes(problem.slotMinutes()));
        return new Pin(tie.id(), rubber, start, end, courts, Pin.Why.IN_PLAY);
    }

    /** The court it was called to, if that can still be used. */
    private Optional<String> court(Tie tie, RubberNo rubber) {
        return Optional.ofNullable(tie.calls().get(rubber)).map(Tie.Call::court).filter(this::isUsable);
    }

    private boolean isUsable(String court) {
        return problem.courts().stream().anyMatch(usable -> usable.name().equals(court));
    }

    private LocalTime end(Tie tie, RubberNo rubber, LocalTime now) {
        LocalTime planned =
                clock(Objects.requireNonNull(tie.calls().get(rubber)).at()).plusMinutes(problem.slotMinutes());
        LocalTime least = now.plusMinutes(LEAST_LEFT);
        return planned.isAfter(least) ? planned : least;
    }

    private LocalTime clock(Instant at) {
        return LocalTime.ofInstant(at, zone).withSecond(0).withNano(0);
    }

    private void frozen(Tie tie, LocalTime now) {
        Optional<LocalTime> start = tie.start().filter(at -> isFrozen(at, Clock.minute(now)));
        Optional<String> court = tie.court().filter(this::isUsable);
        if (start.isEmpty() || court.isEmpty()) {
            return;
        }
        int rubbers = event.progress(tie).left().size();
        int width = Math.min(problem.courtsPerTie(), rubbers);
        List<String> courts = published(tie).orElseGet(() -> problem.beside(court.get(), width));
        LocalTime free = pins.stream()
                .filter(pin -> pin.courts().stream().anyMatch(courts::contains))
                .map(Pin::end)
                .filter(end -> Clock.minute(end, Clock.minute(now)) > Clock.minute(start.get(), Clock.minute(now)))
                .max(Comparator.comparing(end -> Clock.minute(end, Clock.minute(now))))
                .orElse(start.get());
        int waves = Clock.roundedUp(rubbers, courts.size());
        pins.add(new Pin(
                tie.id(),
                Optional.empty(),
                free,
                free.plusMinutes((long) waves * problem.slotMinutes()),
                courts,
                Pin.Why.FROZEN,
                start));
    }

    private boolean isFrozen(LocalTime published, int now) {
        int at = Clock.minute(published, now);
        return asked.freezeMinutes() > 0 && at >= now && at <= now + asked.freezeMinutes();
    }

    /** The courts of its rubbers, where they were published one by one and can all be used. */
    private Optional<List<String>> published(Tie tie) {
        return Optional.of(event.order().rubbers(tie.id()))
                .filter(places -> !places.isEmpty())
                .map(places -> event.order().courts(tie))
                .filter(courts -> courts.stream().allMatch(this::isUsable));
    }
}
