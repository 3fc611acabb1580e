package tiewright.event;

import java.util.LinkedHashMap;
import java.util.Map;

/** A map that is read as it was until it is first written to, and copied then: most facts leave most maps alone. */
final class Draft<K, V> {
    private Map<K, V> map;
    private boolean written;

    Draft(Map<K, V> from) {
        map = from;
    }

    Map<K, V> asRead() {
        return map;
    }

    Map<K, V> toWrite() {
        if (!written) {
            map = new LinkedHashMap<>(map);
            written = true;
        }
        return map;
    }

    boolean isWritten() {
        return written;
    }
}
