package tiewright.http;

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
