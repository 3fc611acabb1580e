package tiewright.http.visit;

import java.time.Instant;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import tiewright.event.Directory;
import tiewright.http.answers.Once;

/**
 * The pages that a hall full of phones asks for in the same moment, as they are for anybody without a link: each is made once a
 * second at most while nothing happens that everybody may notice. That somebody seals makes no page anew, so not even the time
 * that an answer takes tells of it.
 */
public final class EverybodysPages {
    /** Different addresses in a second; who asks for more made-up ones has each made alone. */
    private static final int MOST = 100;

    /** What was shown in one second. */
    private record Shown(long seq, Directory directory, long second, Map<String, Once<String>> pages) {
        @SuppressWarnings("ReferenceEquality") // the same fold gave it; looking into it would take longer than a page
        boolean isOf(long otherSeq, Directory other, long otherSecond) {
            return seq == otherSeq && directory == other && second == otherSecond;
        }
    }

    private volatile Shown shown = new Shown(-1, Directory.EMPTY, 0, Map.of());

    /**
     * @param seq the last fact that everybody may notice
     * @param address with what was asked behind the question mark
     */
    String page(long seq, Directory directory, Instant at, String address, Supplier<String> work) {
        Shown now = shown;
        if (!now.isOf(seq, directory, at.getEpochSecond())) {
            now = new Shown(seq, directory, at.getEpochSecond(), new ConcurrentHashMap<>());
            shown = now;
        }
        if (now.pages().size() >= MOST && !now.pages().containsKey(address)) {
            return work.get();
        }
        return now.pages().computeIfAbsent(address, unknown -> new Once<>()).get(work);
    }
}
