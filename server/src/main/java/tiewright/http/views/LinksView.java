package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Refusal;
import tiewright.http.views.WorkView.Section;

/**
 * The personal links that were handed out, and the forms for new ones.
 *
 * @param back to the page that this official begins at
 * @param clubs whose captains have theirs; empty for who makes none for captains
 */
public record LinksView(
        Refusal refusal,
        NavLink back,
        List<String> intro,
        List<ClubLine> clubs,
        List<Section> sections,
        List<Line> links) {
    public LinksView {
        intro = List.copyOf(intro);
        clubs = List.copyOf(clubs);
        sections = List.copyOf(sections);
        links = List.copyOf(links);
    }

    public boolean isAnyMissing() {
        return clubs.stream().anyMatch(ClubLine::missing);
    }

    /**
     * @param missing its captain or a deputy has no link yet
     * @param says who has none, where not all are without; empty where the name says enough
     */
    public record ClubLine(String club, String name, boolean missing, String says) {}

    /** @param current false for one that was taken back */
    public record Line(String name, String whom, String role, boolean current) {}
}
