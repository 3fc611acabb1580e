package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.Refusal;

/**
 * A held card: its readings, one of which the paper card says.
 *
 * @param pairs who plays for which club
 * @param why who read the card, and by which ruling
 * @param typed where it is typed from the card instead
 * @param warnings why this person had better not settle it
 */
public record SettleView(
        String action,
        Refusal refusal,
        List<String> pairs,
        List<Reading> readings,
        List<FormField> why,
        List<String> warnings,
        String typed,
        String back) {
    public SettleView {
        pairs = List.copyOf(pairs);
        readings = List.copyOf(readings);
        why = List.copyOf(why);
        warnings = List.copyOf(warnings);
    }

    /**
     * What somebody read.
     *
     * @param winner "Ollerby Lane won"
     * @param by who entered it and when
     * @param then what the tie would stand at
     * @param settle words of the press when this is chosen
     */
    public record Reading(int number, String winner, String score, String by, String then, String settle) {}
}
