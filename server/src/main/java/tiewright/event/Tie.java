package tiewright.event;

import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Stream;

/**
 * A tie: its place in the event, its time, and how it went so far. Everything here is public.
 *
 * @param round 1 is the first round of its pool or of the knockout
 */
public record Tie(
        TieId id,
        Stage stage,
        Optional<String> pool,
        int round,
        Slot home,
        Slot away,
        Published published,
        Course course) {

    /** The published start and court; each empty while it is not fixed. */
    public record Published(Optional<LocalTime> start, Optional<String> court) {
        static final Published NONE = new Published(Optional.empty(), Optional.empty());
    }

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

    static Tie arranged(DrawFact.TieArranged fact) {
        return new Tie(
                fact.tie(),
                fact.stage(),
                fact.pool(),
                fact.round(),
                fact.home(),
                fact.away(),
                Published.NONE,
                Course.NOTHING);
    }

    public Optional<LocalTime> start() {
        return published.start();
    }

    public Optional<String> court() {
        return published.court();
    }

    /** The pairs by rubber, see {@link Course}. */
    public SortedMap<RubberNo, OpenedRubber> opened() {
        return course.opened();
    }

    public SortedMap<RubberNo, Call> calls() {
        return course.calls();
    }

    public SortedMap<RubberNo, Card> cards() {
        return course.cards();
    }

    public SortedMap<RubberNo, Instant> stopped() {
        return course.stopped();
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

    /** Where its clubs come from, as far as they come from other ties or from pools. */
    public Stream<SlotSource> sources() {
        return Stream.of(home, away).flatMap(slot -> slot.from().stream());
    }

    /** One that a loser of another tie plays: for third place, say. */
    public boolean isOfLosers() {
        return sources().anyMatch(source -> source.kind() == SlotSource.Kind.LOSER);
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
        return !course.calls().isEmpty() || !course.cards().isEmpty();
    }

    /** The sheets of the rubbers have been opened. */
    public boolean isOpened() {
        return course.opened().keySet().stream().anyMatch(rubber -> !rubber.isDecider());
    }

    public boolean isDeciderOpened() {
        return course.opened().containsKey(RubberNo.DECIDER);
    }

    public Card card(RubberNo rubber) {
        return course.cards().getOrDefault(rubber, Card.NONE);
    }

    Tie timed(Optional<LocalTime> start, Optional<String> court) {
        return new Tie(id, stage, pool, round, home, away, new Published(start, court), course);
    }

    Tie filled(Side side, ClubId club) {
        return with(side, slot(side).filledBy(club));
    }

    Tie kept(Side side, ClubId club) {
        return with(side, slot(side).keptBy(club));
    }

    /** Nothing has been named, called or entered; these clubs meet. */
    Tie restarted(Optional<ClubId> newHome, Optional<ClubId> newAway) {
        return new Tie(id, stage, pool, round, home.takenBy(newHome), away.takenBy(newAway), published, Course.NOTHING);
    }

    Tie with(Course now) {
        return new Tie(id, stage, pool, round, home, away, published, now);
    }

    private Tie with(Side side, Slot slot) {
        return new Tie(
                id,
                stage,
                pool,
                round,
                side == Side.HOME ? slot : home,
                side == Side.AWAY ? slot : away,
                published,
                course);
    }
}
