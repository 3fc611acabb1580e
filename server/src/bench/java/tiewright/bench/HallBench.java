package tiewright.bench;

import java.io.Closeable;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import tiewright.event.Actor;
import tiewright.event.Decision;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.SetUpFact;
import tiewright.event.TieId;
import tiewright.http.Service;
import tiewright.ledger.Ledger;
import tiewright.ledger.Request;

/**
 * A full hall: 500 open pages that hear of every change and ask for {@code /} again as {@code live.js} does (one wait of 150 to
 * 750 ms at a time), while 20 cards a second are entered. Everything acknowledged must be in the ledger afterwards. Then how many
 * pages a second can be had, beside a service of one page. The load comes from this process, on the same processors.
 */
final class HallBench {
    private static final int WATCHERS = Integer.getInteger("watchers", 500);
    private static final int ENTRIES_A_SECOND = 20;
    private static final int SECONDS = Integer.getInteger("seconds", 20);
    private static final int WARM_UP_SECONDS = 5;
    private static final int ASKING = 8;
    private static final String SECRET = "volunteer-of-the-benchmark";
    private static final Path JAR =
            Path.of(System.getProperty("jar", "server/target/tiewright.jar")).toAbsolutePath();

    private final HttpClient client =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private final ScheduledExecutorService timer = Executors.newScheduledThreadPool(64);
    private final Random random = new Random(1);
    private final Queue<Double> pages = new ConcurrentLinkedQueue<>();
    private final AtomicInteger sent = new AtomicInteger();
    /** The device times of the cards that were acknowledged: each card has its own, and the ledger keeps it. */
    private final Set<Instant> acknowledged = ConcurrentHashMap.newKeySet();

    private final AtomicInteger refused = new AtomicInteger();
    private final AtomicInteger failed = new AtomicInteger();
    private final AtomicInteger ended = new AtomicInteger();
    private volatile boolean measuring;

    private record Rubber(TieId tie, RubberNo number, int home, int away) {}

    static void run() throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("tiewright-hall");
        try {
            new HallBench().measure(folder.resolve("event"));
        } finally {
            StartBench.delete(folder);
        }
    }

    private void measure(Path data) throws IOException, InterruptedException {
        Started.once(JAR, List.of(), "--demo", "--data", data.toString());
        List<Rubber> rubbers = prepare(data);
        try (Started service =
                Started.java(List.of("-jar", JAR.toString(), "serve", "--port", "0", "--data", data.toString()))) {
            String cookie = enter(service.at());
            List<Watcher> watchers = watch(service.at());
            Future<?> entering = timer.scheduleAtFixedRate(
                    () -> enterCard(service.at(), cookie, rubbers.get(random.nextInt(rubbers.size()))),
                    0,
                    1_000 / ENTRIES_A_SECOND,
                    TimeUnit.MILLISECONDS);
            TimeUnit.SECONDS.sleep(WARM_UP_SECONDS);
            measuring = true;
            TimeUnit.SECONDS.sleep(SECONDS);
            measuring = false;
            entering.cancel(false);
            TimeUnit.SECONDS.sleep(1);
            print();
            for (Watcher watcher : watchers) {
                watcher.close();
            }
            double own = throughput("pages a second, the service", service.at());
            try (Started bare = Started.java(StartBench.bare(JAR, data.resolveSibling("bare")))) {
                System.out.printf(
                        Locale.ROOT,
                        "  %-60s %.3f%n",
                        "the service / a bare page",
                        own / throughput("pages a second, a bare page", bare.at()));
            }
        }
        timer.shutdownNow();
        System.out.printf(
                "  %d cards sent, %d acknowledged, %d refused, of the acknowledged %d are not in the ledger%n",
                sent.get(), acknowledged.size(), refused.get(), missing(data).size());
    }

    /** Gives a volunteer a link, and says which rubbers have a score that can be entered again. */
    private static List<Rubber> prepare(Path data) {
        try (Ledger ledger = Ledger.open(data, Clock.systemUTC())) {
            Decision link = (event, given) -> new Decision.Accepted(
                    List.of(new SetUpFact.LinkIssued(
                            "bench",
                            Role.VOLUNTEER,
                            Optional.empty(),
                            Optional.empty(),
                            "bench",
                            Service.hash(SECRET))),
                    List.of());
            ledger.decide(Request.of(UUID.randomUUID().toString(), Actor.of(Role.ORGANISER, "bench")), link);
            List<Rubber> rubbers = new ArrayList<>();
            ledger.event()
                    .ties()
                    .values()
                    .forEach(tie -> ledger.event().progress(tie).rubbers().stream()
                            .filter(score ->
                                    score.games().size() == 1 && !score.how().isWalkover())
                            .forEach(score -> rubbers.add(new Rubber(
                                    tie.id(),
                                    score.rubber(),
                                    score.games().get(0).home(),
                                    score.games().get(0).away()))));
            return rubbers;
        }
    }

    private Set<Instant> missing(Path data) {
        Set<Instant> missing = new HashSet<>(acknowledged);
        try (Ledger ledger = Ledger.open(data, Clock.systemUTC())) {
            ledger.facts(0).forEach(fact -> fact.deviceTime().ifPresent(missing::remove));
        }
        return missing;
    }

    private String enter(URI at) throws IOException, InterruptedException {
        HttpResponse<Void> answer = client.send(
                HttpRequest.newBuilder(at.resolve("/enter/" + SECRET)).build(), HttpResponse.BodyHandlers.discarding());
        return answer.headers()
                .firstValue("Set-Cookie")
                .orElseThrow(() -> new IOException("no cookie, but " + answer.statusCode()))
                .split(";")[0];
    }

    private void enterCard(URI at, String cookie, Rubber rubber) {
        Instant when = Instant.EPOCH.plusSeconds(sent.incrementAndGet());
        String form = Map.of(
                        "key",
                        UUID.randomUUID().toString(),
                        "device-time",
                        when.toString(),
                        "how",
                        "played",
                        "confirmed",
                        "yes",
                        "home-1",
                        Integer.toString(rubber.home()),
                        "away-1",
                        Integer.toString(rubber.away()))
                .entrySet()
                .stream()
                .map(field -> field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        client.sendAsync(
                        HttpRequest.newBuilder(at.resolve("/cards/" + rubber.tie() + "/" + rubber.number()))
                                .header("Cookie", cookie)
                                .header("Content-Type", "application/x-www-form-urlencoded")
                                .POST(HttpRequest.BodyPublishers.ofString(form))
                                .build(),
                        HttpResponse.BodyHandlers.discarding())
                .thenAccept(answer -> {
                    if (answer.statusCode() == 303) {
                        acknowledged.add(when);
                    } else {
                        refused.incrementAndGet();
                    }
                });
    }

    private List<Watcher> watch(URI at) throws IOException {
        List<Watcher> watchers = new ArrayList<>();
        for (int i = 0; i < WATCHERS; i++) {
            Watcher watcher = new Watcher(at);
            watchers.add(watcher);
            Thread thread = new Thread(null, watcher::listen, "watcher", 64 << 10);
            thread.setDaemon(true);
            thread.start();
        }
        return watchers;
    }

    /** An open page: one connection on which it hears of changes, one by which it asks for the page again. */
    private final class Watcher implements Closeable {
        private final Line events;
        private final Line page;
        private boolean waiting;

        Watcher(URI at) throws IOException {
            this.events = new Line(at);
            this.page = new Line(at);
        }

        void listen() {
            try {
                events.ask("/events", "text/event-stream");
                while (true) {
                    hears(events.line());
                }
            } catch (IOException end) {
                ended.incrementAndGet();
            }
        }

        private synchronized void hears(String line) {
            if (line.startsWith("data: changed") && !waiting) {
                waiting = true;
                timer.schedule(this::ask, 150 + random.nextInt(600), TimeUnit.MILLISECONDS);
            }
        }

        private void ask() {
            synchronized (this) {
                waiting = false;
            }
            long start = System.nanoTime();
            try {
                synchronized (page) {
                    if (page.get("/") != 200) {
                        failed.incrementAndGet();
                    } else if (measuring) {
                        pages.add((System.nanoTime() - start) / 1e6);
                    }
                }
            } catch (IOException broken) {
                failed.incrementAndGet();
            }
        }

        @Override
        public void close() throws IOException {
            events.close();
            page.close();
        }
    }

    private void print() {
        double[] millis =
                pages.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        System.out.printf(
                Locale.ROOT,
                "  %d watchers, %d cards a second for %d s: %d pages, %.0f a second, %d failed, %d pages cut off%n",
                WATCHERS,
                ENTRIES_A_SECOND,
                SECONDS,
                millis.length,
                millis.length / (double) SECONDS,
                failed.get(),
                ended.get());
        System.out.printf(
                Locale.ROOT,
                "  %-60s half %.1f ms, p90 %.1f ms, p99 %.1f ms, longest %.1f ms%n",
                "a page took",
                part(millis, 0.5),
                part(millis, 0.9),
                part(millis, 0.99),
                part(millis, 1));
    }

    private static double part(double[] sorted, double share) {
        return sorted.length == 0
                ? Double.NaN
                : sorted[(int) Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)];
    }

    /** Eight at a time ask for the page as fast as they get it. */
    private double throughput(String what, URI at) throws InterruptedException {
        double best = 0;
        for (int run = 0; run < 3; run++) {
            AtomicInteger got = new AtomicInteger();
            long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(3);
            List<Thread> asking = new ArrayList<>();
            for (int i = 0; i < ASKING; i++) {
                Thread thread = new Thread(() -> askUntil(end, at, got));
                thread.start();
                asking.add(thread);
            }
            for (Thread thread : asking) {
                thread.join();
            }
            best = Math.max(best, got.get() / 3.0);
        }
        System.out.printf(Locale.ROOT, "  %-60s %.0f (best of 3)%n", what, best);
        return best;
    }

    private void askUntil(long end, URI at, AtomicInteger got) {
        try (Line line = new Line(at)) {
            while (System.nanoTime() < end) {
                if (line.get("/") == 200) {
                    got.incrementAndGet();
                }
            }
        } catch (IOException broken) {
            failed.incrementAndGet();
        }
    }
}
