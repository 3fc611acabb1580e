package tiewright.http.visit;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A page ready to be rendered.
 *
 * @param template below {@code web/templates}, without its ending; it takes {@code frame}, {@code forms} and what is in
 *     {@code params}
 * @param title whose and what
 */
public record Screen(String template, String title, Map<String, Object> params) {

    /** The usual screen: one record named {@code page}. */
    public static Screen of(String template, String title, Object page) {
        return new Screen("pages/" + template, title, Map.of("page", page));
    }

    public Map<String, Object> with(Map<String, Object> more) {
        Map<String, Object> all = new LinkedHashMap<>(params);
        all.putAll(more);
        return all;
    }
}
