package tiewright.sheet;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import tiewright.conditions.Conditions;
import tiewright.conditions.OrderOfStrength;
import tiewright.conditions.Plays;
import tiewright.conditions.RubberKind;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;

/**
 * Whether a sheet filled so far can still be filled by the rules: as full as the squad allows, nobody too often, each where
 * the kind of the rubber lets them, in order of strength. Tries the seats from the top; after {@value #MOST_STEPS} steps without an answer it says yes, so that
 * nothing legal is ever forbidden.
 */
final class Completion {
    private static final int MOST_STEPS = 20_000;
    private static final int FREE = -1;

    private final List<PlayerId> here;
    private final int[] ranks;
    private final List<Optional<Plays>> plays;
    private final int most;
    private final OrderOfStrength order;
    private final List<RubberNo> rubbers;
    private final List<RubberKind> kinds;
    private final boolean areOpen;
    private int[][] seats = new int[0][];
    private int[] named = new int[0];
    private final Map<RubberKind, List<Integer>> sums = new EnumMap<>(RubberKind.class);
    private int steps;

    Completion(Squad squad, Conditions conditions) {
        this.here = squad.here();
        this.ranks = here.stream().mapToInt(squad::rank).toArray();
        this.most = conditions.maxRubbersPerPlayer();
        this.order = conditions.orderOfStrength();
        this.plays = here.stream().map(squad::plays).toList();
        this.rubbers = squad.fillable().stream().map(RubberNo::of).toList();
        this.kinds = rubbers.stream().map(squad::kind).toList();
        this.areOpen = conditions.tieRubbers().kinds().areOpen();
    }

    boolean exists(Map<RubberNo, List<PlayerId>> soFar) {
        if (!areOpen && isNamedElsewhere(soFar)) {
            return false;
        }
        seats = new int[rubbers.size()][];
        named = new int[ranks.length];
        steps = 0;
        for (int i = 0; i < rubbers.size(); i++) {
            List<PlayerId> players = soFar.getOrDefault(rubbers.get(i), List.of());
            seats[i] = new int[] {seat(players, 0), seat(players, 1)};
        }
        sums.clear();
        for (RubberKind kind : RubberKind.values()) {
            sums.put(kind, new ArrayList<>());
        }
        return fill(0);
    }

    /** With a pair in a rubber that stays empty on the fullest sheets, fewer can be filled. */
    private boolean isNamedElsewhere(Map<RubberNo, List<PlayerId>> soFar) {
        return soFar.entrySet().stream()
                .anyMatch(named -> !named.getValue().isEmpty() && !rubbers.contains(named.getKey()));
    }

    private int seat(List<PlayerId> players, int seat) {
        int player = seat < players.size() ? here.indexOf(players.get(seat)) : FREE;
        if (player != FREE) {
            named[player]++;
        }
        return player;
    }

    private boolean fill(int rubber) {
        if (rubber == rubbers.size() || ++steps > MOST_STEPS) {
            return true;
        }
        int[] pair = seats[rubber];
        for (int one = 0; one < ranks.length; one++) {
            if (!fits(pair[0], one)) {
                continue;
            }
            for (int other = pair[1] == FREE && pair[0] == FREE ? one + 1 : 0; other < ranks.length; other++) {
                if (other != one && fits(pair[1], other) && goesOn(rubber, one, other)) {
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

    private boolean goesOn(int rubber, int one, int other) {
        if (!kinds.get(rubber).admits(plays.get(one), plays.get(other))) {
            return false;
        }
        int[] pair = seats[rubber];
        List<Integer> alike = Objects.requireNonNull(sums.get(kinds.get(rubber)));
        alike.add(ranks[one] + ranks[other]);
        named[one] += pair[0] == FREE ? 1 : 0;
        named[other] += pair[1] == FREE ? 1 : 0;
        boolean found = StrengthOrder.isKept(order, alike) && fill(rubber + 1);
        named[one] -= pair[0] == FREE ? 1 : 0;
        named[other] -= pair[1] == FREE ? 1 : 0;
        alike.remove(alike.size() - 1);
        return found;
    }
}
