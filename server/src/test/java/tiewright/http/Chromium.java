package tiewright.http;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Assumptions;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.support.ui.Select;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A real browser in the hands of one person at a time: coming in by another personal link makes it another person's. */
public final class Chromium implements AutoCloseable {
    private static final Path BINARY = Path.of("/usr/bin/chromium");
    private static final Path DRIVER = Path.of("/usr/bin/chromedriver");
    private static final Duration PATIENCE = Duration.ofSeconds(60);
    private static final int PAPER_PX = 688; // 210 mm less 14 mm at each side, 96 px to 25.4 mm
    private static final Duration POLL = Duration.ofMillis(15);

    private final ChromeDriver driver;
    private String url = "";

    private Chromium(ChromeDriver driver) {
        this.driver = driver;
    }

    static Chromium start() throws IOException {
        return new Chromium(driver());
    }

    /** With what an earlier one left in this folder. */
    static Chromium start(Path profile) throws IOException {
        return new Chromium(driver(profile));
    }

    /** On a phone whose every byte goes by this proxy. */
    static Chromium by(InetSocketAddress proxy) throws IOException {
        return new Chromium(
                driver(Files.createTempDirectory("tiewright-browser"), "--proxy-server=127.0.0.1:" + proxy.getPort()));
    }

    public static ChromeDriver driver() throws IOException {
        return driver(Files.createTempDirectory("tiewright-browser"));
    }

    /** Skips the test with a line that says how to install the browser, except in CI, where that is a failure. */
    private static ChromeDriver driver(Path profile, String... more) throws IOException {
        boolean there = Files.isExecutable(BINARY) && Files.isExecutable(DRIVER);
        if (System.getenv("CI") == null) {
            Assumptions.assumeTrue(
                    there, "skipped: install the browser with: apt-get install chromium chromium-driver");
        }
        System.setProperty("SE_OFFLINE", "true");
        ChromeOptions options = new ChromeOptions();
        options.setBinary(BINARY.toString());
        options.addArguments(
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--user-data-dir=" + profile);
        options.addArguments(more);
        options.setCapability("goog:loggingPrefs", Map.of("browser", "ALL"));
        return new ChromeDriver(
                new ChromeDriverService.Builder()
                        .usingDriverExecutable(DRIVER.toFile())
                        .build(),
                options);
    }

    Chromium at(String newUrl) {
        this.url = newUrl;
        return this;
    }

    void size(int width, int height) {
        driver.manage().window().setSize(new Dimension(width, height));
    }

    /** The page gets exactly this much room, whatever the window's own borders take. */
    void phone(int width, int height) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", true));
    }

    void go(String path) {
        driver.get(path.startsWith("/") ? url + path : path);
    }

    /** Comes in by a personal link, as nobody else. */
    void enter(String link) {
        driver.manage().deleteAllCookies();
        driver.get(link);
    }

    String path() {
        return driver.getCurrentUrl().substring(url.length());
    }

    String text() {
        return driver.findElement(By.tagName("body")).getText();
    }

    String title() {
        return driver.findElement(By.tagName("h1")).getText();
    }

    void type(String id, String words) {
        WebElement field = driver.findElement(By.id(id));
        field.clear();
        field.sendKeys(words);
    }

    /** Key by key at the end of what stands there, as a page that listens to keys hears them. */
    void keys(String id, String keys) {
        js(
                "const f = document.getElementById(arguments[0]); f.focus(); f.setSelectionRange(f.value.length, f.value.length)",
                id);
        driver.findElement(By.id(id)).sendKeys(keys);
    }

    /** Into whatever has the focus. */
    void keysHere(String keys) {
        driver.switchTo().activeElement().sendKeys(keys);
    }

    void tap(String css) {
        WebElement button = driver.findElement(By.cssSelector(css));
        js("arguments[0].scrollIntoView({block: 'center'})", button);
        button.click();
    }

    /** The same by script, in one step where a list is chosen from many times: the page hears the change as from a hand. */
    void pick(String id, String value) {
        js(
                "const f = document.getElementById(arguments[0]); f.value = arguments[1];"
                        + " f.dispatchEvent(new Event('input', {bubbles: true})); f.dispatchEvent(new Event('change', {bubbles: true}))",
                id,
                value);
    }

    /** A date or time field: typed in the browser's own language it would depend on the machine, so its value is set. */
    void set(String id, String value) {
        js(
                "const f = document.getElementById(arguments[0]); f.value = arguments[1]; f.dispatchEvent(new Event('input', {bubbles: true}))",
                id,
                value);
    }

    void choose(String id, String value) {
        new Select(driver.findElement(By.id(id))).selectByValue(value);
    }

    void tick(String name, String value) {
        WebElement box = driver.findElement(By.cssSelector("input[name='" + name + "'][value='" + value + "']"));
        if (!box.isSelected()) {
            js("arguments[0].scrollIntoView({block: 'center'})", box);
            box.click();
        }
    }

    /** Read in one step, so that a page that moves on meanwhile is read before or after, never in between. */
    List<String> texts(String css) {
        Object texts =
                js("return [...document.querySelectorAll(arguments[0])].map((each) => each.textContent.trim())", css);
        return ((List<?>) texts).stream().map(String.class::cast).toList();
    }

    boolean has(String css) {
        return !driver.findElements(By.cssSelector(css)).isEmpty();
    }

    void open(String summary) {
        WebElement line = driver.findElement(By.xpath("//summary[normalize-space()='" + summary + "']"));
        js("arguments[0].scrollIntoView({block: 'center'})", line);
        line.click();
    }

    /** Presses the button that sends the form with this action, and waits for the page that follows. */
    void press(String action, String words) {
        WebElement button = driver.findElement(By.xpath("//form[@action='" + action
                + "']//button[starts-with(normalize-space(), \"" + words + "\")]"
                + " | //button[@form=//form[@action='" + action + "']/@id][starts-with(normalize-space(), \"" + words
                + "\")]"));
        js("window.before = true");
        js("arguments[0].scrollIntoView({block: 'center'})", button);
        button.click();
        new WebDriverWait(driver, PATIENCE, POLL)
                .until(d -> js("return !window.before && document.readyState === 'complete'")
                        .equals(true));
        if (has("#refusal")) {
            throw new AssertionError(action + " was refused: " + String.join(" ", texts("#refusal li")));
        }
    }

    void waitFor(String css, String words) {
        new WebDriverWait(driver, PATIENCE, POLL)
                .ignoring(StaleElementReferenceException.class)
                .until(d -> texts(css).stream().anyMatch(text -> text.contains(words)));
    }

    /** From here on the service seems so many milliseconds away. */
    void latency(int milliseconds) {
        network(false, milliseconds);
    }

    /** The hall has no wifi from here on, or has it again. */
    void cut(boolean off) {
        network(off, 0);
    }

    private void network(boolean off, int milliseconds) {
        driver.executeCdpCommand("Network.enable", Map.of());
        driver.executeCdpCommand(
                "Network.emulateNetworkConditions",
                Map.of("offline", off, "latency", milliseconds, "downloadThroughput", -1, "uploadThroughput", -1));
    }

    /** The browser is gone in the middle of whatever it did, as when a phone's battery ends. */
    static void kill(Path profile) {
        ProcessHandle.allProcesses()
                .filter(one -> one.info().commandLine().orElse("").contains(profile.toString()))
                .filter(one -> !one.info().command().orElse("").endsWith("chromedriver"))
                .forEach(ProcessHandle::destroyForcibly);
    }

    void waitUntil(String condition) {
        new WebDriverWait(driver, PATIENCE, POLL)
                .until(d -> js("return document.readyState === 'complete' && Boolean(" + condition + ")")
                        .equals(true));
    }

    /** What stands on paper. */
    String printedText() {
        driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
        String text = text();
        driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", ""));
        return text;
    }

    /** What a script finds on an A4 sheet between its margins. */
    Object onPaper(String script, Object... arguments) {
        driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", PAPER_PX, "height", 990, "deviceScaleFactor", 1, "mobile", false));
        Object found = js(script, arguments);
        driver.executeCdpCommand("Emulation.clearDeviceMetricsOverride", Map.of());
        driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", ""));
        return found;
    }

    /** How many sheets of paper the page takes, with its own page style. */
    int sheetsOfPaper() {
        Object pdf = driver.executeCdpCommand("Page.printToPDF", Map.of("preferCSSPageSize", true))
                .get("data");
        String text = new String(Base64.getDecoder().decode((String) pdf), StandardCharsets.ISO_8859_1);
        return (int)
                Pattern.compile("/Type\\s*/Page\\b").matcher(text).results().count();
    }

    /** What must be pushed sideways to be read through, with all that opens opened. */
    @SuppressWarnings("unchecked")
    List<String> sideways() {
        return (List<String>) js("""
                document.querySelectorAll('details').forEach(fold => fold.open = true);
                return [...document.querySelectorAll('main *')]
                    .filter(e => ['auto', 'scroll'].includes(getComputedStyle(e).overflowX) && e.scrollWidth > e.clientWidth + 1)
                    .map(e => e.tagName + ' ' + e.className + ': ' + e.innerText.slice(0, 60))""");
    }

    Object js(String script, Object... arguments) {
        Object answer = ((JavascriptExecutor) driver).executeScript(script, arguments);
        return answer == null ? "" : answer;
    }

    List<String> faults() {
        return Axe.faults(driver);
    }

    List<String> complaints() {
        return driver.manage().logs().get("browser").getAll().stream()
                .map(Object::toString)
                .filter(line -> line.contains("SEVERE"))
                .filter(line -> !line.contains("status of 4"))
                .toList();
    }

    void picture(Path file) throws IOException {
        Files.write(file, driver.getScreenshotAs(OutputType.BYTES));
    }

    @Override
    public void close() {
        driver.quit();
    }
}
