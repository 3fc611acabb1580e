package tiewright.lineup;

import java.util.Map;
import java.util.OptionalInt;
import tiewright.event.Pair;
import tiewright.event.PlayerId;

/**
 * How much of their strength players have left when a tie begins, in rallies per 100.
 *
 * <p>A player loses {@code noRest} when walking from one rubber into the next, less in proportion to the rest, nothing
 * after {@code restMinutes}; and {@code perRubber} for every rubber of the day beyond the first {@code freeRubbers}. The form
 * and the figures are an assumption of ours: a study of three matches on one day (IJPAS 2018, second-hand; six juniors) says
 * only that serving and agility get worse.
 *
 * @param loads what players have behind them; nobody named = rested
 */
public record Freshness(Map<PlayerId, Load> loads, Cost cost) {
    /** Minutes that a rubber takes, for those who sit out while others play. */
    public static final int RUBBER_MINUTES = 15;

    private static final Load RESTED = new Load(0, OptionalInt.empty());

    /**
     * What a player has behind.
     *
     * @param rubbers played today
     * @param minutes since the last of them; empty = long enough
     */
    public record Load(int rubbers, OptionalInt minutes) {
        public Load {
            if (rubbers < 0 || minutes.isPresent() && minutes.getAsInt() < 0) {
                throw new IllegalArgumentException(
                        "nobody has played " + rubbers + " rubbers " + minutes + " minutes ago");
            }
        }
    }

    /** What it costs. */
    public record Cost(double noRest, int restMinutes, double perRubber, int freeRubbers) {
        public static final Cost USUAL = new Cost(1.5, 30, 0.3, 3);

        /** For captains who do not believe in it. */
        public static final Cost NONE = new Cost(0, 30, 0, 0);

        public Cost {
            if (!(noRest >= 0 && perRubber >= 0) || restMinutes < 1 || freeRubbers < 0) {
                throw new IllegalArgumentException("tiredness costs 0 or more");
            }
        }

        public double loss(Load load) {
            double missing = load.minutes().isPresent()
                    ? Math.max(0, 1 - (double) load.minutes().getAsInt() / restMinutes)
                    : 0;
            return noRest * missing + perRubber * Math.max(0, load.rubbers() - freeRubbers);
        }
    }

    public Freshness {
        loads = Map.copyOf(loads);
    }

    public static Freshness rested() {
        return new Freshness(Map.of(), Cost.USUAL);
    }

    public Load load(PlayerId player) {
        return loads.getOrDefault(player, RESTED);
    }

    /** When the tie begins. */
    public double loss(PlayerId player) {
        return cost.loss(load(player));
    }

    /** A pair is as tired as the mean of its two players. */
    public double loss(Pair pair) {
        return (loss(pair.first()) + loss(pair.second())) / 2;
    }

    /** In the decider, for somebody who has just played a rubber of the tie or sat out. */
    public double lossInDecider(PlayerId player, boolean hasPlayed) {
        Load before = load(player);
        if (hasPlayed) {
            return cost.loss(new Load(before.rubbers() + 1, OptionalInt.of(0)));
        }
        OptionalInt rest = before.minutes().isPresent()
                ? OptionalInt.of(before.minutes().getAsInt() + RUBBER_MINUTES)
                : OptionalInt.empty();
        return cost.loss(new Load(before.rubbers(), rest));
    }
}
