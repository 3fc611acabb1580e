package tiewright.rating;

import java.util.List;
import tiewright.event.PrivateNote;

/**
 * What is known besides the cards of the day.
 *
 * @param results final scores of earlier games
 * @param films filmed games, earlier ones and those of the day
 */
public record Earlier(List<PrivateNote.PastGame> results, List<FilmedGame> films) {
  public Earlier {
    results = List.copyOf(results);
    films = List.copyOf(films);
  }

  public static Earlier of(List<PrivateNote.PastGame> results) {
    return new Earlier(results, List.of());
  }
}
