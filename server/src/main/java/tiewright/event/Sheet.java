package tiewright.event;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The pairs that a club names for a tie, rubber by rubber; an empty rubber stands without a pair. The sheet of a decider
 * has the one rubber {@link RubberNo#DECIDER}.
 */
public record Sheet(SortedMap<RubberNo, Optional<Pair>> pairs) {
    public Sheet {
        pairs = java.util.Collections.unmodifiableSortedMap(new TreeMap<>(pairs));
        if (pairs.isEmpty()) {
            throw new IllegalArgumentException("a sheet names at least one rubber");
        }
    }

    /** A sheet for rubbers 1, 2, … in this order. */
    public static Sheet of(List<Optional<Pair>> inOrder) {
        SortedMap<RubberNo, Optional<Pair>> pairs = new TreeMap<>();
        for (int i = 0; i < inOrder.size(); i++) {
            pairs.put(RubberNo.of(i + 1), inOrder.get(i));
        }
        return new Sheet(pairs);
    }

    public static Sheet full(Pair... inOrder) {
        List<Optional<Pair>> pairs = new ArrayList<>();
        for (Pair pair : inOrder) {
            pairs.add(Optional.of(pair));
        }
        return of(pairs);
    }

    public static Sheet decider(Pair pair) {
        SortedMap<RubberNo, Optional<Pair>> pairs = new TreeMap<>();
        pairs.put(RubberNo.DECIDER, Optional.of(pair));
        return new Sheet(pairs);
    }

    public Optional<Pair> pair(RubberNo rubber) {
        return pairs.getOrDefault(rubber, Optional.empty());
    }

    /** Everybody named, in code order, each once. */
    public List<PlayerId> players() {
        return pairs.values().stream()
                .flatMap(Optional::stream)
                .flatMap(pair -> pair.players().stream())
                .distinct()
                .sorted()
                .toList();
    }

    /**
     * The text that a receipt is made over, the same on every machine: for each rubber in order {@code
     * rubber,player_1,player_2} and a line feed, codes sorted, an empty rubber as {@code 4,,}.
     */
    public String canonical() {
        StringBuilder text = new StringBuilder();
        pairs.forEach((rubber, pair) -> text.append(rubber)
                .append(',')
                .append(pair.map(p -> p.first() + "," + p.second()).orElse(","))
                .append('\n'));
        return text.toString();
    }
}
