package tiewright.http.answers;

import java.util.List;
import java.util.Map;
import tiewright.event.Event;
import tiewright.event.Role;
import tiewright.ledger.Ledger;
import tiewright.plainfiles.FolderExport;
import tiewright.plainfiles.NextEvent;
import tiewright.plainfiles.OwnNotes;

/** What the organiser carries away from an event. What clubs noted for themselves is in none of it. */
public final class KeptAnswers {
    private final Event event;
    private final Ledger ledger;

    /** @throws IllegalStateException for anybody but the organiser */
    public KeptAnswers(Asker asker) {
        if (asker.event().viewer().role() != Role.ORGANISER) {
            throw new IllegalStateException("only the organiser may ask this");
        }
        this.event = asker.whole();
        this.ledger = asker.ledger();
    }

    /** The event as plain files by name, as the command export writes them. */
    public Map<String, String> wholeEvent() {
        return FolderExport.files(event, ledger.directory(), OwnNotes.NONE, List.copyOf(ledger.pastGames()));
    }

    /** The files of a next event like this one; they name nobody. */
    public Map<String, String> template() {
        return NextEvent.template(event);
    }

    /** The games of this day as the next event's earlier ones. */
    public String pastResults() {
        return NextEvent.pastResults(event);
    }
}
