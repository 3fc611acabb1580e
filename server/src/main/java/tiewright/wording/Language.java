package tiewright.wording;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
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
import org.jspecify.annotations.Nullable;

/**
 * The sentences of one language. English is complete, in a file for each room, {@code tiewright/wording/ROOM.properties};
 * any other language is one file, such as {@code tiewright/wording/de.properties}, and what it lacks is said in English.
 * A file that somebody is still writing may lie in a folder of its own, such as {@code languages/de.properties}, named by
 * the system property {@value #FOLDER_PROPERTY}; it comes before one that the program brings. Files are in UTF-8.
 *
 * <p>{@link Message} says how a sentence is written. A file also says how its language counts and lists: see {@code
 * language.properties}.
 */
public final class Language {
    /** Names the folder of files that are tried: {@code java -Dtiewright.languages=FOLDER -jar tiewright.jar …}. */
    public static final String FOLDER_PROPERTY = "tiewright.languages";

    private static final String FOLDER = "tiewright/wording/";
    private static final Map<String, Properties> ROOMS = new ConcurrentHashMap<>();
    private static final Map<String, Language> OTHERS = new ConcurrentHashMap<>();

    public static final Language ENGLISH = new Language("en", Language::ofRoom, Optional.empty());

    private static final Pattern TAG = Pattern.compile("[a-z]{2}");

    private final String tag;
    private final Function<String, @Nullable String> sentences;
    private final Optional<Language> otherwise;
    private final Map<String, Optional<Message>> messages = new ConcurrentHashMap<>();

    private Language(String tag, Function<String, @Nullable String> sentences, Optional<Language> otherwise) {
        this.tag = tag;
        this.sentences = sentences;
        this.otherwise = otherwise;
    }

    /** The language of a tag; English where there is no file of it. */
    public static Language of(String tag) {
        if (tag.equals(ENGLISH.tag) || OTHERS.containsKey(tag)) {
            return OTHERS.getOrDefault(tag, ENGLISH);
        }
        return sentences(tag)
                .map(its ->
                        OTHERS.computeIfAbsent(tag, one -> new Language(one, its::getProperty, Optional.of(ENGLISH))))
                .orElse(ENGLISH);
    }

    /** English, and every language of ISO 639-1 that has a file. Looks for the files anew. */
    public static List<Language> all() {
        return Stream.concat(
                        Stream.of(ENGLISH),
                        Arrays.stream(Locale.getISOLanguages())
                                .filter(tag -> sentences(tag).isPresent())
                                .map(Language::of))
                .toList();
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
        return Optional.ofNullable(sentences.apply(key));
    }

    /** English, read room by room when a room first speaks. */
    private static @Nullable String ofRoom(String key) {
        int dot = key.indexOf('.');
        String room = dot < 0 ? key : key.substring(0, dot);
        return ROOMS.computeIfAbsent(room, one -> brought(one).orElseGet(Properties::new))
                .getProperty(key);
    }

    /** The sentences of a language other than English; empty without a file of it. */
    private static Optional<Properties> sentences(String tag) {
        if (!TAG.matcher(tag).matches()) {
            return Optional.empty();
        }
        return Optional.ofNullable(System.getProperty(FOLDER_PROPERTY))
                .map(folder -> Path.of(folder, tag + ".properties"))
                .filter(Files::isRegularFile)
                .map(Language::tried)
                .or(() -> brought(tag));
    }

    private static Properties tried(Path file) {
        try (Reader text = Files.newBufferedReader(file)) {
            return read(text);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static Optional<Properties> brought(String name) {
        try (InputStream bytes = Language.class.getClassLoader().getResourceAsStream(FOLDER + name + ".properties")) {
            return bytes == null
                    ? Optional.empty()
                    : Optional.of(read(new InputStreamReader(bytes, StandardCharsets.UTF_8)));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static Properties read(Reader text) throws IOException {
        Properties sentences = new Properties();
        sentences.load(text);
        return sentences;
    }
}
