package tiewright.lineup.tie;

import java.util.HashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import tiewright.conditions.TieRubbers;
import tiewright.lineup.Aim;
import tiewright.lineup.DrawnChance;
import tiewright.lineup.SomeDraws;

/** Rubbers of different weights: how many are won counts, and what they weigh together. Not for two threads at once. */
final class WeighedEnds extends EndWorths {
    private final ToDoubleFunction<Aim.Ended> worth;
    private final TieRubbers rubbers;
    private final boolean hasDecider;
    private final Map<Integer, Laid> byCounted = new HashMap<>();

    WeighedEnds(ToDoubleFunction<Aim.Ended> worth, TieRubbers rubbers, boolean hasDecider) {
        this.worth = worth;
        this.rubbers = rubbers;
        this.hasDecider = hasDecider;
    }

    /**
     * The ends of those rubbers that count.
     *
     * @param ifLost what each end is worth; where a decider follows, when it is lost
     * @param more how much more it is worth when the decider is won; 0 where none follows
     */
    private record Laid(WeighedWays ways, double[] ifLost, double[] more) {
        /** What each end is worth, whoever wins the decider. */
        private DoubleStream ends() {
            return IntStream.range(0, more.length)
                    .boxed()
                    .flatMapToDouble(end -> DoubleStream.of(ifLost[end], ifLost[end] + more[end]));
        }

        double least() {
            return ends().min().orElseThrow();
        }

        double most() {
            return ends().max().orElseThrow();
        }
    }

    @Override
    public double mean(double[] chances, double decider) {
        Laid laid = laid(rubber -> chances[rubber]);
        double[] ends = laid.ways().chances(chances);
        double sum = 0;
        for (int end = 0; end < ends.length; end++) {
            sum += ends[end] * (laid.ifLost()[end] + decider * laid.more()[end]);
        }
        return sum;
    }

    @Override
    double[] each(DrawnChance[] chances, DrawnChance decider, SomeDraws draws) {
        Laid laid = laid(rubber -> chances[rubber].mean());
        double[][] ends = laid.ways().chances(chances, draws);
        double[] worths = new double[draws.count()];
        for (int end = 0; end < ends.length; end++) {
            addTo(worths, ends[end], laid.ifLost()[end]);
            double more = laid.more()[end];
            for (int i = 0; more != 0 && i < worths.length; i++) {
                worths[i] += ends[end][i] * more * decider.draws()[draws.from() + i];
            }
        }
        return worths;
    }

    @Override
    double within(DrawnChance[] chances, double mean) {
        Laid laid = laid(rubber -> chances[rubber].mean());
        return Math.max(laid.least(), Math.min(laid.most(), mean));
    }

    private Laid laid(java.util.function.IntToDoubleFunction chance) {
        int counted = 0;
        for (int rubber = 0; rubber < rubbers.count(); rubber++) {
            counted |= isVoid(chance.applyAsDouble(rubber)) ? 0 : 1 << rubber;
        }
        return byCounted.computeIfAbsent(counted, this::lay);
    }

    private Laid lay(int counted) {
        WeighedWays ways = WeighedWays.of(IntStream.range(0, rubbers.count())
                .filter(rubber -> (counted >> rubber & 1) == 1)
                .map(rubber -> rubbers.weights().of(rubber + 1))
                .toArray());
        double[] ifLost = new double[ways.ends().size()];
        double[] more = new double[ifLost.length];
        for (int i = 0; i < ifLost.length; i++) {
            Aim.Ended end = ways.ends().get(i);
            ifLost[i] = worth.applyAsDouble(end);
            if (hasDecider && end.lead() == 0) {
                ifLost[i] = worth.applyAsDouble(end.and(0, 1));
                more[i] = worth.applyAsDouble(end.and(1, 0)) - ifLost[i];
            }
        }
        return new Laid(ways, ifLost, more);
    }
}
