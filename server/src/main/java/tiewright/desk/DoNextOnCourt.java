package tiewright.desk;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tiewright.desk.DoNext.Item;
import tiewright.desk.DoNext.Kind;
import tiewright.event.Card;
import tiewright.event.Event;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.event.TieProgress;

/** What waits on the courts: cards, calls, ties that are late. Times are common practice, no source. */
final class DoNextOnCourt {
    /** After so long without a card the desk asks on court: a game and its turnover, with room. */
    private static final Duration A_GAME = Duration.ofMinutes(25);

    /** A tie is called a little ahead of its start. */
    private static final Duration AHEAD = Duration.ofMinutes(10);

    private final Event event;
    private final Instant now;
    private final Courts courts;
    private final Map<TieId, List<NextCalls.Next>> calls;

    DoNextOnCourt(Event event, Instant now) {
        this.event = event;
        this.now = now;
        this.courts = Courts.of(event);
        this.calls = NextCalls.of(event);
    }

    List<Item> items() {
        List<Item> items = new ArrayList<>();
        for (Tie tie : event.ties().values()) {
            if (tie.isReady()) {
                TieProgress progress = event.progress(tie);
                MedicalClock.of(tie, event.conditions()).forEach(clock -> items.add(stopped(clock)));
                progress.held()
                        .forEach(no -> items.add(
                                Item.of(Kind.CARD_HELD).with("tie", tie.id()).with("rubber", no)));
                if (!event.isGone(tie) && !progress.finished()) {
                    toCall(tie).ifPresent(items::add);
                    late(tie).ifPresent(items::add);
                    withoutTime(tie).ifPresent(items::add);
                }
            }
        }
        items.addAll(missingCards());
        return items;
    }

    private Optional<Item> toCall(Tie tie) {
        boolean due = event.startsAt(tie)
                .map(start -> !now.isBefore(start.minus(AHEAD)))
                .orElse(true);
        List<NextCalls.Next> next = calls.getOrDefault(tie.id(), List.of()).stream()
                .filter(one -> one.court().isPresent())
                .toList();
        return !due || next.isEmpty()
                ? Optional.empty()
                : Optional.of(Item.of(Kind.TIE_TO_CALL)
                        .with("tie", tie.id())
                        .with(
                                "rubbers",
                                next.stream().map(NextCalls.Next::rubber).toList())
                        .with(
                                "courts",
                                next.stream()
                                        .flatMap(one -> one.court().stream())
                                        .toList()));
    }

    private Item stopped(MedicalClock clock) {
        Kind kind =
                switch (clock.state(now)) {
                    case RUNS -> Kind.PLAY_STOPPED;
                    case WARNS -> Kind.MEDICAL_SOON;
                    case OVER -> Kind.MEDICAL_OVER;
                };
        return Item.of(kind)
                .with("tie", clock.tie().id())
                .with("rubber", clock.rubber())
                .with("at", clock.endsAt());
    }

    private Optional<Item> late(Tie tie) {
        Duration grace = Duration.ofMinutes(event.conditions().lateMinutes());
        return event.startsAt(tie)
                .filter(start -> !tie.isInPlay() && !now.isBefore(start.plus(grace)))
                .map(start -> Item.of(Kind.TIE_LATE).with("tie", tie.id()).with("at", start));
    }

    /** A tie that was begun again, say: who makes the times has to give it one. */
    private Optional<Item> withoutTime(Tie tie) {
        boolean timed =
                event.ties().values().stream().anyMatch(other -> other.start().isPresent());
        return timed && tie.start().isEmpty() && !tie.isInPlay() && tie.calls().isEmpty()
                ? Optional.of(Item.of(Kind.TIE_WITHOUT_TIME).with("tie", tie.id()))
                : Optional.empty();
    }

    /** On each court only the first rubber can be in play; it began with its call or with the last card of its tie there. */
    private List<Item> missingCards() {
        List<Item> items = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        courts.running().stream()
                .sorted(Comparator.comparing((Courts.OnCourt on) -> on.call().at())
                        .thenComparing(Courts.OnCourt::rubber))
                .forEach(on -> {
                    Instant since = since(on);
                    boolean stands = on.tie().stopped().containsKey(on.rubber());
                    if (seen.add(on.call().court()) && !stands && !now.isBefore(since.plus(expected(on.rubber())))) {
                        items.add(Item.of(Kind.CARD_MISSING)
                                .with("tie", on.tie().id())
                                .with("rubber", on.rubber())
                                .with("court", on.call().court())
                                .with("at", since));
                    }
                });
        return items;
    }

    private Instant since(Courts.OnCourt on) {
        return on.tie().calls().entrySet().stream()
                .filter(call -> call.getValue().court().equals(on.call().court()))
                .flatMap(call -> on.tie().card(call.getKey()).entries().stream())
                .map(Card.Entry::receivedAt)
                .filter(at -> at.isAfter(on.call().at()))
                .max(Comparator.naturalOrder())
                .orElse(on.call().at());
    }

    private Duration expected(RubberNo rubber) {
        return A_GAME.multipliedBy(rubber.isDecider() ? 1 : event.conditions().bestOf() / 2 + 1);
    }
}
