package tiewright.film;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import tiewright.event.Pair;
import tiewright.event.PlayerId;

/**
 * A practice rota after which form and chemistry can be told apart: every two players partner once and oppose twice.
 *
 * <p>For 4n and 4n + 1 players it is a whist tournament (Anderson, Combinatorial Designs and Tournaments, 1997, from memory): the
 * games of one round, found by search, are turned round a circle of players, one of whom stands in its middle for 4n. For
 * other numbers it is the rota of the next number that has one, with empty places: whoever meets one rests, and some pairs
 * never partner.
 */
public record Rota(List<Game> games, int rounds) {
  public static final int LEAST = 4;
  public static final int MOST = 17;

  /**
   * Two against two.
   *
   * @param round from 1
   * @param court from 1
   */
  public record Game(int round, int court, Pair one, Pair two) {}

  public Rota {
    games = List.copyOf(games);
  }

  /** @return empty for fewer than {@link #LEAST} or more than {@link #MOST} players */
  public static Optional<Rota> of(List<PlayerId> players) {
    if (players.size() < LEAST || players.size() > MOST) {
      return Optional.empty();
    }
    int places = IntStream.rangeClosed(players.size(), MOST).filter(size -> size % 4 <= 1).findFirst().orElseThrow();
    int around = places % 4 == 0 ? places - 1 : places;
    Turning turning = Turning.of(around);
    List<int[]> first = new FirstRound(turning, places > around).tables();
    List<Game> games = new ArrayList<>();
    for (int round = 0; round < around; round++) {
      int court = 1;
      for (int[] table : first) {
        List<PlayerId> four = new ArrayList<>();
        for (int seat : table) {
          int place = seat == around ? around : turning.turned(seat, round);
          if (place < players.size()) {
            four.add(players.get(place));
          }
        }
        if (four.size() == 4) {
          games.add(new Game(round + 1, court++, Pair.of(four.get(0), four.get(1)), Pair.of(four.get(2), four.get(3))));
        }
      }
    }
    return Optional.of(new Rota(games, around));
  }
}
