package tiewright.standings;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import tiewright.conditions.Conditions;
import tiewright.event.ClubId;
import tiewright.event.TieId;
import tiewright.event.TieScore;
import tiewright.scoring.Share;

/**
 * How often would a pool end in a lot under these conditions? Pools of made-up clubs that are all equally strong are played
 * rally by rally, each rally even, and their tables made as on the day. Equal clubs end level more often than real ones do,
 * so the share is rather too high than too low.
 */
public final class DryRun {
    public static final int MOST_RUNS = 10_000;
    public static final int MOST_CLUBS = 8;

    private DryRun() {}

    /** How many clubs share a place that only a lot parts, and which: first come the best places. */
    public record Way(int place, int clubs) implements Comparable<Way> {
        @Override
        public int compareTo(Way other) {
            return place != other.place ? Integer.compare(place, other.place) : Integer.compare(clubs, other.clubs);
        }
    }

    /** @param example one pool that ended so, the first that came */
    public record Found(Way way, int times, TableInput example) {}

    /**
     * @param withLot runs with a lot in them
     * @param low lower end of the 95 % interval of their share by Wilson, a fraction
     * @param ways best place first
     */
    public record Report(int clubs, int runs, long seed, int withLot, double low, double high, List<Found> ways) {
        public Report {
            ways = List.copyOf(ways);
        }

        public double share() {
            return (double) withLot / runs;
        }
    }

    /**
     * @param clubs 2 to {@value #MOST_CLUBS}, each meeting each once
     * @param runs 1 to {@value #MOST_RUNS}
     * @param seed the same seed gives the same report
     */
    public static Report of(Conditions conditions, int clubs, int runs, long seed) {
        if (clubs < 2 || clubs > MOST_CLUBS || runs < 1 || runs > MOST_RUNS) {
            throw new IllegalArgumentException(clubs + " clubs, " + runs + " runs");
        }
        Random random = new Random(seed);
        RandomTie ties = new RandomTie(conditions, random);
        TableRules rules = PoolTables.rules(conditions);
        Map<Way, Integer> times = new TreeMap<>();
        Map<Way, TableInput> examples = new TreeMap<>();
        int withLot = 0;
        for (int run = 0; run < runs; run++) {
            TableInput input = TableInput.of(clubs(clubs), pool(clubs, ties), rules);
            List<Way> ways = ways(Standings.of(input));
            withLot += ways.isEmpty() ? 0 : 1;
            ways.forEach(way -> {
                times.merge(way, 1, Integer::sum);
                examples.putIfAbsent(way, input);
            });
        }
        List<Found> found = new ArrayList<>();
        times.forEach((way, count) -> found.add(new Found(way, count, Objects.requireNonNull(examples.get(way)))));
        Share share = new Share(withLot, runs);
        return new Report(clubs, runs, seed, withLot, share.low(), share.high(), found);
    }

    private static List<ClubId> clubs(int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> ClubId.of(String.valueOf((char) ('A' + i))))
                .toList();
    }

    private static List<TieScore> pool(int count, RandomTie ties) {
        List<ClubId> clubs = clubs(count);
        List<TieScore> scores = new ArrayList<>();
        for (int home = 0; home < count; home++) {
            for (int away = home + 1; away < count; away++) {
                scores.add(
                        ties.play(TieId.of(clubs.get(home) + "-" + clubs.get(away)), clubs.get(home), clubs.get(away)));
            }
        }
        return scores;
    }

    private static List<Way> ways(Table table) {
        LinkedHashSet<Way> ways = new LinkedHashSet<>();
        table.lotsToDraw()
                .forEach(level ->
                        ways.add(new Way(table.row(level.get(0)).orElseThrow().place(), level.size())));
        return List.copyOf(ways);
    }
}
