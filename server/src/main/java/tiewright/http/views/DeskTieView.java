package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.CardView;
import tiewright.http.pieces.Refusal;
import tiewright.http.pieces.State;

/** Everything the desk can do for one tie. */
public record DeskTieView(
        CardView card,
        Refusal refusal,
        List<Exchange> exchanges,
        List<String> calls,
        List<ActionForm> actions,
        String cardHref) {

    /** One exchange: both sides by the same words, and what an official can do about it. */
    public record Exchange(String title, String deadline, List<Side> sides, List<ActionForm> actions) {}

    public record Side(String club, State state, String detail) {}
}
