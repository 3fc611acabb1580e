package tiewright.event;

import java.util.Objects;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Why something that was entered counts otherwise now.
 *
 * @param words as somebody typed them; empty where nothing need be said, or the ruling says it all
 * @param ruling the number of the ruling that it rests on; empty where it rests on none
 */
public record Because(String words, OptionalInt ruling) {
    static final Because NOTHING = new Because("", OptionalInt.empty());

    /** Where older versions kept the number: behind the words, or in their place. */
    private static final Pattern BEHIND = Pattern.compile("(?:(.*), )?ruling (\\d{1,6})", Pattern.DOTALL);

    /** As the two stand in a fact, which may be one of an older version. */
    static Because of(String reason, OptionalInt ruling) {
        Matcher older = BEHIND.matcher(reason);
        return ruling.isEmpty() && older.matches()
                ? new Because(
                        Objects.requireNonNullElse(older.group(1), ""),
                        OptionalInt.of(Integer.parseInt(older.group(2))))
                : new Because(reason, ruling);
    }

    public boolean isEmpty() {
        return words.isEmpty() && ruling.isEmpty();
    }
}
