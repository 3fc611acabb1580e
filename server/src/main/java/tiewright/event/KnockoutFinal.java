package tiewright.event;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Which tie of a knockout makes the champion? */
public final class KnockoutFinal {
    private final List<Tie> knockout;

    private KnockoutFinal(List<Tie> knockout) {
        this.knockout = knockout;
    }

    /**
     * The last tie that is not one of losers; of several in that round the one that most ties lead to. Empty where there is no
     * knockout.
     *
     * @param ties any ties of one event; those of pools do not matter
     */
    public static Optional<Tie> of(Collection<Tie> ties) {
        return new KnockoutFinal(ties.stream()
                        .filter(tie -> tie.stage() == Stage.KNOCKOUT)
                        .toList())
                .find();
    }

    private Optional<Tie> find() {
        return knockout.stream()
                .filter(tie -> !tie.isOfLosers())
                .max(Comparator.comparingInt(Tie::round).thenComparingInt(this::leadingTo));
    }

    private int leadingTo(Tie tie) {
        return tie.sources()
                .filter(source -> source.kind() == SlotSource.Kind.WINNER)
                .flatMap(source ->
                        knockout.stream().filter(before -> before.id().code().equals(source.of())))
                .mapToInt(before -> 1 + leadingTo(before))
                .sum();
    }
}
