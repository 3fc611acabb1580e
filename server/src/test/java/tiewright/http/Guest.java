package tiewright.http;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.CookiePolicy;
import java.net.ProxySelector;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A browser without scripts: keeps its cookie, follows where it is sent, sends a form with its hidden fields. */
public final class Guest {
    private static final Pattern HIDDEN =
            Pattern.compile("<input type=\"hidden\" name=\"([^\"]+)\" value=\"([^\"]*)\">");

    private final String url;
    private final CookieManager cookies = new CookieManager(null, CookiePolicy.ACCEPT_ALL);
    private final HttpClient client;

    Guest(String url) {
        this(url, HttpClient.Builder.NO_PROXY);
    }

    /** @param way by which this browser reaches the service */
    Guest(String url, ProxySelector way) {
        this.url = url;
        this.client = HttpClient.newBuilder()
                .cookieHandler(cookies)
                .followRedirects(HttpClient.Redirect.NORMAL)
                .proxy(way)
                .build();
    }

    /** The cookie that was set here, as name=value; empty if none. */
    String cookie() {
        return cookies.getCookieStore().getCookies().stream()
                .filter(one -> one.getName().startsWith("tiewright"))
                .map(one -> one.getName() + "=" + one.getValue())
                .findFirst()
                .orElse("");
    }

    /** What came back. */
    public record Got(int status, String body, String path) {
        /** What a person reads: tags and hidden values dropped, blanks folded. */
        public String text() {
            return body.replaceAll("(?s)<(script|style).*?</\\1>", " ")
                    .replaceAll("<[^>]+>", " ")
                    .replace("&#39;", "'")
                    .replace("&#34;", "\"")
                    .replace("&amp;", "&")
                    .replaceAll("\\s+", " ");
        }
    }

    public Got get(String path) {
        return send(HttpRequest.newBuilder(URI.create(url + path)).GET());
    }

    /** What is no text. */
    byte[] getBytes(String path) {
        try {
            HttpResponse<byte[]> got = client.send(
                    HttpRequest.newBuilder(URI.create(url + path)).GET().build(),
                    HttpResponse.BodyHandlers.ofByteArray());
            if (got.statusCode() != 200) {
                throw new AssertionError(path + " answered " + got.statusCode());
            }
            return got.body();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(interrupted);
        }
    }

    /** With headers that a browser may send. */
    Got get(String path, Map<String, String> headers) {
        HttpRequest.Builder request =
                HttpRequest.newBuilder(URI.create(url + path)).GET();
        headers.forEach(request::header);
        return send(request);
    }

    Got head(String path) {
        return send(HttpRequest.newBuilder(URI.create(url + path)).method("HEAD", HttpRequest.BodyPublishers.noBody()));
    }

    /** Opens the page and sends the form on it that goes to {@code action}, with these values typed in. */
    public Got send(String page, String action, Map<String, String> typed) {
        return post(action, filled(page, action, typed));
    }

    /** The form's hidden fields and what was typed, ready to be posted once or more. */
    public Map<String, String> filled(String page, String action, Map<String, String> typed) {
        Got got = get(page);
        int at = got.body().indexOf("action=\"" + action + "\"");
        if (at < 0) {
            throw new AssertionError(
                    page + " has no form that goes to " + action + ": " + got.status() + " " + got.text());
        }
        String form = got.body().substring(at, got.body().indexOf("</form>", at));
        Map<String, String> fields = new LinkedHashMap<>();
        Matcher hidden = HIDDEN.matcher(form);
        while (hidden.find()) {
            fields.put(hidden.group(1), hidden.group(2));
        }
        fields.putAll(typed);
        return fields;
    }

    public Got post(String path, Map<String, String> fields) {
        return postFrom(url, path, fields);
    }

    /** Sends a form whose answer is no text. */
    HttpResponse<byte[]> postForBytes(String path, Map<String, String> fields) {
        try {
            return client.send(posting(url, path, fields).build(), HttpResponse.BodyHandlers.ofByteArray());
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(interrupted);
        }
    }

    /** Sends a form as a page of another site would. */
    Got postFrom(String origin, String path, Map<String, String> fields) {
        return send(posting(origin, path, fields));
    }

    private HttpRequest.Builder posting(String origin, String path, Map<String, String> fields) {
        String body = fields.entrySet().stream()
                .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"));
        return HttpRequest.newBuilder(URI.create(url + path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("Origin", origin)
                .POST(HttpRequest.BodyPublishers.ofString(body));
    }

    /** Sends what no page of ours would: any headers, any body. */
    Got raw(String path, String body, Map<String, String> headers) {
        HttpRequest.Builder request =
                HttpRequest.newBuilder(URI.create(url + path)).POST(HttpRequest.BodyPublishers.ofString(body));
        headers.forEach(request::header);
        return send(request);
    }

    /** Sends the form on the page with files and text, as a browser does (RFC 7578); the names are used as they are. */
    Got sendInParts(String page, String action, Map<String, String> typed, Map<String, byte[]> files) {
        String boundary = "part-of-the-form";
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        filled(page, action, typed)
                .forEach((name, value) ->
                        part(body, boundary, "name=\"" + name + "\"", value.getBytes(StandardCharsets.UTF_8)));
        files.forEach((name, bytes) ->
                part(body, boundary, "name=\"" + name + "\"; filename=\"notes.csv\"\r\nContent-Type: text/csv", bytes));
        body.writeBytes(("--" + boundary + "--\r\n").getBytes(StandardCharsets.UTF_8));
        return send(HttpRequest.newBuilder(URI.create(url + action))
                .header("Content-Type", "multipart/form-data; boundary=" + boundary)
                .header("Origin", url)
                .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray())));
    }

    private static void part(ByteArrayOutputStream body, String boundary, String head, byte[] content) {
        body.writeBytes(("--" + boundary + "\r\nContent-Disposition: form-data; " + head + "\r\n\r\n")
                .getBytes(StandardCharsets.UTF_8));
        body.writeBytes(content);
        body.writeBytes("\r\n".getBytes(StandardCharsets.UTF_8));
    }

    /** A stream of events, open until it is closed. */
    java.io.InputStream listen(String path) {
        try {
            return client.send(
                            HttpRequest.newBuilder(URI.create(url + path))
                                    .header("Accept", "text/event-stream")
                                    .build(),
                            HttpResponse.BodyHandlers.ofInputStream())
                    .body();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(interrupted);
        }
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private Got send(HttpRequest.Builder request) {
        try {
            HttpResponse<String> response =
                    client.send(request.build(), HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
            return new Got(
                    response.statusCode(), response.body(), response.uri().getPath());
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(interrupted);
        }
    }
}
