package tiewright.http;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * All public pages as files of one folder that opens without the service, for ever: as a stranger gets them, one link after the other
 * from the first page on. Forms, scripts and what only the running service answers are left out, and every page says when it was copied.
 */
final class StaticCopy {
    private static final int MOST_PAGES = 3_000;
    private static final Pattern LINK = Pattern.compile(" (href|src)=\"([^\"]*)\"");
    private static final Pattern LEFT_OUT = Pattern.compile(
            "(?s)<script.*?</script>|<form.*?</form>|<link rel=\"preload\"[^>]*>|<button[^>]*data-print[^>]*>.*?</button>");
    private static final Pattern NO_PAGE =
            Pattern.compile("/(static|enter|language|events|leave|control|qr\\.svg|paper|examples).*|.*\\.ics|.*\\?.*");

    private final HttpClient client;
    private final String url;
    private final String language;
    private final String stamp;
    private final Map<String, String> pages = new LinkedHashMap<>();
    private final Set<String> statics = new LinkedHashSet<>();

    /**
     * @param url where the service answers on this machine
     * @param language in which the pages are made, as a browser asks for it
     * @param stamp what every page says about itself, as HTML
     */
    StaticCopy(HttpClient client, String url, String language, String stamp) {
        this.client = client;
        this.url = url;
        this.language = language;
        this.stamp = stamp;
    }

    /** The folder as a zip. */
    byte[] zip() throws IOException, InterruptedException {
        collect();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, String> page : pages.entrySet()) {
                write(zip, name(page.getKey()), rewritten(page.getValue()).getBytes(StandardCharsets.UTF_8));
            }
            for (String path : withFonts()) {
                HttpResponse<byte[]> got = client.send(asked(path), HttpResponse.BodyHandlers.ofByteArray());
                if (got.statusCode() == 200) {
                    write(zip, path.substring(1), got.body());
                }
            }
        }
        return bytes.toByteArray();
    }

    private static void write(ZipOutputStream zip, String name, byte[] bytes) throws IOException {
        zip.putNextEntry(new ZipEntry("event/" + name));
        zip.write(bytes);
        zip.closeEntry();
    }

    /** From the first page on, each page that another one leads to and that a stranger gets. */
    private void collect() throws IOException, InterruptedException {
        Deque<String> waiting = new ArrayDeque<>(Set.of("/"));
        Set<String> seen = new LinkedHashSet<>(waiting);
        while (!waiting.isEmpty() && pages.size() < MOST_PAGES) {
            String path = waiting.removeFirst();
            HttpResponse<String> got =
                    client.send(asked(path), HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
            if (got.statusCode() != 200
                    || !got.headers().firstValue("content-type").orElse("").startsWith("text/html")) {
                continue;
            }
            String page = LEFT_OUT.matcher(got.body()).replaceAll("");
            pages.put(path, page);
            LINK.matcher(page).results().map(StaticCopy::path).forEach(to -> {
                if (to.startsWith("/static/")) {
                    statics.add(to);
                } else if (to.startsWith("/") && !NO_PAGE.matcher(to).matches() && seen.add(to)) {
                    waiting.addLast(to);
                }
            });
        }
    }

    private HttpRequest asked(String path) {
        return HttpRequest.newBuilder(URI.create(url + path))
                .header("Accept-Language", language)
                .timeout(Duration.ofSeconds(30))
                .build();
    }

    private static String path(MatchResult link) {
        return link.group(2).replaceAll("#.*", "");
    }

    /** Stylesheets name their fonts themselves. */
    private Set<String> withFonts() throws IOException, InterruptedException {
        Set<String> all = new LinkedHashSet<>(statics);
        for (String path : statics) {
            if (path.endsWith(".css")) {
                String css = client.send(asked(path), HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8))
                        .body();
                Matcher font = Pattern.compile("url\\(([a-z0-9/.-]+)\\)").matcher(css);
                while (font.find()) {
                    all.add("/static/" + font.group(1));
                }
            }
        }
        return all;
    }

    /** What leads out of the copy leads nowhere: its words stay. */
    private String rewritten(String page) {
        String all = LINK.matcher(page).replaceAll(link -> {
            String path = path(link);
            String part = link.group(2).substring(path.length());
            if (path.startsWith("/static/")) {
                return Matcher.quoteReplacement(" " + link.group(1) + "=\"" + path.substring(1) + "\"");
            }
            if (pages.containsKey(path)) {
                return Matcher.quoteReplacement(" href=\"" + name(path) + part + "\"");
            }
            return path.isEmpty() ? Matcher.quoteReplacement(link.group()) : "";
        });
        return all.replaceFirst("(<main[^>]*>)", "$1" + Matcher.quoteReplacement(stamp));
    }

    /** All lie in one folder, so that no page need know how deep it lies. */
    private static String name(String path) {
        if (path.equals("/")) {
            return "index.html";
        }
        return path.substring(1).replaceAll("[^A-Za-z0-9.-]", "-") + ".html";
    }
}
