package tiewright.saturday;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.jsoup.nodes.Element;

/** A form as a browser sends it: what stands in it, but for what somebody typed or chose, and its main button. */
final class AsItStands {
    private AsItStands() {}

    /**
     * @param typed by name of the field
     * @throws IllegalStateException for something typed that the form does not ask for
     */
    static List<Map.Entry<String, String>> with(Element form, Map<String, String> typed) {
        List<Map.Entry<String, String>> fields = new ArrayList<>();
        TreeSet<String> left = new TreeSet<>(typed.keySet());
        for (Element field : form.select("input[name],select[name],textarea[name]")) {
            String name = field.attr("name");
            if (!typed.containsKey(name)) {
                value(field).ifPresent(value -> fields.add(Map.entry(name, value)));
            } else if (left.remove(name)) {
                fields.add(Map.entry(name, typed.get(name)));
            }
        }
        if (!left.isEmpty()) {
            throw new IllegalStateException(form.attr("action") + " does not ask for " + left);
        }
        Optional.ofNullable(form.selectFirst("button.button-main[name]"))
                .ifPresent(button -> fields.add(Map.entry(button.attr("name"), button.attr("value"))));
        return fields;
    }

    private static Optional<String> value(Element field) {
        return switch (field.tagName().equals("input") ? field.attr("type") : field.tagName()) {
            case "checkbox", "radio" -> Optional.of(field.attr("value")).filter(value -> field.hasAttr("checked"));
            case "select" -> Optional.of(selected(field));
            case "textarea" -> Optional.of(field.text());
            case "file" -> Optional.empty();
            default -> Optional.of(field.attr("value"));
        };
    }

    /** The first one where none is marked. */
    private static String selected(Element select) {
        return Optional.ofNullable(select.selectFirst("option[selected]"))
                .or(() -> Optional.ofNullable(select.selectFirst("option")))
                .map(option -> option.attr("value"))
                .orElse("");
    }
}
