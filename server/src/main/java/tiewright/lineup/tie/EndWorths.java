package tiewright.lineup.tie;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import tiewright.conditions.DeciderKind;
import tiewright.lineup.Aim;
import tiewright.lineup.DrawnChance;
import tiewright.lineup.SomeDraws;
import tiewright.lineup.TieRules;

/**
 * What each way of ending the rubbers is worth under an aim, laid out for fast counting. Rubbers come as our chance in each,
 * rubber 1 first; one that is {@link #VOID} counts for nobody.
 */
public abstract sealed class EndWorths permits EqualEnds, WeighedEnds {
    /** In place of a chance: neither club has a pair. */
    public static final double VOID = -1;

    private static final DrawnChance VOID_IN_EACH_DRAW = DrawnChance.surely(VOID);

    public static EndWorths of(Aim aim, TieRules rules) {
        return of(end -> aim.worth(end, rules.drawWorth()), rules, rules.decider() != DeciderKind.NONE);
    }

    /** Level rubbers are worth one, anything else nothing: the mean is the chance that they finish level. */
    static EndWorths level(TieRules rules) {
        return of(end -> end.lead() == 0 ? 1 : 0, rules, false);
    }

    private static EndWorths of(ToDoubleFunction<Aim.Ended> worth, TieRules rules, boolean hasDecider) {
        return rules.each().weights().areEqual()
                ? new EqualEnds(worth, rules.rubbers(), hasDecider)
                : new WeighedEnds(worth, rules.each(), hasDecider);
    }

    static DrawnChance voided() {
        return VOID_IN_EACH_DRAW;
    }

    static boolean isVoid(double chance) {
        return chance < 0;
    }

    static boolean isVoid(DrawnChance chance) {
        return isVoid(chance.mean());
    }

    /**
     * The mean over how the tie may end.
     *
     * @param decider our chance in the decider
     */
    public abstract double mean(double[] rubbers, double decider);

    /** The same in each of these draws, all rubbers and the decider in the same world. */
    abstract double[] each(DrawnChance[] rubbers, DrawnChance decider, SomeDraws draws);

    /** Put between the least and the most that any end of these rubbers is worth: no mean lies outside. */
    abstract double within(DrawnChance[] rubbers, double mean);

    double meanOfMeans(DrawnChance[] rubbers, DrawnChance decider) {
        return mean(Arrays.stream(rubbers).mapToDouble(DrawnChance::mean).toArray(), decider.mean());
    }

    double meanOfAverages(DrawnChance[] rubbers, DrawnChance decider, SomeDraws draws) {
        return mean(
                Arrays.stream(rubbers)
                        .mapToDouble(rubber -> isVoid(rubber) ? VOID : rubber.average(draws))
                        .toArray(),
                decider.average(draws));
    }

    static void addTo(double[] sum, double[] what, double times) {
        for (int i = 0; times != 0 && i < sum.length; i++) {
            sum[i] += times * what[i];
        }
    }
}
