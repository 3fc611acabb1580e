package tiewright.http;

import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tiewright.clock.WitnessedClock;
import tiewright.event.Deadlines;
import tiewright.event.Event;
import tiewright.event.ExchangeId;
import tiewright.event.Recorded;
import tiewright.http.visit.Laptop;
import tiewright.ledger.Answer;
import tiewright.ledger.Ledger;
import tiewright.ledger.Request;
import tiewright.sheet.Exchanges;
import tiewright.sheet.OpenSheets;

/** Opens both sheets of a tie by itself once they are due, and lets pages know when a deadline has passed. */
final class Opener implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Opener.class);

    /** It looks twice a second; only a machine that stood still looks as seldom as this. */
    private static final Duration LONGEST_BREATH = Duration.ofMinutes(1);

    private final Ledger ledger;
    private final WitnessedClock clock;
    private final Laptop laptop;
    private final Live live;
    private final ScheduledExecutorService timer;
    private Instant last;
    private Set<String> said = Set.of();
    private boolean doubted;
    private String failed = "";

    Opener(Ledger ledger, Laptop laptop, Live live) {
        this.ledger = ledger;
        this.laptop = laptop;
        this.clock = laptop.clock();
        this.live = live;
        this.last = clock.instant();
        this.timer = ByTheClock.timer("opening of sheets");
    }

    void start() {
        timer.scheduleWithFixedDelay(this::look, 200, 500, TimeUnit.MILLISECONDS);
    }

    /** Opens what is due now. Several looks at once, or one missed, change nothing. */
    synchronized void look() {
        try {
            if (isDoubtful()) {
                return;
            }
            Instant now = clock.instant();
            if (!clock.isBelieved() && now.isAfter(last.plus(LONGEST_BREATH))) {
                laptop.slept(last, now);
            }
            Event event = ledger.event();
            if (Exchanges.openByThemselves(event)) {
                Set<String> refused = new HashSet<>();
                Exchanges.due(event, now).forEach(exchange -> open(exchange, event.seq(), refused));
                said = refused;
            }
            if (passed(event, last, now)) {
                live.timePassed();
            }
            last = now;
            failed = "";
        } catch (RuntimeException | OutOfMemoryError failure) {
            say(failure);
        }
    }

    /** Tried twice a second, and a disk that is full needs no lines: said once for each reason. */
    private void say(Throwable failure) {
        if (!failed.equals(failure.toString())) {
            LOG.error("The timer that opens sheets failed and goes on", failure);
        }
        failed = failure.toString();
    }

    /** Named by the state it was found due in: whatever happens to the tie later, another opening has another name. */
    private void open(ExchangeId exchange, long seq, Set<String> refusals) {
        Request request =
                Request.of("open/" + seq + "/" + exchange.kind().code() + "/" + exchange.tie(), Exchanges.AUTOMATIC);
        if (ledger.decide(request, new OpenSheets(exchange)) instanceof Answer.Refused refused) {
            String why = exchange.tie() + " " + exchange.kind() + " " + codes(refused);
            refusals.add(why);
            // it is tried twice a second until a person has helped: said once for each reason
            if (!said.contains(why)) {
                LOG.warn("The sheets of {} were due and could not be opened: {}", exchange.tie(), codes(refused));
            }
        }
    }

    /** Nothing is opened while nobody knows what time it is. */
    private boolean isDoubtful() {
        Optional<WitnessedClock.Doubt> doubt = clock.doubt();
        if (doubt.isPresent() != doubted) {
            doubted = doubt.isPresent();
            LOG.warn(
                    "{}",
                    doubt.map(one -> "The machine's clock says " + one.machine()
                                    + ", but by what was known before it is "
                                    + one.counted()
                                    + ". Nothing opens, closes or is deleted until somebody says on the page"
                                    + " /desk/clock which is right.")
                            .orElse("The time is no longer in doubt."));
            live.timePassed();
        }
        return doubted;
    }

    static Optional<Instant> lastFact(Ledger ledger) {
        return ledger.facts(Math.max(0, ledger.event().seq() - 1)).stream()
                .map(Recorded::receivedAt)
                .findFirst();
    }

    /** Something was opened or played, and something is still to come. */
    static boolean playGoesOn(Event event) {
        return event.signed().isEmpty()
                && event.ties().values().stream().anyMatch(tie -> tie.isOpened() || tie.isInPlay())
                && event.ties().values().stream()
                        .anyMatch(tie -> !event.progress(tie).finished());
    }

    private static List<String> codes(Answer.Refused refused) {
        return refused.reasons().stream().map(reason -> reason.code()).toList();
    }

    private static boolean passed(Event event, Instant from, Instant to) {
        return event.ties().values().stream()
                .flatMap(tie -> java.util.stream.Stream.of(ExchangeId.sheets(tie.id()), ExchangeId.decider(tie.id())))
                .flatMap(exchange -> Deadlines.of(event, exchange).stream())
                .anyMatch(at -> at.isAfter(from) && !at.isAfter(to));
    }

    @Override
    public void close() {
        timer.shutdownNow();
    }
}
