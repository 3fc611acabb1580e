package tiewright.http;

import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import tiewright.http.visit.Laptop;
import tiewright.ledger.Ledger;

/** What goes on while nobody asks: sheets open, what was promised is deleted, copies are made. */
final class ByTheClock implements AutoCloseable {
    private final Opener opener;
    private final Eraser eraser;
    private final Copier copier;

    ByTheClock(Ledger ledger, Laptop laptop, Live live) {
        this.opener = new Opener(ledger, laptop, live);
        this.eraser = new Eraser(ledger, laptop.clock());
        this.copier = new Copier(laptop);
    }

    /** One thread that ends with the process, whatever it waits for. */
    static ScheduledExecutorService timer(String name) {
        return Executors.newSingleThreadScheduledExecutor(work -> {
            Thread thread = new Thread(work, name);
            thread.setDaemon(true);
            return thread;
        });
    }

    void start() {
        opener.start();
        eraser.start();
        copier.start();
    }

    Opener opener() {
        return opener;
    }

    Eraser eraser() {
        return eraser;
    }

    @Override
    public void close() {
        opener.close();
        eraser.close();
        copier.close();
    }
}
