package tiewright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import tiewright.event.Pair;
import tiewright.event.Sheet;

/** Every way to fill a sheet, by plain counting, without knowing a rule. */
final class Sheets {
    private Sheets() {}

    /** Any pair of the club's first players, or none, in every rubber: most of these are illegal. */
    static void everything(String club, int players, int rubbers, Consumer<Sheet> each) {
        List<Optional<Pair>> choices = new ArrayList<>(List.of(Optional.empty()));
        pairs(club, players).forEach(pair -> choices.add(Optional.of(pair)));
        fill(choices, rubbers, new ArrayList<>(), each);
    }

    private static void fill(
            List<Optional<Pair>> choices, int rubbers, List<Optional<Pair>> soFar, Consumer<Sheet> each) {
        if (soFar.size() == rubbers) {
            each.accept(Sheet.of(soFar));
            return;
        }
        for (Optional<Pair> choice : choices) {
            soFar.add(choice);
            fill(choices, rubbers, soFar, each);
            soFar.remove(soFar.size() - 1);
        }
    }

    /** Full sheets that name nobody twice. */
    static List<Sheet> disjoint(String club, int players, int rubbers) {
        List<Sheet> all = new ArrayList<>();
        disjoint(pairs(club, players), rubbers, new ArrayList<>(), all);
        return all;
    }

    private static void disjoint(List<Pair> pairs, int rubbers, List<Pair> soFar, List<Sheet> all) {
        if (soFar.size() == rubbers) {
            all.add(Sheet.full(soFar.toArray(Pair[]::new)));
            return;
        }
        for (Pair pair : pairs) {
            if (soFar.stream().noneMatch(other -> other.has(pair.first()) || other.has(pair.second()))) {
                soFar.add(pair);
                disjoint(pairs, rubbers, soFar, all);
                soFar.remove(soFar.size() - 1);
            }
        }
    }

    static List<Pair> pairs(String club, int players) {
        List<Pair> pairs = new ArrayList<>();
        for (int one = 1; one <= players; one++) {
            for (int other = one + 1; other <= players; other++) {
                pairs.add(Pair.of(club + one, club + other));
            }
        }
        return pairs;
    }
}
