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

    static String checked(String what, String code) {
        if (!isCode(code)) {
            throw new IllegalArgumentException("not a " + what + " code: \"" + code + "\"");
        }
        return code;
    }
}
