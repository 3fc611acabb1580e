package tiewright.saturday;

import java.util.Optional;
import java.util.function.Function;

/**
 * Plays days until one breaks a promise: asked with the first seed, how many days, and which promise. Says the seed, the step and
 * what broke; nothing where that promise held on all of them.
 */
final class Played implements Function<long[], String> {
    private static final int STEPS = 120;

    @Override
    public String apply(long[] asked) {
        int promise = (int) asked[2];
        return promise == 1 || promise == 4 ? twins(asked[0], asked[1], promise) : days(asked);
    }

    /** What is seen only by comparing days, or captains. */
    private static String twins(long first, long days, int promise) {
        for (long seed = first; seed < first + days; seed++) {
            Optional<String> found = promise == 1
                    ? new TwinDay(seed, 3, 80).firstDifference()
                    : new Draws(seed).look().map(Broken::toString);
            if (found.isPresent()) {
                return found.get();
            }
        }
        return "";
    }

    private static String days(long[] asked) {
        for (long seed = asked[0]; seed < asked[0] + asked[1]; seed++) {
            Optional<Saturday.Failure> failure = new Saturday(seed, Integer.getInteger("clubs", 4), STEPS).play();
            Optional<Broken> broken = failure.stream()
                    .flatMap(one -> one.broken().stream())
                    .filter(one -> one.promise() == asked[2])
                    .findFirst();
            if (broken.isPresent()) {
                return "day " + seed + ", step " + failure.orElseThrow().step() + ": " + broken.get();
            }
        }
        return "";
    }
}
