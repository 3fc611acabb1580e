package tiewright.http.pieces;

import java.util.List;

/**
 * A card: the scores of a tie as they stand on paper. Empty names and points leave room for a pencil.
 *
 * @param totalWords label of the last line ("Rubbers won")
 * @param homeSigned who signed for the home club, or the words that ask for it
 */
public record CardView(
        String title,
        String when,
        State state,
        String home,
        String away,
        List<Row> rows,
        String totalWords,
        String homeTotal,
        String awayTotal,
        String homeSigned,
        String awaySigned) {

    public CardView {
        rows = List.copyOf(rows);
    }

    /**
     * One rubber.
     *
     * @param winner 1 home, 2 away, 0 nobody yet
     * @param note a mark such as a walkover or a retirement, in words
     */
    public record Row(
            String label,
            List<String> homePlayers,
            List<String> awayPlayers,
            String homePoints,
            String awayPoints,
            int winner,
            String note) {

        public Row {
            homePlayers = List.copyOf(homePlayers);
            awayPlayers = List.copyOf(awayPlayers);
        }
    }
}
