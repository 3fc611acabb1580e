package tiewright.http.views;

import java.util.List;

/** All clubs with their players: everybody finds the own name by one tap. */
public record ClubsView(List<Line> clubs) {
    /** @param choose makes it the club that the front page shows first; empty where nothing is chosen */
    public record Line(String href, String name, String town, String choose, List<Name> players) {}

    public record Name(String href, String name) {}
}
