package tiewright.saturday;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * Plays many days and goes on another time where it stopped: {@code Saturdays days clubs [seed]}. The next seed lies in
 * {@code target/saturdays.seed}. Between, one day in twenty is played twice, see {@link TwinDay}. Ends with an error at the first day
 * that broke a promise.
 */
final class Saturdays {
    private static final Path NEXT = Path.of("target", "saturdays.seed");
    private static final int STEPS = 120;
    private static final int AT_ONCE = 20;
    private static final int TWIN_CLUBS = 3;
    private static final int TWIN_STEPS = 80;

    private Saturdays() {}

    public static void main(String[] args) throws IOException {
        int days = Integer.parseInt(args[0]);
        int clubs = Integer.parseInt(args[1]);
        long first = args.length > 2 ? Long.parseLong(args[2]) : next();
        Instant began = Instant.now();
        Days all = new Days(clubs, STEPS);
        for (long seed = first; seed < first + days; seed += AT_ONCE) {
            int count = (int) Math.min(AT_ONCE, first + days - seed);
            long twins = seed;
            Optional<String> failure = all.firstFailure(seed, count)
                    .map(Saturday.Failure::toString)
                    .or(() -> twins(twins));
            if (failure.isPresent()) {
                System.err.println(failure.get());
                System.exit(1);
            }
            Files.createDirectories(NEXT.toAbsolutePath().getParent());
            Files.writeString(NEXT, Long.toString(seed + count), StandardCharsets.UTF_8);
            System.out.println("days " + first + " to " + (seed + count - 1) + " of up to " + clubs + " clubs hold, "
                    + Duration.between(began, Instant.now()).toSeconds() + " s; never happened: " + all.neverHappened()
                    + "; never met: " + all.neverLooked());
        }
    }

    /** What is seen only by comparing two days, or captains. */
    private static Optional<String> twins(long seed) {
        return new TwinDay(seed, TWIN_CLUBS, TWIN_STEPS)
                .firstDifference()
                .or(() -> new Draws(seed).look().map(Broken::toString));
    }

    private static long next() throws IOException {
        return Files.exists(NEXT) ? Long.parseLong(Files.readString(NEXT).strip()) : 1;
    }
}
