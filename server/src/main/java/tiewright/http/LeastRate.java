package tiewright.http;

import java.net.InetSocketAddress;
import java.net.SocketAddress;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Collectors;
import org.eclipse.jetty.io.Connection;
import org.eclipse.jetty.io.EndPoint;
import org.eclipse.jetty.io.ssl.SslConnection;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.internal.HttpConnection;
import org.eclipse.jetty.util.component.AbstractLifeCycle;
import org.eclipse.jetty.util.thread.Scheduler;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * How slowly a request may come. The server waits half a minute for the next byte, so whoever sends one now and then holds a connection, its
 * memory and perhaps a thread for ever; the server's own setting for a least rate is read by nothing in this version. So once a second every
 * connection is looked at on which a request has begun and not ended.
 */
final class LeastRate extends AbstractLifeCycle {
    private static final Logger DOORS = LoggerFactory.getLogger("tiewright.doors");

    /** For a form of the usual size over the worst network; a phone that wanders off and comes back within it is heard. */
    static final Duration GRACE = Duration.ofSeconds(30);

    /** After that, on the average from the first byte on. The slowest mobile network sends more (EDGE: some 10,000; from memory). */
    static final int BYTES_A_SECOND = 2_000;

    /** One address may have so many at once that take longer than a moment: a whole hall may be behind one. */
    static final int MOST_OF_ONE_ADDRESS = 64;

    private static final long MOMENT = Duration.ofSeconds(3).toNanos();
    private static final long SAID_AGAIN = Duration.ofMinutes(1).toNanos();

    private final ServerConnector connector;
    private final Map<EndPoint, Begun> begun = new HashMap<>();
    private Optional<Scheduler.Task> next = Optional.empty();
    private long saidAt = System.nanoTime() - SAID_AGAIN;
    private int givenUp;

    /**
     * A request that is on its way.
     *
     * @param number how many were answered on this connection before it
     * @param at nanoseconds, when it was first seen
     * @param bytes that had come on this connection by then
     */
    private record Begun(long number, long at, long bytes) {}

    LeastRate(ServerConnector connector) {
        this.connector = connector;
    }

    @Override
    protected void doStart() {
        schedule();
    }

    @Override
    protected void doStop() {
        next.ifPresent(Scheduler.Task::cancel);
    }

    private void schedule() {
        next = Optional.of(connector
                .getScheduler()
                .schedule(
                        () -> {
                            look(System.nanoTime());
                            if (isRunning()) {
                                schedule();
                            }
                        },
                        1,
                        TimeUnit.SECONDS));
    }

    /**
     * Gives up what comes too slowly, and of one address what is too much.
     *
     * @param now nanoseconds, as the machine counts them
     * @return of each request that is on its way still, by where it comes from, the bytes that came since it was first seen
     */
    synchronized Map<SocketAddress, Long> look(long now) {
        see(now);
        List<EndPoint> slow = begun.entrySet().stream()
                .filter(one -> isTooSlow(one.getKey(), one.getValue(), now))
                .map(Map.Entry::getKey)
                .collect(Collectors.toCollection(ArrayList::new));
        begun.keySet().removeAll(slow);
        slow.addAll(tooMany(now));
        begun.keySet().removeAll(slow);
        List<String> from =
                slow.stream().map(end -> host(end.getRemoteSocketAddress())).toList();
        slow.forEach(end -> end.close(new TimeoutException("a request that comes too slowly")));
        say(from, now);
        Map<SocketAddress, Long> left = new HashMap<>();
        begun.forEach((end, one) -> left.put(end.getRemoteSocketAddress(), came(end, one)));
        return left;
    }

    private void see(long now) {
        begun.keySet().retainAll(connector.getConnectedEndPoints());
        for (EndPoint end : connector.getConnectedEndPoints()) {
            http(end.getConnection())
                    .filter(LeastRate::isReceiving)
                    .ifPresentOrElse(
                            one -> begun.merge(
                                    end,
                                    new Begun(one.getMessagesOut(), now, one.getBytesIn()),
                                    (before, fresh) -> before.number == fresh.number ? before : fresh),
                            () -> begun.remove(end));
        }
    }

    private static boolean isTooSlow(EndPoint end, Begun one, long now) {
        long allowed = GRACE.toNanos() + TimeUnit.SECONDS.toNanos(came(end, one)) / BYTES_A_SECOND;
        return now - one.at > allowed;
    }

    private static long came(EndPoint end, Begun one) {
        return http(end.getConnection()).map(Connection::getBytesIn).orElse(one.bytes) - one.bytes;
    }

    /** The oldest beyond what one address may have; the laptop itself, and a proxy on it, may have more. */
    private List<EndPoint> tooMany(long now) {
        List<EndPoint> all = new ArrayList<>();
        begun.entrySet().stream()
                .filter(one -> now - one.getValue().at > MOMENT)
                .filter(one -> !Threads.isHere(one.getKey().getRemoteSocketAddress()))
                .sorted(Comparator.comparingLong((Map.Entry<EndPoint, Begun> one) -> one.getValue().at)
                        .reversed())
                .map(Map.Entry::getKey)
                .collect(Collectors.groupingBy(end -> host(end.getRemoteSocketAddress())))
                .values()
                .forEach(ofOne -> all.addAll(ofOne.subList(Math.min(MOST_OF_ONE_ADDRESS, ofOne.size()), ofOne.size())));
        return all;
    }

    /** Before anything came on a new connection, and between the first byte of a request and its last. */
    private static boolean isReceiving(HttpConnection one) {
        return one.getMessagesIn() == 0
                || !one.getParser().isStart() && !one.getParser().isComplete();
    }

    private static Optional<HttpConnection> http(Connection connection) {
        Connection inner = connection instanceof SslConnection secured
                ? secured.getSslEndPoint().getConnection()
                : connection;
        return inner instanceof HttpConnection http ? Optional.of(http) : Optional.empty();
    }

    private static String host(SocketAddress from) {
        return from instanceof InetSocketAddress address ? address.getHostString() : String.valueOf(from);
    }

    /** Once a minute, for somebody may send thousands. */
    private void say(List<String> slow, long now) {
        givenUp += slow.size();
        if (givenUp > 0 && now - saidAt >= SAID_AGAIN) {
            DOORS.warn(
                    "{} requests were given up, for they came too slowly or too many at once; lately from {}.",
                    givenUp,
                    slow.isEmpty() ? "others" : slow.get(0));
            givenUp = 0;
            saidAt = now;
        }
    }
}
