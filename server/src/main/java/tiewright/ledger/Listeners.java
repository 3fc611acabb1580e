package tiewright.ledger;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tiewright.event.Event;

/** Those who want to know of changes; told in order, on a thread of their own, and none can harm another. */
final class Listeners implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Listeners.class);

    private final OneThread thread = new OneThread("tiewright-changes");
    private final List<Consumer<Event>> listeners = new CopyOnWriteArrayList<>();

    void add(Consumer<Event> listener) {
        listeners.add(listener);
    }

    void tell(Event event) {
        // Those who listen now: one who comes later has seen this change already.
        List<Consumer<Event>> all = List.copyOf(listeners);
        thread.later(() -> all.forEach(listener -> tell(listener, event)));
    }

    @Override
    public void close() {
        thread.close();
    }

    private static void tell(Consumer<Event> listener, Event event) {
        try {
            listener.accept(event);
        } catch (RuntimeException e) {
            LOG.error("A listener failed at fact {}.", event.seq(), e);
        }
    }
}
