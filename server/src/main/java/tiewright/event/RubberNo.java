package tiewright.event;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import tiewright.conditions.RubberWeights;

/** The place of a rubber in its tie: 1 to the number of rubbers, or the decider, written {@code D}, which sorts last. */
public record RubberNo(int number) implements Comparable<RubberNo> {
    private static final int DECIDER_NUMBER = 0;
    public static final RubberNo DECIDER = new RubberNo(DECIDER_NUMBER);

    public RubberNo {
        if (number < DECIDER_NUMBER || number > 99) {
            throw new IllegalArgumentException("no rubber has the number " + number);
        }
    }

    public static RubberNo of(int number) {
        return new RubberNo(number);
    }

    /** Rubbers 1 to {@code count}, in order; the decider is none of them. */
    public static List<RubberNo> upTo(int count) {
        return IntStream.rangeClosed(1, count).mapToObj(RubberNo::of).toList();
    }

    /** Reads {@code 1}, {@code 2}, … or {@code D}; empty when the text is neither. */
    public static Optional<RubberNo> parse(String text) {
        if (text.equals("D")) {
            return Optional.of(DECIDER);
        }
        return text.matches("[1-9][0-9]?") ? Optional.of(of(Integer.parseInt(text))) : Optional.empty();
    }

    public boolean isDecider() {
        return number == DECIDER_NUMBER;
    }

    /** The decider weighs 1, whatever the rubbers before it do. */
    public int weight(RubberWeights weights) {
        return isDecider() ? 1 : weights.of(number);
    }

    @Override
    public int compareTo(RubberNo other) {
        return Integer.compare(
                isDecider() ? Integer.MAX_VALUE : number, other.isDecider() ? Integer.MAX_VALUE : other.number);
    }

    @Override
    public String toString() {
        return isDecider() ? "D" : Integer.toString(number);
    }
}
