package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.pieces.Refusal;
import tiewright.http.pieces.State;

/**
 * The safety panel.
 *
 * @param state where the conditions put the reading, {@link State#NONE} before anything was typed
 * @param said what that means, in sentences
 * @param reading the form that looks and logs
 * @param thermometers the form that reckons a WBGT
 * @param log what was decided so far, the newest first
 */
public record SafetyView(
        Refusal refusal,
        State state,
        List<String> said,
        List<String> cautions,
        WorkView.WorkForm reading,
        WorkView.WorkForm thermometers,
        List<String> log,
        ReasonTable published) {
    public SafetyView {
        said = List.copyOf(said);
        cautions = List.copyOf(cautions);
        log = List.copyOf(log);
    }
}
