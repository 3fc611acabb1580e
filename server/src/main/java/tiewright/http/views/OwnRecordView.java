package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.ReasonTable;

/** How good the advice to one club was, or would have been, for its captain's eyes only. */
public record OwnRecordView(List<String> said, List<ReasonTable> tables) {
    public OwnRecordView {
        said = List.copyOf(said);
        tables = tables.stream().filter(table -> !table.rows().isEmpty()).toList();
    }
}
