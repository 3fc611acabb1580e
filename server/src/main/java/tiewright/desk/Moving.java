package tiewright.desk;

import java.time.Instant;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import tiewright.event.Event;
import tiewright.event.Refusal;
import tiewright.event.Side;
import tiewright.event.SlotSource;
import tiewright.event.Tie;

/** Whether a tie may begin at another time than was published: not what has begun, not within the freeze window, not in the past. */
final class Moving {
    /** A plan is read, talked over and published in so many minutes (our reading); its first starts are past by then. */
    private static final int READING_MINUTES = 15;

    private final Event event;
    private final Instant now;

    Moving(Event event, Instant now) {
        this.event = event;
        this.now = now;
    }

    List<Refusal> whyNot(Tie tie, LocalTime start) {
        if (tie.isInPlay()) {
            boolean stays = tie.start().isEmpty() || !start.isBefore(tie.start().get());
            return stays
                    ? List.of()
                    : List.of(Refusal.of("desk.plan-moves-begun").with("tie", tie.id()));
        }
        List<Refusal> reasons = new ArrayList<>();
        if (!tie.start().equals(Optional.of(start))) {
            frozen(tie, start).ifPresent(reasons::add);
            past(tie, start).ifPresent(reasons::add);
        }
        return reasons;
    }

    private Optional<Refusal> frozen(Tie tie, LocalTime start) {
        boolean later = tie.start().filter(start::isAfter).isPresent();
        if (later && (isHeldUp(tie) || isStopped(tie))) {
            return Optional.empty();
        }
        int freeze = event.conditions().freezeMinutes();
        Instant frozenUntil = now.plus(freeze, ChronoUnit.MINUTES);
        return event.startsAt(tie)
                .filter(at -> !at.isBefore(now) && at.isBefore(frozenUntil))
                .map(at -> Refusal.of("desk.plan-moves-frozen")
                        .with("tie", tie.id())
                        .with("start", tie.start().orElseThrow())
                        .with("freeze", freeze));
    }

    /** All play stands still when it should begin. */
    private boolean isStopped(Tie tie) {
        return event.order()
                .stop(event.about(), now)
                .flatMap(stop -> tie.start().filter(stop.until()::isAfter))
                .isPresent();
    }

    private Optional<Refusal> past(Tie tie, LocalTime start) {
        return event.about()
                .map(about -> about.date().atTime(start).atZone(about.zone()).toInstant())
                .filter(at -> at.isBefore(now.minus(READING_MINUTES, ChronoUnit.MINUTES)))
                .map(at -> Refusal.of("desk.plan-in-the-past")
                        .with("tie", tie.id())
                        .with("start", start)
                        .with("now", now));
    }

    /** A tie that should begin before this one and is not over keeps a club of it: then even a start that is frozen cannot stand. */
    private boolean isHeldUp(Tie tie) {
        return event.ties().values().stream()
                .filter(other ->
                        !other.id().equals(tie.id()) && !event.progress(other).finished())
                .filter(other -> other.isInPlay() || startsBefore(/* one= */ other, /* other= */ tie))
                .anyMatch(other -> feeds(other, tie)
                        || Arrays.stream(Side.values())
                                .flatMap(side -> tie.club(side).stream())
                                .anyMatch(other::has));
    }

    private static boolean startsBefore(Tie one, Tie other) {
        return one.start().isPresent()
                && other.start().filter(one.start().get()::isBefore).isPresent();
    }

    private static boolean feeds(Tie other, Tie tie) {
        return Arrays.stream(Side.values())
                .filter(side -> tie.club(side).isEmpty())
                .flatMap(side -> tie.slot(side).from().stream())
                .anyMatch(from -> from.kind() == SlotSource.Kind.POOL_PLACE
                        ? other.pool().filter(from.of()::equals).isPresent()
                        : other.id().code().equals(from.of()));
    }
}
