package tiewright.http.views;

import java.util.List;

/** What can be printed. */
public record PaperListView(List<Line> lines) {
    public record Line(String href, String title, String words) {}
}
