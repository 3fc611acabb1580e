package tiewright.rating;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import tiewright.event.Pair;
import tiewright.event.RubberNo;
import tiewright.event.TieId;
import tiewright.scoring.Format;
import tiewright.scoring.GameState;
import tiewright.scoring.Score;
import tiewright.scoring.SideNo;

/**
 * A filmed game as far as it tells of strengths: how many rallies each side served, and how many of them it won.
 *
 * @param tie where it was played, if that was in this event
 * @param played the day, if it is known
 * @param card the score of the card or, without one, the score to which the rallies led if they finished the game
 */
public record FilmedGame(
    Optional<TieId> tie, Optional<RubberNo> rubber, Optional<LocalDate> played, Format format, Pair one, Pair two,
    Optional<Score> card, Served byOne, Served byTwo) {

  /** Rallies that one side served, and won of these. */
  public record Served(int rallies, int won) {
    static final Served NONE = new Served(0, 0);

    public Served {
      if (won < 0 || won > rallies) {
        throw new IllegalArgumentException(won + " rallies won of " + rallies);
      }
    }

    Served and(boolean wonIt) {
      return new Served(rallies + 1, won + (wonIt ? 1 : 0));
    }
  }

  public FilmedGame {
    if (one.has(two.first()) || one.has(two.second())) {
      throw new IllegalArgumentException("a player stands on both sides: " + one + " v " + two);
    }
  }

  /** Where and by whom a game was played, before its rallies are counted. */
  public record About(
      Optional<TieId> tie, Optional<RubberNo> rubber, Format format, SideNo firstServer, Pair one, Pair two, Optional<Score> card) {}

  /**
   * Walks through the rallies: who serves follows from the start and from who won each rally, unless the notes name the
   * server. What comes after the end of the game is not looked at.
   *
   * @param rallies in the order in which they were played
   */
  public static FilmedGame of(About about, List<FilmRally> rallies) {
    GameState state = GameState.start(about.format(), about.firstServer());
    Served one = Served.NONE;
    Served two = Served.NONE;
    for (FilmRally rally : rallies) {
      Optional<SideNo> winner = rally.winner();
      if (state.isOver() || winner.isEmpty()) {
        continue;
      }
      SideNo serving = rally.serving().orElse(state.serving());
      boolean served = winner.get() == serving;
      one = serving == SideNo.ONE ? one.and(served) : one;
      two = serving == SideNo.TWO ? two.and(served) : two;
      state = state.after(winner.get());
    }
    Optional<Score> end = state.isOver() ? Optional.of(state.score()) : Optional.empty();
    return new FilmedGame(
        about.tie(), about.rubber(), Optional.empty(), about.format(), about.one(), about.two(), about.card().or(() -> end), one, two);
  }

  /** The points to which the rallies lead, whoever is named as server. */
  public static Score ledTo(About about, List<FilmRally> rallies) {
    GameState state = GameState.start(about.format(), about.firstServer());
    for (FilmRally rally : rallies) {
      if (!state.isOver() && rally.winner().isPresent()) {
        state = state.after(rally.winner().get());
      }
    }
    return state.score();
  }

  FilmedGame on(LocalDate day) {
    return new FilmedGame(tie, rubber, Optional.of(day), format, one, two, card, byOne, byTwo);
  }

  /** Rallies that somebody won. */
  public int rallies() {
    return byOne.rallies() + byTwo.rallies();
  }

  /** The same four people in the same pairs, whoever was named first. */
  boolean isBetween(Pair home, Pair away) {
    return one.equals(home) && two.equals(away) || one.equals(away) && two.equals(home);
  }

  /** The card of a game between these pairs reads so. */
  boolean reads(Pair home, Score score) {
    return card.filter(points -> (one.equals(home) ? points : points.swapped()).equals(score)).isPresent();
  }
}
