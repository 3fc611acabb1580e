package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.CopyText;
import tiewright.http.pieces.TieLine;

/** All ties in the order of play. */
public record TiesView(List<Slot> slots, CopyText copy) {
    /** The ties of one published start. */
    public record Slot(String title, List<TieLine> ties) {}
}
