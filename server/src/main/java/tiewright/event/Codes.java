package tiewright.event;

/** What a code may look like: anything a person can type on one line and a file can carry. */
public final class Codes {
    public static final int LONGEST = 40;

    private Codes() {}

    /** True for 1 to {@value #LONGEST} characters, no control characters, no comma, no blank at either end. */
    public static boolean isCode(String text) {
        return !text.isEmpty()
                && text.length() <= LONGEST
                && text.strip().equals(text)
                && text.chars().noneMatch(c -> Character.isISOControl(c) || c == ',');
    }

    /**
     * The order of codes: by the Unicode numbers of their characters, which is that of their bytes in UTF-8, so that {@code
     * LC_ALL=C sort} sorts alike.
     */
    static int compare(String one, String other) {
        int i = 0;
        while (i < one.length() && i < other.length() && one.charAt(i) == other.charAt(i)) {
            i++;
        }
        if (i == one.length() || i == other.length()) {
            return Integer.compare(one.length(), other.length());
        }
        return Integer.compare(one.codePointAt(i), other.codePointAt(i));
    }

    static String checked(String what, String code) {
        if (!isCode(code)) {
            throw new IllegalArgumentException("not a " + what + " code: \"" + code + "\"");
        }
        return code;
    }
}
