package tiewright.setup;

import java.util.Optional;

/** What a line of text may hold: any script, nothing that cannot be seen. */
final class Plain {
    private static final int ZERO_WIDTH_NON_JOINER = 0x200C;
    private static final int ZERO_WIDTH_JOINER = 0x200D;

    private Plain() {}

    /** Has a letter or a digit of any script. */
    static boolean saysSomething(String text) {
        return text.codePoints().anyMatch(Character::isLetterOrDigit);
    }

    static int length(String text) {
        return text.codePointCount(0, text.length());
    }

    /**
     * No control characters, line ends, direction marks or halves of characters. The two joiners stay, for Persian and the
     * scripts of India need them.
     */
    static boolean isOneLine(String text) {
        return text.codePoints().allMatch(Plain::isVisible);
    }

    private static boolean isVisible(int character) {
        int type = Character.getType(character);
        boolean joiner = character == ZERO_WIDTH_NON_JOINER || character == ZERO_WIDTH_JOINER;
        return joiner
                || type != Character.CONTROL
                        && type != Character.FORMAT
                        && type != Character.SURROGATE
                        && type != Character.LINE_SEPARATOR
                        && type != Character.PARAGRAPH_SEPARATOR;
    }

    /** Without blanks at the ends. */
    static String of(String text) {
        return text.strip();
    }

    /** The same; empty where nothing is left. */
    static Optional<String> of(Optional<String> text) {
        return text.map(String::strip).filter(line -> !line.isEmpty());
    }
}
