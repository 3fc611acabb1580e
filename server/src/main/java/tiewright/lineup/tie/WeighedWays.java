package tiewright.lineup.tie;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import tiewright.lineup.Aim;
import tiewright.lineup.DrawnChance;
import tiewright.lineup.SomeDraws;

/**
 * The different ends to which weighed rubbers can come, and how: after each rubber a list of the ends so far, and for each of
 * them where winning and losing the next one leads.
 *
 * @param won by rubber and end so far: the end after winning it
 * @param ends after the last rubber
 */
record WeighedWays(List<int[]> won, List<int[]> lost, List<Aim.Ended> ends) {

    /** @param weights of the rubbers that count, in order */
    static WeighedWays of(int[] weights) {
        List<int[]> won = new ArrayList<>();
        List<int[]> lost = new ArrayList<>();
        List<Aim.Ended> ends = List.of(new Aim.Ended(0, 0, 0));
        for (int weight : weights) {
            List<Aim.Ended> next = new ArrayList<>();
            won.add(ends.stream()
                    .mapToInt(end -> number(new Aim.Ended(end.ours() + 1, end.theirs(), end.lead() + weight), next))
                    .toArray());
            lost.add(ends.stream()
                    .mapToInt(end -> number(new Aim.Ended(end.ours(), end.theirs() + 1, end.lead() - weight), next))
                    .toArray());
            ends = next;
        }
        return new WeighedWays(won, lost, List.copyOf(ends));
    }

    private static int number(Aim.Ended end, List<Aim.Ended> known) {
        if (!known.contains(end)) {
            known.add(end);
        }
        return known.indexOf(end);
    }

    private int endsAfter(int rubbers) {
        return rubbers == won.size() ? ends.size() : won.get(rubbers).length;
    }

    /**
     * The chance of each end.
     *
     * @param chances of all rubbers, void ones among them, which are passed over
     */
    double[] chances(double[] chances) {
        double[] now = {1};
        int rubber = 0;
        for (double chance : chances) {
            if (EndWorths.isVoid(chance)) {
                continue;
            }
            if (!(chance <= 1)) {
                throw new IllegalArgumentException("a chance is 0 to 1, not " + chance);
            }
            double[] next = new double[endsAfter(rubber + 1)];
            for (int end = 0; end < now.length; end++) {
                next[won.get(rubber)[end]] += now[end] * chance;
                next[lost.get(rubber)[end]] += now[end] * (1 - chance);
            }
            now = next;
            rubber++;
        }
        return now;
    }

    /** The same in each of these draws: a row for each end. */
    double[][] chances(DrawnChance[] chances, SomeDraws draws) {
        double[][] now = new double[1][draws.count()];
        Arrays.fill(now[0], 1);
        int rubber = 0;
        for (DrawnChance chance : chances) {
            if (EndWorths.isVoid(chance)) {
                continue;
            }
            now = after(rubber, now, chance.draws(), draws);
            rubber++;
        }
        return now;
    }

    private double[][] after(int rubber, double[][] now, double[] chance, SomeDraws draws) {
        double[][] next = new double[endsAfter(rubber + 1)][draws.count()];
        int from = draws.from();
        for (int end = 0; end < now.length; end++) {
            double[] ifWon = next[won.get(rubber)[end]];
            double[] ifLost = next[lost.get(rubber)[end]];
            for (int i = 0; i < ifWon.length; i++) {
                ifWon[i] += now[end][i] * chance[from + i];
                ifLost[i] += now[end][i] * (1 - chance[from + i]);
            }
        }
        return next;
    }
}
