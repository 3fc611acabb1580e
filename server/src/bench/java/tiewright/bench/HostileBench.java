package tiewright.bench;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Fifty hostile phones beside a hundred honest ones, each with an address of its own. A hostile one holds ten forms that come byte by byte,
 * sends long forms that nobody asked for, and asks for pages as fast as it gets them. An honest one opens a connection each second, asks
 * for {@code /} and should wait no longer than two seconds. The load comes from this process, on the same processors.
 */
final class HostileBench {
    private static final int HONEST = 100;
    private static final int HOSTILE = 50;
    private static final int SLOW_FORMS = 10;
    private static final int SECONDS = Integer.getInteger("seconds", 30);
    private static final int LONG_FORM = 900_000;
    private static final double PATIENCE_MILLIS = 2_000;
    private static final Path JAR =
            Path.of(System.getProperty("jar", "server/target/tiewright.jar")).toAbsolutePath();

    private final URI at;
    private final Queue<Double> waited = new ConcurrentLinkedQueue<>();
    private final AtomicInteger failed = new AtomicInteger();
    private final AtomicInteger hammered = new AtomicInteger();
    private final AtomicInteger cutOff = new AtomicInteger();
    private volatile boolean ended;

    private HostileBench(URI at) {
        this.at = at;
    }

    static void run() throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("tiewright-hostile");
        try {
            String data = folder.resolve("event").toString();
            Started.once(JAR, List.of(), "--demo", "--data", data);
            try (Started service =
                    Started.java(List.of("-jar", JAR.toString(), "serve", "--port", "0", "--data", data))) {
                new HostileBench(service.at()).measure();
            }
        } finally {
            StartBench.delete(folder);
        }
    }

    private void measure() throws InterruptedException {
        List<Thread> all = new ArrayList<>();
        for (int i = 1; i <= HOSTILE; i++) {
            String from = "127.0.2." + i;
            all.add(started(() -> sendSlowly(from)));
            all.add(started(() -> hammer(from)));
        }
        for (int i = 1; i <= HONEST; i++) {
            String from = "127.0.1." + i;
            all.add(started(() -> ask(from)));
        }
        TimeUnit.SECONDS.sleep(SECONDS);
        ended = true;
        for (Thread one : all) {
            one.join();
        }
        print();
    }

    private static Thread started(Runnable work) {
        Thread thread = new Thread(null, work, "phone", 128 << 10);
        thread.start();
        return thread;
    }

    private void ask(String from) {
        while (!ended) {
            long start = System.nanoTime();
            try (Line line = new Line(at, from)) {
                if (line.get("/") != 200) {
                    failed.incrementAndGet();
                }
            } catch (IOException unheard) {
                failed.incrementAndGet();
            }
            waited.add((System.nanoTime() - start) / 1e6);
            pause();
        }
    }

    private String head(int length) {
        return "POST /leave HTTP/1.1\r\nHost: " + at.getAuthority()
                + "\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: " + length + "\r\n\r\n";
    }

    /** Forms that come byte by byte; one that is given up is begun anew. */
    private void sendSlowly(String from) {
        List<Line> forms = new ArrayList<>();
        while (!ended) {
            try {
                if (forms.size() < SLOW_FORMS) {
                    Line form = new Line(at, from);
                    forms.add(form);
                    form.send(head(LONG_FORM));
                }
                for (Line form : forms) {
                    form.send("x");
                }
            } catch (IOException givenUp) {
                close(forms);
            }
            pause();
        }
        close(forms);
    }

    private static void close(List<Line> forms) {
        for (Line form : forms) {
            try {
                form.close();
            } catch (IOException closed) {
                continue;
            }
        }
        forms.clear();
    }

    /** Pages as fast as they come; each hundredth time a long form instead, and the connection is dropped. */
    private void hammer(String from) {
        while (!ended) {
            try (Line line = new Line(at, from)) {
                for (int i = 1; i % 100 != 0 && !ended; i++) {
                    line.get("/");
                    hammered.incrementAndGet();
                }
                line.send(head(LONG_FORM) + "x".repeat(LONG_FORM));
            } catch (IOException givenUp) {
                cutOff.incrementAndGet();
            }
        }
    }

    private static void pause() {
        try {
            TimeUnit.SECONDS.sleep(1);
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    private void print() {
        double[] millis =
                waited.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        System.out.printf(
                Locale.ROOT,
                "  %d honest beside %d hostile phones for %d s: %d pages, %d failed, %d waited over two seconds%n",
                HONEST,
                HOSTILE,
                SECONDS,
                millis.length,
                failed.get(),
                waited.stream().filter(one -> one > PATIENCE_MILLIS).count());
        System.out.printf(
                Locale.ROOT,
                "  an honest phone waited: half %.1f ms, p99 %.1f ms, longest %.1f ms; hostile ones got %d pages and were cut off %d times%n",
                millis[millis.length / 2],
                millis[(int) (0.99 * (millis.length - 1))],
                millis[millis.length - 1],
                hammered.get(),
                cutOff.get());
    }
}
