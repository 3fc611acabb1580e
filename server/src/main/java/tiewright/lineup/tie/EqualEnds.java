package tiewright.lineup.tie;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import tiewright.lineup.Aim;
import tiewright.lineup.DrawnChance;
import tiewright.lineup.SomeDraws;

/** Rubbers that weigh the same: only how many are won counts. */
final class EqualEnds extends EndWorths {
    private final boolean hasDecider;
    private final double[][] ends; // by rubbers that count and rubbers won
    private final double[] ifDeciderWon; // by rubbers that count, which are level
    private final double[] ifDeciderLost;

    EqualEnds(ToDoubleFunction<Aim.Ended> worth, int rubbers, boolean hasDecider) {
        this.hasDecider = hasDecider;
        this.ends = new double[rubbers + 1][];
        this.ifDeciderWon = new double[rubbers + 1];
        this.ifDeciderLost = new double[rubbers + 1];
        for (int counted = 0; counted < ends.length; counted++) {
            ends[counted] = new double[counted + 1];
            for (int won = 0; won <= counted; won++) {
                ends[counted][won] = worth.applyAsDouble(new Aim.Ended(won, counted - won));
            }
            int half = counted / 2;
            ifDeciderWon[counted] = worth.applyAsDouble(new Aim.Ended(half + 1, half));
            ifDeciderLost[counted] = worth.applyAsDouble(new Aim.Ended(half, half + 1));
        }
    }

    @Override
    public double mean(double[] rubbers, double decider) {
        double[] wins = TieOdds.wins(counted(rubbers));
        int counted = wins.length - 1;
        double[] worths = ends[counted];
        double sum = 0;
        for (int won = 0; won <= counted; won++) {
            sum += wins[won] * worths[won];
        }
        if (isDecided(counted)) {
            int half = counted / 2;
            double level = decider * ifDeciderWon[counted] + (1 - decider) * ifDeciderLost[counted];
            sum += wins[half] * (level - worths[half]);
        }
        return sum;
    }

    private static double[] counted(double[] rubbers) {
        int counted = 0;
        double[] kept = new double[rubbers.length];
        for (double rubber : rubbers) {
            if (!isVoid(rubber)) {
                kept[counted++] = rubber;
            }
        }
        return counted == rubbers.length ? kept : Arrays.copyOf(kept, counted);
    }

    private boolean isDecided(int counted) {
        return hasDecider && counted % 2 == 0;
    }

    @Override
    double[] each(DrawnChance[] rubbers, DrawnChance decider, SomeDraws draws) {
        double[][] wins = wins(rubbers, draws);
        int counted = wins.length - 1;
        double[] worth = new double[draws.count()];
        for (int won = 0; won <= counted; won++) {
            addTo(worth, wins[won], ends[counted][won]);
        }
        if (isDecided(counted)) {
            double[] level = wins[counted / 2];
            double[] ours = decider.draws();
            double lost = ifDeciderLost[counted] - ends[counted][counted / 2];
            double more = ifDeciderWon[counted] - ifDeciderLost[counted];
            int from = draws.from();
            for (int i = 0; i < worth.length; i++) {
                worth[i] += level[i] * (lost + more * ours[from + i]);
            }
        }
        return worth;
    }

    /** The chance of each number of rubbers won, in each of these draws: a row for each number. */
    private static double[][] wins(DrawnChance[] all, SomeDraws draws) {
        DrawnChance[] rubbers =
                Arrays.stream(all).filter(rubber -> !isVoid(rubber)).toArray(DrawnChance[]::new);
        double[][] wins = new double[rubbers.length + 1][draws.count()];
        int from = draws.from();
        Arrays.fill(wins[0], 1);
        for (int rubber = 0; rubber < rubbers.length; rubber++) {
            double[] chance = rubbers[rubber].draws();
            for (int won = rubber + 1; won > 0; won--) {
                double[] here = wins[won];
                double[] before = wins[won - 1];
                for (int i = 0; i < here.length; i++) {
                    here[i] += (before[i] - here[i]) * chance[from + i];
                }
            }
            double[] none = wins[0];
            for (int i = 0; i < none.length; i++) {
                none[i] *= 1 - chance[from + i];
            }
        }
        return wins;
    }

    @Override
    double within(DrawnChance[] rubbers, double mean) {
        int counted =
                (int) Arrays.stream(rubbers).filter(rubber -> !isVoid(rubber)).count();
        double decider = isDecided(counted) ? ifDeciderWon[counted] : ends[counted][0];
        double orLost = isDecided(counted) ? ifDeciderLost[counted] : ends[counted][0];
        double least = Math.min(
                Math.min(decider, orLost), Arrays.stream(ends[counted]).min().orElseThrow());
        double most = Math.max(
                Math.max(decider, orLost), Arrays.stream(ends[counted]).max().orElseThrow());
        return Math.max(least, Math.min(most, mean));
    }
}
