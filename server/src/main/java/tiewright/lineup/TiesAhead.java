package tiewright.lineup;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tiewright.event.PlayerId;

/**
 * How many rubbers that players want can several ties give together?
 *
 * <p>The most that flows from the players through the ties, each with its places and with what it can give one player; by the
 * theorem of the smallest cut (Ford and Fulkerson 1956) the least over all choices of ties whose places are cut. Ties that can
 * give the same are counted, not told apart, so that there are few choices.
 */
public final class TiesAhead {
    private final List<Cut> cuts = new ArrayList<>();
    private final int[] most;

    /**
     * One choice of ties to cut.
     *
     * @param places in the ties cut
     * @param most that each player can have in the others
     */
    private record Cut(int places, int[] most) {}

    public TiesAhead(List<TiePlaces> ties, List<PlayerId> players) {
        Map<TiePlaces, Integer> kinds = new LinkedHashMap<>();
        ties.forEach(tie -> kinds.merge(tie, 1, Integer::sum));
        cuts.add(new Cut(0, new int[players.size()]));
        kinds.forEach((tie, count) -> split(tie, count, players));
        this.most = cuts.get(0).most();
    }

    /** Of so many like ties none, one, … or all are cut; the first choice of all stays the one without any. */
    private void split(TiePlaces tie, int count, List<PlayerId> players) {
        List<Cut> before = List.copyOf(cuts);
        cuts.clear();
        for (int cut = 0; cut <= count; cut++) {
            for (Cut one : before) {
                int[] others = one.most().clone();
                for (int player = 0; player < others.length; player++) {
                    others[player] += (count - cut) * tie.most(players.get(player));
                }
                cuts.add(new Cut(one.places() + cut * tie.all(), others));
            }
        }
    }

    /** The most that one player can have, were there nobody else. */
    public int most(int player) {
        return most[player];
    }

    /** How many of the rubbers wanted, by player, cannot be given however the places are shared out. */
    public int lost(int[] wanted) {
        int all = 0;
        for (int rubbers : wanted) {
            all += rubbers;
        }
        return all - given(wanted);
    }

    private int given(int[] wanted) {
        int least = Integer.MAX_VALUE;
        for (Cut cut : cuts) {
            int sum = cut.places();
            for (int player = 0; player < wanted.length; player++) {
                sum += Math.min(wanted[player], cut.most()[player]);
            }
            least = Math.min(least, sum);
        }
        return least;
    }
}
