package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.CardView;
import tiewright.http.pieces.CopyText;
import tiewright.http.pieces.Moved;
import tiewright.http.pieces.Receipt;
import tiewright.http.pieces.SheetView;
import tiewright.http.pieces.TieLine;

/**
 * One tie.
 *
 * @param receipts out at the deadline, before the opening
 * @param changes what was changed after the opening, through which door
 * @param times every published time that no longer holds
 */
public record TieView(
        TieLine line,
        CardView card,
        List<SheetView> sheets,
        List<Receipt> receipts,
        List<String> changes,
        List<Moved> times,
        CopyText copy) {}
