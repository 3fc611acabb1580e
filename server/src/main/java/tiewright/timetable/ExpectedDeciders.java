package tiewright.timetable;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tiewright.conditions.TieRubbers;
import tiewright.event.Side;
import tiewright.event.TieId;
import tiewright.event.TieProgress;

/** How many ties are to be expected to need a decider, every rubber that is not over being even. */
final class ExpectedDeciders {
    private ExpectedDeciders() {}

    /**
     * Of these ties as each stands, to the nearest tenth: as it is said.
     *
     * @param standing empty for a tie that is not there any more, which needs none
     */
    static double of(List<PlanTie> ties, Function<TieId, Optional<TieProgress>> standing) {
        double expected = ties.stream()
                .flatMap(tie -> standing.apply(tie.id()).stream())
                .mapToDouble(ExpectedDeciders::chance)
                .sum();
        return Math.round(10 * expected) / 10.0;
    }

    private static double chance(TieProgress tie) {
        if (tie.awaitsDecider()) {
            return 1;
        }
        if (!tie.canComeToDecider() || tie.finished()) {
            return 0;
        }
        return level(
                tie.weightWon(Side.HOME) - tie.weightWon(Side.AWAY),
                Stream.concat(tie.left().stream(), tie.held().stream())
                        .mapToInt(rubber -> rubber.weight(tie.weights())));
    }

    /** Chance that a tie of these rubbers ends level when each is even. */
    static double levelChance(TieRubbers rubbers) {
        return level(0, IntStream.rangeClosed(1, rubbers.count()).map(rubbers.weights()::of));
    }

    /** The same where the one side is so much ahead and rubbers of these weights are open. */
    private static double level(int ahead, IntStream open) {
        int[] weights = open.toArray();
        int most = Math.abs(ahead) + IntStream.of(weights).sum();
        double[] chances = new double[2 * most + 1]; // of each lead, from -most on
        chances[most + ahead] = 1;
        for (int weight : weights) {
            double[] next = new double[chances.length];
            for (int lead = weight; lead < chances.length - weight; lead++) {
                next[lead - weight] += chances[lead] / 2;
                next[lead + weight] += chances[lead] / 2;
            }
            chances = next;
        }
        return chances[most];
    }

    /** A number as it is said: without tenths where there are none. */
    static Number said(double tenths) {
        return tenths == Math.rint(tenths) ? (Number) Math.round(tenths) : (Number) tenths;
    }
}
