package tiewright.http;

import io.javalin.http.sse.SseClient;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import tiewright.event.Event;
import tiewright.event.Link;
import tiewright.event.Viewer;
import tiewright.http.visit.Visitor;

/**
 * Tells open pages that something changed, and how often since they were last told: no name, no number of anything. Somebody whose view did not change hears
 * nothing, so that a captain who replaces a sealed sheet makes no ripple on any other screen.
 */
final class Live implements AutoCloseable {
    private static final int HEARTBEAT_SECONDS = 15;
    /** Between two rounds: in a busy hall changes come faster than anybody reads, and every word to 500 phones costs. */
    private static final long ROUND_NANOS = TimeUnit.MILLISECONDS.toNanos(200);

    /**
     * @param link the personal link it came by; revoked, it hears nothing more
     * @param seen the last fact that its reader may notice
     * @param owed how many such facts it has not been told of
     */
    private record Listener(Viewer viewer, Optional<String> link, long seen, int owed) {
        Listener upTo(long now) {
            return now > seen ? new Listener(viewer, link, now, owed + 1) : this;
        }

        Listener told() {
            return new Listener(viewer, link, seen, 0);
        }
    }

    private final Map<SseClient, Listener> listeners = new ConcurrentHashMap<>();
    private final ScheduledExecutorService postman = Executors.newSingleThreadScheduledExecutor(Live::thread);
    // of the postman's thread alone
    private long lastRound = System.nanoTime() - ROUND_NANOS;
    private boolean roundDue;

    Live() {
        postman.scheduleWithFixedDelay(this::heartbeat, HEARTBEAT_SECONDS, HEARTBEAT_SECONDS, TimeUnit.SECONDS);
    }

    void join(SseClient client, Visitor visitor, Event event) {
        Viewer viewer = visitor.viewer();
        client.keepAlive();
        listeners.put(
                client,
                new Listener(
                        viewer, visitor.link().map(Link::name), event.reach().seq(viewer), 0));
        client.onClose(() -> listeners.remove(client));
        // every word to a page is said on one thread: two at once, and one of them would be lost
        later(() -> send(client, () -> client.sendComment("here")));
    }

    /** A fact was appended: whoever may notice it is told, at once or with the next round. */
    void changed(Event event) {
        later(() -> {
            listeners.forEach((client, listener) -> {
                if (listener.link()
                        .map(event.links()::get)
                        .filter(Link::revoked)
                        .isPresent()) {
                    drop(client);
                }
            });
            listeners.replaceAll(
                    (client, listener) -> listener.upTo(event.reach().seq(listener.viewer())));
            if (!roundDue) {
                roundDue = true;
                postman.schedule(
                        this::round, Math.max(0, lastRound + ROUND_NANOS - System.nanoTime()), TimeUnit.NANOSECONDS);
            }
        });
    }

    private void round() {
        roundDue = false;
        lastRound = System.nanoTime();
        listeners.forEach((client, listener) -> {
            if (listener.owed() > 0) {
                listeners.replace(client, listener.told());
                send(client, () -> client.sendData(listener.owed() == 1 ? "changed" : "changed " + listener.owed()));
            }
        });
    }

    /** A deadline passed: every page shows more now, without any new fact. */
    void timePassed() {
        later(() -> listeners.keySet().forEach(client -> send(client, () -> client.sendData("changed"))));
    }

    /** After the end nobody listens any more. */
    private void later(Runnable message) {
        try {
            postman.execute(message);
        } catch (RejectedExecutionException ended) {
            listeners.clear();
        }
    }

    int listening() {
        return listeners.size();
    }

    @Override
    public void close() {
        postman.shutdownNow();
        listeners.keySet().forEach(SseClient::close);
    }

    private void heartbeat() {
        listeners.keySet().forEach(client -> send(client, () -> client.sendComment("beat")));
    }

    private void send(SseClient client, Runnable message) {
        try {
            message.run();
            if (client.terminated()) {
                drop(client);
            }
        } catch (RuntimeException gone) {
            drop(client);
        }
    }

    /** Closed, so that a page that is still there notices and comes again. */
    private void drop(SseClient client) {
        listeners.remove(client);
        client.close();
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "live updates");
        thread.setDaemon(true);
        return thread;
    }
}
