package tiewright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.IntStream;
import tiewright.conditions.OrderOfStrength;
import tiewright.conditions.Plays;
import tiewright.conditions.RubberKind;
import tiewright.conditions.TieRubbers;

/**
 * Which rubbers of a tie a squad fills: the most that can be filled, and of equally many those that fill the first rubbers. A
 * rubber that nobody present may fill stays empty, wherever it stands.
 */
public final class Fillable {
    private Fillable() {}

    /**
     * @param plays what each player present plays in beside open rubbers
     * @param most rubbers that one player may stand in
     * @return numbers of rubbers, from 1
     */
    public static SortedSet<Integer> of(List<Optional<Plays>> plays, int most, TieRubbers rubbers) {
        int fullest = StrengthOrder.fullest(plays.size(), most, rubbers.count());
        if (rubbers.kinds().areOpen()) {
            return new TreeSet<>(IntStream.rangeClosed(1, fullest).boxed().toList());
        }
        List<Integer> nobody = plays.stream().map(any -> 0).toList();
        return subsets(rubbers.count(), fullest).stream()
                .filter(chosen -> canFill(
                        plays,
                        nobody,
                        most,
                        chosen.stream().map(rubbers.kinds()::of).toList()))
                .findFirst()
                .orElseThrow(); // none at all can always be filled
    }

    /** Every choice of rubbers up to so many, the largest first, of equal ones those that hold the first rubbers. */
    private static List<SortedSet<Integer>> subsets(int rubbers, int most) {
        List<SortedSet<Integer>> all = new ArrayList<>();
        for (int mask = 0; mask < 1 << rubbers; mask++) {
            SortedSet<Integer> chosen = new TreeSet<>();
            for (int rubber = 1; rubber <= rubbers; rubber++) {
                if ((mask >> (rubbers - rubber) & 1) == 1) {
                    chosen.add(rubber);
                }
            }
            if (chosen.size() <= most) {
                all.add(0, chosen);
            }
        }
        all.sort(Comparator.comparingInt((SortedSet<Integer> chosen) -> -chosen.size()));
        return all;
    }

    /** Whether pairs can be named for all of these rubbers, after each player was named so often. */
    public static boolean canFill(
            List<Optional<Plays>> plays, List<Integer> named, int most, List<RubberKind> rubbers) {
        List<KindCounter.Standing> players = IntStream.range(0, plays.size())
                .mapToObj(player -> new KindCounter.Standing(plays.get(player), 0, named.get(player)))
                .toList();
        return new KindCounter(players, most, OrderOfStrength.NONE)
                .count(rubbers)
                .filter(ways -> ways.signum() > 0)
                .isPresent();
    }
}
