package tiewright.http.visit;

import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Supplier;
import tiewright.search.Stop;

/** Runs long searches on a thread of its own, one after the other, until it is closed: whoever asked goes on meanwhile. */
public final class Background implements AutoCloseable {
    private final ExecutorService worker;
    private final Set<Stop> unfinished = ConcurrentHashMap.newKeySet();

    /** @param name of the thread, as a log shows it */
    @SuppressWarnings("ThreadPriorityCheck") // pages come first; nothing breaks where the machine ignores it
    public Background(String name) {
        this.worker = Executors.newSingleThreadExecutor(work -> {
            Thread thread = new Thread(work, name);
            thread.setDaemon(true);
            thread.setPriority(Thread.MIN_PRIORITY);
            return thread;
        });
    }

    /**
     * What the search finds, once those before it are done. What breaks it off completes it exceptionally.
     *
     * @param stop the switch that the search looks at; pressed when this is closed
     */
    public <R> CompletableFuture<R> begin(Stop stop, Supplier<R> search) {
        unfinished.add(stop);
        return CompletableFuture.supplyAsync(search, worker).whenComplete((found, failure) -> unfinished.remove(stop));
    }

    /** Nobody waits any more: what goes on is stopped, what waits is not begun. */
    @Override
    public void close() {
        List<Stop> all = List.copyOf(unfinished);
        // before the first is pressed, for its end would let the next one begin
        worker.shutdownNow();
        all.forEach(Stop::press);
    }
}
