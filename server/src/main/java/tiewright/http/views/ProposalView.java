package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.DoubtBar;
import tiewright.http.pieces.Refusal;
import tiewright.http.pieces.SelectField;

/**
 * What the tool proposes to one captain. For that club's eyes only.
 *
 * @param impossible why no sheet grants every wish; empty if one does
 * @param promises what is due of the promises to single players, and which of them cannot hold
 * @param keeping the best sheet that keeps them, where the first does not
 * @param own the captain's own sealed sheet, measured the same way; empty if none is sealed
 * @param decider who could play the decider
 * @param order the blind draw and what a reading of the other club is worth
 * @param drawn the sheet that was drawn; empty if none can be
 * @param whatIf what fewer players and absences would cost
 * @param ask what can be asked otherwise; nothing once the sheets are open
 * @param forms the form of wishes for this tie
 */
public record ProposalView(
        Refusal refusal,
        List<String> cautions,
        List<String> impossible,
        List<String> promises,
        List<Sheet> sheets,
        List<Sheet> keeping,
        List<String> notes,
        List<Sheet> own,
        List<Candidate> decider,
        List<String> deciderNotes,
        List<String> order,
        List<Sheet> drawn,
        List<String> whatIf,
        List<Ask> ask,
        List<ActionForm> forms) {

    /** @param use the way to take this sheet into the form */
    public record Sheet(String title, List<Line> lines, DoubtBar chance, List<String> reasons, List<ActionForm> use) {}

    /**
     * A question put by its address, so that it can be asked again.
     *
     * @param seed which draw
     * @param again the address that draws again
     */
    public record Ask(String address, List<SelectField> fields, String seed, String again) {}

    public record Line(String rubber, String pair, String chance) {}

    public record Candidate(String pair, String words, DoubtBar chance) {}
}
