package tiewright.http;

import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tiewright.http.visit.Laptop;

/** Looks every minute whether it is time for a copy. */
final class Copier implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Copier.class);

    private final Laptop laptop;
    private final ScheduledExecutorService timer = ByTheClock.timer("copies");

    Copier(Laptop laptop) {
        this.laptop = laptop;
    }

    void start() {
        if (laptop.copied().isPresent()) {
            timer.scheduleWithFixedDelay(this::look, 0, 1, TimeUnit.MINUTES);
        }
    }

    private void look() {
        try {
            laptop.copyIfDue();
        } catch (RuntimeException | OutOfMemoryError failure) {
            LOG.error("The timer that makes copies failed once and goes on", failure);
        }
    }

    /** Waits for the copy that is being made: half of one would be left. */
    @Override
    public void close() {
        timer.shutdown();
        try {
            timer.awaitTermination(10, TimeUnit.SECONDS);
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
        timer.shutdownNow();
    }
}
