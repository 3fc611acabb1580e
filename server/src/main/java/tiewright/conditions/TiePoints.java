package tiewright.conditions;

import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Table points of a tie: for its end, for each rubber or game won in it, or for both.
 *
 * @param per what brings points besides the end
 * @param win for the end; win, draw and loss are all 0 where only rubbers or games count
 */
public record TiePoints(Per per, int win, int draw, int loss) {
    private static final Pattern CODE =
            Pattern.compile("(rubbers|games)|(?:(rubbers|games)\\+)?(\\d{1,2})/(\\d{1,2})/(\\d{1,2})");

    /** What is counted in a tie besides how it ended. */
    public enum Per {
        /** nothing more */
        TIE(""),
        /** the weights of the rubbers won, the decider's too */
        RUBBER("rubbers"),
        /** the games won, the decider's too */
        GAME("games");

        private final String code;

        Per(String code) {
            this.code = code;
        }

        static Per of(String code) {
            return Arrays.stream(values())
                    .filter(per -> per.code.equals(code))
                    .findFirst()
                    .orElseThrow();
        }
    }

    public TiePoints {
        if (loss < 0 || draw < loss || win < draw) {
            throw new IllegalArgumentException(
                    "points do not rise from win to loss, got " + win + "/" + draw + "/" + loss);
        }
    }

    /** For the end alone, such as 2/1/0. */
    public static TiePoints of(int win, int draw, int loss) {
        return new TiePoints(Per.TIE, win, draw, loss);
    }

    /**
     * Reads {@code win/draw/loss}, {@code rubbers}, {@code games}, or both as {@code rubbers+win/draw/loss}; empty unless the
     * numbers fall from win to loss.
     */
    public static Optional<TiePoints> parse(String code) {
        Matcher parts = CODE.matcher(code);
        if (!parts.matches()) {
            return Optional.empty();
        }
        if (parts.group(1) != null) {
            return Optional.of(new TiePoints(Per.of(parts.group(1)), 0, 0, 0));
        }
        int win = Integer.parseInt(parts.group(3));
        int draw = Integer.parseInt(parts.group(4));
        int loss = Integer.parseInt(parts.group(5));
        Per per = parts.group(2) == null ? Per.TIE : Per.of(parts.group(2));
        return draw < loss || win < draw || win == loss
                ? Optional.empty()
                : Optional.of(new TiePoints(per, win, draw, loss));
    }

    /** Nothing but rubbers or games brings points. */
    public boolean isWithoutEnd() {
        return win == 0;
    }

    public String code() {
        String end = win + "/" + draw + "/" + loss;
        return per == Per.TIE ? end : isWithoutEnd() ? per.code : per.code + "+" + end;
    }
}
