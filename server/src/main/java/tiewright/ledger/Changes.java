package tiewright.ledger;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.NoteSubject;
import tiewright.event.PrivateNote;

/** What of whose notes one answer changed, by whom and when. */
record Changes(Map<ClubId, List<NoteSubject>> subjects, String by, Instant at) {

    /** A change of one subject. */
    record Change(NoteSubject subject, String by, Instant at) {}

    static Changes of(Event event, Collection<? extends PrivateNote> notes, Actor by, Instant at) {
        Map<ClubId, List<NoteSubject>> subjects = new TreeMap<>();
        notes.forEach(note -> NoteSubject.of(note)
                .ifPresent(subject -> OwnNotes.club(event, note)
                        .ifPresent(club -> subjects.computeIfAbsent(club, any -> new ArrayList<>())
                                .add(subject))));
        return new Changes(subjects, by.name(), at.truncatedTo(ChronoUnit.MILLIS));
    }
}
