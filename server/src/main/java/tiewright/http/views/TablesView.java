package tiewright.http.views;

import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.Bracket;
import tiewright.http.pieces.CopyText;
import tiewright.http.pieces.ReasonTable;

/**
 * Every pool's table, and the knockout below.
 *
 * @param knockout empty before it is laid out
 * @param order the final order of the event; empty before it is signed
 * @param gone what became of clubs that withdrew, a sentence each
 */
public record TablesView(
        List<PoolTable> pools,
        Optional<Bracket> knockout,
        Optional<FinalOrder> order,
        List<String> gone,
        StoodView stood) {
    public record PoolTable(String pool, ReasonTable table, CopyText copy) {}

    /**
     * The final order as it was signed.
     *
     * @param places champion first, each with its reason
     * @param signed by whom, when, and in which notice
     */
    public record FinalOrder(List<String> places, String signed, CopyText copy) {
        public FinalOrder {
            places = List.copyOf(places);
        }
    }
}
