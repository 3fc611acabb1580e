package tiewright.timetable;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tiewright.event.ClubId;
import tiewright.event.Court;
import tiewright.event.Event;
import tiewright.event.OrderOfPlay;
import tiewright.event.RubberNo;
import tiewright.event.SetUpFact;
import tiewright.event.Side;
import tiewright.event.SlotSource;
import tiewright.event.Tie;

/**
 * What is still to be played, laid out once so that it can be played many times: ties and courts are numbers, and each tie knows
 * which others must be over before it. Minutes of the day.
 */
final class RestOfDay {
    /**
     * A rubber that is not over.
     *
     * @param from when it was called; of a tie that waits, its place in the order of play
     */
    record Rubber(int court, double from) {}

    /** A tie that has begun; it is over with its last card, or with what is left of it. */
    record Going(int tie, double lastCard, List<Rubber> left) {}

    /**
     * A tie that has not.
     *
     * @param earliest its published start, or now, or the end of a stop of all play
     * @param after ties whose end it waits for
     */
    record Coming(int tie, double earliest, int[] after, List<Rubber> left) {}

    private final Event event;
    private final ZoneId zone;
    private final double now;
    private final double goesOn;
    private final List<Tie> begun;
    private final List<Tie> waiting;
    private final List<Tie> ties;
    private final Map<String, Integer> courts = new HashMap<>();
    private final List<Going> going;
    private final List<Coming> coming;

    RestOfDay(Event event, Instant now) {
        this.event = event;
        this.zone = event.about().map(SetUpFact.EventDescribed::zone).orElse(ZoneOffset.UTC);
        this.now = minute(now);
        this.goesOn = event.order()
                .stop(event.about(), now)
                .map(stop -> (double) Clock.minute(stop.until()))
                .orElse(this.now);
        this.begun = event.ties().values().stream().filter(Tie::isInPlay).toList();
        this.waiting = event.ties().values().stream()
                .filter(tie -> tie.start().isPresent() && !tie.isInPlay() && !event.isGone(tie))
                .sorted(Comparator.comparing((Tie tie) -> tie.start().orElseThrow())
                        .thenComparing(Tie::round))
                .toList();
        this.ties = Stream.concat(begun.stream(), waiting.stream()).toList();
        this.going = IntStream.range(0, begun.size()).mapToObj(this::going).toList();
        this.coming = IntStream.range(begun.size(), ties.size())
                .mapToObj(this::coming)
                .toList();
    }

    /** How long play stands still from now on, in minutes. */
    double stoppedFor() {
        return goesOn - now;
    }

    double now() {
        return now;
    }

    /** Of {@link #coming()}, in the same order. */
    List<Tie> waiting() {
        return waiting;
    }

    List<Going> going() {
        return going;
    }

    List<Coming> coming() {
        return coming;
    }

    int ties() {
        return ties.size();
    }

    int courts() {
        return courts.size();
    }

    private Going going(int number) {
        Tie tie = ties.get(number);
        double lastCard = tie.cards().values().stream()
                .flatMap(card -> card.entries().stream())
                .mapToDouble(entry -> minute(entry.receivedAt()))
                .max()
                .orElse(0);
        List<Rubber> left = event.progress(tie).left().stream()
                .map(rubber -> onCourt(tie, rubber))
                .toList();
        return new Going(number, lastCard, left);
    }

    private Rubber onCourt(Tie tie, RubberNo rubber) {
        Optional<Tie.Call> call = Optional.ofNullable(tie.calls().get(rubber));
        int court = court(call.map(Tie.Call::court).or(tie::court).orElse(""));
        return new Rubber(
                court,
                call.map(called -> minute(TodayPace.since(tie, called, Instant.MAX)))
                        .orElse(now));
    }

    private Coming coming(int number) {
        Tie tie = ties.get(number);
        Map<RubberNo, OrderOfPlay.Place> places = event.order().rubbers(tie.id());
        List<RubberNo> numbers = event.progress(tie).left();
        int lanes = lanes(tie);
        List<Rubber> left = new ArrayList<>();
        for (int i = 0; i < numbers.size(); i++) {
            OrderOfPlay.Place place = places.getOrDefault(numbers.get(i), place(tie, i % lanes));
            left.add(new Rubber(court(place.court()), Clock.minute(place.start())));
        }
        int[] after = IntStream.range(0, ties.size())
                .filter(other -> other != number && mustBeOver(ties.get(other), tie))
                .toArray();
        return new Coming(number, Math.max(Clock.minute(tie.start().orElseThrow()), goesOn), after, List.copyOf(left));
    }

    private int court(String name) {
        return courts.computeIfAbsent(name, unknown -> courts.size());
    }

    /** Without a plan of its rubbers a tie has its share of the courts: those that it is published on, and as many lanes beside it. */
    private int lanes(Tie tie) {
        long beside = event.ties().values().stream()
                .filter(other -> other.start().equals(tie.start()))
                .count();
        long usable = event.courts().values().stream().filter(Court::usable).count();
        return (int) Math.max(1, Math.round((double) usable / Math.max(1, beside)));
    }

    private static OrderOfPlay.Place place(Tie tie, int lane) {
        String court = tie.court().orElse("without a court, tie " + tie.id());
        return new OrderOfPlay.Place(tie.start().orElseThrow(), lane == 0 ? court : court + " and beside it, " + lane);
    }

    /** The club plays in it, or comes out of it. */
    private static boolean mustBeOver(Tie other, Tie tie) {
        return Stream.of(Side.values()).anyMatch(side -> {
            Optional<ClubId> club = tie.club(side);
            return club.isPresent()
                    ? other.has(club.get())
                    : tie.slot(side).from().stream().anyMatch(from -> feeds(other, from));
        });
    }

    private static boolean feeds(Tie other, SlotSource from) {
        return from.kind() == SlotSource.Kind.POOL_PLACE
                ? other.pool().filter(from.of()::equals).isPresent()
                : other.id().code().equals(from.of());
    }

    private double minute(Instant at) {
        return LocalTime.ofInstant(at, zone).toSecondOfDay() / 60.0;
    }
}
