package tiewright.http.views;

import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.CourtRow;
import tiewright.http.pieces.DayLine;
import tiewright.http.pieces.Notice;
import tiewright.http.pieces.TieLine;

/**
 * What is on now.
 *
 * @param mine the reader's own club; empty while none is chosen
 * @param free words about the courts on which nothing is played; empty if there is none, and after the end
 * @param latest the last notice, if there is one beside that of the final order
 * @param placing the clubs in the order of the day, the champion first; empty before the end
 * @param arranged there are ties at all
 */
public record NowView(
        Optional<Mine> mine,
        List<CourtRow> on,
        String free,
        List<CourtRow> next,
        List<TieLine> ended,
        Optional<Notice> latest,
        Placing placing,
        boolean arranged) {

    /** @param signed the final order holds; before it is signed a ruling may still change it */
    public record Placing(List<String> clubs, boolean signed) {
        public Placing {
            clubs = List.copyOf(clubs);
        }
    }

    /** @param href the club's own page */
    public record Mine(String club, String href, List<DayLine> day) {}
}
