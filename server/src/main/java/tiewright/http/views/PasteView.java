package tiewright.http.views;

import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.GivenFile;
import tiewright.http.pieces.Refusal;

/**
 * Squads by a pasted list or a file.
 *
 * @param list what was given, still there after every answer
 * @param ofAll asked where the list does not say the club of each
 * @param shown what it gives; empty before anything was given
 */
public record PasteView(Refusal refusal, GivenFile list, List<FormField> ofAll, Optional<Shown> shown) {
    public PasteView {
        ofAll = List.copyOf(ofAll);
    }

    /**
     * @param summary what would be entered
     * @param press the words of the press that enters it; empty where there is nothing new
     * @param token names what is shown: anything else that is sent is shown first
     * @param columns what each column holds
     * @param asksPlays whether it is shown what players play in
     */
    public record Shown(
            String summary,
            String press,
            String token,
            List<ClubLine> clubs,
            List<FormField> columns,
            boolean asksPlays,
            List<Line> lines) {
        public Shown {
            clubs = List.copyOf(clubs);
            columns = List.copyOf(columns);
            lines = List.copyOf(lines);
        }

        public boolean isWrong() {
            return lines.stream().anyMatch(line -> !line.wrong().isEmpty());
        }
    }

    /**
     * @param cells name, club, rank, year of birth, what the player plays in
     * @param becomes whether it would be entered
     */
    public record Line(String id, List<String> cells, String becomes, String wrong) {
        public Line {
            cells = List.copyOf(cells);
        }
    }

    /**
     * @param id of its name in the page
     * @param code asked of a new club
     */
    public record ClubLine(String id, String name, String people, Optional<FormField> code) {}
}
