package tiewright.http;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tiewright.event.Deadlines;
import tiewright.event.Event;
import tiewright.event.ExchangeId;
import tiewright.ledger.Answer;
import tiewright.ledger.Ledger;
import tiewright.ledger.Request;
import tiewright.sheet.Exchanges;
import tiewright.sheet.OpenSheets;

/** Opens both sheets of a tie by itself once they are due, and lets pages know when a deadline has passed. */
final class Opener implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Opener.class);

    private final Ledger ledger;
    private final Clock clock;
    private final Live live;
    private final ScheduledExecutorService timer;
    private Instant last;

    Opener(Ledger ledger, Clock clock, Live live) {
        this.ledger = ledger;
        this.clock = clock;
        this.live = live;
        this.last = clock.instant();
        this.timer = Executors.newSingleThreadScheduledExecutor(work -> {
            Thread thread = new Thread(work, "opening of sheets");
            thread.setDaemon(true);
            return thread;
        });
    }

    void start() {
        timer.scheduleWithFixedDelay(this::look, 200, 500, TimeUnit.MILLISECONDS);
    }

    /** Opens what is due now. Several looks at once, or one missed, change nothing. */
    synchronized void look() {
        try {
            Instant now = clock.instant();
            Event event = ledger.event();
            if (Exchanges.openByThemselves(event)) {
                Exchanges.due(event, now).forEach(exchange -> open(exchange, event.seq()));
            }
            if (passed(event, last, now)) {
                live.timePassed();
            }
            last = now;
        } catch (RuntimeException failure) {
            LOG.error("The timer that opens sheets failed once and goes on", failure);
        }
    }

    /** Named by the state it was found due in: whatever happens to the tie later, another opening has another name. */
    private void open(ExchangeId exchange, long seq) {
        Request request =
                Request.of("open/" + seq + "/" + exchange.kind().code() + "/" + exchange.tie(), Exchanges.AUTOMATIC);
        if (ledger.decide(request, new OpenSheets(exchange)) instanceof Answer.Refused refused) {
            LOG.warn("The sheets of {} were due and could not be opened: {}", exchange.tie(), codes(refused));
        }
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
