package tiewright.rating;

import org.hipparchus.analysis.BivariateFunction;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/**
 * How widely forms and extras are spread, from the games: the spreads under which what was seen is most likely, forms and extras
 * themselves averaged out (the evidence of D. MacKay, Neural Computation 4, 1992, by Laplace's method; from memory), beside a
 * prior around the usual spreads, so that few games change little.
 */
final class Spreads {
    /** With fewer games the prior would speak alone. */
    static final int FEWEST_GAMES = 20;

    /** How far off the usual spreads may be, on the log scale (assumptions of ours): in nineteen of twenty clubs by a factor of 2.7 and 4. */
    private static final double FORM_DOUBT = 0.5;

    private static final double EXTRA_DOUBT = 0.7;

    private static final double MOST_DOUBTS = 3; // further off nobody is believed to be, whatever a few wild scores say
    private static final double REACH = 0.7; // on the log scale: what is seen from near the mode holds only nearby
    private static final double CLOSE_ENOUGH = 0.04; // likewise: far below the doubt that is left

    private final Stated stated;
    private final BivariateFunction evidence;

    /** @param evidence log chance of what was seen under spreads of forms and of extras, true near those that are looked from */
    Spreads(Stated stated, BivariateFunction evidence) {
        this.stated = stated;
        this.evidence = evidence;
    }

    /** The best spreads within reach of these, of forms first. */
    Assumptions nearer(Assumptions from) {
        double form = from.formSpread();
        double extra = from.extraSpread();
        if (stated.formSpread().isEmpty()) {
            form = best(
                    form,
                    Assumptions.USUAL_FORM_SPREAD,
                    FORM_DOUBT,
                    spread -> evidence.value(spread, from.extraSpread()));
        }
        if (stated.extraSpread().isEmpty()) {
            double found = form;
            extra = best(extra, Assumptions.USUAL_EXTRA_SPREAD, EXTRA_DOUBT, spread -> evidence.value(found, spread));
        }
        return from.withSpreads(form, extra);
    }

    private static double best(double from, double usual, double doubt, UnivariateFunction evidence) {
        double now = Math.log(from / usual);
        double least = Math.max(now - REACH, -MOST_DOUBTS * doubt);
        double most = Math.min(now + REACH, MOST_DOUBTS * doubt);
        double found = new BrentOptimizer(1e-3, CLOSE_ENOUGH)
                .optimize(
                        MaxEval.unlimited(),
                        new UnivariateObjectiveFunction(
                                step -> evidence.value(usual * Math.exp(step)) - step * step / (2 * doubt * doubt)),
                        GoalType.MAXIMIZE,
                        new SearchInterval(least, most, Math.min(Math.max(now, least), most)))
                .getPoint();
        return usual * Math.exp(found);
    }

    /** Whether another look would change nothing. */
    static boolean settled(Assumptions before, Assumptions now) {
        return near(before.formSpread(), now.formSpread()) && near(before.extraSpread(), now.extraSpread());
    }

    private static boolean near(double before, double now) {
        return Math.abs(before - now) <= 2 * CLOSE_ENOUGH * now;
    }
}
