package tiewright.lineup.club;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.event.Card;
import tiewright.event.Event;
import tiewright.event.How;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.lineup.Freshness;

/**
 * What everybody has behind them today when a tie begins, or its decider: rubbers played, and minutes since the last.
 *
 * <p>A rubber ended when its card came to the desk, if that was within an hour and a half of its call, or without a call of
 * the published start; else {@value Freshness#RUBBER_MINUTES} minutes after that. Who was called and has no score yet is on court. Where no time is known, nobody is
 * taken to be short of rest.
 */
public final class DayLoads {
    private static final Duration SOON = Duration.ofMinutes(90);

    private final Event event;
    private final Tie tie;
    private final Optional<Instant> now;
    private final Map<PlayerId, Integer> rubbers = new HashMap<>();
    private final Map<PlayerId, Instant> last = new HashMap<>();

    private DayLoads(Event event, Tie tie, Optional<Instant> now) {
        this.event = event;
        this.tie = tie;
        this.now = now;
    }

    /** @param now the moment of the question; without one a tie is asked about as at its start, its decider as after its rubbers */
    public static Freshness of(Event event, Tie tie, Optional<Instant> now, Freshness.Cost cost) {
        return new DayLoads(event, tie, now).freshness(cost);
    }

    private Freshness freshness(Freshness.Cost cost) {
        event.ties().values().stream().filter(this::isBefore).forEach(this::count);
        Optional<Instant> begins = begins();
        Map<PlayerId, Freshness.Load> loads = new HashMap<>();
        rubbers.forEach((player, played) -> loads.put(player, new Freshness.Load(played, minutes(player, begins))));
        return new Freshness(loads, cost);
    }

    private OptionalInt minutes(PlayerId player, Optional<Instant> begins) {
        Optional<Instant> ended = Optional.ofNullable(last.get(player));
        return ended.isPresent() && begins.isPresent()
                ? OptionalInt.of((int)
                        Math.max(0, Duration.between(ended.get(), begins.get()).toMinutes()))
                : OptionalInt.empty();
    }

    private Optional<Instant> begins() {
        Optional<Instant> start = start(tie);
        if (tie.isOpened()) {
            return now.isPresent() ? now : last.values().stream().max(Instant::compareTo);
        }
        return now.isPresent() && start.filter(now.get()::isBefore).isEmpty() ? now : start;
    }

    /** Ties that start later have taken nothing out of anybody yet. */
    private boolean isBefore(Tie other) {
        boolean later = start(tie).isPresent()
                && start(other).filter(start(tie).get()::isBefore).isPresent();
        return other.isOpened() && !later;
    }

    private Optional<Instant> start(Tie one) {
        Optional<LocalTime> clock = one.start();
        return event.about()
                .flatMap(about -> clock.map(
                        time -> about.date().atTime(time).atZone(about.zone()).toInstant()));
    }

    private void count(Tie played) {
        played.opened().forEach((rubber, opened) -> {
            Card card = played.card(rubber);
            boolean scored = card.score(rubber)
                    .filter(score -> score.how() == How.PLAYED || score.how().isRetirement())
                    .isPresent();
            boolean onCourt =
                    card.standing() == Card.Standing.EMPTY && played.calls().containsKey(rubber);
            if (scored || onCourt) {
                Optional<Instant> ended = onCourt ? now : ended(played, rubber, card);
                for (Side side : Side.values()) {
                    opened.pair(side).ifPresent(pair -> note(pair, ended));
                }
            }
        });
    }

    private Optional<Instant> ended(Tie played, RubberNo rubber, Card card) {
        Optional<Instant> began = Optional.ofNullable(played.calls().get(rubber))
                .map(Tie.Call::at)
                .or(() -> start(played));
        Instant received = card.inForce().get(0).receivedAt();
        return began.map(
                at -> isSoonAfter(received, at) ? received : at.plus(Duration.ofMinutes(Freshness.RUBBER_MINUTES)));
    }

    private static boolean isSoonAfter(Instant received, Instant began) {
        return !received.isBefore(began) && received.isBefore(began.plus(SOON));
    }

    private void note(Pair pair, Optional<Instant> ended) {
        for (PlayerId player : pair.players()) {
            rubbers.merge(player, 1, Integer::sum);
            ended.ifPresent(at -> last.merge(player, at, (one, other) -> one.isAfter(other) ? one : other));
        }
    }
}
