package tiewright.standings;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One thing by which level clubs are compared.
 *
 * @param among count only the ties among the clubs that are level at that moment, not all ties of the table
 */
public record Criterion(Quantity quantity, Form form, boolean among) {
    /** What every table begins with. */
    public static final Criterion TIE_POINTS = new Criterion(Quantity.TIE_POINTS, Form.WON, false);

    /** The tie between two level clubs; of more than two, the tie points in the ties among them. */
    public static final Criterion HEAD_TO_HEAD = new Criterion(Quantity.TIE_POINTS, Form.WON, true);

    /** Ties won among the level clubs; differs from {@link #HEAD_TO_HEAD} only where a tie can be drawn. */
    public static final Criterion TIES_WON_AMONG = new Criterion(Quantity.TIES_WON, Form.WON, true);

    private static final Pattern WORD = Pattern.compile(
            "(rubbers|games|points)-(won|difference|ratio)(-among)?|(head-to-head(?:-among)?)|(ties-won-among)");

    /** Reads a step of a list such as {@code rubbers-ratio-among}; empty when it is none. */
    static Optional<Criterion> parse(String word) {
        Matcher parts = WORD.matcher(word);
        if (!parts.matches()) {
            return Optional.empty();
        }
        if (parts.group(1) == null) {
            return Optional.of(parts.group(4) != null ? HEAD_TO_HEAD : TIES_WON_AMONG);
        }
        Quantity quantity = Quantity.valueOf(parts.group(1).toUpperCase(Locale.ROOT));
        Form form = Form.valueOf(parts.group(2).toUpperCase(Locale.ROOT));
        return Optional.of(new Criterion(quantity, form, parts.group(3) != null));
    }
}
