package tiewright.http.views;

import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.Countdown;
import tiewright.http.pieces.Receipt;
import tiewright.http.pieces.Refusal;
import tiewright.http.pieces.SelectField;
import tiewright.http.pieces.SheetView;

/**
 * Naming pairs: the sheet of a tie, or the pair for its decider.
 *
 * @param closed why nothing can be sealed here now, empty while it can
 * @param opens words of what happens at the deadline and the rule for a late sheet
 * @param asks what to ask before somebody marked as hurt is named
 * @param starts other sheets to start from: words and address
 * @param actions what else can be done: ask for the opening, tell the club, take it back
 */
public record SheetFormView(
        Refusal refusal,
        InNow now,
        String closed,
        List<String> opens,
        List<String> asks,
        List<Start> starts,
        Naming naming,
        List<ActionForm> actions) {

    /**
     * @param countdown until a sheet must be in; empty once one is
     * @param own the sheet that is sealed now, under its cover; empty if none is in
     */
    public record InNow(Optional<Countdown> countdown, Optional<SheetView> own, Optional<Receipt> receipt) {}

    /**
     * The covered form.
     *
     * @param open whether it stands open (after a refusal or a change of choices)
     * @param unnamed the names of those who are on no rubber
     * @param seal words of the button
     * @param keeping how the sheet can stay on the phone until it is handed in
     */
    public record Naming(
            String action, boolean open, List<Rubber> rubbers, List<String> unnamed, String seal, Keeping keeping) {}

    /** @param error what is wrong with this rubber, in sentences */
    public record Rubber(String id, String number, String label, String error, SelectField first, SelectField second) {}

    /**
     * What a browser needs to keep the sheet itself: the codes that its receipt is made over.
     *
     * @param onPhone a sheet is in, and it lies on a phone
     */
    public record Keeping(String exchange, String tie, String club, boolean onPhone, String words) {}

    public record Start(String words, String href) {}
}
