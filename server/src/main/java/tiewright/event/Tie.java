package tiewright.event;

import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A tie: its place in the event, its times, the pairs once opened and the cards. Everything here is public.
 *
 * @param round 1 is the first round of its pool or of the knockout
 * @param opened pairs of each rubber, empty until the sheets are opened; the decider's pairs join after their own opening
 * @param calls the court each rubber was called to and when; a call of the whole tie stands under each of its rubbers
 * @param cards what was entered, by rubber
 * @param stopped rubbers that stand still, and since when
 */
public record Tie(
        TieId id,
        Stage stage,
        Optional<String> pool,
        int round,
        Slot home,
        Slot away,
        Optional<LocalTime> start,
        Optional<String> court,
        SortedMap<RubberNo, OpenedRubber> opened,
        SortedMap<RubberNo, Call> calls,
        SortedMap<RubberNo, Card> cards,
        SortedMap<RubberNo, Instant> stopped) {

    /** The pairs that face each other; an empty side has no pair. */
    public record OpenedRubber(Optional<Pair> home, Optional<Pair> away) {
        public Optional<Pair> pair(Side side) {
            return side == Side.HOME ? home : away;
        }

        OpenedRubber with(Side side, Optional<Pair> pair) {
            return side == Side.HOME ? new OpenedRubber(pair, away) : new OpenedRubber(home, pair);
        }
    }

    public record Call(String court, Instant at) {}

    public Tie {
        opened = frozen(opened);
        calls = frozen(calls);
        cards = frozen(cards);
        stopped = frozen(stopped);
    }

    static Tie arranged(DrawFact.TieArranged fact) {
        return new Tie(
                fact.tie(),
                fact.stage(),
                fact.pool(),
                fact.round(),
                fact.home(),
                fact.away(),
                Optional.empty(),
                Optional.empty(),
                new TreeMap<>(),
                new TreeMap<>(),
                new TreeMap<>(),
                new TreeMap<>());
    }

    public Slot slot(Side side) {
        return side == Side.HOME ? home : away;
    }

    public Optional<ClubId> club(Side side) {
        return slot(side).club();
    }

    public boolean has(ClubId club) {
        return sideOf(club).isPresent();
    }

    public Optional<Side> sideOf(ClubId club) {
        if (home.club().filter(club::equals).isPresent()) {
            return Optional.of(Side.HOME);
        }
        return away.club().filter(club::equals).isPresent() ? Optional.of(Side.AWAY) : Optional.empty();
    }

    /** Both clubs are known. */
    public boolean isReady() {
        return home.club().isPresent() && away.club().isPresent();
    }

    /** The clubs that are known, home first. */
    public List<ClubId> clubs() {
        return Stream.of(home, away).flatMap(slot -> slot.club().stream()).toList();
    }

    /** The hall has seen the tie: its sheets are opened, or {@link #isInPlay()}. */
    public boolean isUnderWay() {
        return isOpened() || isInPlay();
    }

    /** Something was called to a court or written on a card; also true once all is played. */
    public boolean isInPlay() {
        return !calls.isEmpty() || !cards.isEmpty();
    }

    /** The sheets of the rubbers have been opened. */
    public boolean isOpened() {
        return opened.keySet().stream().anyMatch(rubber -> !rubber.isDecider());
    }

    public boolean isDeciderOpened() {
        return opened.containsKey(RubberNo.DECIDER);
    }

    public Card card(RubberNo rubber) {
        return cards.getOrDefault(rubber, Card.NONE);
    }

    Tie timed(Optional<LocalTime> newStart, Optional<String> newCourt) {
        return new Tie(id, stage, pool, round, home, away, newStart, newCourt, opened, calls, cards, stopped);
    }

    Tie filled(Side side, ClubId club) {
        return with(side, slot(side).filledBy(club));
    }

    Tie kept(Side side, ClubId club) {
        return with(side, slot(side).keptBy(club));
    }

    private Tie with(Side side, Slot slot) {
        return new Tie(
                id,
                stage,
                pool,
                round,
                side == Side.HOME ? slot : home,
                side == Side.AWAY ? slot : away,
                start,
                court,
                opened,
                calls,
                cards,
                stopped);
    }

    /** Nothing has been named, called or entered; these clubs meet. */
    Tie restarted(Optional<ClubId> newHome, Optional<ClubId> newAway) {
        return new Tie(
                id,
                stage,
                pool,
                round,
                home.takenBy(newHome),
                away.takenBy(newAway),
                start,
                court,
                new TreeMap<>(),
                new TreeMap<>(),
                new TreeMap<>(),
                new TreeMap<>());
    }

    Tie withStop(RubberNo rubber, Optional<Instant> since) {
        SortedMap<RubberNo, Instant> copy = new TreeMap<>(stopped);
        copy.remove(rubber);
        since.ifPresent(at -> copy.put(rubber, at));
        return new Tie(id, stage, pool, round, home, away, start, court, opened, calls, cards, copy);
    }

    Tie withOpened(SortedMap<RubberNo, OpenedRubber> pairs) {
        return new Tie(id, stage, pool, round, home, away, start, court, pairs, calls, cards, stopped);
    }

    Tie withCalls(SortedMap<RubberNo, Call> newCalls) {
        return new Tie(id, stage, pool, round, home, away, start, court, opened, newCalls, cards, stopped);
    }

    Tie withCard(RubberNo rubber, Card card) {
        SortedMap<RubberNo, Card> copy = new TreeMap<>(cards);
        copy.put(rubber, card);
        return new Tie(id, stage, pool, round, home, away, start, court, opened, calls, copy, stopped);
    }

    private static <V> SortedMap<RubberNo, V> frozen(SortedMap<RubberNo, V> map) {
        return java.util.Collections.unmodifiableSortedMap(new TreeMap<>(map));
    }
}
