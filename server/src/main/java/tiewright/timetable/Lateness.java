package tiewright.timetable;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import tiewright.event.Card;
import tiewright.event.Event;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.TieId;

/**
 * Since when a side that is not on court may be claimed against. The clock starts as the conditions say: with the call, the
 * published time, or the free court. Nobody here knows who stands on court, and nothing is awarded: whether anybody
 * claims, and what follows, is for people.
 */
public final class Lateness {
    private final Event event;
    private final Instant now;

    /**
     * @param rubber empty = the whole tie, of which nothing was called yet
     * @param clock when it started
     * @param claimableSince from this moment on, if a side is not there
     * @param claimable that moment has come
     * @param ladder what may be claimed from when on, the first step first
     */
    public record Late(
            TieId tie,
            Optional<RubberNo> rubber,
            Instant clock,
            Instant claimableSince,
            boolean claimable,
            List<LateStep> ladder) {
        public Late {
            ladder = List.copyOf(ladder);
        }
    }

    private Lateness(Event event, Instant now) {
        this.event = event;
        this.now = now;
    }

    /** Every clock that runs, the oldest first: the next rubber without a card on each court, and ties not called in time. */
    public static List<Late> of(Event event, Instant now) {
        Lateness lateness = new Lateness(event, now);
        List<Late> all = new ArrayList<>();
        Set<String> courts = new HashSet<>();
        lateness.waiting()
                .filter(on -> courts.add(on.call().court()))
                .forEach(on -> lateness.clock(on)
                        .ifPresent(clock -> all.add(lateness.late(on.tie(), Optional.of(on.rubber()), clock))));
        event.ties()
                .values()
                .forEach(tie -> lateness.uncalled(tie)
                        .ifPresent(clock -> all.add(lateness.late(tie, Optional.empty(), clock))));
        all.sort(Comparator.comparing(Late::clock).thenComparing(Late::tie));
        return List.copyOf(all);
    }

    private record OnCourt(Tie tie, RubberNo rubber, Tie.Call call) {}

    /** Rubbers that were called and have no card, in the order in which they come on court. */
    private Stream<OnCourt> waiting() {
        return event.ties().values().stream()
                .flatMap(tie -> tie.calls().entrySet().stream()
                        .filter(call -> event.progress(tie).left().contains(call.getKey()))
                        .map((Map.Entry<RubberNo, Tie.Call> call) -> new OnCourt(tie, call.getKey(), call.getValue())))
                .sorted(Comparator.comparing((OnCourt on) -> on.call().at()).thenComparing(OnCourt::rubber));
    }

    private Optional<Instant> clock(OnCourt on) {
        Instant onCourt =
                later(on.call().at(), freeSince(on.call().court(), on.call().at()));
        Instant clock =
                switch (event.conditions().clockStarts()) {
                    case CALL -> onCourt;
                    case SCHEDULE ->
                        later(
                                event.startsAt(on.tie()).orElse(onCourt),
                                freeSince(on.call().court(), on.call().at()));
                    case COURT_FREE ->
                        later(
                                event.startsAt(on.tie()).orElse(on.call().at()),
                                freeSince(on.call().court(), Instant.MIN)
                                        .or(() -> Optional.of(event.startsAt(on.tie())
                                                .orElse(on.call().at()))));
                };
        return Optional.of(clock).filter(at -> !at.isAfter(now));
    }

    /** A tie with a published time that has come, of which nothing was called: only the schedule can have started its clock. */
    private Optional<Instant> uncalled(Tie tie) {
        boolean waits = tie.isReady() && !tie.isInPlay() && !event.isGone(tie);
        return switch (event.conditions().clockStarts()) {
            case CALL -> Optional.empty();
            case SCHEDULE -> event.startsAt(tie).filter(start -> waits && !start.isAfter(now));
            case COURT_FREE ->
                event.startsAt(tie)
                        .filter(start -> waits
                                && tie.court().isPresent()
                                && !isTaken(tie.court().get()))
                        .map(start -> later(start, freeSince(tie.court().orElseThrow(), Instant.MIN)))
                        .filter(clock -> !clock.isAfter(now));
        };
    }

    private boolean isTaken(String court) {
        return waiting().anyMatch(on -> on.call().court().equals(court));
    }

    /** When the last card from this court came in after the moment given. */
    private Optional<Instant> freeSince(String court, Instant after) {
        return event.ties().values().stream()
                .flatMap(tie -> tie.calls().entrySet().stream()
                        .filter(call -> call.getValue().court().equals(court))
                        .flatMap(call ->
                                tie.card(call.getKey()).entries().stream().limit(1)))
                .map(Card.Entry::receivedAt)
                .filter(at -> at.isAfter(after))
                .max(Comparator.naturalOrder());
    }

    private static Instant later(Instant one, Optional<Instant> other) {
        return other.filter(at -> at.isAfter(one)).orElse(one);
    }

    private Late late(Tie tie, Optional<RubberNo> rubber, Instant clock) {
        List<LateStep> ladder = LateStep.ladder(event.conditions(), clock);
        Instant since = ladder.get(0).since();
        return new Late(tie.id(), rubber, clock, since, !now.isBefore(since), ladder);
    }
}
