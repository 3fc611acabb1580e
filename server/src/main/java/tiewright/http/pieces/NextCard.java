package tiewright.http.pieces;

import java.util.List;

/**
 * A player's next rubber, readable at arm's length.
 *
 * @param court the court's number alone, empty while unknown
 * @param lines what else is known: with whom, against whom, rest, in that order
 * @param note a line below (what follows when the sheets open)
 */
public record NextCard(
    String title, String courtLabel, String court, String when, State state, List<Line> lines, String note) {

  public NextCard {
    lines = List.copyOf(lines);
  }

  public record Line(String label, String words) {}
}
