package tiewright.ledger;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import tiewright.event.NoteSubject;
import tiewright.event.PrivateNote;
import tiewright.event.Refusal;

/** What came of a private decision; for those who asked alone. */
public sealed interface PrivateAnswer {

    /**
     * It is kept.
     *
     * @param again the same key was answered before, and nothing was changed now
     */
    record Done(boolean again) implements PrivateAnswer {}

    /** Nothing changed, for all these reasons; the same key may be sent again. */
    record Refused(List<Refusal> reasons) implements PrivateAnswer {
        public Refused {
            reasons = List.copyOf(reasons);
        }
    }

    /** Nothing changed, because somebody of the club noted something else about the same after the form was made. */
    record Stale(List<Clash> clashes) implements PrivateAnswer {
        public Stale {
            clashes = List.copyOf(clashes);
        }
    }

    /**
     * Two versions of one thing.
     *
     * @param by the label of the link that noted it last
     * @param stands what was noted; empty where nothing stands any more
     * @param asked what the form would have put there; empty where it would end it
     */
    record Clash(
            NoteSubject subject, String by, Instant at, Optional<PrivateNote> stands, Optional<PrivateNote> asked) {}
}
