package tiewright.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.IntConsumer;

/**
 * How long something took, run after run. Processor time tells what the work costs even while other programs share the
 * machine; the time on the clock is what somebody waits.
 *
 * @param clock milliseconds on the clock of each run after the warm-up, shortest first
 * @param processor milliseconds of processor time of each of them, shortest first
 */
public record Timings(double[] clock, double[] processor) {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    /**
     * Runs the work {@code warmUp + runs} times and keeps the times of the last {@code runs}. It is given the number of the run
     * and does everything in the thread that calls it.
     */
    public static Timings of(int warmUp, int runs, IntConsumer work) {
        double[] clock = new double[runs];
        double[] processor = new double[runs];
        for (int run = 0; run < warmUp + runs; run++) {
            long cpu = THREADS.getCurrentThreadCpuTime();
            long start = System.nanoTime();
            work.accept(run);
            if (run >= warmUp) {
                clock[run - warmUp] = (System.nanoTime() - start) / 1e6;
                processor[run - warmUp] = (THREADS.getCurrentThreadCpuTime() - cpu) / 1e6;
            }
        }
        return ofMillis(clock, processor);
    }

    static Timings ofMillis(double[] clock, double[] processor) {
        return new Timings(sorted(clock), sorted(processor));
    }

    private static double[] sorted(double[] millis) {
        double[] sorted = millis.clone();
        Arrays.sort(sorted);
        return sorted;
    }

    /** The middle one; the upper of two. */
    private static double median(double[] millis) {
        return millis[millis.length / 2];
    }

    /** One line: what, clock best, median and worst, processor median, runs. */
    public Timings print(String what) {
        System.out.printf(
                Locale.ROOT,
                "  %-60s clock best %9.3f  median %9.3f  worst %9.3f, processor median %9.3f ms (%d runs)%n",
                what,
                clock[0],
                median(clock),
                clock[clock.length - 1],
                median(processor),
                clock.length);
        return this;
    }

    /** One line: how many times the processor time of the other this one takes, median by median. */
    public void printRatio(String what, Timings other) {
        System.out.printf(Locale.ROOT, "  %-60s %.3f%n", what, median(processor) / median(other.processor));
    }
}
