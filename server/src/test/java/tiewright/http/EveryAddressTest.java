package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import io.javalin.http.HandlerType;
import java.net.http.HttpResponse;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import tiewright.desk.PostNotice;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Role;
import tiewright.event.SetUpFact;
import tiewright.http.visit.Door;
import tiewright.http.visit.Routes.Route;

/**
 * Every address that the service answers, taken from the service itself, for every role: so no new page can be forgotten. Headers after
 * the OWASP Secure Headers Project and RFC 9110; the name made of markup is common practice, no source.
 */
class EveryAddressTest {
    private static final String MARKUP = "<img src=x onerror=alert(1)>\"'&amp;";
    private static final Map<String, String> EXAMPLES = Map.of(
            "club", "N",
            "player", "N1",
            "tie", "A1",
            "rubber", "1",
            "court", "1",
            "notice", "1",
            "number", "1",
            "pool", "A",
            "secret", "none",
            "language", "en");

    private static final Map<String, String> HEADERS = Map.of(
            "content-security-policy",
            "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; font-src 'self'; connect-src 'self';"
                    + " media-src blob:; form-action 'self'; base-uri 'none'; frame-ancestors 'none'",
            "x-content-type-options",
            "nosniff",
            "referrer-policy",
            "same-origin",
            "cache-control",
            "no-store");

    /** What the content policy would not run or show anyway; nothing of ours may need it. */
    private static final Pattern IN_THE_PAGE = Pattern.compile(
            "<script(?![^>]*\\ssrc=)|<style|\\sstyle=\"|\\son[a-z]+=\"|(?:href|src|action)=\"(?:javascript|data|http):");

    private static final Pattern PARAMETER = Pattern.compile("[{<]([a-z]+)[}>]");

    /** Whom an address serves, said once more beside the doors: by its first part. */
    private static final Map<String, List<Door>> FIRST_PARTS = Map.of(
            "captain", List.of(Door.CAPTAIN, Door.NOTES),
            "organiser", List.of(Door.ORGANISER, Door.OFFICIALS),
            "desk", List.of(Door.DESK, Door.OFFICIALS, Door.COURT, Door.STOP),
            "cards", List.of(Door.CARDS, Door.CARDS_OR_CAPTAIN, Door.DESK),
            "log", List.of(Door.DESK));

    private static Served served() {
        Days day = Days.oneTie()
                .fact(new SetUpFact.ClubEntered(
                        ClubId.of("M"), "Club " + MARKUP, Optional.of(MARKUP), OptionalInt.empty()))
                .player("M1", "M", 1)
                .named("N1", MARKUP)
                .named("M1", MARKUP)
                .opened("A1");
        Served served = Served.of(day, Days.moment("10:05"));
        served.ask(Days.desk(), new PostNotice(MARKUP, Optional.empty(), Optional.empty(), Optional.empty(), MARKUP));
        return served;
    }

    private static Map<Role, String> cookies(Served served) {
        Map<Role, String> cookies = new EnumMap<>(Role.class);
        for (Role role : Role.values()) {
            cookies.put(
                    role,
                    switch (role) {
                        case PUBLIC -> "";
                        case CAPTAIN -> served.captain("N").cookie();
                        case PLAYER -> served.player("N", "N1").cookie();
                        default -> served.as(role).cookie();
                    });
        }
        return cookies;
    }

    private static List<Route> addresses(Served served, HandlerType method) {
        // those last that end what the others need
        return served.service.addresses().stream()
                .filter(route -> route.method().equals(method))
                .sorted(Comparator.comparing((Route route) -> route.path().matches("/leave|.*/erase|.*/links.*"))
                        .thenComparing(Route::path))
                .toList();
    }

    private static String filled(Route route) {
        Matcher parameter = PARAMETER.matcher(route.path());
        return parameter.replaceAll(found -> {
            String example = EXAMPLES.get(found.group(1));
            assertThat(example)
                    .as("an example for {%s} of %s", found.group(1), route.path())
                    .isNotNull();
            return example;
        });
    }

    @Test
    void every_page_opens_for_its_roles_alone_and_changes_nothing() {
        try (Served served = served()) {
            Browser browser = new Browser(served.service.url());
            Map<Role, String> cookies = cookies(served);
            long before = served.ledger.event().seq();
            List<Route> pages = addresses(served, HandlerType.GET);
            assertThat(pages).hasSizeGreaterThan(70);
            for (Route page : pages) {
                String path = filled(page);
                cookies.forEach((role, cookie) -> {
                    HttpResponse<String> got = browser.ask("GET", path, cookie, Map.of());
                    String what = "GET " + page + " by " + role + ": " + got.statusCode();
                    opensFor(page, role, got, what);
                    isSound(got, what);
                    assertThat(browser.ask("HEAD", path, cookie, Map.of()).statusCode())
                            .as("HEAD as %s", what)
                            .isEqualTo(got.statusCode());
                });
            }
            assertThat(served.ledger.event().seq())
                    .as("facts after every page was opened")
                    .isEqualTo(before);
        }
    }

    private static void opensFor(Route page, Role role, HttpResponse<String> got, String what) {
        if (page.door().opensFor(role) && !page.path().startsWith("/control")) {
            // a page may know more of this visitor, such as whose tie it is
            assertThat(got.statusCode()).as(what).isLessThan(500).isNotEqualTo(405);
        } else {
            assertThat(got.statusCode()).as(what).isEqualTo(403);
        }
    }

    @Test
    void every_form_is_taken_from_our_own_pages_and_its_own_roles_alone() {
        try (Served served = served()) {
            Browser browser = new Browser(served.service.url());
            Map<Role, String> cookies = cookies(served);
            List<Route> forms = addresses(served, HandlerType.POST);
            assertThat(forms).hasSizeGreaterThan(70);
            long before = served.ledger.event().seq();
            for (Route form : forms) {
                String path = filled(form);
                cookies.forEach((role, cookie) -> {
                    for (Map<String, String> elsewhere : List.of(
                            Map.of("Origin", "https://elsewhere.example"),
                            Map.of("Origin", "null"),
                            Map.of("Sec-Fetch-Site", "cross-site"),
                            Map.of("Sec-Fetch-Site", "same-site"))) {
                        HttpResponse<String> got = browser.ask("POST", path, cookie, elsewhere);
                        String what = "POST " + form + " by " + role + " " + elsewhere;
                        assertThat(got.statusCode()).as(what).isEqualTo(403);
                        isSound(got, what);
                    }
                    if (!form.door().opensFor(role)) {
                        HttpResponse<String> got = browser.ask("POST", path, cookie, own(served));
                        String what = "POST " + form + " by " + role;
                        assertThat(got.statusCode()).as(what).isEqualTo(403);
                        isSound(got, what);
                    }
                });
            }
            assertThat(served.ledger.event().seq())
                    .as("facts after all these refusals")
                    .isEqualTo(before);
            for (Route form : forms) {
                cookies.forEach((role, cookie) -> {
                    HttpResponse<String> got = browser.ask("POST", filled(form), cookie, own(served));
                    String what = "POST of nothing to " + form + " by " + role + ": " + got.statusCode();
                    assertThat(got.statusCode()).as(what).isLessThan(500);
                    isSound(got, what);
                });
            }
        }
    }

    private static Map<String, String> own(Served served) {
        return Map.of("Origin", served.service.url());
    }

    private static void isSound(HttpResponse<String> got, String what) {
        HEADERS.forEach((name, value) -> assertThat(got.headers().firstValue(name))
                .as("%s of %s", name, what)
                .contains(value));
        assertThat(got.headers().firstValue("server")).as("server of %s", what).isEmpty();
        got.headers()
                .allValues("set-cookie")
                .forEach(cookie -> assertThat(cookie)
                        .as("a cookie of %s", what)
                        .contains("Path=/")
                        .matches("(?s).*(Max-Age=0|SameSite=Lax.*HttpOnly|HttpOnly.*SameSite=Lax).*"));
        String type = got.headers().firstValue("content-type").orElse("none");
        assertThat(type).as("content type of %s", what).doesNotContain("javascript");
        if (type.startsWith("text/html")) {
            assertThat(type).as(what).contains("charset=utf-8");
            assertThat(IN_THE_PAGE.matcher(got.body()).results().map(found -> found.group()))
                    .as("in the page %s", what)
                    .isEmpty();
            assertThat(got.body()).as(what).doesNotContain("<img src=x", "\tat tiewright");
        }
        got.headers()
                .firstValue("location")
                .ifPresent(to -> assertThat(to)
                        .as("where %s leads", what)
                        .startsWith("/")
                        .doesNotStartWith("//"));
    }

    @Test
    void an_address_serves_whom_its_first_part_names() {
        try (Served served = Served.empty(Days.moment("09:00"))) {
            for (Route route : served.service.addresses()) {
                if (route.path().startsWith("/organiser/links")) {
                    assertThat(route.door()).isEqualTo(Door.DESK); // links of players are made at the desk
                    continue;
                }
                List<Door> doors = FIRST_PARTS.get(route.path().split("/", 3)[1]);
                if (doors != null) {
                    assertThat(doors).as(route.toString()).contains(route.door());
                }
            }
        }
    }
}
