package tiewright.wording;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * For which counts a language uses a plural form, in the notation of Unicode Technical Standard 35, part 3, "Plural rules
 * syntax", such as {@code n % 10 = 2..4 and n % 100 != 12..14}. Counts are whole, so {@code n} and {@code i} are the count
 * and the operands for decimals are 0.
 */
final class PluralRule {
    static final String OTHER = "other";
    static final List<String> FORMS = List.of("zero", "one", "two", "few", "many");

    private static final Pattern RELATION =
            Pattern.compile("([nivwftce])(?:\\s*%\\s*(\\d+))?\\s*(!?=)\\s*([\\d.,\\s]+)");

    private PluralRule() {}

    /** @param count 0 or more */
    static boolean holds(String rule, long count) {
        return Arrays.stream(rule.split("\\bor\\b"))
                .anyMatch(all -> Arrays.stream(all.split("\\band\\b")).allMatch(one -> relation(one.strip(), count)));
    }

    private static boolean relation(String text, long count) {
        Matcher relation = RELATION.matcher(text);
        if (!relation.matches()) {
            throw new IllegalArgumentException("\"" + text + "\" is no plural rule");
        }
        boolean whole = relation.group(1).equals("n") || relation.group(1).equals("i");
        long operand = whole ? count : 0;
        long left = relation.group(2) == null ? operand : operand % Long.parseLong(relation.group(2));
        boolean among = Arrays.stream(relation.group(4).split(",")).anyMatch(range -> isIn(range.strip(), left));
        return among == relation.group(3).equals("=");
    }

    private static boolean isIn(String range, long number) {
        String[] ends = range.split("\\.\\.");
        return Long.parseLong(ends[0]) <= number && number <= Long.parseLong(ends[ends.length - 1]);
    }
}
