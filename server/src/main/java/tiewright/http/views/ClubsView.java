package tiewright.http.views;

import java.util.List;

/** All clubs. */
public record ClubsView(List<Line> clubs) {
    public record Line(String href, String name, String town, int players) {}
}
