package tiewright.http;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tiewright.clock.WitnessedClock;
import tiewright.event.Event;
import tiewright.event.SetUpFact;
import tiewright.ledger.Answer;
import tiewright.ledger.Ledger;
import tiewright.ledger.Request;
import tiewright.setup.EraseData;

/**
 * Deletes private data by itself once the day that was promised has come and the clock may be believed: after an hour in which nothing
 * was written down, on a day without facts.
 */
final class Eraser implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Eraser.class);

    private final Ledger ledger;
    private final WitnessedClock clock;
    private final ScheduledExecutorService timer = ByTheClock.timer("deletion by its date");

    Eraser(Ledger ledger, WitnessedClock clock) {
        this.ledger = ledger;
        this.clock = clock;
    }

    void start() {
        timer.scheduleWithFixedDelay(this::look, 0, 1, TimeUnit.MINUTES);
    }

    /** Deletes if the day has come and anything is held. Several looks at once, or one missed, change nothing. */
    synchronized void look() {
        try {
            Event event = ledger.event();
            ZoneId zone = event.about().map(SetUpFact.EventDescribed::zone).orElse(ZoneOffset.UTC);
            LocalDate today = LocalDate.ofInstant(clock.instant(), zone);
            Optional<LocalDate> on = event.deletion().promised().map(SetUpFact.DeletionDated::date);
            if (on.isPresent()
                    && !today.isBefore(on.get())
                    && clock.mayErase(event.seq(), Opener.lastFact(ledger), zone)
                    && !ledger.held().isNothing()) {
                erase(event.seq());
            }
        } catch (RuntimeException | OutOfMemoryError failure) {
            LOG.error("Private data should have been deleted today; that failed once and is tried again", failure);
        }
    }

    private void erase(long seq) {
        Request request = new Request("erase/" + seq, EraseData.AUTOMATIC, Optional.empty(), OptionalLong.empty());
        Answer answer = ledger.erase(request, held -> new EraseData(held, Optional.empty()));
        if (answer instanceof Answer.Refused refused) {
            LOG.warn(
                    "Private data should be deleted today and were not: {}",
                    refused.reasons().stream().map(reason -> reason.code()).toList());
        } else {
            LOG.info(
                    "Private data were deleted, as promised for today. Copies that lie elsewhere are listed on the page of what is held.");
        }
    }

    @Override
    public void close() {
        timer.shutdownNow();
    }
}
