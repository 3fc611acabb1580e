package tiewright.event;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** Copies that nobody changes and that keep the order of first entry, which {@link Map#copyOf} does not. */
final class Frozen {
    private Frozen() {}

    static <K, V> Map<K, V> copy(Map<K, V> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }

    static <K, V> Map<K, V> with(Map<K, V> map, K key, V value) {
        Map<K, V> more = new LinkedHashMap<>(map);
        more.put(key, value);
        return Collections.unmodifiableMap(more);
    }
}
