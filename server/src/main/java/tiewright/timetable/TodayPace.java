package tiewright.timetable;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tiewright.event.Card;
import tiewright.event.Event;
import tiewright.event.How;
import tiewright.event.RubberNo;
import tiewright.event.RubberScore;
import tiewright.event.Tie;

/**
 * How this day goes compared with what was reckoned.
 *
 * @param rubbers that were played to their end after a call, and so could be measured
 * @param factor how long a rubber takes, turnover included; 1 = as reckoned. Drawn towards 1 as if two more had gone as reckoned
 * @param begun ties that have begun and had a published start
 * @param startDelay minutes that they began after it, on average; drawn towards 0 in the same way, never below
 */
public record TodayPace(int rubbers, double factor, int begun, double startDelay) {
    /** So many rubbers, or ties, as reckoned count beside those measured (assumption of ours). */
    private static final int PRIOR = 2;

    static TodayPace of(Event event, double slotMinutes) {
        List<Double> ratios = new ArrayList<>();
        List<Double> delays = new ArrayList<>();
        for (Tie tie : event.ties().values()) {
            tie.calls()
                    .forEach((rubber, call) ->
                            minutes(tie, rubber, call).ifPresent(minutes -> ratios.add(minutes / slotMinutes)));
            event.startsAt(tie)
                    .ifPresent(start -> tie.calls().values().stream()
                            .map(Tie.Call::at)
                            .min(Comparator.naturalOrder())
                            .ifPresent(called -> delays.add(Math.max(0, minutes(start, called)))));
        }
        double ratio = ratios.stream().mapToDouble(Double::doubleValue).sum();
        double delay = delays.stream().mapToDouble(Double::doubleValue).sum();
        return new TodayPace(
                ratios.size(),
                (ratio + PRIOR) / (ratios.size() + PRIOR),
                delays.size(),
                delay / (delays.size() + PRIOR));
    }

    /** From the call, or the last card of its tie from that court, to the first card; only what was played to its end. */
    private static Optional<Double> minutes(Tie tie, RubberNo rubber, Tie.Call call) {
        Card card = tie.card(rubber);
        boolean played = card.score(rubber)
                .map(RubberScore::how)
                .filter(How.PLAYED::equals)
                .isPresent();
        if (!played) {
            return Optional.empty();
        }
        Instant over = card.entries().get(0).receivedAt();
        Instant since = since(tie, call, over);
        return Optional.of(minutes(since, over)).filter(minutes -> minutes > 0);
    }

    /** When a rubber that was called could begin: with its call, or when the one before it on that court was over. */
    static Instant since(Tie tie, Tie.Call call, Instant before) {
        return tie.calls().entrySet().stream()
                .filter(other -> other.getValue().court().equals(call.court()))
                .flatMap(other -> tie.card(other.getKey()).entries().stream().limit(1))
                .map(Card.Entry::receivedAt)
                .filter(at -> at.isAfter(call.at()) && at.isBefore(before))
                .max(Comparator.naturalOrder())
                .orElse(call.at());
    }

    private static double minutes(Instant from, Instant to) {
        return Duration.between(from, to).toSeconds() / 60.0;
    }
}
