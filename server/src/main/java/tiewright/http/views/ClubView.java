package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.TieLine;

/**
 * One club with its squad and ties.
 *
 * @param duties ties that it umpires
 * @param papers where what it needs on paper is printed
 */
public record ClubView(
        String town,
        List<PlayerLine> squad,
        List<TieLine> ties,
        List<TieLine> duties,
        String withdrawn,
        CalendarLink calendar,
        String papers) {
    /** @param rank place in the order of strength, empty where none is given */
    public record PlayerLine(String href, String name, String rank) {}
}
