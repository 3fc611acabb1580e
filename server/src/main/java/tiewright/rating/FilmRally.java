package tiewright.rating;

import java.util.Arrays;
import java.util.Optional;
import tiewright.scoring.SideNo;

/**
 * One rally as it was noted from film.
 *
 * @param side of the player who is noted: who hit the winner, or who erred; empty where nobody is
 * @param serving the side that served, where the notes say so; else it follows from the rallies before
 */
public record FilmRally(Ending ending, Optional<SideNo> side, Optional<SideNo> serving) {
  /** How a rally ended. */
  public enum Ending {
    /** A clean winner of the player. */
    EARNED("earned"),
    /** An error of the player under pressure. */
    FORCED("forced"),
    /** An error of the player on a ball usually made. */
    GAVE("gave"),
    /** Played again, no point. */
    REPLAY("replay"),
    /** Nobody could tell: never guessed, counted for nobody. */
    UNSURE("unsure");

    private final String code;

    Ending(String code) {
      this.code = code;
    }

    public String code() {
      return code;
    }

    /** Somebody won the rally, so a player is named. */
    public boolean namesPlayer() {
      return this != REPLAY && this != UNSURE;
    }

    public static Optional<Ending> parse(String code) {
      return Arrays.stream(values()).filter(ending -> ending.code.equals(code)).findFirst();
    }
  }

  /** The side that won the rally; empty where none did or nobody knows. */
  public Optional<SideNo> winner() {
    return switch (ending) {
      case EARNED -> side;
      case FORCED, GAVE -> side.map(SideNo::other);
      case REPLAY, UNSURE -> Optional.empty();
    };
  }
}
