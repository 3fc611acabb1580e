package tiewright.http.answers;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import tiewright.event.Actor;
import tiewright.event.Decision;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.Recorded;
import tiewright.event.Refusal;
import tiewright.event.Viewer;
import tiewright.event.VisibleEvent;
import tiewright.ledger.Ledger;

/**
 * One viewer who asks at one moment. Pages read from it what this viewer may know; the whole event is read by the answers of
 * this room alone, which check for whom they are: {@code new ClubAnswers(asker)}.
 */
public final class Asker {
    private final Event whole;
    private final Directory directory;
    private final VisibleEvent event;
    private final Ledger ledger;
    private final Worked worked;

    private Asker(Event whole, VisibleEvent event, Directory directory, Ledger ledger, Worked worked) {
        this.whole = whole;
        this.event = event;
        this.directory = directory;
        this.ledger = ledger;
        this.worked = worked;
    }

    /** A viewer who asks of this event as it stands. */
    public static Asker of(Event event, Viewer viewer, Instant now, Ledger ledger, Worked worked) {
        Directory directory = ledger.directory();
        return new Asker(event, VisibleEvent.of(event, directory, viewer, now), directory, ledger, worked);
    }

    /** The same question from somebody who reads in this language. */
    public Asker in(String language) {
        return new Asker(whole, event.in(language), directory, ledger, worked);
    }

    /** The event as this viewer may know it. */
    public VisibleEvent event() {
        return event;
    }

    /** Whom the pages of this visit name. */
    public Directory directory() {
        return directory;
    }

    /** The same question from somebody else. */
    public Asker by(Viewer other) {
        return of(whole, other, event.now(), ledger, worked).in(event.language());
    }

    /** The same question of all that has been entered by now. */
    public Asker anew(Instant now) {
        return of(ledger.event(), event.viewer(), now, ledger, worked).in(event.language());
    }

    /** The same question as it would have been answered at an earlier moment: with what the desk had received by then. */
    public Asker asOf(Instant moment) {
        long seq = ledger.facts(0).stream()
                .filter(fact -> !fact.receivedAt().isAfter(moment))
                .mapToLong(Recorded::seq)
                .max()
                .orElse(0);
        return of(ledger.asOf(seq), event.viewer(), moment, ledger, worked).in(event.language());
    }

    /** Every reason why this would be refused now; nothing is changed by asking. */
    public List<Refusal> wouldRefuse(Decision decision, Actor actor) {
        Decision.Outcome outcome =
                decision.decide(whole, new Decision.Given(event.now(), actor, ledger.directory(), Map.of()));
        return outcome instanceof Decision.Refused refused ? refused.reasons() : List.of();
    }

    public Event whole() {
        return whole;
    }

    public Ledger ledger() {
        return ledger;
    }

    public Worked worked() {
        return worked;
    }
}
