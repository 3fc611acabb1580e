package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.NextCard;

/**
 * One player.
 *
 * @param rest until when the player is free, if that can be said
 * @param played rubbers of today, one line each
 * @param calendar where a phone's calendar can subscribe
 * @param court the next court's number alone, empty while unknown
 */
public record PlayerView(
        String href, List<NextCard> next, String rest, List<String> played, String court, CalendarLink calendar) {}
