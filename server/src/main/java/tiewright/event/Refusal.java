package tiewright.event;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * One reason why not, as a code with data; {@code wording} makes the sentence.
 *
 * @param code such as {@code sheet.player-twice}; the key of its sentence
 * @param data what the sentence names: ids, numbers, times, by the placeholder's name
 * @param field the form field it stands beside, or empty
 */
public record Refusal(String code, Map<String, Object> data, String field) {
    public Refusal {
        data = Collections.unmodifiableMap(new LinkedHashMap<>(data));
    }

    public static Refusal of(String code) {
        return new Refusal(code, Map.of(), "");
    }

    public Refusal with(String name, Object value) {
        Map<String, Object> more = new LinkedHashMap<>(data);
        more.put(name, value);
        return new Refusal(code, more, field);
    }

    public Refusal at(String formField) {
        return new Refusal(code, data, formField);
    }
}
