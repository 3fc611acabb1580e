package tiewright.conditions;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What each rubber weighs in the result of its tie: a tie is won by more than half of the weights that are not void.
 *
 * @param each from rubber 1 on, 1 or more; empty when all weigh the same
 */
public record RubberWeights(List<Integer> each) {
    /** Every rubber weighs 1. */
    public static final RubberWeights EQUAL = new RubberWeights(List.of());

    /** The value of the setting while no weights are given. */
    static final String NONE_GIVEN = "equal";

    private static final String CODE = "[1-9]\\d?(/[1-9]\\d?){0,11}";

    public RubberWeights {
        if (each.stream().anyMatch(weight -> weight < 1)) {
            throw new IllegalArgumentException("a rubber weighs 1 or more, got " + each);
        }
        each = each.stream().allMatch(weight -> weight == 1) ? List.of() : List.copyOf(each);
    }

    /** Reads {@code 6/4/3}, whole numbers from 1 to 99, or {@code equal}; empty where it is neither. */
    public static Optional<RubberWeights> parse(String code) {
        if (code.equals(NONE_GIVEN)) {
            return Optional.of(EQUAL);
        }
        return code.matches(CODE)
                ? Optional.of(new RubberWeights(
                        Arrays.stream(code.split("/")).map(Integer::valueOf).toList()))
                : Optional.empty();
    }

    public boolean areEqual() {
        return each.isEmpty();
    }

    /** @param rubber from 1 on; what stands beyond the list, such as a decider, weighs 1 */
    public int of(int rubber) {
        return rubber >= 1 && rubber <= each.size() ? each.get(rubber - 1) : 1;
    }

    /** All rubbers of a tie of so many together. */
    public int total(int rubbers) {
        return IntStream.rangeClosed(1, rubbers).map(this::of).sum();
    }

    /** Whether so many rubbers, all of them decided, can leave two clubs level. */
    public boolean canBeLevel(int rubbers) {
        int total = total(rubbers);
        boolean[] reached = new boolean[total + 1];
        reached[0] = true;
        for (int rubber = 1; rubber <= rubbers; rubber++) {
            for (int sum = total; sum >= of(rubber); sum--) {
                reached[sum] |= reached[sum - of(rubber)];
            }
        }
        return total % 2 == 0 && reached[total / 2];
    }

    /** As {@code conditions.csv} writes it for so many rubbers: {@code 1/1/1/1} where all weigh the same. */
    public String code(int rubbers) {
        return IntStream.rangeClosed(1, rubbers)
                .mapToObj(rubber -> Integer.toString(of(rubber)))
                .collect(Collectors.joining("/"));
    }
}
