package tiewright.standings;

import java.util.List;

/** Why a club has its place: the steps it went through, tie points first, the deciding one last; never empty. */
public record Reason(List<Line> lines) {
    public Reason {
        lines = List.copyOf(lines);
        if (lines.isEmpty()) {
            throw new IllegalArgumentException("a place needs a reason");
        }
    }

    public Line deciding() {
        return lines.get(lines.size() - 1);
    }
}
