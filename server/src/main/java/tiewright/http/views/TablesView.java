package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.CopyText;
import tiewright.http.pieces.ReasonTable;

/**
 * Every pool's table.
 *
 * @param placing the final order of the event, champion first; empty before it is signed
 * @param signed who signed it
 */
public record TablesView(List<PoolTable> pools, List<String> placing, String signed, StoodView stood) {
    public record PoolTable(String pool, ReasonTable table, CopyText copy) {}
}
