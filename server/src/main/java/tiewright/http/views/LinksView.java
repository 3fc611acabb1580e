package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.Refusal;
import tiewright.http.views.WorkView.Section;

/** The personal links that were handed out, and the forms for new ones. */
public record LinksView(Refusal refusal, List<String> intro, List<Section> sections, List<Line> links) {
    public LinksView {
        intro = List.copyOf(intro);
        sections = List.copyOf(sections);
        links = List.copyOf(links);
    }

    /** @param current false for one that was taken back */
    public record Line(String name, String whom, String role, boolean current) {}
}
