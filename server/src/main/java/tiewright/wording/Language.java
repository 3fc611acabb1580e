package tiewright.wording;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The sentences of one language. English is complete, in a file for each room, {@code tiewright/wording/ROOM.properties};
 * any other language is one file, such as {@code tiewright/wording/de.properties}, and what it lacks is said in English.
 * Files are in UTF-8 and read when they are first needed.
 *
 * <p>{@link Message} says how a sentence is written. A file also says how its language counts and lists: see {@code
 * language.properties}.
 */
public final class Language {
    public static final Language ENGLISH = new Language("en", Language.class.getClassLoader(), Optional.empty());

    private static final String FOLDER = "tiewright/wording/";
    private static final Map<String, Language> OTHERS = new ConcurrentHashMap<>();

    private static final Pattern TAG = Pattern.compile("[a-z]{2}");

    private final String tag;
    private final ClassLoader files;
    private final Optional<Language> otherwise;
    private final Map<String, Properties> read = new ConcurrentHashMap<>();
    private final Map<String, Optional<Message>> messages = new ConcurrentHashMap<>();

    private Language(String tag, ClassLoader files, Optional<Language> otherwise) {
        this.tag = tag;
        this.files = files;
        this.otherwise = otherwise;
    }

    /** The language of a tag; English where there is no file of it. */
    public static Language of(String tag) {
        return !tag.equals(ENGLISH.tag) && isThere(tag)
                ? OTHERS.computeIfAbsent(tag, one -> new Language(one, ENGLISH.files, Optional.of(ENGLISH)))
                : ENGLISH;
    }

    /** English, and every language of ISO 639-1 that has a file. Looks for the files anew. */
    public static List<Language> all() {
        return Stream.concat(
                        Stream.of(ENGLISH),
                        Arrays.stream(Locale.getISOLanguages())
                                .filter(Language::hasFile)
                                .map(Language::of))
                .toList();
    }

    private static boolean isThere(String tag) {
        return OTHERS.containsKey(tag) || (TAG.matcher(tag).matches() && hasFile(tag));
    }

    private static boolean hasFile(String tag) {
        return ENGLISH.files.getResource(FOLDER + tag + ".properties") != null;
    }

    /** What those who speak it call it. */
    public String name() {
        return say("language.name", Map.of(), String::valueOf);
    }

    /** As {@code lang} of a page says it. */
    public String tag() {
        return tag;
    }

    /** Whether a key has its sentence, here or in English. */
    public boolean has(String key) {
        return message(key).isPresent();
    }

    /**
     * The sentence of a key with its places filled in. A key without a sentence, or a sentence with a place for which there
     * is no value, is a bug and throws.
     *
     * @param value how one value is said
     */
    String say(String key, Map<String, ?> facts, Function<Object, String> value) {
        return message(key)
                .orElseThrow(() -> new IllegalStateException("no words for " + key))
                .say(key, facts, value);
    }

    /**
     * Parts in one line: <em>a</em>, <em>a and b</em>, <em>a, b and c</em>.
     *
     * @param kind {@code and}, {@code or}, {@code plain} for commas alone, {@code lines} for whole clauses,
     *     {@code sentences}
     */
    String list(List<String> parts, String kind) {
        String last = "language.list." + kind;
        String earlier = has(last + ".earlier") ? last + ".earlier" : last;
        String line = parts.isEmpty() ? "" : parts.get(0);
        for (int next = 1; next < parts.size(); next++) {
            String key = next == parts.size() - 1 ? last : earlier;
            line = say(key, Map.of("before", line, "next", parts.get(next)), String::valueOf);
        }
        return line;
    }

    /** The plural form that this language uses with a count: {@code one}, {@code few}, … or {@code other}. */
    String plural(long count) {
        return PluralRule.FORMS.stream()
                .filter(form -> text("language.plural." + form)
                        .filter(rule -> PluralRule.holds(rule, count))
                        .isPresent())
                .findFirst()
                .orElse(PluralRule.OTHER);
    }

    private Optional<Message> message(String key) {
        return messages.computeIfAbsent(
                key,
                wanted -> text(wanted)
                        .map(text -> Message.of(text, this))
                        .or(() -> otherwise.flatMap(english -> english.message(wanted))));
    }

    /** Only of this language. */
    private Optional<String> text(String key) {
        int dot = key.indexOf('.');
        String room = dot < 0 ? key : key.substring(0, dot);
        String file = otherwise.isPresent() ? tag : room;
        return Optional.ofNullable(read.computeIfAbsent(file, this::file).getProperty(key));
    }

    private Properties file(String name) {
        Properties sentences = new Properties();
        try (InputStream bytes = files.getResourceAsStream(FOLDER + name + ".properties")) {
            if (bytes != null) {
                Reader text = new InputStreamReader(bytes, StandardCharsets.UTF_8);
                sentences.load(text);
            }
            return sentences;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
