package tiewright.saturday;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Chance by one seed. */
final class Dice {
    private final Random random;

    Dice(long seed) {
        this.random = new Random(seed * 0x9E3779B97F4A7C15L);
    }

    /** Another one that depends on this seed and on a number alone. */
    static Dice of(long seed, int step) {
        return new Dice(seed * 1_000_003 + step);
    }

    boolean chance(double p) {
        return random.nextDouble() < p;
    }

    /** A whole number from {@code from} to {@code to}, both included. */
    int between(int from, int to) {
        return from + random.nextInt(to - from + 1);
    }

    <T> T any(List<T> values) {
        return values.get(random.nextInt(values.size()));
    }

    <T> Optional<T> anyOf(List<T> values) {
        return values.isEmpty() ? Optional.empty() : Optional.of(any(values));
    }

    <T> List<T> shuffled(List<T> values) {
        List<T> copy = new ArrayList<>(values);
        Collections.shuffle(copy, random);
        return copy;
    }

    /** At most {@code most} of them, in any order. */
    <T> List<T> drawn(List<T> values, int most) {
        List<T> all = shuffled(values);
        return all.subList(0, Math.min(most, all.size()));
    }
}
