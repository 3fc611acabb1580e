package tiewright.conditions;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Table points of a tie in which no rubber was played, where they differ from those of any other tie.
 *
 * @param loss for the club that was not there; for both where neither came
 */
public record UnplayedTie(int win, int loss) {
    static final String AS_RUBBERS = "as-rubbers";
    private static final Pattern CODE = Pattern.compile("(\\d{1,2})/(\\d{1,2})");

    public UnplayedTie {
        if (loss < 0 || win <= loss) {
            throw new IllegalArgumentException("a win counts more than a loss, got " + win + "/" + loss);
        }
    }

    /** Reads {@code win/loss}; empty unless the first number is larger. */
    public static Optional<UnplayedTie> parse(String code) {
        Matcher parts = CODE.matcher(code);
        if (!parts.matches()) {
            return Optional.empty();
        }
        int win = Integer.parseInt(parts.group(1));
        int loss = Integer.parseInt(parts.group(2));
        return win <= loss ? Optional.empty() : Optional.of(new UnplayedTie(win, loss));
    }
}
