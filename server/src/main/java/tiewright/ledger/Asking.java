package tiewright.ledger;

import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.Recorded;
import tiewright.event.Refusal;
import tiewright.event.Viewer;
import tiewright.event.VisibleLog;

/** Asks a decision about the event as it stands, and writes down what it accepts before it is answered. */
final class Asking {
    private final Store store;
    private final InstantSource clock;

    /** The answer, and what is in memory after it: the same as before unless something was written. */
    record Result(Answer answer, Memory after) {}

    Asking(Store store, InstantSource clock) {
        this.store = store;
        this.clock = clock;
    }

    Result ask(Memory now, Request request, Decision decision) {
        Optional<long[]> first = store.answered(request.key());
        if (first.isPresent()) {
            List<Recorded> facts = now.facts().subList((int) first.get()[0] - 1, (int) first.get()[1]);
            return new Result(new Answer.Done(facts, true), now);
        }
        List<Recorded> since = staling(now, request, decision);
        if (!since.isEmpty()) {
            return new Result(new Answer.Stale(since), now);
        }
        Instant at = clock.instant().truncatedTo(ChronoUnit.MILLIS);
        SealedSheets.Opened opened = store.open(decision.needs(now.event()));
        Decision.Outcome outcome =
                decision.decide(now.event(), new Decision.Given(at, request.by(), now.directory(), opened.sheets()));
        if (outcome instanceof Decision.Refused refused) {
            return new Result(new Answer.Refused(Faults.withUnreadable(opened.unreadable(), refused.reasons())), now);
        }
        return append(now, request, at, (Decision.Accepted) outcome);
    }

    /** What came since the form was made, would change its answer, and may be noticed by who sends it: a refusal must not tell more. */
    private static List<Recorded> staling(Memory now, Request request, Decision decision) {
        if (request.seenSeq().isEmpty()) {
            return List.of();
        }
        List<Recorded> since = now.after(request.seenSeq().getAsLong());
        List<Recorded> staling = since.stream()
                .filter(recorded -> decision.isStaledBy(recorded.fact()))
                .toList();
        if (staling.isEmpty()) {
            return staling;
        }
        Viewer asker = new Viewer(request.by().role(), request.by().club(), Optional.empty());
        List<Recorded> noticed = VisibleLog.noticed(now.asOf(since.get(0).seq() - 1), since, asker);
        return staling.stream().filter(noticed::contains).toList();
    }

    private Result append(Memory now, Request request, Instant at, Decision.Accepted accepted) {
        List<Refusal> tooLong = Faults.tooLong(accepted);
        if (!tooLong.isEmpty()) {
            return new Result(new Answer.Refused(tooLong), now);
        }
        long last = now.event().seq();
        List<Recorded> facts = numbered(last, request, at, accepted.facts());
        // Folded first: what cannot be folded must not be written.
        Event event = now.event().then(facts);
        store.write(new Store.Entry(
                request.key(),
                last,
                facts,
                accepted.notes(),
                Changes.of(event, accepted.notes(), request.by(), at),
                OwnNotes.left(now.event(), event),
                OwnNotes.gone(now.event(), event)));
        Memory after = now.then(facts, event, OwnNotes.named(now.directory(), accepted.notes()));
        return new Result(new Answer.Done(facts, false), after);
    }

    private static List<Recorded> numbered(long last, Request request, Instant at, List<Fact> facts) {
        Optional<Instant> deviceTime = request.deviceTime().map(time -> time.truncatedTo(ChronoUnit.MILLIS));
        List<Recorded> recorded = new ArrayList<>();
        for (Fact fact : facts) {
            recorded.add(new Recorded(last + recorded.size() + 1, fact, request.by(), deviceTime, at));
        }
        return List.copyOf(recorded);
    }
}
