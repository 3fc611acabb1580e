package tiewright.standings;

import java.util.Arrays;
import java.util.List;
import java.util.function.BiConsumer;

/** Every way to choose one outcome for each open tie. */
final class Combinations {
    private final List<CountedTie> counted;
    private final List<List<OpenOutcome>> outcomes;

    Combinations(List<CountedTie> counted, List<List<OpenOutcome>> outcomes) {
        this.counted = counted;
        this.outcomes = outcomes;
    }

    /** A double, for it can be more than a long holds. */
    double count() {
        return outcomes.stream().mapToDouble(List::size).reduce(1, (one, other) -> one * other);
    }

    /** Hands over all ties of the table and the chosen outcomes in the order of the open ties; both lists are reused. */
    void forEach(BiConsumer<List<CountedTie>, List<OpenOutcome>> visitor) {
        OpenOutcome[] chosen = new OpenOutcome[outcomes.size()];
        CountedTie[] ties = counted.toArray(new CountedTie[counted.size() + chosen.length]);
        choose(0, chosen, ties, () -> visitor.accept(Arrays.asList(ties), Arrays.asList(chosen)));
    }

    private void choose(int next, OpenOutcome[] chosen, CountedTie[] ties, Runnable visit) {
        if (next == chosen.length) {
            visit.run();
            return;
        }
        for (OpenOutcome outcome : outcomes.get(next)) {
            chosen[next] = outcome;
            ties[counted.size() + next] = outcome.tie();
            choose(next + 1, chosen, ties, visit);
        }
    }
}
