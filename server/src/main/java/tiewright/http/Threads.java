package tiewright.http;

import java.net.InetSocketAddress;
import java.net.SocketAddress;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.handler.EagerContentHandler;
import org.eclipse.jetty.server.handler.QoSHandler;
import org.eclipse.jetty.server.handler.ThreadLimitHandler;
import org.jspecify.annotations.Nullable;

/**
 * Who may have how many of the service's threads. A form takes one only once all of it is here; one too long for that is read by a thread,
 * of which each phone and each link gets a few, and all phones together not the last: the laptop at the desk is always answered.
 */
final class Threads {
    /** Any form of ours fits in; of a longer one so much. */
    private static final int READ_FIRST = 64 << 10;

    /** For one address; a page takes one for milliseconds, and a browser asks for six things at a time. */
    private static final int OF_ONE_ADDRESS = 24;

    /** For one link, by however many phones and addresses: it lets in people of one club, or one official. */
    private static final int OF_ONE_LINK = 8;

    /** For all but the laptop itself, of the server's two hundred. */
    private static final int OF_ALL = 150;

    /** Of these, for forms too long to be read before: a thread waits for all of such a form, which may take minutes. */
    private static final int OF_LONG_FORMS = 40;

    private static final Duration MOST_WAIT = Duration.ofSeconds(30);

    /** The desk's laptop, asked by its own browser. */
    private static final Set<String> HERE = Set.of("127.0.0.1", "0:0:0:0:0:0:0:1");

    private Threads() {}

    /**
     * @param stays the address of answers that never end, which take no thread
     * @param links the name of the link by which a request comes, if any
     */
    static Handler shared(Handler pages, String stays, Function<Request, Optional<String>> links) {
        QoSHandler ofAll = new QoSHandler(pages);
        ofAll.setMaxRequestCount(OF_ALL);
        ofAll.setMaxSuspend(MOST_WAIT);
        ofAll.exclude(
                request -> isHere(request) || Request.getPathInContext(request).equals(stays));
        QoSHandler ofLong = new QoSHandler(ofAll);
        ofLong.setMaxRequestCount(OF_LONG_FORMS);
        ofLong.setMaxSuspend(MOST_WAIT);
        ofLong.exclude(request -> isHere(request) || !isLong(request));
        // before the others: who waits for an own thread does not count among all
        ThreadLimitHandler ofOne = new ThreadLimitHandler();
        ofOne.setThreadLimit(OF_ONE_ADDRESS);
        ofOne.exclude(Threads::isHere);
        ofOne.setHandler(ofLong);
        return new EagerContentHandler(
                ofLink(ofOne, links), new EagerContentHandler.RetainedContentLoaderFactory(READ_FIRST, 0, false));
    }

    /** What one link asks for beyond its share waits for the own, whatever address it comes from. */
    private static Handler ofLink(Handler next, Function<Request, Optional<String>> links) {
        ThreadLimitHandler ofLink = new ThreadLimitHandler() {
            @Override
            protected @Nullable String getRemoteIP(Request request) {
                return isHere(request) ? null : links.apply(request).orElse(null);
            }
        };
        ofLink.setThreadLimit(OF_ONE_LINK);
        ofLink.setHandler(next);
        return ofLink;
    }

    private static boolean isLong(Request request) {
        return request.getLength() > READ_FIRST || request.getHeaders().contains(HttpHeader.TRANSFER_ENCODING);
    }

    private static boolean isHere(Request request) {
        return isHere(request.getConnectionMetaData().getRemoteSocketAddress());
    }

    /** Whether it comes from the laptop itself. */
    static boolean isHere(SocketAddress address) {
        return address instanceof InetSocketAddress from
                && from.getAddress() != null
                && HERE.contains(from.getAddress().getHostAddress());
    }
}
