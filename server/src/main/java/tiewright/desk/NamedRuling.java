package tiewright.desk;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tiewright.event.Event;

/** A reason that rests on a ruling names it by its number, as in <em>misread, ruling 3</em>. */
public final class NamedRuling {
    private static final Pattern RULING =
            Pattern.compile("\\bruling\\s+(?:no\\.?\\s*)?(\\d{1,6})\\b", Pattern.CASE_INSENSITIVE);

    private NamedRuling() {}

    /** The reason, resting on the ruling of this number. */
    public static String in(String reason, int ruling) {
        return reason + ", ruling " + ruling;
    }

    /** The reason names a ruling that was given. */
    static boolean isGiven(Event event, String reason) {
        Matcher named = RULING.matcher(reason);
        while (named.find()) {
            int number = Integer.parseInt(named.group(1));
            if (event.rulings().stream().anyMatch(ruling -> ruling.number() == number)) {
                return true;
            }
        }
        return false;
    }
}
