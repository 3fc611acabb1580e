package tiewright.wording;

import java.time.ZoneOffset;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tiewright.timetable.Cut;
import tiewright.timetable.Reason;
import tiewright.timetable.TimeBudget;

/** The order of play in sentences: why a tie stands where it stands, what an option does, why nothing fits. */
public final class TimetableWords {
    private final Words words;

    public TimetableWords(Words words) {
        this.words = words;
    }

    /** For commands: codes stand for themselves. */
    public static TimetableWords ofCodes() {
        return new TimetableWords(Words.ofCodes(ZoneOffset.UTC));
    }

    public String sentence(Reason reason) {
        Map<String, Object> said = new LinkedHashMap<>();
        reason.data().forEach((name, value) -> said.put(name, said(value)));
        return words.sentence(reason.code(), said);
    }

    /** What an option is, in a few words. */
    public String cut(Cut cut) {
        return words.sentence("timetable.cut-" + cut.code(), Map.of());
    }

    /** A budget of time in two or three sentences. */
    public List<String> budget(TimeBudget budget) {
        Map<String, Object> data = Map.ofEntries(
                Map.entry("rubbers", budget.rubbers()),
                Map.entry("slot", budget.slotMinutes()),
                Map.entry("needed", budget.neededMinutes()),
                Map.entry("available", budget.availableMinutes()),
                Map.entry("fit", budget.daysThatFit()),
                Map.entry("days", budget.simulatedDays()),
                Map.entry("early", budget.early()),
                Map.entry("middle", budget.middle()),
                Map.entry("late", budget.late()),
                Map.entry("deciders", Math.round(budget.deciders())),
                Map.entry("courts", budget.courtsPerTie()));
        return List.of(
                words.sentence("timetable.budget-plan", data),
                words.sentence("timetable.budget-" + budget.verdict().code(), data),
                words.sentence("timetable.budget-spread", data));
    }

    private Object said(Object value) {
        if (value instanceof Reason reason) {
            return sentence(reason);
        }
        if (value instanceof Collection<?> many && many.stream().allMatch(Reason.class::isInstance)) {
            return many.stream().map(one -> sentence((Reason) one)).toList();
        }
        return value;
    }
}
