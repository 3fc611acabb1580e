package tiewright.http.views;

import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.DayLine;
import tiewright.http.pieces.NextCard;

/**
 * One player: where to be now, then the next rubber, then the rest of the day.
 *
 * @param now until when the player is free, or where to stay, if that can be said
 * @param next the next rubber or tie; empty where none is to come
 * @param later what is to come after it
 * @param played rubbers of today
 * @param calendar where a phone's calendar can subscribe
 */
public record PlayerView(
        String href,
        String now,
        Optional<NextCard> next,
        List<NextCard> later,
        List<Played> played,
        Club club,
        CalendarLink calendar) {
    public PlayerView {
        later = List.copyOf(later);
        played = List.copyOf(played);
    }

    /** @param result won or lost, own points first */
    public record Played(String when, String rubber, String with, String against, String result) {}

    /**
     * @param place where the club stands; empty before the first tie
     * @param home when the club can go home, as far as that is known; may be empty
     * @param day what the club has ahead
     */
    public record Club(String name, String href, String place, String home, List<DayLine> day) {}

    /** The next court's number alone, empty while unknown. */
    public String court() {
        return next.map(NextCard::court).orElse("");
    }
}
