package tiewright.bench;

import java.lang.management.ManagementFactory;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import tiewright.lineup.day.PlanBench;
import tiewright.lineup.tie.LineupBench;
import tiewright.rating.RatingBench;
import tiewright.timetable.TimetableBench;

/**
 * Runs the benchmarks named, or all: {@code fold}, {@code lineup}, {@code plan}, {@code order-game}, {@code rating}, {@code timetable}, {@code
 * start}, {@code hall}, {@code hostile}. DEVELOPERS.md has the command. Prints the machine first, for a figure without it says nothing.
 */
public final class Benchmarks {
    private static final List<String> ALL =
            List.of("fold", "lineup", "plan", "order-game", "rating", "timetable", "start", "hall", "hostile");

    private Benchmarks() {}

    public static void main(String[] args) throws Exception {
        List<String> wanted = args.length == 0 ? ALL : List.of(args);
        printMachine();
        for (String name : wanted) {
            System.out.println(name);
            switch (name) {
                case "fold" -> FoldBench.run();
                case "lineup" -> LineupBench.run(1);
                case "plan" -> PlanBench.run(1);
                case "order-game" -> OrderGameBench.run();
                case "rating" -> RatingBench.run(1);
                case "timetable" -> TimetableBench.run(1);
                case "start" -> StartBench.run();
                case "hall" -> HallBench.run();
                case "hostile" -> HostileBench.run();
                default -> throw new IllegalArgumentException("there is no benchmark " + name + ", only " + ALL);
            }
        }
    }

    private static void printMachine() {
        Runtime runtime = Runtime.getRuntime();
        System.out.printf(
                Locale.ROOT,
                "%s: %d processors, heap of at most %d MiB, Java %s, %s %s, load average %.1f%n",
                LocalDate.now(),
                runtime.availableProcessors(),
                runtime.maxMemory() >> 20,
                Runtime.version(),
                System.getProperty("os.name"),
                System.getProperty("os.arch"),
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
    }
}
