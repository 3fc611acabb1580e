package tiewright.plainfiles;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.Seed;
import tiewright.event.ClubId;
import tiewright.event.OfRubber;
import tiewright.event.PrivateNote;

/** What was exported and brought in again exports the same. */
class RoundTripTest {
    private static final int ROUNDS = 100;

    @TempDir
    private Path temp;

    @Test
    void the_demo_folder_is_exported_byte_for_byte_as_it_is() throws IOException {
        EventFolder demo = EventFolder.read(DemoEventTest.DEMO);
        FilmNotes film = FilmNotes.read(
                Files.readString(DemoEventTest.DEMO.resolve("games.csv")),
                Files.readString(DemoEventTest.DEMO.resolve("rallies.csv")),
                FilmNotes.Known.of(demo.event()));
        OwnNotes own = notes(demo)
                .filmed(film.games().stream()
                        .map(game -> game.keptFor(ClubId.of("KS")))
                        .toList());
        assertThat(FolderExport.files(demo.event(), demo.directory(), own, past(demo)))
                .containsExactlyInAnyOrderEntriesOf(texts(DemoEventTest.DEMO));
    }

    @Test
    void a_plain_export_leaves_out_what_a_club_noted() throws IOException {
        EventFolder demo = EventFolder.read(DemoEventTest.DEMO);
        Map<String, String> files = FolderExport.files(demo.event(), demo.directory(), OwnNotes.NONE, past(demo));
        assertThat(files).doesNotContainKey("chemistry.csv");
        assertThat(files.get("players.csv")).startsWith("player,club,name,rank,born_year,from,until,present,deputy\n");
        assertThat(again(files, 0)).isEqualTo(files);
    }

    @Test
    void any_day_exports_again_what_it_exported() throws IOException {
        for (int round = 0; round < ROUNDS; round++) {
            RandomDay day = RandomDay.of(Seed.random(round));
            Map<String, String> files = FolderExport.files(day.event(), day.directory(), day.notes(), day.past());
            assertThat(again(files, round)).as(Seed.rerun(round)).isEqualTo(files);
        }
    }

    @Test
    void no_export_holds_anything_of_a_sealed_sheet() {
        for (int round = 0; round < ROUNDS; round++) {
            RandomDay day = RandomDay.of(Seed.random(round));
            assertThat(FolderExport.files(day.event(), day.directory(), day.notes(), day.past())
                            .values())
                    .as(Seed.rerun(round))
                    .noneMatch(text -> text.contains("f".repeat(64)));
            assertThat(FolderExport.files(day.event(), day.directory(), day.notes(), day.past())
                            .get("sheets.csv"))
                    .contains("P-1,")
                    .doesNotContain("P-3,");
        }
    }

    /** Older files have no column for it, and without a rubber none is written. */
    @Test
    void rubbers_of_earlier_games_are_read_and_written_where_there_are_any() {
        String head = "date,home_1,home_2,away_1,away_2,home,away,format";
        String game = "2026-05-02,n1,n2,s1,s2,11,2,side-out-11";
        String older = head + "\n" + game + "\n";
        assertThat(PastNotes.file(PastNotes.read(older).games())).isEqualTo(older);
        String none = head + ",match,best_of\n" + game + ",,3\n";
        assertThat(PastNotes.file(PastNotes.read(none).games()))
                .as("best of how many says nothing without a rubber")
                .isEqualTo(older);
        String some = head + ",match,best_of\n" + game + ",m1,3\n" + game + ",m1,\n" + game + ",,\n";
        assertThat(PastNotes.file(PastNotes.read(some).games())).isEqualTo(some);
        assertThat(PastNotes.read(some).games())
                .extracting(PrivateNote.PastGame::rubber)
                .containsExactly(
                        Optional.of(new OfRubber("m1", OptionalInt.of(3))),
                        Optional.of(new OfRubber("m1", OptionalInt.empty())),
                        Optional.empty());
    }

    private Map<String, String> again(Map<String, String> files, int round) throws IOException {
        Path folder = Files.createDirectory(temp.resolve("day" + round));
        for (Map.Entry<String, String> file : files.entrySet()) {
            Files.writeString(folder.resolve(file.getKey()), file.getValue());
        }
        EventFolder read = EventFolder.read(folder);
        assertThat(read.faults()).as(Seed.rerun(round)).isEmpty();
        return FolderExport.files(read.event(), read.directory(), notes(read), past(read));
    }

    static OwnNotes notes(EventFolder folder) {
        return OwnNotes.of(folder.notes(PrivateNote.FormJudged.class), folder.notes(PrivateNote.ChemistryJudged.class))
                .promising(folder.notes(PrivateNote.RubbersPromised.class));
    }

    static java.util.List<PrivateNote.PastGame> past(EventFolder folder) {
        return folder.notes(PrivateNote.PastGame.class);
    }

    static Map<String, String> texts(Path folder) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                texts.put(file.getFileName().toString(), Files.readString(file));
            }
        }
        return texts;
    }
}
