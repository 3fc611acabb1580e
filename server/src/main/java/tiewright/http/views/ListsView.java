package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.TieLine;

/** The order of play for each club, to print and cut apart. */
public record ListsView(List<Club> clubs) {
    public ListsView {
        clubs = List.copyOf(clubs);
    }

    public record Club(String name, String href, List<TieLine> ties) {}
}
