package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote.FormJudged;
import tiewright.event.PrivateNote.PersonNamed;
import tiewright.event.Recorded;
import tiewright.event.Role;
import tiewright.event.Sheet;
import tiewright.event.TieId;
import tiewright.plainfiles.EventFolder;
import tiewright.plainfiles.PastNotes;
import tiewright.sheet.SealSheet;

/** What is carried away from an event while the service runs, and what stays behind. Our own aims, no source. */
class KeepPageTest {
    private static final String HERE = "/organiser/keep";
    private static final Pattern LINK = Pattern.compile(" (?:href|src)=\"([^\"#]*)[^\"]*\"");

    @TempDir
    Path place;

    private static Served played() {
        Days day = Days.oneTie().opened("A1").card("A1", "1", "11-7").card("A1", "2", "5-11");
        return Served.empty(Days.moment("10:40"))
                .given(
                        day.facts().stream().map(Recorded::fact).toList(),
                        List.of(
                                new PersonNamed(
                                        PlayerId.of("N1"), "Ines Varley", OptionalInt.of(Days.DATE.getYear() - 15)),
                                new PersonNamed(PlayerId.of("N2"), "Olav Brandt", OptionalInt.empty())));
    }

    private static Map<String, byte[]> unzipped(Served served, String path) {
        byte[] zip = served.as(Role.ORGANISER).getBytes(path);
        Map<String, byte[]> files = new TreeMap<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                files.put(entry.getName(), in.readAllBytes());
            }
        } catch (IOException impossible) {
            throw new java.io.UncheckedIOException(impossible);
        }
        return files;
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    @Test
    void every_link_of_the_static_copy_leads_to_a_file_of_it() {
        try (Served served = played()) {
            Map<String, byte[]> files = unzipped(served, HERE + "/site.zip");
            assertThat(files)
                    .containsKeys(
                            "event/index.html", "event/tables.html", "event/tie-A1.html", "event/static/tiewright.css");
            assertThat(files.keySet()).anyMatch(name -> name.endsWith(".woff2"));
            files.forEach((name, bytes) -> {
                if (name.endsWith(".html")) {
                    String page = text(bytes);
                    assertThat(page).as(name).doesNotContain("<form", "<script", "Varley");
                    assertThat(page).as(name).contains("A copy of ");
                    LINK.matcher(page)
                            .results()
                            .map(link -> link.group(1))
                            .filter(to -> !to.isEmpty())
                            .forEach(to -> assertThat(files)
                                    .as(name + " leads to " + to)
                                    .containsKey("event/" + to));
                }
            });
        }
    }

    @Test
    void no_sealed_sheet_reaches_the_static_copy() {
        try (Served one = Served.of(Days.oneTie(), Days.moment("09:00"));
                Served other = Served.of(Days.oneTie(), Days.moment("09:00"))) {
            seal(one, Days.straight("N", 4));
            seal(other, Sheet.full(Pair.of("N3", "N4"), Pair.of("N1", "N2"), Pair.of("N5", "N6"), Pair.of("N7", "N8")));
            assertThat(text(unzipped(one, HERE + "/site.zip").get("event/tie-A1.html"))
                            .replaceAll("[0-9a-f]{64}", ""))
                    .isEqualTo(text(unzipped(other, HERE + "/site.zip").get("event/tie-A1.html"))
                            .replaceAll("[0-9a-f]{64}", ""));
        }
    }

    private static void seal(Served served, Sheet sheet) {
        served.ask(
                Days.captain("N"),
                new SealSheet(ExchangeId.sheets(TieId.of("A1")), ClubId.of("N"), sheet, "ab".repeat(32)));
    }

    @Test
    void the_results_of_the_day_are_the_earlier_games_of_the_next_event() {
        try (Served served = played()) {
            String file =
                    served.as(Role.ORGANISER).get(HERE + "/past-results.csv").body();
            PastNotes read = PastNotes.read(file);
            assertThat(read.faults()).isEmpty();
            assertThat(read.games())
                    .extracting(game -> game.home1() + " " + game.score())
                    .hasSize(2);
            assertThat(file).contains(Days.DATE + ",N1,N2,S1,S2,11,7,").doesNotContain("Varley");
        }
    }

    @Test
    void a_template_can_be_brought_in_and_names_nobody() throws IOException {
        try (Served served = played()) {
            Map<String, byte[]> files = unzipped(served, HERE + "/template.zip");
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                Path to = place.resolve(file.getKey());
                Files.createDirectories(to.getParent());
                Files.write(to, file.getValue());
                assertThat(text(file.getValue())).doesNotContain("Varley", "N1", "Olav");
            }
            EventFolder read = EventFolder.read(place.resolve("template"));
            assertThat(read.faults()).isEmpty();
            assertThat(read.event().conditions())
                    .isEqualTo(served.ledger.event().conditions());
        }
    }

    @Test
    void the_whole_event_goes_along_without_what_clubs_noted() {
        try (Served served = played()) {
            assertThat(unzipped(served, HERE + "/event.zip"))
                    .containsKeys("event/event.csv", "event/players.csv", "event/results.csv")
                    .doesNotContainKeys("event/chemistry.csv", "event/games.csv");
        }
    }

    @Test
    void a_player_gets_everything_that_the_organiser_holds_and_nothing_of_what_the_club_noted() {
        try (Served served = played()) {
            String before = served.as(Role.ORGANISER).get(HERE + "/player/N1").body();
            assertThat(before)
                    .contains(
                            "Ines Varley",
                            "with the code N1 ",
                            "Born in " + (Days.DATE.getYear() - 15),
                            "Olav Brandt",
                            "11-7",
                            "ask its captain");
            served.noted("N", new FormJudged(PlayerId.of("N1"), OptionalDouble.of(7), OptionalDouble.of(2)));
            assertThat(served.as(Role.ORGANISER).get(HERE + "/player/N1").body())
                    .isEqualTo(before);
        }
    }

    @Test
    void nobody_but_the_organiser_gets_any_of_it() {
        try (Served served = played()) {
            for (String path :
                    List.of("", "/site.zip", "/event.zip", "/past-results.csv", "/template.zip", "/player/N1")) {
                assertThat(served.as(Role.REFEREE).get(HERE + path).status()).isEqualTo(403);
                assertThat(served.captain("N").get(HERE + path).status()).isEqualTo(403);
            }
        }
    }
}
