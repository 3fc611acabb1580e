package tiewright.conditions;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Who may stand in each rubber of a tie.
 *
 * @param each from rubber 1 on; empty when all are open
 */
public record RubberKinds(List<RubberKind> each) {
    /** Everybody may stand everywhere. */
    public static final RubberKinds OPEN = new RubberKinds(List.of());

    public RubberKinds {
        each = each.stream().allMatch(kind -> kind == RubberKind.OPEN) ? List.of() : List.copyOf(each);
    }

    /** Reads {@code open;women;mixed}, or {@code open} for all rubbers; empty where it is neither. */
    public static Optional<RubberKinds> parse(String code) {
        List<Optional<RubberKind>> each =
                Arrays.stream(code.split(";", -1)).map(RubberKind::parse).toList();
        return each.stream().allMatch(Optional::isPresent)
                ? Optional.of(
                        new RubberKinds(each.stream().map(Optional::orElseThrow).toList()))
                : Optional.empty();
    }

    public boolean areOpen() {
        return each.isEmpty();
    }

    /** @param rubber from 1 on; what stands beyond the list, such as a decider, is open */
    public RubberKind of(int rubber) {
        return rubber >= 1 && rubber <= each.size() ? each.get(rubber - 1) : RubberKind.OPEN;
    }

    /** Whether no rubber above it is of the same kind: the order of strength begins with it. */
    public boolean isFirst(int rubber) {
        return IntStream.range(1, rubber).noneMatch(above -> of(above) == of(rubber));
    }

    /** As {@code conditions.csv} writes it for so many rubbers. */
    public String code(int rubbers) {
        return IntStream.rangeClosed(1, rubbers)
                .mapToObj(rubber -> of(rubber).code())
                .collect(Collectors.joining(";"));
    }
}
