package tiewright.http;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Style sheets, scripts, pictures and fonts, sent as they stand in the jar. Each is read when it is first asked for: to look through the
 * whole jar before the first page took a fifth of a start. A browser keeps one for an hour, then asks whether it changed (RFC 9110, 13.1.2).
 */
final class StaticFiles {
    private static final String AT = "/static/";
    private static final String HELPER = "sw.js";
    private static final Pattern NAME = Pattern.compile("(?:fonts/)?[A-Za-z0-9-]+\\.([a-z0-9]+)");
    private static final Map<String, String> TYPES = Map.of(
            "css", "text/css; charset=utf-8",
            "js", "text/javascript; charset=utf-8",
            "svg", "image/svg+xml",
            "txt", "text/plain; charset=utf-8",
            "woff2", "font/woff2");

    private final Map<String, StaticFile> read = new ConcurrentHashMap<>();

    /**
     * One file.
     *
     * @param tag changes when a byte of it does
     */
    private record StaticFile(String type, String tag, byte[] bytes) {}

    void at(JavalinConfig config) {
        config.routes.get(AT + "<name>", this::send);
        config.routes.head(AT + "<name>", this::send);
    }

    private void send(Context ctx) {
        StaticFile file = file(ctx.pathParam("name")).orElseThrow(NotFoundResponse::new);
        ctx.header("Cache-Control", "max-age=3600").header("ETag", file.tag());
        if (ctx.pathParam("name").equals(HELPER)) {
            ctx.header("Service-Worker-Allowed", "/"); // it helps pages that do not lie beside it
        }
        if (file.tag().equals(ctx.header("If-None-Match"))) {
            ctx.status(HttpStatus.NOT_MODIFIED);
        } else {
            ctx.contentType(file.type()).result(file.bytes());
        }
    }

    private Optional<StaticFile> file(String name) {
        Matcher parts = NAME.matcher(name);
        Optional<String> type = parts.matches() ? Optional.ofNullable(TYPES.get(parts.group(1))) : Optional.empty();
        if (type.isPresent() && !read.containsKey(name)) {
            bytes(name).ifPresent(bytes -> read.put(name, new StaticFile(type.get(), tag(bytes), bytes)));
        }
        return Optional.ofNullable(read.get(name));
    }

    private static Optional<byte[]> bytes(String name) {
        try (InputStream in = StaticFiles.class.getResourceAsStream("/tiewright/static/" + name)) {
            return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static String tag(byte[] bytes) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
            return '"' + HexFormat.of().formatHex(digest, 0, 16) + '"';
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
