package tiewright.event;

import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a notice or a ruling says: a code and its facts by name, as they stood when it was said, with other sayings inside
 * it where it has parts. {@code wording} makes the sentence, at any time and in any language; a saying changes no more.
 *
 * @param code the key of its sentence, such as {@code notices.tie}; {@link #TYPED} for what a person wrote
 * @param facts names as they stood, codes, numbers, times of day as {@code 10:20}
 * @param parts several sayings under one name, in their order
 */
public record Saying(String code, SortedMap<String, String> facts, SortedMap<String, List<Saying>> parts) {
    /** A person's own words, the same in every language. */
    public static final String TYPED = "typed";

    private static final String WORDS = "words";

    public Saying {
        facts = Collections.unmodifiableSortedMap(new TreeMap<>(facts));
        SortedMap<String, List<Saying>> copied = new TreeMap<>();
        parts.forEach((name, all) -> copied.put(name, List.copyOf(all)));
        parts = Collections.unmodifiableSortedMap(copied);
    }

    public static Saying of(String code) {
        return new Saying(code, Collections.emptySortedMap(), Collections.emptySortedMap());
    }

    public static Saying typed(String words) {
        return of(TYPED).with(WORDS, words);
    }

    /** @throws IllegalArgumentException if the text is none that {@link #text()} wrote */
    public static Saying ofText(String text) {
        return new SayingText(text).read();
    }

    public Saying with(String name, Object fact) {
        SortedMap<String, String> more = new TreeMap<>(facts);
        more.put(name, fact.toString());
        return new Saying(code, more, parts);
    }

    public Saying with(String name, List<Saying> inside) {
        SortedMap<String, List<Saying>> more = new TreeMap<>(parts);
        more.put(name, inside);
        return new Saying(code, facts, more);
    }

    public Saying with(String name, Saying inside) {
        return with(name, List.of(inside));
    }

    /** Codes or names, each as it is. */
    public Saying withEach(String name, Collection<?> codes) {
        return with(name, codes.stream().map(one -> typed(one.toString())).toList());
    }

    public boolean isTyped() {
        return code.equals(TYPED);
    }

    /** What the person wrote; empty for anything else. */
    public String words() {
        return isTyped() ? facts.getOrDefault(WORDS, "") : "";
    }

    /** Nothing was written. */
    public boolean isEmpty() {
        return isTyped() && words().isEmpty();
    }

    /** One line that {@link #ofText} reads back, such as {@code notices.time{court=3;start=10:20}}. */
    public String text() {
        return SayingText.of(this);
    }
}
