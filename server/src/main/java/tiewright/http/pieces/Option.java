package tiewright.http.pieces;

/**
 * One thing to choose.
 *
 * @param why a line under it: what it means or, when refused, the rule that forbids it
 * @param refused shown but not to be chosen
 */
public record Option(String value, String label, String why, boolean chosen, boolean refused) {

    public static Option of(String value, String label, boolean chosen) {
        return new Option(value, label, "", chosen, false);
    }
}
