package tiewright.timetable;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.ClubId;
import tiewright.event.RubberNo;
import tiewright.event.TieId;

/**
 * When and where a whole tie, or one rubber of it, is played.
 *
 * @param rubbers in order; they are spread over the courts in turn
 * @param slot 1 is the first of the plan; what stays where it is has the slot in which it begins, 0 before the first
 * @param end the slot is over, turnover included
 * @param pinned why it could not be moved
 * @param umpires the club on duty, where clubs umpire
 */
public record Assignment(
        TieId tie,
        List<RubberNo> rubbers,
        int slot,
        List<String> courts,
        LocalTime start,
        LocalTime end,
        Optional<Pin.Why> pinned,
        Optional<ClubId> umpires) {
    public Assignment {
        rubbers = List.copyOf(rubbers);
        courts = List.copyOf(courts);
    }

    /** The same, where it stays as it was published. */
    Assignment kept() {
        return new Assignment(tie, rubbers, slot, courts, start, end, Optional.of(Pin.Why.KEPT), umpires);
    }

    /** One rubber on one court, and the club on duty there, where clubs umpire. */
    public record Line(
            TieId tie,
            RubberNo rubber,
            int slot,
            String court,
            LocalTime start,
            LocalTime end,
            Optional<ClubId> umpires) {}

    /** The rubbers one by one: as many at once as there are courts, the others in the slots after. */
    public List<Line> lines(int slotMinutes) {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < rubbers.size(); i++) {
            int wave = i / courts.size();
            LocalTime from = start.plusMinutes((long) wave * slotMinutes);
            boolean last = rubbers.size() - 1 - i < courts.size() && wave == (rubbers.size() - 1) / courts.size();
            lines.add(new Line(
                    tie,
                    rubbers.get(i),
                    slot + wave,
                    courts.get(i % courts.size()),
                    from,
                    last ? end : from.plusMinutes(slotMinutes),
                    umpires));
        }
        return lines;
    }
}
