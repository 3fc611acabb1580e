package tiewright.event;

import java.util.ArrayList;
import java.util.List;

/**
 * The facts that one viewer may notice. They are numbered among themselves: the ledger's own numbers would tell, by what is
 * missing, that a captain replaced a sealed sheet.
 */
public final class VisibleLog {

    /** @param number 1, 2, … for this viewer */
    public record Entry(int number, Recorded recorded) {}

    private VisibleLog() {}

    /**
     * What of these facts the viewer may notice.
     *
     * @param from the event before them
     */
    public static List<Recorded> noticed(Event from, List<Recorded> facts, Viewer viewer) {
        Fold fold = new Fold(from);
        List<Recorded> noticed = new ArrayList<>();
        for (Recorded recorded : facts) {
            fold.apply(recorded);
            if (fold.reach().seq(viewer) == recorded.seq()) {
                noticed.add(recorded);
            }
        }
        return List.copyOf(noticed);
    }

    /** @param facts all facts of the event from the first on, oldest first */
    public static List<Entry> of(List<Recorded> facts, Viewer viewer) {
        Fold fold = new Fold(Event.empty());
        List<Entry> entries = new ArrayList<>();
        for (Recorded recorded : facts) {
            fold.apply(recorded);
            if (fold.reach().seq(viewer) == recorded.seq()) {
                entries.add(new Entry(entries.size() + 1, recorded));
            }
        }
        return List.copyOf(entries);
    }
}
