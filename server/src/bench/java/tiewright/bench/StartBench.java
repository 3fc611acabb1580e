package tiewright.bench;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Start of the jar to its first page, without and with an archive of its classes, and its heap at rest; beside it a service
 * of one page from a database of one row. Needs {@code server/target/tiewright.jar} (another with {@code -Djar=}) and the compiled tests; {@code -Druns=} for fewer
 * or more starts than seven of each.
 */
final class StartBench {
    private static final int WARM_UP = 1;
    private static final int RUNS = Integer.getInteger("runs", 7);
    private static final Pattern USED = Pattern.compile("used (\\d+)K");

    private final Path jar =
            Path.of(System.getProperty("jar", "server/target/tiewright.jar")).toAbsolutePath();
    private final Path folder;

    private StartBench(Path folder) {
        this.folder = folder;
    }

    static void run() throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("tiewright-start");
        try {
            new StartBench(folder).measure();
        } finally {
            delete(folder);
        }
    }

    private void measure() throws IOException, InterruptedException {
        String data = folder.resolve("event").toString();
        List<String> bare = bare(jar, folder);
        List<String> service = List.of("-jar", jar.toString(), "serve", "--port", "0", "--data", data);
        Started.once(jar, List.of(), "--demo", "--data", data);
        Timings page = starts("a bare page", bare, List.of());
        Timings first = starts("the demo event's folder", service, List.of());
        List<String> packed = List.of("-XX:SharedArchiveFile=" + archive());
        Timings quick = starts("the demo event's folder, class-data archive", service, packed);
        first.printRatio("the demo event's folder / a bare page (aim: 2.5)", page);
        quick.printRatio("the demo event's folder, with the archive / a bare page without (aim: 1.5)", page);
        heap("heap at rest, a bare page", bare);
        heap("heap at rest, the demo event's folder", service);
    }

    /** Arguments of {@code java} for the page that everything is compared with; its database lies in the folder. */
    static List<String> bare(Path jar, Path folder) {
        return List.of("-cp", jar + File.pathSeparator + testClasses(), BareJavalin.class.getName(), folder.toString());
    }

    private static Path testClasses() {
        try {
            return Path.of(StartBench.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
        } catch (URISyntaxException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private Timings starts(String what, List<String> program, List<String> options)
            throws IOException, InterruptedException {
        double[] clock = new double[RUNS];
        double[] processor = new double[RUNS];
        for (int run = 0; run < WARM_UP + RUNS; run++) {
            try (Started started = start(program, options)) {
                if (run >= WARM_UP) {
                    clock[run - WARM_UP] = started.millis();
                    processor[run - WARM_UP] = started.processorMillis();
                }
            }
        }
        return Timings.ofMillis(clock, processor).print("start to first page, " + what);
    }

    private static Started start(List<String> program, List<String> options) throws IOException, InterruptedException {
        List<String> arguments = new ArrayList<>(options);
        arguments.addAll(program);
        return Started.java(arguments);
    }

    private Path archive() throws IOException, InterruptedException {
        Path archive = folder.resolve("tiewright.jsa");
        long start = System.nanoTime();
        Started.once(
                jar,
                List.of("-XX:ArchiveClassesAtExit=" + archive),
                "--demo",
                "--data",
                folder.resolve("other").toString());
        System.out.printf(
                Locale.ROOT,
                "  archive made in %.1f s, %d MiB%n",
                (System.nanoTime() - start) / 1e9,
                Files.size(archive) >> 20);
        return archive;
    }

    private void heap(String what, List<String> program) throws IOException, InterruptedException {
        try (Started started = start(program, List.of())) {
            for (int i = 0; i < 20; i++) {
                Started.get(started.at().resolve("/"));
            }
            jcmd(started.process().pid(), "GC.run");
            jcmd(started.process().pid(), "GC.run");
            Matcher used = USED.matcher(jcmd(started.process().pid(), "GC.heap_info"));
            System.out.printf(
                    Locale.ROOT,
                    "  %-60s %.1f MiB%n",
                    what,
                    used.find() ? Long.parseLong(used.group(1)) / 1024.0 : Double.NaN);
        }
    }

    private static String jcmd(long pid, String command) throws IOException, InterruptedException {
        String tool = Path.of(System.getProperty("java.home"), "bin", "jcmd").toString();
        Process process = new ProcessBuilder(tool, Long.toString(pid), command)
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor(60, TimeUnit.SECONDS);
        return said;
    }

    static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder()).forEach(file -> {
                try {
                    Files.delete(file);
                } catch (IOException stays) {
                    throw new UncheckedIOException(stays);
                }
            });
        }
    }
}
