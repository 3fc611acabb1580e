package tiewright.ledger;

import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;

/**
 * Work done one after the other by a thread of its own. The database is only touched by such a thread: Java closes a
 * file when a thread that reads or writes it is interrupted, and the threads of a server may be.
 */
final class OneThread implements AutoCloseable {
    private final ExecutorService thread;

    OneThread(String name) {
        thread = Executors.newSingleThreadExecutor(work -> {
            Thread made = new Thread(work, name);
            made.setDaemon(true);
            return made;
        });
    }

    /** Does the work and gives its result, or throws what it threw. */
    <T> T call(Supplier<T> work) {
        try {
            return CompletableFuture.supplyAsync(work, thread).join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof RuntimeException thrown) {
                throw thrown;
            }
            throw e;
        } catch (RejectedExecutionException e) {
            throw new LedgerException("The ledger is closed.", e);
        }
    }

    /**
     * The same for who does not wait longer than this. What is begun goes on; what was not begun by then never is.
     *
     * @throws TimeoutException if it has not ended by then
     */
    <T> T call(Supplier<T> work, Duration patience) throws TimeoutException {
        try {
            return CompletableFuture.supplyAsync(work, thread)
                    .orTimeout(patience.toNanos(), TimeUnit.NANOSECONDS)
                    .join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof TimeoutException late) {
                throw late;
            }
            if (e.getCause() instanceof RuntimeException thrown) {
                throw thrown;
            }
            throw e;
        } catch (RejectedExecutionException e) {
            throw new LedgerException("The ledger is closed.", e);
        }
    }

    void run(Runnable work) {
        call(() -> {
            work.run();
            return true;
        });
    }

    /** Does the work some time later, after all that came before. */
    void later(Runnable work) {
        thread.execute(work);
    }

    /** Ends what is begun and waiting, then the thread. */
    @Override
    public void close() {
        close(() -> {});
    }

    /**
     * Ends what is begun and waiting, does this last, then ends the thread; for a minute at most. Whoever is interrupted waits as well.
     * Nothing is done where the thread has ended before.
     */
    void close(Runnable last) {
        try {
            CompletableFuture.runAsync(last, thread)
                    .orTimeout(1, TimeUnit.MINUTES)
                    .join();
        } catch (RejectedExecutionException endedBefore) {
            return;
        } catch (CompletionException e) {
            if (e.getCause() instanceof RuntimeException thrown) {
                throw thrown;
            }
        } finally {
            thread.shutdown();
        }
    }
}
