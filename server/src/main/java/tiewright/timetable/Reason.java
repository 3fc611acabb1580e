package tiewright.timetable;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Something that a person should know of a plan, as a code with data; {@code wording} makes the sentence.
 *
 * @param code the key of its sentence, such as {@code timetable.why-court-taken}
 * @param data what the sentence names: clubs, ties, courts, times, numbers
 */
public record Reason(String code, Map<String, Object> data) {
    public Reason {
        data = Collections.unmodifiableMap(new LinkedHashMap<>(data));
    }

    static Reason of(String kind) {
        return new Reason("timetable." + kind, Map.of());
    }

    Reason with(String name, Object value) {
        Map<String, Object> more = new LinkedHashMap<>(data);
        more.put(name, value);
        return new Reason(code, more);
    }
}
