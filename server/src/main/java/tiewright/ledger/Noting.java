package tiewright.ledger;

import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.NoteSubject;
import tiewright.event.Noted;
import tiewright.event.PrivateDecision;
import tiewright.event.PrivateNote;

/** Asks a private decision about what the club has noted so far, and keeps what it accepts before it is answered. */
final class Noting {
    private final Store store;
    private final InstantSource clock;

    Noting(Store store, InstantSource clock) {
        this.store = store;
        this.clock = clock;
    }

    PrivateAnswer ask(Event event, PrivateRequest request, PrivateDecision decision) {
        if (store.answered(request.club(), request.key())) {
            return new PrivateAnswer.Done(true);
        }
        Noted noted = store.noted(event, request.club());
        PrivateDecision.Outcome outcome = decision.decide(event, noted, request.by());
        if (outcome instanceof PrivateDecision.Refused refused) {
            return new PrivateAnswer.Refused(refused.reasons());
        }
        List<PrivateNote> notes = ((PrivateDecision.Kept) outcome).notes();
        List<PrivateAnswer.Clash> clashes = decision.isNeverStale() ? List.of() : clashes(noted, request, notes);
        if (!clashes.isEmpty()) {
            return new PrivateAnswer.Stale(clashes);
        }
        notes.forEach(note -> mustBeOwn(event, request.club(), note));
        store.write(request, notes, Changes.of(event, notes, request.by(), clock.instant()));
        return new PrivateAnswer.Done(false);
    }

    /** What would take the place of something that was noted after the form was made. Saying the same is no clash. */
    private List<PrivateAnswer.Clash> clashes(Noted noted, PrivateRequest request, List<PrivateNote> notes) {
        if (request.seen().isEmpty()) {
            return List.of();
        }
        List<Changes.Change> since =
                store.changedSince(request.club(), request.seen().getAsLong());
        List<PrivateAnswer.Clash> clashes = new ArrayList<>();
        for (PrivateNote note : notes) {
            Optional<PrivateNote> stands = noted.instead(note);
            Optional<PrivateNote> asked = Optional.of(note).filter(one -> !one.ends());
            NoteSubject.of(note)
                    .filter(any -> !asked.equals(stands))
                    .flatMap(subject -> last(since, subject))
                    .ifPresent(change -> clashes.add(new PrivateAnswer.Clash(
                            NoteSubject.of(note).orElseThrow(), change.by(), change.at(), stands, asked)));
        }
        return clashes;
    }

    private static Optional<Changes.Change> last(List<Changes.Change> since, NoteSubject subject) {
        return since.stream()
                .filter(change -> subject.isTouchedBy(change.subject()))
                .reduce((one, later) -> later);
    }

    private static void mustBeOwn(Event event, ClubId club, PrivateNote note) {
        if (!OwnNotes.mayNote(event, club, note)) {
            throw new IllegalStateException(
                    "a decision of " + club + " gave a note that is not " + club + "'s to keep: " + note.kind());
        }
    }
}
