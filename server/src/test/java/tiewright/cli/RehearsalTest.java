package tiewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.PipedReader;
import java.io.PipedWriter;
import java.io.PrintWriter;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Decision;
import tiewright.event.ExchangeId;
import tiewright.event.PlayerId;
import tiewright.event.PrivateDecision;
import tiewright.event.PrivateNote;
import tiewright.event.Recorded;
import tiewright.event.Role;
import tiewright.event.TieId;
import tiewright.ledger.Ledger;
import tiewright.ledger.PrivateRequest;
import tiewright.ledger.Request;
import tiewright.sheet.SealSheet;

/** A rehearsal: a copy of the event that everybody can play on, and that is gone at the end. Our own aims, no source. */
class RehearsalTest {
    @TempDir
    Path folder;

    private final HttpClient client = HttpClient.newBuilder()
            .cookieHandler(new CookieManager())
            .followRedirects(HttpClient.Redirect.NORMAL)
            .build();

    private Path copy() {
        Days day = Days.oneTie();
        Path zip = folder.resolve("copy.zip");
        try (Ledger ledger = Ledger.open(
                folder.resolve("event"), java.time.Clock.fixed(Days.moment("09:00"), java.time.ZoneOffset.UTC))) {
            List<PrivateNote> names = day.directory().people().entrySet().stream()
                    .map(one -> (PrivateNote) new PrivateNote.PersonNamed(one.getKey(), one.getValue()))
                    .toList();
            Decision given = (event, now) -> new Decision.Accepted(
                    day.facts().stream().map(Recorded::fact).toList(), names);
            ledger.decide(Request.of("given", Actor.of(Role.ORGANISER, "test")), given);
            ledger.decide(
                    Request.of("sheet", Days.captain("N")),
                    new SealSheet(
                            ExchangeId.sheets(TieId.of("A1")), ClubId.of("N"), Days.straight("N", 4), "ab".repeat(32)));
            Actor captain = new Actor(Role.CAPTAIN, Optional.of(ClubId.of("N")), "captain", "test");
            ledger.decide(
                    PrivateRequest.of(ClubId.of("N"), "form", captain),
                    (event, noted, by) -> PrivateDecision.Kept.of(new PrivateNote.FormJudged(
                            PlayerId.of("N1"), OptionalDouble.of(7.25), OptionalDouble.of(2))));
            ledger.backUp(zip);
        }
        return zip;
    }

    private String get(String url) throws IOException, InterruptedException {
        return client.send(
                        HttpRequest.newBuilder(URI.create(url)).build(),
                        HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8))
                .body();
    }

    private static List<Path> rehearsals() throws IOException {
        try (var all = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
            return all.filter(one -> one.getFileName().toString().startsWith("tiewright-rehearsal"))
                    .toList();
        }
    }

    @Test
    @SuppressWarnings("try") // what is typed ends before the service does
    void everybody_plays_on_a_copy_that_says_what_it_is_and_leaves_nothing() throws Exception {
        Path zip = copy();
        InputStream before = System.in;
        try (PipedOutputStream typed = new PipedOutputStream();
                PipedReader said = new PipedReader(100_000)) {
            System.setIn(new PipedInputStream(typed));
            PrintWriter out = new PrintWriter(new PipedWriter(said), true);
            CompletableFuture<Integer> done = CompletableFuture.supplyAsync(
                    () -> Main.run(out, out, "rehearse", zip.toString(), "--port", "0", "--at", "09:30"));
            BufferedReader lines = new BufferedReader(said);
            List<String> printed = new ArrayList<>();
            for (String line = lines.readLine(); !line.startsWith("It is "); line = lines.readLine()) {
                printed.add(line);
            }
            String desk = link(printed, "desk");
            String page = get(desk);
            assertThat(page).contains("A rehearsal: nothing here counts", "as of 09:3");
            String tie = get(desk.replaceFirst("/enter/.*", "/tie/A1"));
            assertThat(tie)
                    .as("what was sealed stayed behind")
                    .contains("not in")
                    .doesNotContain("state-sealed");
            get(link(printed, "captain of Club N"));
            assertThat(get(desk.replaceFirst("/enter/.*", "/captain/squad")))
                    .as("form")
                    .doesNotContain("7.25");

            typed.write("11:45\nnoon\n".getBytes(StandardCharsets.UTF_8));
            typed.flush();
            assertThat(lines.readLine()).isEqualTo("It is 11:45.");
            assertThat(lines.readLine()).contains("is not a time of day");
            assertThat(get(desk.replaceFirst("/enter/.*", "/"))).contains("as of 11:4");
            typed.close();
            assertThat(done.get(60, TimeUnit.SECONDS)).isZero();
        } finally {
            System.setIn(before);
        }
        try (Ledger ledger = Ledger.open(folder.resolve("event"), java.time.Clock.systemUTC())) {
            assertThat(ledger.event().links())
                    .as("the event itself knows nothing of it")
                    .isEmpty();
        }
    }

    private static String link(List<String> printed, String whose) {
        return printed.stream()
                .map(String::strip)
                .filter(line -> line.startsWith(whose))
                .map(line -> line.substring(line.lastIndexOf(' ') + 1))
                .findFirst()
                .orElseThrow(() -> new AssertionError(printed));
    }

    @Test
    void what_is_no_copy_is_refused_and_nothing_stays() throws Exception {
        Path file = Files.writeString(folder.resolve("no.zip"), "half a file");
        List<Path> before = rehearsals();
        Commands.Ran ran = Commands.run("rehearse", file);
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).contains("no backup");
        assertThat(rehearsals()).isEqualTo(before);
    }
}
