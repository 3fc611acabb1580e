package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.ReasonTable;

/**
 * A page of the log.
 *
 * @param newest the latest entries
 * @param earlier the others of this page, behind a line each; print shows all of them
 * @param newer address of the page of newer entries, empty for none
 * @param older address of the page of older entries, empty for none
 */
public record LogView(ReasonTable newest, List<Earlier> earlier, String newer, String older) {
    public LogView {
        earlier = List.copyOf(earlier);
    }

    /** @param line which entries they are, and when they were received */
    public record Earlier(String line, ReasonTable table) {}
}
