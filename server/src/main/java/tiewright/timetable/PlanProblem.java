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
 * @param courts those that can be used, in the order in which they lie; at most 64
 * @param ties what is left to play
 * @param pins what stays where it is
 * @param notBefore clubs that come later, and starts that were published and stay lower limits
 */
public record PlanProblem(
        Slots slots, List<PlanCourt> courts, List<PlanTie> ties, Manner manner, List<Pin> pins, NotBefore notBefore) {
    public static final int MOST_COURTS = 64;

    public PlanProblem {
        courts = List.copyOf(courts);
        ties = List.copyOf(ties);
        pins = List.copyOf(pins);
    }

    /** Nothing is pinned, and every club is here from the start. */
    static PlanProblem free(Slots slots, List<PlanCourt> courts, List<PlanTie> ties, Manner manner) {
        return new PlanProblem(slots, courts, ties, manner, List.of(), NotBefore.NOTHING);
    }

    /** Everything that is not over yet, under the conditions of the event. */
    public static PlanProblem of(Event event, PlanAsked asked) {
        return new ProblemReader(event, asked).problem();
    }

    /** The same as wide and from as early as its ties were published, for what keeps their turns: see {@link KeptOrder}. */
    static PlanProblem asPublished(Event event, PlanAsked asked) {
        return new ProblemReader(event, asked).asPublished();
    }

    /** A rubber of the conditions and its turnover, in minutes, see {@link SlotLength}. */
    public static int usualSlot(Event event, Pace pace) {
        return SlotLength.of(event.conditions(), pace);
    }

    public LocalTime start() {
        return slots.start();
    }

    public int slotMinutes() {
        return slots.minutes();
    }

    public int restMinutes() {
        return slots.restMinutes();
    }

    public Optional<LocalTime> closes() {
        return slots.closes();
    }

    public TiePlay play() {
        return manner.play();
    }

    public int courtsPerTie() {
        return manner.courtsPerTie();
    }

    public boolean lastRoundTogether() {
        return manner.lastRoundTogether();
    }

    public boolean umpires() {
        return manner.umpires();
    }

    List<String> courtNames() {
        return courts.stream().map(PlanCourt::name).toList();
    }

    /** Where one court alone was published it names the first of those that a tie takes; the others lie beside it. */
    List<String> beside(String first, int width) {
        List<String> names = courtNames();
        int at = names.indexOf(first);
        int from = Math.min(at, Math.max(0, names.size() - width));
        return at < 0 ? List.of() : names.subList(from, Math.min(names.size(), from + width));
    }

    PlanProblem with(Slots others) {
        return new PlanProblem(others, courts, ties, manner, pins, notBefore);
    }

    PlanProblem with(Manner other) {
        return new PlanProblem(slots, courts, ties, other, pins, notBefore);
    }

    /** Each rubber on whatever court is free, instead of whole ties side by side. */
    PlanProblem rubberByRubber() {
        return with(manner.rubberByRubber());
    }

    public PlanProblem withSlot(int minutes) {
        return with(slots.of(minutes));
    }

    public PlanProblem withRest(int minutes) {
        return with(slots.resting(minutes));
    }

    public PlanProblem withCourtsPerTie(int count) {
        return with(manner.onCourts(count));
    }

    public PlanProblem withTies(List<PlanTie> others) {
        return new PlanProblem(slots, courts, others, manner, pins, notBefore);
    }

    public PlanProblem withCourts(List<PlanCourt> others) {
        return new PlanProblem(slots, others, ties, manner, pins, notBefore);
    }

    public PlanProblem withPins(List<Pin> others) {
        return new PlanProblem(slots, courts, ties, manner, others, notBefore);
    }

    PlanProblem withNotBefore(Map<ClubId, LocalTime> clubs) {
        return with(notBefore.withClubs(clubs));
    }

    PlanProblem with(NotBefore other) {
        return new PlanProblem(slots, courts, ties, manner, pins, other);
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
