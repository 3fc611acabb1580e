package tiewright.http.pieces;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/**
 * The pieces in a real Chromium, under the strict content security policy they are made for, at the widths of a small
 * phone (which is also a 640 px window at 200 % zoom), a phone and a laptop.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ExamplesIT {

  private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
  private static final Path DRIVER = Path.of("/usr/bin/chromedriver");

  private final Examples examples = Examples.shown();
  private HttpServer server;
  private ChromeDriver browser;

  @BeforeAll
  void start() throws IOException {
    boolean there = Files.isExecutable(CHROMIUM) && Files.isExecutable(DRIVER);
    if (System.getenv("CI") == null) {
      Assumptions.assumeTrue(there, "skipped: install the browser with: apt-get install chromium chromium-driver");
    }
    server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.createContext("/", this::answer);
    server.start();
    System.setProperty("SE_OFFLINE", "true");
    var options = new ChromeOptions();
    options.setBinary(CHROMIUM.toString());
    options.addArguments("--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
        "--disable-background-networking", "--disable-component-update", "--disable-sync",
        "--user-data-dir=" + Files.createTempDirectory("tiewright-browser"));
    options.setCapability("goog:loggingPrefs", Map.of("browser", "ALL"));
    browser = new ChromeDriver(new ChromeDriverService.Builder().usingDriverExecutable(DRIVER.toFile()).build(), options);
  }

  @AfterAll
  void stop() {
    if (browser != null) {
      browser.quit();
    }
    if (server != null) {
      server.stop(0);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {320, 390, 1280})
  void has_no_fault_that_axe_can_see(int width) {
    open(width);
    List<Rule> faults = new AxeBuilder().withTags(List.of("wcag2a", "wcag2aa", "wcag2aaa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"))
        .analyze(browser).getViolations();
    assertThat(faults).as(faults.toString()).isEmpty();
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
    open(390);
    var errors = browser.manage().logs().get("browser").getAll().stream().map(Object::toString)
        .filter(line -> line.contains("SEVERE") || line.contains("Content Security Policy")).toList();
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
    assertThat(browser.findElement(By.cssSelector(".countdown .left")).getText()).matches("(7:00|6:5\\d) min");
  }

  @Test
  void covers_the_names_until_pressed() {
    open(390);
    var cover = browser.findElement(By.cssSelector("details[data-shoulder]"));
    var names = cover.findElement(By.cssSelector(".rubbers"));
    assertThat(names.isDisplayed()).isFalse();
    cover.findElement(By.tagName("summary")).click();
    assertThat(names.isDisplayed()).isTrue();
  }

  /** The court number is to be read at arm's length. */
  @Test
  void shows_the_court_as_a_huge_number() {
    open(390);
    assertThat(number("return document.querySelector('.next .court b').getBoundingClientRect().height")).isGreaterThan(120);
  }

  /** Left to be looked at by people: target/examples/*.png. */
  @ParameterizedTest
  @ValueSource(ints = {390, 1280})
  void leaves_a_picture(int width) throws IOException {
    open(width);
    long height = number("return document.documentElement.scrollHeight");
    browser.executeCdpCommand("Emulation.setDeviceMetricsOverride", Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    byte[] picture = browser.getScreenshotAs(OutputType.BYTES);
    Path file = Path.of("target/examples/examples-" + width + ".png");
    Files.createDirectories(file.getParent());
    Files.write(file, picture);
    assertThat(picture.length).isGreaterThan(50_000);
  }

  private void open(int width) {
    browser.executeCdpCommand("Emulation.setDeviceMetricsOverride", Map.of("width", width, "height", 800, "deviceScaleFactor", 1, "mobile", false));
    browser.get("http://localhost:" + server.getAddress().getPort() + "/");
  }

  private Object js(String script) {
    return ((JavascriptExecutor) browser).executeScript(script);
  }

  private long number(String script) {
    return ((Number) js(script)).longValue();
  }

  private void answer(HttpExchange exchange) throws IOException {
    String path = exchange.getRequestURI().getPath();
    byte[] body = new byte[0];
    String type = "text/html; charset=utf-8";
    int status = 200;
    if (path.equals("/")) {
      body = ExamplesTest.rendered(examples).getBytes(StandardCharsets.UTF_8);
      exchange.getResponseHeaders().add("Content-Security-Policy", "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; font-src 'self'; connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'");
    } else if (path.equals("/events")) {
      type = "text/event-stream";
      body = ": quiet\n\n".getBytes(StandardCharsets.UTF_8);
    } else if (path.equals("/static/htmx.js")) {
      type = "text/javascript";
      body = getClass().getResourceAsStream("/META-INF/resources/webjars/htmx.org/2.0.7/dist/htmx.min.js").readAllBytes();
    } else if (path.startsWith("/static/") && Files.isRegularFile(Path.of("../web").resolve(path.substring(1)))) {
      type = path.endsWith(".css") ? "text/css" : path.endsWith(".js") ? "text/javascript" : path.endsWith(".svg") ? "image/svg+xml" : "font/woff2";
      body = Files.readAllBytes(Path.of("../web").resolve(path.substring(1)));
    } else {
      status = 404;
    }
    exchange.getResponseHeaders().add("Content-Type", type);
    exchange.sendResponseHeaders(status, body.length == 0 ? -1 : body.length);
    exchange.getResponseBody().write(body);
    exchange.close();
  }
}
