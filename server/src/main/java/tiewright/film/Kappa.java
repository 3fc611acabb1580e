package tiewright.film;

import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * How often two who judged the same things agree, beside how often they would by luck: Cohen's kappa (Educational and Psychological
 * Measurement 20:37, 1960).
 *
 * @param same on how many they agree
 * @param of how many both judged
 * @param byLuck the share on which they would agree if each said the same words as often, but blindly
 */
public record Kappa(int same, int of, double byLuck) {
    /** The two lists are as long as each other, judgement by judgement. */
    static Kappa of(List<String> one, List<String> other) {
        int size = one.size();
        int same = (int) IntStream.range(0, size)
                .filter(i -> one.get(i).equals(other.get(i)))
                .count();
        Set<String> words = new HashSet<>(one);
        words.retainAll(new HashSet<>(other));
        double byLuck = words.stream()
                .mapToDouble(word -> share(word, one) * share(word, other))
                .sum();
        return new Kappa(same, size, byLuck);
    }

    private static double share(String word, List<String> said) {
        return (double) said.stream().filter(word::equals).count() / said.size();
    }

    /** 1 where they always agree, 0 where no better than by luck; empty where nothing was judged or both only ever said one word. */
    public OptionalDouble value() {
        return of == 0 || byLuck >= 1
                ? OptionalDouble.empty()
                : OptionalDouble.of(((double) same / of - byLuck) / (1 - byLuck));
    }
}
