package tiewright.lineup.day;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import tiewright.event.PlayerId;
import tiewright.event.TieId;
import tiewright.lineup.Freshness;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Squad;

/**
 * One club's ties that are still ahead today, and what the captain wants of the day as a whole.
 *
 * @param ties in the order in which they are played; the same club in each
 * @param before what players have behind them when the first of these begins; nobody named = nothing
 */
public record DayProblem(List<Ahead> ties, Map<PlayerId, Before> before, Wanted wanted, Freshness.Cost tired) {
    private static final Before NOTHING = new Before(0, OptionalInt.empty(), 0);

    /** What a bit of learning is worth as a chance, in a tie on which nothing hangs: an assumption of ours. */
    static final double BIT = 0.01;

    public DayProblem {
        ties = List.copyOf(ties);
        before = Map.copyOf(before);
        Set<TieId> seen = new HashSet<>();
        for (int i = 0; i < ties.size(); i++) {
            if (!seen.add(ties.get(i).id())
                    || i > 0 && ties.get(i).starts() < ties.get(i - 1).starts()) {
                throw new IllegalArgumentException("ties come once each, in the order in which they are played");
            }
        }
    }

    /**
     * A tie ahead.
     *
     * @param problem everybody rested: what the day takes out of players is worked out by the plan
     * @param weight how much hangs on it, 0 to 1; where nothing does, what it teaches counts instead
     * @param starts minutes of the day
     */
    public record Ahead(TieId id, LineupProblem problem, double weight, int starts) {
        public Ahead {
            if (!(weight >= 0 && weight <= 1)) {
                throw new IllegalArgumentException("a tie weighs 0 to 1, not " + weight);
            }
            problem = problem.after(new Freshness(Map.of(), problem.freshness().cost()));
        }
    }

    /**
     * What a player has behind.
     *
     * @param lastEnded minute of the day when the last rubber ended; empty = long ago
     * @param inARow ties in a row, counted back from now, in which the player was named
     */
    public record Before(int rubbers, OptionalInt lastEnded, int inARow) {}

    /**
     * What the captain wants, before the chances.
     *
     * @param floor rubbers for everybody by the end of these ties, those before counted; 0 = nothing promised
     * @param promised rubbers that single players are to have by the end of these ties, where that is more
     * @param mostInARow ties in a row that anybody may be named for; 0 = any number
     * @param learning what nobody knows well is tried in ties on which little hangs
     */
    public record Wanted(int floor, Map<PlayerId, Integer> promised, int mostInARow, boolean learning) {
        public static final Wanted CHANCES_ONLY = new Wanted(0, Map.of(), 0, false);

        public Wanted {
            promised = Map.copyOf(promised);
            if (floor < 0 || mostInARow < 0 || promised.values().stream().anyMatch(rubbers -> rubbers < 0)) {
                throw new IllegalArgumentException("promises are 0 rubbers or more");
            }
        }

        int floor(PlayerId player) {
            return Math.max(floor, promised.getOrDefault(player, 0));
        }
    }

    Before before(PlayerId player) {
        return before.getOrDefault(player, NOTHING);
    }

    /** Everybody of the club who is here for at least one of the ties. */
    List<PlayerId> players() {
        return ties.stream()
                .flatMap(tie -> tie.problem().ours().present().stream())
                .map(Squad.Member::id)
                .distinct()
                .toList();
    }
}
