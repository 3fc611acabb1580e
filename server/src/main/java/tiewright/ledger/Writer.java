package tiewright.ledger;

import java.time.Duration;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import org.jooq.exception.DataAccessException;

/** The one thread that touches the store, and what it does where the store failed before or does not answer. */
final class Writer implements AutoCloseable {
    private final Store store;
    private final Duration patience;
    private final Runnable readAnew;
    private final OneThread thread = new OneThread("tiewright-ledger");

    /**
     * @param patience how long a page waits for the disk
     * @param readAnew what is to be done once the store was opened anew
     */
    Writer(Store store, Duration patience, Runnable readAnew) {
        this.store = store;
        this.patience = patience;
        this.readAnew = readAnew;
    }

    /** For who asks from a page: a disk that does not answer is told as soon as nobody would wait for it any more. */
    <T> T call(Supplier<T> work) {
        try {
            return thread.call(() -> done(work), patience);
        } catch (TimeoutException late) {
            throw WriteFailure.tooSlow(store.folder(), patience.toSeconds());
        }
    }

    /** What takes as long as it takes. */
    <T> T callHoweverLong(Supplier<T> work) {
        return thread.call(() -> done(work));
    }

    /** What could not be written once, for want of room, is tried anew: the folder is read again, and it goes on with what was kept. */
    private <T> T done(Supplier<T> work) {
        if (store.isDoubtful()) {
            store.reopen();
            readAnew.run();
        }
        try {
            return work.get();
        } catch (DataAccessException | OutOfMemoryError failure) {
            throw store.doubted(failure);
        }
    }

    /** Ends what is begun and waiting, then closes the store. */
    @Override
    public void close() {
        thread.close(store::close);
    }
}
