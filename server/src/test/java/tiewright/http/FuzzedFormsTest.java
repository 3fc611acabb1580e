package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.AppenderBase;
import io.javalin.http.HandlerType;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.slf4j.LoggerFactory;
import tiewright.Seed;
import tiewright.event.Days;
import tiewright.event.Recorded;
import tiewright.event.Role;
import tiewright.http.visit.Routes.Route;

/**
 * Requests as nobody's browser makes them: forms of the service's own pages with fields spoilt, doubled, left out and invented, and pages with
 * nonsense in their addresses, by every role. None is answered 500, none leaves a stack trace, and nothing that was typed comes into the
 * log. {@code -Dfuzz=100000} sends as many.
 */
class FuzzedFormsTest {
    private static final int MANY = Integer.getInteger("fuzz", 5_000);
    /** Then the day begins anew, for somebody may have ended or deleted everything. */
    private static final int OF_ONE_DAY = 1_250;

    private static final String PRIVATE_WORD = "Quillonby";
    private static final Pattern ACTION = Pattern.compile("<form\\b[^>]*action=\"([^\"]+)\"");
    private static final Pattern PARAMETER = Pattern.compile("\\{[a-z]+}");
    private static final List<String> NONSENSE = List.of(
            PRIVATE_WORD,
            "-1",
            "0",
            "1",
            "21",
            "2147483648",
            "99999999999999999999",
            "1e9",
            "NaN",
            "2026-02-30",
            "25:61",
            "24:00",
            "+999999999-12-31",
            "<b onclick=x>",
            "'; DROP TABLE ledger; --",
            "../../x",
            "\u202eabc",
            "\uD83D\uDE00",
            "\u0000\u001b[31m",
            "\r\nX: y",
            "N1",
            "S3",
            "A1",
            "N",
            "home",
            "away",
            "yes",
            "11",
            "\u0663",
            "{club}",
            "{0,choice,x}",
            "UTC",
            "=1+1",
            "\uD83D",
            "%",
            "%00",
            "a,b;c\td\ne",
            "\ufeffname",
            "x".repeat(1_500),
            "https://elsewhere.example",
            "//elsewhere.example",
            "\"",
            "'",
            "\\");

    private final Seed seed = Seed.fresh();
    private final Random random = seed.random();

    /** A form as a page showed it. */
    private record Shown(String action, Map<String, String> fields) {}

    /** One visitor and the forms that the visitor was shown. */
    private record Somebody(String cookie, List<Shown> forms) {}

    private static final class Heard extends AppenderBase<ILoggingEvent> {
        private final Queue<String> bad = new ConcurrentLinkedQueue<>();

        @Override
        protected void append(ILoggingEvent event) {
            String line = event.getFormattedMessage();
            if (event.getLevel().isGreaterOrEqual(Level.ERROR)
                    || event.getThrowableProxy() != null && event.getLevel().isGreaterOrEqual(Level.INFO)
                    || line.contains(PRIVATE_WORD)
                    || line.contains("secret-")) {
                bad.add(event.getLevel() + " " + line);
            }
        }
    }

    @Test
    void no_request_is_answered_by_a_failure_or_leaves_a_trace() {
        Logger log = (Logger) LoggerFactory.getLogger(org.slf4j.Logger.ROOT_LOGGER_NAME);
        Heard heard = new Heard();
        heard.start();
        log.addAppender(heard);
        try {
            for (int sent = 0; sent < MANY; sent += OF_ONE_DAY) {
                aDay(Math.min(OF_ONE_DAY, MANY - sent), heard);
            }
        } finally {
            log.detachAppender(heard);
        }
    }

    private void aDay(int many, Heard heard) {
        Days day = Days.oneTie().named("N1", PRIVATE_WORD).named("S2", PRIVATE_WORD + " <b>");
        try (Served served = Served.of(random.nextBoolean() ? day : day.opened("A1"), Days.moment("10:05"))) {
            Browser browser = new Browser(served.service.url());
            List<Route> addresses = served.service.addresses();
            List<Somebody> people = people(served, addresses);
            for (int i = 0; i < many; i++) {
                Somebody one = people.get(random.nextInt(people.size()));
                HttpResponse<String> got = one.forms.isEmpty() || random.nextInt(6) == 0
                        ? browser.ask("GET", address(addresses), one.cookie, Map.of())
                        : send(browser, served, one);
                assertThat(got.statusCode()).as("%s: %s", seed, got.request()).isLessThan(500);
                assertThat(heard.bad).as("the log, %s: %s", seed, got.request()).isEmpty();
            }
            List<Recorded> facts = served.ledger.facts(0);
            served.restart();
            assertThat(served.ledger.facts(0)).as("read again, %s", seed).isEqualTo(facts);
        }
    }

    private HttpResponse<String> send(Browser browser, Served served, Somebody one) {
        Shown form = one.forms.get(random.nextInt(one.forms.size()));
        String body = spoilt(form.fields).entrySet().stream()
                .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"));
        if (random.nextInt(20) == 0) {
            body = random.nextBoolean() ? body + "&" + body : body.replaceFirst("%", "%%");
        }
        return browser.ask("POST", form.action, one.cookie, Map.of("Origin", served.service.url()), body);
    }

    private Map<String, String> spoilt(Map<String, String> shown) {
        Map<String, String> fields = new LinkedHashMap<>();
        int most = random.nextInt(4) == 0 ? 100 : 1 + random.nextInt(3);
        List<String> names = new ArrayList<>(shown.keySet());
        shown.forEach((name, value) -> {
            boolean isSpoilt = random.nextInt(names.size()) < most;
            if (!isSpoilt || random.nextInt(6) > 0) {
                fields.put(name, isSpoilt ? nonsense() : value);
            }
        });
        fields.computeIfPresent(
                "key",
                (name, value) -> UUID.nameUUIDFromBytes((value + random.nextLong()).getBytes(StandardCharsets.UTF_8))
                        .toString());
        if (random.nextInt(10) == 0) {
            fields.put(nonsense(), nonsense());
        }
        return fields;
    }

    private String nonsense() {
        return NONSENSE.get(random.nextInt(NONSENSE.size()));
    }

    private String address(List<Route> addresses) {
        String path = addresses.get(random.nextInt(addresses.size())).path();
        String filled = PARAMETER.matcher(path).replaceAll(found -> Matcher.quoteReplacement(inAddress()));
        return random.nextInt(3) > 0 ? filled : filled + "?" + encoded(nonsense()) + "=" + inAddress();
    }

    private String inAddress() {
        String text = nonsense();
        return encoded(text.substring(0, Math.min(500, text.length())));
    }

    private static List<Somebody> people(Served served, List<Route> addresses) {
        List<String> pages = addresses.stream()
                .filter(route -> route.method().equals(HandlerType.GET))
                .map(route -> route.path()
                        .replace("{tie}", "A1")
                        .replace("{rubber}", "1")
                        .replace("{club}", "N")
                        .replace("{player}", "N1")
                        .replace("{court}", "1"))
                .filter(path -> !path.contains("{") && !path.endsWith("/backup"))
                .toList();
        List<Somebody> people = new ArrayList<>();
        for (Role role : Role.values()) {
            Guest guest =
                    switch (role) {
                        case PUBLIC -> served.stranger();
                        case CAPTAIN -> served.captain("N");
                        case PLAYER -> served.player("N", "N1");
                        default -> served.as(role);
                    };
            people.add(new Somebody(guest.cookie(), shown(guest, pages)));
        }
        return people;
    }

    private static List<Shown> shown(Guest guest, List<String> pages) {
        Map<String, Shown> forms = new LinkedHashMap<>();
        for (String page : pages) {
            Guest.Got got = guest.get(page);
            Matcher action = ACTION.matcher(got.body());
            while (action.find()) {
                String to = action.group(1);
                if (!to.equals("/leave") && got.body().contains("method=\"post\" action=\"" + to + "\"")) {
                    forms.computeIfAbsent(to, any -> new Shown(to, FormFields.of(got, to)));
                }
            }
        }
        return List.copyOf(forms.values());
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
