package tiewright.http.visit;

import java.util.Comparator;

/** How lists are sorted for people. */
public final class TextOrder {
    /** 2 before 10, and numbers before words. */
    public static final Comparator<String> NUMBERS_BY_VALUE =
            Comparator.comparingInt(TextOrder::number).thenComparing(Comparator.naturalOrder());

    private TextOrder() {}

    private static int number(String text) {
        return text.matches("[0-9]{1,9}") ? Integer.parseInt(text) : Integer.MAX_VALUE;
    }
}
