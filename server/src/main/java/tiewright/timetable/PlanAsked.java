package tiewright.timetable;

import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.event.ClubId;

/**
 * What an organiser asks for beside the event.
 *
 * @param slotMinutes empty = as the conditions and the pace say, see {@link PlanProblem#usualSlot}
 * @param from which part of the day is planned
 * @param courtsPerTie empty = as many as make the day shortest
 * @param byHand what was put somewhere by hand
 * @param broken what is not as it was to be
 */
public record PlanAsked(
        Optional<Integer> slotMinutes,
        Pace pace,
        From from,
        Optional<Integer> courtsPerTie,
        boolean umpires,
        List<Pin> byHand,
        Broken broken) {

    /**
     * @param now the first moment that can be planned; empty = the start of the event
     * @param freezeMinutes a published start so soon after now stays
     * @param earlier whether a tie may begin before its published start, so that its clubs must agree to it
     */
    public record From(Optional<LocalTime> now, int freezeMinutes, boolean earlier) {}

    /**
     * @param lostCourts courts that can no longer be used
     * @param lateClubs clubs that are not here yet, and when they can play
     * @param closes an earlier closing than that of the event; empty = as the event says
     */
    public record Broken(List<String> lostCourts, Map<ClubId, LocalTime> lateClubs, Optional<LocalTime> closes) {
        static final Broken NOTHING = new Broken(List.of(), Map.of(), Optional.empty());

        public Broken {
            lostCourts = List.copyOf(lostCourts);
            lateClubs = Map.copyOf(lateClubs);
        }
    }

    public PlanAsked {
        byHand = List.copyOf(byHand);
    }

    /** The whole day, nothing pinned. */
    public static PlanAsked wholeDay() {
        return of(new From(Optional.empty(), 0, true));
    }

    /**
     * The rest of the day from now on; what is in play stays, and so does what starts within the freeze window. Nothing else
     * begins before its published start.
     */
    public static PlanAsked from(LocalTime now, int freezeMinutes) {
        return of(new From(Optional.of(now), freezeMinutes, false));
    }

    private static PlanAsked of(From from) {
        return new PlanAsked(Optional.empty(), Pace.USUAL, from, Optional.empty(), false, List.of(), Broken.NOTHING);
    }

    public Optional<LocalTime> now() {
        return from.now();
    }

    public int freezeMinutes() {
        return from.freezeMinutes();
    }

    public List<String> lostCourts() {
        return broken.lostCourts();
    }

    public Map<ClubId, LocalTime> lateClubs() {
        return broken.lateClubs();
    }

    public Optional<LocalTime> closes() {
        return broken.closes();
    }

    /** Ties may begin before their published starts, to be agreed with their clubs. */
    public PlanAsked withEarlierStarts() {
        From free = new From(from.now, from.freezeMinutes, true);
        return new PlanAsked(slotMinutes, pace, free, courtsPerTie, umpires, byHand, broken);
    }

    public PlanAsked withSlot(int minutes) {
        return new PlanAsked(Optional.of(minutes), pace, from, courtsPerTie, umpires, byHand, broken);
    }

    public PlanAsked withPace(Pace other) {
        return new PlanAsked(slotMinutes, other, from, courtsPerTie, umpires, byHand, broken);
    }

    public PlanAsked withCourtsPerTie(int count) {
        return new PlanAsked(slotMinutes, pace, from, Optional.of(count), umpires, byHand, broken);
    }

    public PlanAsked withUmpires() {
        return new PlanAsked(slotMinutes, pace, from, courtsPerTie, true, byHand, broken);
    }

    public PlanAsked withPins(List<Pin> pins) {
        return new PlanAsked(slotMinutes, pace, from, courtsPerTie, umpires, pins, broken);
    }

    public PlanAsked withoutCourts(List<String> lost) {
        return with(new Broken(lost, lateClubs(), closes()));
    }

    public PlanAsked withLateClubs(Map<ClubId, LocalTime> late) {
        return with(new Broken(lostCourts(), late, closes()));
    }

    public PlanAsked closingAt(LocalTime time) {
        return with(new Broken(lostCourts(), lateClubs(), Optional.of(time)));
    }

    private PlanAsked with(Broken other) {
        return new PlanAsked(slotMinutes, pace, from, courtsPerTie, umpires, byHand, other);
    }
}
