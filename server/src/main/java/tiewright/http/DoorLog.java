package tiewright.http;

import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tiewright.event.Link;

/**
 * Who came in and who was not let in, for whoever reads the log; never a secret of a link nor what was typed. In a minute one address
 * gets {@value #OF_ONE} lines and all together {@value #OF_ALL}, so that nobody fills the disk by knocking: what comes beyond is counted, and the
 * number stands before the next line.
 */
final class DoorLog {
    /** More than a person opens in a minute; a hall behind one address joins in a few. */
    static final int OF_ONE = 120;

    static final int OF_ALL = 600;

    private static final Logger DOORS = LoggerFactory.getLogger("tiewright.doors");
    private static final long MINUTE = TimeUnit.MINUTES.toNanos(1);

    private final LongSupplier nanos;
    private final Map<String, Integer> lines = new HashMap<>();
    private long since;
    private int written;
    private int counted;
    private String lately = "";

    /** @param nanos as {@link System#nanoTime} */
    DoorLog(LongSupplier nanos) {
        this.nanos = nanos;
        this.since = nanos.getAsLong();
    }

    void opened(Link link, String from) {
        if (isWritten(from)) {
            DOORS.info(
                    "Link {} ({}) was opened from {}.", link.name(), link.role().code(), from);
        }
    }

    void unknownLink(String from) {
        if (isWritten(from)) {
            DOORS.warn("A personal link that does not hold was tried from {}.", from);
        }
    }

    /**
     * @param what method and address as the page says it, without what was put into it
     * @param who the name of a link, or a stranger
     */
    void stayedClosed(String what, String who, String from) {
        if (isWritten(from)) {
            DOORS.info("{} stayed closed for {} from {}.", what, who, from);
        }
    }

    void foreignForm(String address, String from) {
        if (isWritten(from)) {
            DOORS.warn("A form that does not come from a page of this service was refused: {}", address);
        }
    }

    private synchronized boolean isWritten(String from) {
        long now = nanos.getAsLong();
        if (now - since >= MINUTE) {
            since = now;
            written = 0;
            lines.clear();
            tellCounted();
        }
        int own = lines.getOrDefault(from, 0);
        if (own >= OF_ONE || written >= OF_ALL) {
            tellLimit();
            counted++;
            lately = from;
            return false;
        }
        lines.put(from, own + 1);
        written++;
        return true;
    }

    private void tellLimit() {
        if (counted == 0) {
            DOORS.warn("So many came to doors in this minute that the rest of them are counted and not written down.");
        }
    }

    private void tellCounted() {
        if (counted > 0) {
            DOORS.warn("{} more came to doors and were not written down, lately from {}.", counted, lately);
        }
        counted = 0;
    }
}
