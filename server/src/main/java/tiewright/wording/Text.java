package tiewright.wording;

import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;

/**
 * The sentences of one room, from {@code tiewright/wording/ROOM.properties} in UTF-8. Numbers are written with plain
 * digits, without grouping. A key that is missing is a bug and throws.
 */
final class Text {
    private static final Locale LANGUAGE = Locale.ENGLISH;

    private final ResourceBundle sentences;

    private Text(ResourceBundle sentences) {
        this.sentences = sentences;
    }

    static Text of(String room) {
        return new Text(ResourceBundle.getBundle("tiewright.wording." + room, Locale.ROOT));
    }

    /** The sentence with its places filled in. */
    String say(String key, Object... facts) {
        MessageFormat sentence = new MessageFormat(sentences.getString(key), LANGUAGE);
        Object[] plain = new Object[facts.length];
        for (int i = 0; i < facts.length; i++) {
            boolean chosenBy =
                    i < sentence.getFormatsByArgumentIndex().length && sentence.getFormatsByArgumentIndex()[i] != null;
            plain[i] = chosenBy ? facts[i] : String.valueOf(facts[i]);
        }
        return sentence.format(plain);
    }

    boolean has(String key) {
        return sentences.containsKey(key);
    }

    /** The text as it stands. */
    String plain(String key) {
        return sentences.getString(key);
    }

    /** <em>a</em>, <em>a and b</em>, <em>a, b and c</em>, joined at the end by the sentence {@code lastTwo}. */
    String enumerate(List<String> parts, String lastTwo) {
        if (parts.size() < 2) {
            return String.join("", parts);
        }
        int last = parts.size() - 1;
        return say(lastTwo, String.join(plain("list"), parts.subList(0, last)), parts.get(last));
    }
}
