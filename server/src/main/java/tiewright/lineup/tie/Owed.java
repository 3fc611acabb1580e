package tiewright.lineup.tie;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.lineup.PlayingTime;
import tiewright.lineup.TiesAhead;

/**
 * How many promised rubbers does a sheet leave that can no longer be played by when they were promised? What is missing to the
 * floor of this tie, and of the promises for the day what the other ties ahead cannot give, however their places are shared out.
 */
final class Owed {
    private static final int NOBODY = -1;

    private final List<PlayerId> players;
    private final int[] floor; // missing so far to the floor of this tie
    private final int[] promise; // missing so far to the promise for the day
    private final int[] wanted; // the larger of the two
    private final int[] here; // the most that this tie can give each
    private final int[][] seats; // the two players of each pair by number
    private final TiesAhead others;
    private final boolean binds;

    /**
     * @param present who can be named in this tie
     * @param each rubbers that one player may play in it
     */
    Owed(PlayingTime time, List<PlayerId> present, List<Pair> pairs, int each) {
        Set<PlayerId> owed = new LinkedHashSet<>(present);
        owed.removeIf(player -> time.toFloor(player) == 0);
        time.promised().keySet().stream()
                .filter(player -> time.toPromise(player) > 0)
                .sorted()
                .forEach(owed::add);
        this.players = List.copyOf(owed);
        this.floor = numbers(player -> present.contains(players.get(player)) ? time.toFloor(players.get(player)) : 0);
        this.promise = numbers(player -> time.toPromise(players.get(player)));
        this.wanted = numbers(player -> Math.max(floor[player], promise[player]));
        this.here = numbers(player -> present.contains(players.get(player)) ? each : 0);
        this.seats = pairs.stream()
                .map(pair -> new int[] {players.indexOf(pair.first()), players.indexOf(pair.second())})
                .toArray(int[][]::new);
        this.others = new TiesAhead(time.others(), players);
        this.binds = missing(floor, wanted)
                > missing(
                        numbers(player -> Math.max(0, floor[player] - here[player])),
                        numbers(player -> Math.max(0, wanted[player] - here[player])));
    }

    private int[] numbers(IntUnaryOperator number) {
        return IntStream.range(0, players.size()).map(number).toArray();
    }

    /** It can matter to the promises who is named. */
    boolean binds() {
        return binds;
    }

    /** Rubbers that this sheet leaves unkept. */
    int missing(int[] line) {
        return players.isEmpty() ? 0 : missing(left(floor, line), left(wanted, line));
    }

    private int missing(int[] now, int[] all) {
        int[] canWait = new int[all.length];
        int missing = 0;
        for (int player = 0; player < all.length; player++) {
            missing += now[player];
            canWait[player] = all[player] - now[player];
        }
        return missing + others.lost(canWait);
    }

    /** Of these, what was to be played by the end of this tie. */
    int missingToFloor(int[] line) {
        return IntStream.of(left(floor, line)).sum();
    }

    /** What the sheet takes from the promise to each player, whom it does not name often enough; nobody named = nothing. */
    Map<PlayerId, Integer> lost(int[] line) {
        int[] left = left(promise, line);
        return byPlayer(player -> Math.max(0, left[player] - others.most(player)) - hopeless(player));
    }

    /** What cannot be kept of the promise to each player, whatever is named. */
    Map<PlayerId, Integer> hopeless() {
        return byPlayer(this::hopeless);
    }

    private int hopeless(int player) {
        return Math.max(0, promise[player] - here[player] - others.most(player));
    }

    /** What this tie has to give each player for the promise to be kept. */
    Map<PlayerId, Integer> due() {
        return byPlayer(player -> Math.min(here[player], Math.max(0, promise[player] - others.most(player))));
    }

    /** Rubbers that several are promised beyond the places in the other ties, although each alone could have them. */
    int lostTogether(int[] line) {
        int[] now = left(floor, line);
        int[] all = left(wanted, line);
        int alone = IntStream.range(0, all.length)
                .map(player -> now[player] + Math.max(0, all[player] - now[player] - others.most(player)))
                .sum();
        return missing(now, all) - alone;
    }

    /** What is still missing after the sheet to what each player is promised for the day. */
    Map<PlayerId, Integer> after(int[] line) {
        int[] left = left(promise, line);
        return byPlayer(player -> left[player]);
    }

    /** The most that the other ties can give somebody who is owed something. */
    int elsewhere(PlayerId player) {
        return others.most(players.indexOf(player));
    }

    private Map<PlayerId, Integer> byPlayer(IntUnaryOperator rubbers) {
        Map<PlayerId, Integer> all = new TreeMap<>();
        for (int player = 0; player < players.size(); player++) {
            if (rubbers.applyAsInt(player) > 0) {
                all.put(players.get(player), rubbers.applyAsInt(player));
            }
        }
        return all;
    }

    private static void take(int[] left, int player) {
        if (player != NOBODY && left[player] > 0) {
            left[player]--;
        }
    }

    private int[] left(int[] before, int[] line) {
        int[] left = before.clone();
        for (int pair : line) {
            if (pair != Board.EMPTY) {
                take(left, seats[pair][0]);
                take(left, seats[pair][1]);
            }
        }
        return left;
    }
}
