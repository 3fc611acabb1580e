package tiewright.http;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The fields of a form as they stand on a page: what a browser would send if nothing was changed. */
final class FormFields {
    /** What stands in a tag; a sign "greater than" may stand in a value. */
    private static final String TAG = "(?:[^>\"]|\"[^\"]*\")*";

    private static final Pattern FORM = Pattern.compile("<form\\b(" + TAG + ")>(.*?)</form>", Pattern.DOTALL);
    private static final Pattern FIELD = Pattern.compile(
            "<input\\b(" + TAG + ")>|<textarea\\b(" + TAG + ")>\\n?(.*?)</textarea>|<select\\b(" + TAG
                    + ")>(.*?)</select>",
            Pattern.DOTALL);

    private FormFields() {}

    /** The form of the page with this action. */
    static Map<String, String> of(Guest.Got page, String action) {
        Matcher form = FORM.matcher(page.body());
        while (form.find()) {
            if (attribute(form.group(1), "action").equals(action)
                    && attribute(form.group(1), "method").equals("post")) {
                return fields(form.group(2));
            }
        }
        throw new AssertionError("no form for " + action + " on " + page.path() + ": " + page.text());
    }

    /** Opens the page, changes some fields of the form with this action, and sends it. */
    static Guest.Got fill(Guest guest, String page, String action, Map<String, String> changes) {
        Map<String, String> all = new LinkedHashMap<>(of(guest.get(page), action));
        all.putAll(changes);
        return guest.post(action, all);
    }

    private static Map<String, String> fields(String form) {
        Map<String, String> fields = new LinkedHashMap<>();
        Matcher field = FIELD.matcher(form);
        while (field.find()) {
            if (field.group(1) != null) {
                input(field.group(1), fields);
            } else if (field.group(2) != null) {
                fields.put(attribute(field.group(2), "name"), unescaped(field.group(3)));
            } else {
                fields.put(attribute(field.group(4), "name"), selected(field.group(5)));
            }
        }
        return fields;
    }

    private static void input(String tag, Map<String, String> fields) {
        boolean box = tag.contains("type=\"checkbox\"") || tag.contains("type=\"radio\"");
        if (!box || tag.matches("(?s).*\\bchecked\\b.*")) {
            fields.put(attribute(tag, "name"), attribute(tag, "value"));
        }
    }

    private static String selected(String options) {
        List<String> all = new ArrayList<>();
        Matcher option = Pattern.compile("<option\\b(" + TAG + ")>").matcher(options);
        while (option.find()) {
            if (option.group(1).matches("(?s).*\\bselected\\b.*")) {
                return attribute(option.group(1), "value");
            }
            all.add(attribute(option.group(1), "value"));
        }
        return all.isEmpty() ? "" : all.get(0);
    }

    private static String attribute(String tag, String name) {
        Matcher found = Pattern.compile("\\b" + name + "=\"([^\"]*)\"").matcher(tag);
        return found.find() ? unescaped(found.group(1)) : "";
    }

    private static String unescaped(String text) {
        return text.replace("&#34;", "\"")
                .replace("&#39;", "'")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&amp;", "&");
    }
}
