package tiewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.chrome.ChromeDriver;
import tiewright.clock.WitnessedClock;
import tiewright.http.Chromium;
import tiewright.http.Service;
import tiewright.http.ServiceOptions;
import tiewright.ledger.Ledger;

/**
 * The ten screens of docs/tour.md, on the invented day: each is there, within its width. With {@code -Dtour=write} their pictures
 * are taken anew.
 */
class TourIT {
    static final Path DOCS = Path.of("../docs");
    private static final int COLOURS = 256;

    /** @param who "everybody", or how the start names the link */
    record Stop(String picture, String who, String page, boolean laptop) {}

    static final List<Stop> STOPS = List.of(
            new Stop("hall", "everybody", "/", false),
            new Stop("player", "player Maren Oksholt", "/player/KS1", false),
            new Stop("my-ties", "captain of Weirhouse", "/captain", false),
            new Stop("proposal", "captain of Weirhouse", "/captain/proposal/A-3-1", false),
            new Stop("sheet", "captain of Copperlight", "/captain/sheet/A-3-2", false),
            new Stop("tie", "everybody", "/tie/A-2-2", false),
            new Stop("desk", "desk", "/desk", true),
            new Stop("card", "desk", "/cards/B-2-1/3", false),
            new Stop("tables", "everybody", "/tables", true),
            new Stop("organiser", "organiser", "/organiser", true));

    private Ledger ledger;
    private Service service;
    private ChromeDriver browser;
    private final Map<String, String> links = new HashMap<>();

    @BeforeEach
    void begin(@TempDir Path folder) throws IOException {
        browser = Chromium.driver();
        DemoClock morning = DemoDay.clock();
        WitnessedClock clock = WitnessedClock.believing(morning);
        ledger = Ledger.open(folder, clock);
        service = Service.start(ServiceOptions.onLoopback(folder, 0), ledger, clock);
        DemoDay.begin(ledger, morning);
        StringWriter said = new StringWriter();
        new FirstLinks(ledger, service).forEveryRole(new PrintWriter(said, true));
        Pattern.compile("^ +(.+?) +(http\\S+)$", Pattern.MULTILINE)
                .matcher(said.toString())
                .results()
                .forEach(line -> links.put(line.group(1), line.group(2)));
    }

    @AfterEach
    void end() {
        if (browser != null) {
            browser.quit();
        }
        if (service != null) {
            service.close();
            ledger.close();
        }
    }

    private void show(Stop stop) {
        browser.manage().deleteAllCookies();
        browser.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of(
                        "width",
                        stop.laptop() ? 1280 : 390,
                        "height",
                        stop.laptop() ? 800 : 844,
                        "deviceScaleFactor",
                        1,
                        "mobile",
                        !stop.laptop()));
        browser.get(links.get(stop.who()));
        browser.get(service.url() + stop.page());
    }

    @Test
    void every_stop_of_the_tour_is_there_and_fits_its_screen() throws IOException {
        for (Stop stop : STOPS) {
            show(stop);
            assertThat(browser.findElements(By.cssSelector("main")))
                    .as(stop.page())
                    .hasSize(1);
            assertThat(browser.getTitle()).as(stop.page()).contains("Tarrowick Harbour Club Day");
            assertThat(browser.executeScript(
                            "return document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                    .as(stop.page())
                    .isEqualTo(0L);
            if ("write".equals(System.getProperty("tour"))) {
                ImageIO.write(
                        inFewColours(ImageIO.read(new ByteArrayInputStream(browser.getScreenshotAs(OutputType.BYTES)))),
                        "png",
                        picture(stop).toFile());
            }
        }
    }

    static Path picture(Stop stop) {
        return DOCS.resolve("pictures").resolve(stop.picture() + ".png");
    }

    /** A page has few colours; shades of letters are taken for the nearest of them. */
    private static BufferedImage inFewColours(BufferedImage whole) {
        Map<Integer, Integer> seen = new HashMap<>();
        for (int y = 0; y < whole.getHeight(); y++) {
            for (int x = 0; x < whole.getWidth(); x++) {
                seen.merge(whole.getRGB(x, y) & 0xFFFFFF, 1, Integer::sum);
            }
        }
        int[] kept = seen.entrySet().stream()
                .sorted(Map.Entry.<Integer, Integer>comparingByValue(Comparator.reverseOrder()))
                .limit(COLOURS)
                .mapToInt(Map.Entry::getKey)
                .toArray();
        IndexColorModel palette = new IndexColorModel(8, kept.length, kept, 0, false, -1, DataBuffer.TYPE_BYTE);
        BufferedImage small =
                new BufferedImage(whole.getWidth(), whole.getHeight(), BufferedImage.TYPE_BYTE_INDEXED, palette);
        Map<Integer, Integer> nearest = new HashMap<>();
        for (int y = 0; y < whole.getHeight(); y++) {
            for (int x = 0; x < whole.getWidth(); x++) {
                int index = nearest.computeIfAbsent(whole.getRGB(x, y) & 0xFFFFFF, colour -> nearest(kept, colour));
                small.getRaster().setSample(x, y, 0, index);
            }
        }
        return small;
    }

    private static int nearest(int[] kept, int colour) {
        int best = 0;
        for (int i = 1; i < kept.length; i++) {
            if (far(kept[i], colour) < far(kept[best], colour)) {
                best = i;
            }
        }
        return best;
    }

    private static int far(int one, int other) {
        int sum = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            int difference = (one >> shift & 0xFF) - (other >> shift & 0xFF);
            sum += difference * difference;
        }
        return sum;
    }
}
