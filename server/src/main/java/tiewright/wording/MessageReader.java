package tiewright.wording;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Reads the pattern of a {@link Message} from left to right. */
final class MessageReader {
    private final String text;
    private final Language language;
    private int at;

    MessageReader(String text, Language language) {
        this.text = text;
        this.language = language;
    }

    /** Up to the closing brace that belongs to an outer place, or to the end. */
    Message message(boolean counted) {
        List<Message.Part> parts = new ArrayList<>();
        StringBuilder plain = new StringBuilder();
        while (at < text.length() && text.charAt(at) != '}') {
            char c = text.charAt(at++);
            if (c == '\'') {
                apostrophe(plain, counted);
            } else if (c == '{') {
                plain(plain, parts);
                parts.add(place());
            } else if (c == '#' && counted) {
                plain(plain, parts);
                parts.add(filling -> filling.append(filling.count()));
            } else {
                plain.append(c);
            }
        }
        plain(plain, parts);
        return new Message(parts);
    }

    void mustBeAtEnd() {
        if (at < text.length()) {
            throw fault("a closing brace too many");
        }
    }

    private static void plain(StringBuilder plain, List<Message.Part> parts) {
        if (!plain.isEmpty()) {
            String words = plain.toString();
            parts.add(filling -> filling.append(words));
            plain.setLength(0);
        }
    }

    /** After an apostrophe: doubled it is one, before a brace it quotes, otherwise it stands for itself. */
    private void apostrophe(StringBuilder plain, boolean counted) {
        char next = at < text.length() ? text.charAt(at) : ' ';
        if (next != '{' && next != '}' && !(next == '#' && counted)) {
            plain.append('\'');
            at += next == '\'' ? 1 : 0;
            return;
        }
        while (at < text.length()) {
            char c = text.charAt(at++);
            boolean doubled = c == '\'' && at < text.length() && text.charAt(at) == '\'';
            if (c == '\'' && !doubled) {
                return;
            }
            plain.append(c);
            at += doubled ? 1 : 0;
        }
    }

    private Message.Part place() {
        String name = word();
        if (ends()) {
            return filling -> filling.append(filling.said(name));
        }
        String kind = word();
        if (ends()) {
            throw fault("\"" + kind + "\" needs its choices");
        }
        return switch (kind) {
            case "list" -> list(name);
            case "plural" -> plural(name, choices(true));
            case "select" -> select(name, choices(false));
            default -> throw fault("\"" + kind + "\" is none of list, plural, select");
        };
    }

    /** Past the comma or the closing brace after a word; true after the brace. */
    private boolean ends() {
        if (at >= text.length() || (text.charAt(at) != ',' && text.charAt(at) != '}')) {
            throw fault("a comma or a closing brace is missing");
        }
        return text.charAt(at++) == '}';
    }

    private Message.Part list(String name) {
        String kind = word();
        if (!ends()) {
            throw fault("a closing brace is missing");
        }
        return filling -> {
            List<String> said = new ArrayList<>();
            ((Collection<?>) filling.fact(name))
                    .forEach(one -> said.add(filling.value().apply(one)));
            filling.append(language.list(said, kind));
        };
    }

    private Message.Part plural(String name, Map<String, Message> choices) {
        return filling -> {
            String said = filling.said(name);
            long count = Long.parseLong(said);
            choice(choices, choices.containsKey("=" + count) ? "=" + count : language.plural(Math.abs(count)))
                    .say(filling.counting(said));
        };
    }

    private Message.Part select(String name, Map<String, Message> choices) {
        return filling -> choice(choices, filling.said(name)).say(filling);
    }

    /** The words for this case; every sentence was read with words for all others. */
    private static Message choice(Map<String, Message> choices, String wanted) {
        return Objects.requireNonNull(choices.getOrDefault(wanted, choices.get(PluralRule.OTHER)));
    }

    private Map<String, Message> choices(boolean counted) {
        Map<String, Message> choices = new LinkedHashMap<>();
        skipBlanks();
        while (at < text.length() && text.charAt(at) != '}') {
            String choice = word();
            if (at >= text.length() || text.charAt(at++) != '{') {
                throw fault("an opening brace is missing after \"" + choice + "\"");
            }
            choices.put(choice, message(counted));
            if (at++ >= text.length()) {
                throw fault("a closing brace is missing");
            }
            skipBlanks();
        }
        if (at++ >= text.length() || !choices.containsKey(PluralRule.OTHER)) {
            throw fault("the choice \"other\" or a closing brace is missing");
        }
        return choices;
    }

    private String word() {
        skipBlanks();
        int from = at;
        while (at < text.length()
                && (Character.isLetterOrDigit(text.charAt(at)) || "=-_.".indexOf(text.charAt(at)) >= 0)) {
            at++;
        }
        if (from == at) {
            throw fault("a name is missing");
        }
        String word = text.substring(from, at);
        skipBlanks();
        return word;
    }

    private void skipBlanks() {
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
    }

    private IllegalArgumentException fault(String what) {
        return new IllegalArgumentException(what + " at " + at + " of \"" + text + "\"");
    }
}
