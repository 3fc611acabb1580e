package tiewright.film;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * A rota for a number of players for whom no whist tournament is known: every two partner at least once, few of them twice, and
 * nobody rests much more than others. Round by round and court by court the four are taken who gain most; of many such rotas
 * that differ where it did not matter, the shortest and most even is kept. The same number always gives the same rota.
 */
final class UnevenRota {
    private static final int TRIES = 60;
    private static final int MOST_ROUNDS = 40;
    private static final int[][] SPLITS = {{0, 1, 2, 3}, {0, 2, 1, 3}, {0, 3, 1, 2}};

    private final int players;
    private final Random random;
    private final int[][] partners;
    private final int[][] opponents;
    private final int[] played;
    /** Rounds of tables of four places: the first two against the others. */
    private final List<List<int[]>> rounds = new ArrayList<>();

    private UnevenRota(int players, long seed) {
        this.players = players;
        this.random = new Random(seed);
        this.partners = new int[players][players];
        this.opponents = new int[players][players];
        this.played = new int[players];
    }

    static List<List<int[]>> of(int players) {
        return IntStream.range(0, TRIES)
                .mapToObj(seed -> new UnevenRota(players, seed).filled())
                .min(Comparator.comparingInt((UnevenRota rota) -> rota.rounds.size())
                        .thenComparingInt(UnevenRota::unevenness))
                .orElseThrow()
                .rounds;
    }

    private UnevenRota filled() {
        while (hasStrangers() && rounds.size() < MOST_ROUNDS) {
            List<Integer> free =
                    new ArrayList<>(IntStream.range(0, players).boxed().toList());
            List<int[]> round = new ArrayList<>();
            for (int court = 0; court < players / 4; court++) {
                int[] table = best(free);
                if (partners[table[0]][table[1]] == 0 || partners[table[2]][table[3]] == 0) {
                    take(table);
                    round.add(table);
                    for (int place : table) {
                        free.remove(Integer.valueOf(place));
                    }
                }
            }
            rounds.add(round);
        }
        return this;
    }

    private boolean hasStrangers() {
        return IntStream.range(0, players)
                .anyMatch(one -> IntStream.range(0, one).anyMatch(other -> partners[one][other] == 0));
    }

    private int[] best(List<Integer> free) {
        int[] best = {};
        double least = Double.POSITIVE_INFINITY;
        for (int a = 0; a < free.size(); a++) {
            for (int b = a + 1; b < free.size(); b++) {
                for (int c = b + 1; c < free.size(); c++) {
                    for (int d = c + 1; d < free.size(); d++) {
                        int[] four = {free.get(a), free.get(b), free.get(c), free.get(d)};
                        for (int[] split : SPLITS) {
                            int[] table = {four[split[0]], four[split[1]], four[split[2]], four[split[3]]};
                            double cost = cost(table);
                            if (cost < least) {
                                least = cost;
                                best = table;
                            }
                        }
                    }
                }
            }
        }
        return best;
    }

    /** Partners again are dear, then playing more than others, then the same opponents; chance settles the rest. */
    private double cost(int[] table) {
        int again = partners[table[0]][table[1]] + partners[table[2]][table[3]];
        int often = 0;
        for (int place : table) {
            often += played[place];
        }
        int same = 0;
        for (int one = 0; one < 2; one++) {
            for (int other = 2; other < 4; other++) {
                int times = opponents[table[one]][table[other]];
                same += (times + 1) * (times + 1);
            }
        }
        return 100.0 * again + 4.0 * often + same + random.nextDouble();
    }

    private void take(int[] table) {
        count(partners, table[0], table[1]);
        count(partners, table[2], table[3]);
        for (int one = 0; one < 2; one++) {
            for (int other = 2; other < 4; other++) {
                count(opponents, table[one], table[other]);
            }
        }
        for (int place : table) {
            played[place]++;
        }
    }

    private static void count(int[][] times, int one, int other) {
        times[one][other]++;
        times[other][one]++;
    }

    /** How far apart most and least play, and meet as opponents. */
    private int unevenness() {
        int rest = IntStream.of(played).max().orElse(0)
                - IntStream.of(played).min().orElse(0);
        int met = IntStream.range(0, players)
                .map(one -> IntStream.range(0, one)
                        .map(other -> opponents[one][other] * opponents[one][other])
                        .sum())
                .sum();
        return 1_000 * rest + met;
    }
}
