package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.CopyText;
import tiewright.http.pieces.ReasonTable;

/**
 * Every pool's table.
 *
 * @param placing the final order of the event, champion first; empty before it is signed
 * @param signed who signed it
 * @param gone what became of clubs that withdrew, a sentence each
 */
public record TablesView(
        List<PoolTable> pools, List<String> placing, String signed, List<String> gone, StoodView stood) {
    public record PoolTable(String pool, ReasonTable table, CopyText copy) {}
}
