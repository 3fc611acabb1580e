package tiewright.event;

import java.util.regex.Pattern;

/**
 * The short code of a club, used everywhere the club is named by the tool. A new one is letters and digits of any script and hyphens,
 * for it stands in addresses and in names of files; events that began earlier may have others.
 */
public record ClubId(String code) implements Comparable<ClubId> {
    private static final Pattern FIT = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{M}\\p{N}-]*");

    public ClubId {
        code = Codes.checked("club", code);
    }

    /** Whether a new club may have this code: begins with a letter or digit, and has these and hyphens alone, {@value Codes#LONGEST} at most. */
    public static boolean isFit(String code) {
        return Codes.isCode(code) && FIT.matcher(code).matches();
    }

    public static ClubId of(String code) {
        return new ClubId(code);
    }

    @Override
    public int compareTo(ClubId other) {
        return Codes.compare(code, other.code);
    }

    @Override
    public String toString() {
        return code;
    }
}
