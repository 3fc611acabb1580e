package tiewright.timetable;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.conditions.TiePlay;
import tiewright.event.ClubId;
import tiewright.event.Event;

/**
 * What is to be planned, and what must hold.
 *
 * @param start of the first slot
 * @param slotMinutes length of a slot: a rubber and its turnover
 * @param restMinutes least time between the end of a club's tie and the start of its next one
 * @param closes when the venue closes; empty = nothing says so
 * @param courts those that can be used, in the order in which they lie; at most 64
 * @param ties what is left to play
 * @param play whole ties side by side, or each rubber on its own
 * @param courtsPerTie courts that a whole tie takes at once; 1 where each rubber is planned on its own
 * @param lastRoundTogether ties of the last round of a pool begin together, where there are courts enough for it
 * @param umpires a club that does not play has to umpire each tie
 * @param pins what stays where it is
 * @param notBefore clubs that cannot play from the start, and from when they can
 */
public record PlanProblem(
        LocalTime start,
        int slotMinutes,
        int restMinutes,
        Optional<LocalTime> closes,
        List<PlanCourt> courts,
        List<PlanTie> ties,
        TiePlay play,
        int courtsPerTie,
        boolean lastRoundTogether,
        boolean umpires,
        List<Pin> pins,
        Map<ClubId, LocalTime> notBefore) {
    public static final int MOST_COURTS = 64;

    public PlanProblem {
        courts = List.copyOf(courts);
        ties = List.copyOf(ties);
        pins = List.copyOf(pins);
        notBefore = Map.copyOf(notBefore);
        if (slotMinutes < 1 || slotMinutes > 600 || restMinutes < 0 || courtsPerTie < 1) {
            throw new IllegalArgumentException(
                    "no such slots: " + slotMinutes + ", " + restMinutes + ", " + courtsPerTie);
        }
    }

    /**
     * What an organiser asks for beside the event.
     *
     * @param slotMinutes empty = as the conditions and the pace say, see {@link #usualSlot}
     * @param now the first moment that can be planned; empty = the start of the event
     * @param freezeMinutes a published start so soon after now stays
     * @param lostCourts courts that can no longer be used
     * @param courtsPerTie empty = as many as make the day shortest
     * @param byHand what was put somewhere by hand
     * @param lateClubs clubs that are not here yet, and when they can play
     * @param closes an earlier closing than that of the event; empty = as the event says
     */
    public record Asked(
            Optional<Integer> slotMinutes,
            Pace pace,
            Optional<LocalTime> now,
            int freezeMinutes,
            List<String> lostCourts,
            Optional<Integer> courtsPerTie,
            boolean umpires,
            List<Pin> byHand,
            Map<ClubId, LocalTime> lateClubs,
            Optional<LocalTime> closes) {
        public Asked {
            lostCourts = List.copyOf(lostCourts);
            byHand = List.copyOf(byHand);
            lateClubs = Map.copyOf(lateClubs);
        }

        /** The whole day, nothing pinned. */
        public static Asked wholeDay() {
            return new Asked(
                    Optional.empty(),
                    Pace.USUAL,
                    Optional.empty(),
                    0,
                    List.of(),
                    Optional.empty(),
                    false,
                    List.of(),
                    Map.of(),
                    Optional.empty());
        }

        /** The rest of the day from now on; what is in play stays, and so does what starts within the freeze window. */
        public static Asked from(LocalTime now, int freezeMinutes) {
            return new Asked(
                    Optional.empty(),
                    Pace.USUAL,
                    Optional.of(now),
                    freezeMinutes,
                    List.of(),
                    Optional.empty(),
                    false,
                    List.of(),
                    Map.of(),
                    Optional.empty());
        }

        public Asked withSlot(int minutes) {
            return new Asked(
                    Optional.of(minutes),
                    pace,
                    now,
                    freezeMinutes,
                    lostCourts,
                    courtsPerTie,
                    umpires,
                    byHand,
                    lateClubs,
                    closes);
        }

        public Asked withPace(Pace other) {
            return new Asked(
                    slotMinutes,
                    other,
                    now,
                    freezeMinutes,
                    lostCourts,
                    courtsPerTie,
                    umpires,
                    byHand,
                    lateClubs,
                    closes);
        }

        public Asked withoutCourts(List<String> lost) {
            return new Asked(
                    slotMinutes, pace, now, freezeMinutes, lost, courtsPerTie, umpires, byHand, lateClubs, closes);
        }

        public Asked withCourtsPerTie(int count) {
            return new Asked(
                    slotMinutes,
                    pace,
                    now,
                    freezeMinutes,
                    lostCourts,
                    Optional.of(count),
                    umpires,
                    byHand,
                    lateClubs,
                    closes);
        }

        public Asked withUmpires() {
            return new Asked(
                    slotMinutes, pace, now, freezeMinutes, lostCourts, courtsPerTie, true, byHand, lateClubs, closes);
        }

        public Asked withPins(List<Pin> pins) {
            return new Asked(
                    slotMinutes, pace, now, freezeMinutes, lostCourts, courtsPerTie, umpires, pins, lateClubs, closes);
        }

        public Asked withLateClubs(Map<ClubId, LocalTime> late) {
            return new Asked(
                    slotMinutes, pace, now, freezeMinutes, lostCourts, courtsPerTie, umpires, byHand, late, closes);
        }

        public Asked closingAt(LocalTime time) {
            return new Asked(
                    slotMinutes,
                    pace,
                    now,
                    freezeMinutes,
                    lostCourts,
                    courtsPerTie,
                    umpires,
                    byHand,
                    lateClubs,
                    Optional.of(time));
        }
    }

    /** Everything that is not over yet, under the conditions of the event. */
    public static PlanProblem of(Event event, Asked asked) {
        return new ProblemReader(event, asked).problem();
    }

    /** A rubber of the conditions and its turnover, in minutes, see {@link SlotLength}. */
    public static int usualSlot(Event event, Pace pace) {
        return SlotLength.of(event.conditions(), pace);
    }

    /** Each rubber on whatever court is free, instead of whole ties side by side. */
    PlanProblem rubberByRubber() {
        return new PlanProblem(
                start,
                slotMinutes,
                restMinutes,
                closes,
                courts,
                ties,
                TiePlay.RUBBER_BY_RUBBER,
                1,
                lastRoundTogether,
                umpires,
                pins,
                notBefore);
    }

    public PlanProblem withSlot(int minutes) {
        return new PlanProblem(
                start,
                minutes,
                restMinutes,
                closes,
                courts,
                ties,
                play,
                courtsPerTie,
                lastRoundTogether,
                umpires,
                pins,
                notBefore);
    }

    public PlanProblem withTies(List<PlanTie> others) {
        return new PlanProblem(
                start,
                slotMinutes,
                restMinutes,
                closes,
                courts,
                others,
                play,
                courtsPerTie,
                lastRoundTogether,
                umpires,
                pins,
                notBefore);
    }

    public PlanProblem withCourts(List<PlanCourt> others) {
        return new PlanProblem(
                start,
                slotMinutes,
                restMinutes,
                closes,
                others,
                ties,
                play,
                courtsPerTie,
                lastRoundTogether,
                umpires,
                pins,
                notBefore);
    }

    public PlanProblem withPins(List<Pin> others) {
        return new PlanProblem(
                start,
                slotMinutes,
                restMinutes,
                closes,
                courts,
                ties,
                play,
                courtsPerTie,
                lastRoundTogether,
                umpires,
                others,
                notBefore);
    }

    public PlanProblem withRest(int minutes) {
        return new PlanProblem(
                start,
                slotMinutes,
                minutes,
                closes,
                courts,
                ties,
                play,
                courtsPerTie,
                lastRoundTogether,
                umpires,
                pins,
                notBefore);
    }

    public PlanProblem withCourtsPerTie(int count) {
        return new PlanProblem(
                start,
                slotMinutes,
                restMinutes,
                closes,
                courts,
                ties,
                play,
                count,
                lastRoundTogether,
                umpires,
                pins,
                notBefore);
    }

    /** This problem with one more thing put somewhere by hand; what was pinned there before is not any more. */
    public PlanProblem pinned(Pin pin) {
        List<Pin> more = new ArrayList<>(pins);
        more.removeIf(other -> other.tie().equals(pin.tie()) && other.rubber().equals(pin.rubber()));
        more.add(pin);
        return withPins(more);
    }

    /** Rubbers left to play. */
    public int rubbers() {
        return ties.stream().mapToInt(tie -> tie.rubbers().size()).sum();
    }
}
