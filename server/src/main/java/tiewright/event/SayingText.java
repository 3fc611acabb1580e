package tiewright.event;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.StringJoiner;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** A {@link Saying} as one text: {@code code{name=fact;name=[code{…},code{…}]}}, a sign of these after a backslash. */
final class SayingText {
    private static final String SIGNS = "\\{}[]=;,";
    private static final Pattern SIGN = Pattern.compile("[" + Pattern.quote(SIGNS) + "]");

    private final String text;
    private int at;

    SayingText(String text) {
        this.text = text;
    }

    static String of(Saying saying) {
        StringJoiner inside = new StringJoiner(";", "{", "}");
        saying.facts().forEach((name, fact) -> inside.add(quoted(name) + "=" + quoted(fact)));
        saying.parts().forEach((name, all) -> {
            StringJoiner parts = new StringJoiner(",", "[", "]");
            all.forEach(part -> parts.add(of(part)));
            inside.add(quoted(name) + "=" + parts);
        });
        return quoted(saying.code()) + inside;
    }

    private static String quoted(String plain) {
        return SIGN.matcher(plain).replaceAll("\\\\$0");
    }

    Saying read() {
        Saying saying = saying();
        if (at < text.length()) {
            throw fault();
        }
        return saying;
    }

    private Saying saying() {
        String code = plain();
        SortedMap<String, String> facts = new TreeMap<>();
        SortedMap<String, List<Saying>> parts = new TreeMap<>();
        must('{');
        while (!is('}')) {
            String name = plain();
            must('=');
            if (is('[')) {
                parts.put(name, list());
            } else {
                facts.put(name, plain());
            }
            if (!is('}')) {
                must(';');
            }
        }
        must('}');
        return new Saying(code, facts, parts);
    }

    private List<Saying> list() {
        List<Saying> all = new ArrayList<>();
        must('[');
        while (!is(']')) {
            all.add(saying());
            if (!is(']')) {
                must(',');
            }
        }
        must(']');
        return all;
    }

    private String plain() {
        StringBuilder plain = new StringBuilder();
        while (at < text.length() && (SIGNS.indexOf(text.charAt(at)) < 0 || text.charAt(at) == '\\')) {
            if (text.charAt(at) == '\\' && ++at == text.length()) {
                throw fault();
            }
            plain.append(text.charAt(at++));
        }
        return plain.toString();
    }

    private boolean is(char sign) {
        return at < text.length() && text.charAt(at) == sign;
    }

    private void must(char sign) {
        if (!is(sign)) {
            throw fault();
        }
        at++;
    }

    private IllegalArgumentException fault() {
        return new IllegalArgumentException("no saying, at " + at + ": " + text);
    }
}
