package tiewright.conditions;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Table points for a tie won, drawn and lost, such as 2/1/0. */
public record TiePoints(int win, int draw, int loss) {
    private static final Pattern CODE = Pattern.compile("(\\d{1,2})/(\\d{1,2})/(\\d{1,2})");

    public TiePoints {
        if (loss < 0 || draw < loss || win < draw || win == loss) {
            throw new IllegalArgumentException("points fall from win to loss, got " + win + "/" + draw + "/" + loss);
        }
    }

    /** Reads {@code win/draw/loss}; empty unless they are numbers that fall from win to loss. */
    public static Optional<TiePoints> parse(String code) {
        Matcher parts = CODE.matcher(code);
        if (!parts.matches()) {
            return Optional.empty();
        }
        int win = Integer.parseInt(parts.group(1));
        int draw = Integer.parseInt(parts.group(2));
        int loss = Integer.parseInt(parts.group(3));
        return draw < loss || win < draw || win == loss
                ? Optional.empty()
                : Optional.of(new TiePoints(win, draw, loss));
    }

    public String code() {
        return win + "/" + draw + "/" + loss;
    }
}
