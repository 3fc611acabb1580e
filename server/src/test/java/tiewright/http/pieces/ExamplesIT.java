package tiewright.http.pieces;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.function.Function;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.WebDriverWait;
import tiewright.http.Axe;
import tiewright.http.Chromium;

/**
 * The pieces in a real Chromium, under the strict content security policy they are made for, at the widths of a small
 * phone (which is also a 640 px window at 200 % zoom), a phone and a laptop.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ExamplesIT {

    private final List<BlockingQueue<String>> listeners = new CopyOnWriteArrayList<>();
    private final ExecutorService threads = Executors.newCachedThreadPool();
    private volatile String page = "";
    private volatile boolean listening;
    private HttpServer server;
    private ChromeDriver browser;

    @BeforeAll
    void start() throws IOException {
        browser = Chromium.driver();
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/", this::answer);
        server.setExecutor(threads);
        server.start();
    }

    @BeforeEach
    void a_new_day() {
        listeners.clear();
        page = ExamplesTest.rendered(Examples.shown());
        listening = true;
        if (browser.getCurrentUrl().startsWith("http")) {
            js("sessionStorage.clear()");
        }
    }

    @AfterAll
    void stop() {
        if (browser != null) {
            browser.quit();
        }
        if (server != null) {
            server.stop(0);
            threads.shutdownNow();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {320, 390, 1280})
    void has_no_fault_that_axe_can_see(int width) {
        open(width);
        assertThat(Axe.faults(browser)).isEmpty();
    }

    @Test
    void axe_names_the_rule_and_the_element_at_fault() {
        page = page.replace("</main>", "<img src=\"/static/favicon.svg\"></main>");
        open(390);
        assertThat(Axe.faults(browser))
                .anySatisfy(fault -> assertThat(fault).startsWith("image-alt: ").contains("favicon.svg"));
    }

    /** The whole page may not scroll sideways (WCAG 2.2, 1.4.10 Reflow at 320 CSS pixels); tables do, inside their frame. */
    @ParameterizedTest
    @ValueSource(ints = {320, 390, 1280})
    void never_scrolls_sideways(int width) {
        open(width);
        assertThat(number("return document.documentElement.scrollWidth")).isLessThanOrEqualTo(width);
    }

    /** 44 CSS pixels: WCAG 2.2, 2.5.5 Target Size (Enhanced). A choice is pressed on its whole line. */
    @ParameterizedTest
    @ValueSource(ints = {390, 1280})
    void every_target_is_at_least_44_pixels_high(int width) {
        open(width);
        Object small = js("""
        return [...document.querySelectorAll('a, button, summary, select, textarea, input, .choice label')]
          .filter(e => !e.matches('.skip, .choice input') && e.getClientRects().length > 0)
          .filter(e => { const r = (e.matches('label') ? e.closest('.choice') : e).getBoundingClientRect(); return r.height < 43.5 || r.width < 43.5 })
          .map(e => e.outerHTML.slice(0, 120))""");
        assertThat((List<?>) small).isEmpty();
    }

    @Test
    void obeys_the_content_security_policy_and_logs_no_error() {
        browser.get("about:blank"); // a page of the test before may still ask for what that test kept from it
        browser.manage().logs().get("browser");
        open(390);
        var errors = browser.manage().logs().get("browser").getAll().stream()
                .map(Object::toString)
                .filter(line -> line.contains("SEVERE") || line.contains("Content Security Policy"))
                .toList();
        assertThat(errors).isEmpty();
    }

    @Test
    void puts_the_focus_on_the_refusal_first() {
        open(390);
        assertThat(browser.switchTo().activeElement().getAttribute("id")).isEqualTo("refusal");
    }

    @Test
    void counts_down_by_the_clock_of_the_service_and_not_of_the_phone() {
        open(390);
        // made at 12:58 for 13:05, whatever the clock of this machine says
        assertThat(browser.findElement(By.cssSelector(".countdown .left")).getText())
                .matches("(7:00|6:5\\d)");
    }

    @Test
    void covers_the_names_until_pressed() {
        open(390);
        var cover = browser.findElement(By.cssSelector("details[data-shoulder]"));
        var names = cover.findElement(By.cssSelector(".rubbers"));
        assertThat(names.isDisplayed()).isFalse();
        tap(cover.findElement(By.tagName("summary")));
        assertThat(names.isDisplayed()).isTrue();
    }

    /** The court number is to be read at arm's length. */
    @Test
    void shows_the_court_as_a_huge_number() {
        open(390);
        assertThat(number("return document.querySelector('.next .court b').getBoundingClientRect().height"))
                .isGreaterThan(120);
    }

    /** Cards four to an A4, sheets two: five rubbers, the decider among them, must fit their share of the paper. */
    @Test
    void cards_and_sheets_fit_their_share_of_the_paper() {
        open(718); // the width of an A4 between its margins, in CSS pixels
        browser.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
        try {
            Object cut = js("""
          return [...document.querySelectorAll('.cards-to-print .card, .sheets-to-print .sheet')]
            .filter(e => e.scrollHeight > e.clientHeight + 1).map(e => e.getAttribute('aria-label') + ' ' + e.scrollHeight + ' > ' + e.clientHeight)""");
            assertThat((List<?>) cut).isEmpty();
            assertThat(number("return document.querySelectorAll('.cards-to-print .card').length"))
                    .isEqualTo(4);
        } finally {
            browser.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", ""));
        }
    }

    @Test
    void shows_what_changed_without_being_asked_while_the_page_is_only_read() {
        open(1280);
        changeTheWorld("Saltmarsh", "Upstream");
        wait(driver -> driver.findElement(By.id("ties")).getText().contains("Upstream"));
        assertThat(browser.findElement(By.cssSelector(".bracket")).getText()).doesNotContain("Upstream");
    }

    @Test
    void announces_and_waits_while_a_form_is_being_filled() {
        open(1280);
        var name = browser.findElement(By.id("name"));
        name.sendKeys(" jr");
        double before =
                ((Number) js("return document.getElementById('name').getBoundingClientRect().top")).doubleValue();
        changeTheWorld("Saltmarsh", "Upstream");
        wait(driver -> driver.findElement(By.cssSelector(".news")).getText().equals("1 new result"));
        assertThat(browser.findElement(By.id("ties")).getText())
                .contains("Saltmarsh")
                .doesNotContain("Upstream");
        assertThat(((Number) js("return document.getElementById('name').getBoundingClientRect().top")).doubleValue())
                .isEqualTo(before);
        browser.findElement(By.cssSelector(".head button")).click();
        wait(driver -> driver.findElement(By.id("ties")).getText().contains("Upstream"));
        assertThat(browser.findElement(By.id("name")).getAttribute("value")).isEqualTo("Søren Lind jr");
        assertThat(browser.findElement(By.cssSelector(".news")).getText()).isEmpty();
    }

    @Test
    void keeps_what_was_typed_when_the_page_is_loaded_again() {
        page = page.replace("id=\"refusal\"", "");
        open(390);
        browser.findElement(By.id("name")).sendKeys(" jr");
        tap(browser.findElement(By.id("decider-2")));
        browser.navigate().refresh();
        assertThat(browser.findElement(By.id("name")).getAttribute("value")).isEqualTo("Søren Lind jr");
        assertThat(browser.findElement(By.id("decider-2")).isSelected()).isTrue();
    }

    @Test
    void hands_out_a_table_as_text_to_copy() {
        open(390);
        tap(browser.findElement(By.cssSelector("#copy-table summary")));
        tap(browser.findElement(By.cssSelector("[data-copy]")));
        wait(driver -> driver.findElement(By.cssSelector("#copy-table [role=status]"))
                .getText()
                .equals("Copied."));
    }

    @Test
    void says_since_when_there_is_no_connection() {
        listening = false;
        open(390);
        wait(driver -> driver.findElement(By.cssSelector(".news"))
                .getText()
                .matches("No connection since \\d\\d:\\d\\d: this may be old\\."));
    }

    /** Left to be looked at by people: target/examples/*.png. */
    @ParameterizedTest
    @ValueSource(ints = {390, 1280})
    void leaves_a_picture(int width) throws IOException {
        open(width);
        long height = number("return document.documentElement.scrollHeight");
        browser.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
        byte[] picture = browser.getScreenshotAs(OutputType.BYTES);
        Path file = Path.of("target/examples/examples-" + width + ".png");
        Files.createDirectories(file.getParent());
        Files.write(file, picture);
        assertThat(picture.length).isGreaterThan(50_000);
    }

    /** Where a thumb would have it, not behind the bar. */
    private void tap(WebElement what) {
        browser.executeScript("arguments[0].scrollIntoView({block: 'center'})", what);
        what.click();
    }

    private void open(int width) {
        browser.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", 800, "deviceScaleFactor", 1, "mobile", false));
        browser.get("http://localhost:" + server.getAddress().getPort() + "/");
    }

    /** From now on the page says {@code now} for {@code before}, and whoever listens is told. */
    private void changeTheWorld(String before, String now) {
        wait(driver -> !listeners.isEmpty());
        page = page.replace(before, now);
        listeners.forEach(queue -> queue.add("data: changed\n\n"));
    }

    private void wait(Function<WebDriver, Boolean> until) {
        // what is asked for may be taken out of the page and put in anew between two questions
        new WebDriverWait(browser, Duration.ofSeconds(10))
                .ignoring(StaleElementReferenceException.class)
                .until(until);
    }

    private Object js(String script) {
        return ((JavascriptExecutor) browser).executeScript(script);
    }

    private long number(String script) {
        return ((Number) js(script)).longValue();
    }

    private void answer(HttpExchange exchange) throws IOException {
        String path = exchange.getRequestURI().getPath();
        if (path.equals("/events") && listening) {
            tellNews(exchange);
            return;
        }
        byte[] body = new byte[0];
        String type = "text/html; charset=utf-8";
        int status = 200;
        if (path.equals("/")) {
            body = page.getBytes(StandardCharsets.UTF_8);
            exchange.getResponseHeaders()
                    .add(
                            "Content-Security-Policy",
                            "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; font-src 'self'; connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'");
        } else if (path.startsWith("/static/")
                && Files.isRegularFile(Path.of("../web").resolve(path.substring(1)))) {
            type = path.endsWith(".css")
                    ? "text/css"
                    : path.endsWith(".js") ? "text/javascript" : path.endsWith(".svg") ? "image/svg+xml" : "font/woff2";
            body = Files.readAllBytes(Path.of("../web").resolve(path.substring(1)));
            if (path.endsWith("/sw.js")) {
                exchange.getResponseHeaders().add("Service-Worker-Allowed", "/"); // as the service does
            }
        } else {
            status = 404;
        }
        exchange.getResponseHeaders().add("Content-Type", type);
        exchange.sendResponseHeaders(status, body.length == 0 ? -1 : body.length);
        exchange.getResponseBody().write(body);
        exchange.close();
    }

    private void tellNews(HttpExchange exchange) throws IOException {
        var queue = new LinkedBlockingQueue<>(List.of(": listening\n\n"));
        exchange.getResponseHeaders().add("Content-Type", "text/event-stream");
        exchange.sendResponseHeaders(200, 0);
        try (var out = exchange.getResponseBody()) {
            out.write(queue.take().getBytes(StandardCharsets.UTF_8));
            out.flush();
            listeners.add(queue);
            while (true) {
                out.write(queue.take().getBytes(StandardCharsets.UTF_8));
                out.flush();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
