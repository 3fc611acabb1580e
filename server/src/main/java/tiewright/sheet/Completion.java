package tiewright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import tiewright.conditions.Conditions;
import tiewright.conditions.OrderOfStrength;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;

/**
 * Whether a sheet filled so far can still be filled by the rules: as full as the squad allows, nobody too often, in order
 * of strength. Tries the seats from the top; after {@value #MOST_STEPS} steps without an answer it says yes, so that
 * nothing legal is ever forbidden.
 */
final class Completion {
    private static final int MOST_STEPS = 20_000;
    private static final int FREE = -1;

    private final List<PlayerId> here;
    private final int[] ranks;
    private final int most;
    private final OrderOfStrength order;
    private final int pairs;
    private int[][] seats = new int[0][];
    private int[] named = new int[0];
    private int steps;

    Completion(Squad squad, Conditions conditions) {
        this.here = squad.here();
        this.ranks = here.stream().mapToInt(squad::rank).toArray();
        this.most = conditions.maxRubbersPerPlayer();
        this.order = conditions.orderOfStrength();
        this.pairs = StrengthOrder.fullest(here.size(), most, conditions.rubbers());
    }

    boolean exists(Map<RubberNo, List<PlayerId>> soFar) {
        seats = new int[pairs][];
        named = new int[ranks.length];
        steps = 0;
        SortedMap<RubberNo, List<PlayerId>> inOrder = new TreeMap<>(soFar);
        for (int i = 0; i < pairs; i++) {
            List<PlayerId> players = inOrder.getOrDefault(RubberNo.of(i + 1), List.of());
            seats[i] = new int[] {seat(players, 0), seat(players, 1)};
        }
        return fill(0, new ArrayList<>());
    }

    private int seat(List<PlayerId> players, int seat) {
        int player = seat < players.size() ? here.indexOf(players.get(seat)) : FREE;
        if (player != FREE) {
            named[player]++;
        }
        return player;
    }

    private boolean fill(int rubber, List<Integer> sums) {
        if (rubber == pairs || ++steps > MOST_STEPS) {
            return true;
        }
        int[] pair = seats[rubber];
        for (int one = 0; one < ranks.length; one++) {
            if (!fits(pair[0], one)) {
                continue;
            }
            for (int other = pair[1] == FREE && pair[0] == FREE ? one + 1 : 0; other < ranks.length; other++) {
                if (other != one && fits(pair[1], other) && goesOn(rubber, one, other, sums)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The seat is taken by this player, or free and the player may play once more. */
    private boolean fits(int seat, int player) {
        return seat == FREE ? named[player] < most : seat == player;
    }

    private boolean goesOn(int rubber, int one, int other, List<Integer> sums) {
        int[] pair = seats[rubber];
        sums.add(ranks[one] + ranks[other]);
        named[one] += pair[0] == FREE ? 1 : 0;
        named[other] += pair[1] == FREE ? 1 : 0;
        boolean found = StrengthOrder.isKept(order, sums) && fill(rubber + 1, sums);
        named[one] -= pair[0] == FREE ? 1 : 0;
        named[other] -= pair[1] == FREE ? 1 : 0;
        sums.remove(sums.size() - 1);
        return found;
    }
}
