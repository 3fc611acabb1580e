package tiewright.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Writer;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A Java program in a process of its own that serves pages, and how long it took from the start of the process until the page
 * {@code /} was answered with 200.
 *
 * @param millis on the clock from the start of the process to the end of the first page
 * @param processorMillis processor time of all its threads until then; 0 where the system does not tell
 */
record Started(Process process, URI at, double millis, double processorMillis) implements AutoCloseable {
    private static final Pattern ADDRESS = Pattern.compile("https?://[\\w.:-]+");
    static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");
    private static final HttpClient CLIENT =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

    /** Starts {@code java} with these arguments; the program prints its address. */
    static Started java(List<String> arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(JAVA.toString()));
        command.addAll(arguments);
        long start = System.nanoTime();
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        URI at = address(process, command);
        get(at.resolve("/"));
        double millis = (System.nanoTime() - start) / 1e6;
        double processor =
                process.info().totalCpuDuration().map(Duration::toNanos).orElse(0L) / 1e6;
        return new Started(process, at, millis, processor);
    }

    /** Starts the service with {@code --once} and waits for its end. */
    static void once(Path jar, List<String> options, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(JAVA.toString()));
        command.addAll(options);
        command.addAll(List.of("-jar", jar.toString(), "serve", "--port", "0", "--once"));
        command.addAll(List.of(arguments));
        int status = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start()
                .waitFor();
        if (status != 0) {
            throw new IOException(command + " ended with " + status);
        }
    }

    private static URI address(Process process, List<String> command) throws IOException {
        BufferedReader lines =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        StringBuilder said = new StringBuilder();
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            Matcher address = ADDRESS.matcher(line);
            if (address.find()) {
                drain(lines);
                return URI.create(address.group());
            }
            said.append(line).append('\n');
        }
        throw new IOException("no address from " + command + ":\n" + said);
    }

    /** Reads on, so that the program never waits for somebody to read what it prints. Once it has ended, there is nothing to read. */
    private static void drain(BufferedReader lines) {
        Thread reader = new Thread(
                () -> {
                    try {
                        lines.transferTo(Writer.nullWriter());
                    } catch (IOException ended) {
                        return;
                    }
                },
                "drain");
        reader.setDaemon(true);
        reader.start();
    }

    /** The body of a page, which must be answered with 200. */
    static String get(URI page) throws IOException, InterruptedException {
        HttpResponse<String> answer =
                CLIENT.send(HttpRequest.newBuilder(page).build(), HttpResponse.BodyHandlers.ofString());
        if (answer.statusCode() != 200) {
            throw new IOException(page + " answered " + answer.statusCode());
        }
        return answer.body();
    }

    /** Asks the program to end, as Ctrl-C does, and waits until it has: an archive of its classes is written at the end. */
    @Override
    public void close() {
        process.destroy();
        try {
            if (!process.waitFor(60, TimeUnit.SECONDS)) {
                process.destroyForcibly();
            }
        } catch (InterruptedException interrupted) {
            process.destroyForcibly();
            Thread.currentThread().interrupt();
        }
    }
}
