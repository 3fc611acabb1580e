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
 * other numbers every two partner at least once ({@link UnevenRota}); whoever is missing in a round rests.
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
        return Optional.of(players.size() % 4 <= 1 ? whist(players) : uneven(players));
    }

    private static Rota whist(List<PlayerId> players) {
        int around = players.size() % 4 == 0 ? players.size() - 1 : players.size();
        Turning turning = Turning.of(around);
        List<int[]> first = new FirstRound(turning, players.size() > around).tables();
        List<Game> games = new ArrayList<>();
        for (int round = 0; round < around; round++) {
            int by = round;
            for (int table = 0; table < first.size(); table++) {
                int[] places = IntStream.of(first.get(table))
                        .map(seat -> seat == around ? around : turning.turned(seat, by))
                        .toArray();
                games.add(game(round + 1, table + 1, places, players));
            }
        }
        return new Rota(games, around);
    }

    private static Rota uneven(List<PlayerId> players) {
        List<List<int[]>> rounds = UnevenRota.of(players.size());
        List<Game> games = new ArrayList<>();
        for (int round = 0; round < rounds.size(); round++) {
            for (int table = 0; table < rounds.get(round).size(); table++) {
                games.add(game(round + 1, table + 1, rounds.get(round).get(table), players));
            }
        }
        return new Rota(games, rounds.size());
    }

    private static Game game(int round, int court, int[] places, List<PlayerId> players) {
        return new Game(
                round,
                court,
                Pair.of(players.get(places[0]), players.get(places[1])),
                Pair.of(players.get(places[2]), players.get(places[3])));
    }
}
