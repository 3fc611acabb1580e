package tiewright.wording;

import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * A sentence with places for facts, read once and said often:
 *
 * <ul>
 *   <li>{@code {club}} the fact of that name;
 *   <li>{@code {clubs, list, and}} several, joined as the language does: {@code and}, {@code or}, {@code plain};
 *   <li>{@code {ties, plural, =0 {no tie} one {# tie} other {# ties}}} by a count, with {@code #} for the count;
 *   <li>{@code {state, select, over {is over} other {goes on}}} by a code.
 * </ul>
 *
 * <p>An apostrophe is an apostrophe, except straight before a brace (or {@code #} in a plural): then it quotes up to the
 * next one. A fact is put in as it is and never read as a pattern.
 */
final class Message {
    /** A stretch of plain words, or a place. */
    interface Part {
        void say(Filling filling);
    }

    /** One saying of the message: its facts, how each is said, and the sentence so far. */
    record Filling(
            String key, Map<String, ?> facts, Function<Object, String> value, StringBuilder sentence, String count) {
        Object fact(String name) {
            Object fact = facts.get(name);
            if (fact == null) {
                throw new IllegalStateException("the words of " + key + " need " + name);
            }
            return fact;
        }

        String said(String name) {
            return value.apply(fact(name));
        }

        void append(String words) {
            sentence.append(words);
        }

        Filling counting(String number) {
            return new Filling(key, facts, value, sentence, number);
        }
    }

    private final List<Part> parts;

    Message(List<Part> parts) {
        this.parts = List.copyOf(parts);
    }

    /** @throws IllegalArgumentException with the place if the pattern is not well formed */
    static Message of(String pattern, Language language) {
        MessageReader reading = new MessageReader(pattern, language);
        Message message = reading.message(false);
        reading.mustBeAtEnd();
        return message;
    }

    String say(String key, Map<String, ?> facts, Function<Object, String> value) {
        StringBuilder sentence = new StringBuilder();
        say(new Filling(key, facts, value, sentence, "#"));
        return sentence.toString();
    }

    void say(Filling filling) {
        parts.forEach(part -> part.say(filling));
    }
}
