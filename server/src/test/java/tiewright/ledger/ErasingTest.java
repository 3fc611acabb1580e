package tiewright.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.jooq.DataType;
import org.jooq.Field;
import org.jooq.Table;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.conditions.Plays;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.Held;
import tiewright.event.NamesKept;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote.ChemistryJudged;
import tiewright.event.PrivateNote.EverythingErased;
import tiewright.event.PrivateNote.FilmKept;
import tiewright.event.PrivateNote.FormJudged;
import tiewright.event.PrivateNote.HurtMarked;
import tiewright.event.PrivateNote.PersonNamed;
import tiewright.event.PrivateNote.PlayerForgotten;
import tiewright.event.PrivateNote.TieWish;
import tiewright.event.SetUpFact;
import tiewright.event.TieId;
import tiewright.letterbox.Letterbox;
import tiewright.wording.DeletionWords;

/** What is deleted is in no byte of the folder any more; what was not to go is. */
class ErasingTest {
    private static final ClubId N = ClubId.of("N");
    private static final PlayerId N1 = PlayerId.of("n1");
    private static final PlayerId N2 = PlayerId.of("n2");
    private static final PlayerId N3 = PlayerId.of("n3");

    /** In a fact: it must be found by the same search, or the search finds nothing at all. */
    private static final String STAYS = "MarkerThatStays";

    @TempDir
    Path folder;

    private int keys;

    private Ledger open() {
        return Ledger.open(folder, Asked.CLOCK);
    }

    private void done(Ledger ledger, Decision decision) {
        assertThat(ledger.decide(Asked.request("k" + keys++), decision)).isInstanceOf(Answer.Done.class);
    }

    private static Decision erasing(Held held, NamesKept names) {
        return (event, given) -> new Decision.Accepted(
                List.of(new SetUpFact.DataErased(held.all())),
                List.of(new EverythingErased(given.directory().erased(names, 2026))));
    }

    private Answer erase(Ledger ledger) {
        return ledger.erase(Asked.request("erase" + keys++), held -> erasing(held, NamesKept.CODES));
    }

    private static SetUpFact.PlayerEntered player(PlayerId player) {
        return new SetUpFact.PlayerEntered(player, N, OptionalInt.empty(), Optional.empty(), Optional.empty(), false);
    }

    private void aClub(Ledger ledger) {
        List<Fact> facts = List.of(
                new SetUpFact.EventDescribed(
                        STAYS,
                        LocalDate.of(2026, 2, 20),
                        "V",
                        java.time.ZoneOffset.UTC,
                        java.time.LocalTime.NOON,
                        Optional.empty()),
                new SetUpFact.ClubEntered(N, "North", Optional.empty(), OptionalInt.empty()),
                player(N1),
                player(N2),
                player(N3));
        done(ledger, Asked.facts(facts));
        done(
                ledger,
                Asked.notes(
                        new PersonNamed(
                                N1,
                                new Directory.Person(
                                        "Gonename Surmarker", OptionalInt.of(1990), Optional.of(Plays.WOMEN))),
                        new PersonNamed(N2, "Minorname Surmarker", OptionalInt.of(2012)),
                        new PersonNamed(N3, "Onenameonly", OptionalInt.empty())));
    }

    /** Files of the folder in which the text stands in one of the ways in which a database or a page may write it. */
    private List<String> with(String text) throws IOException {
        List<String> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                byte[] bytes = Files.readAllBytes(file);
                if (contains(bytes, text.getBytes(StandardCharsets.UTF_8))
                        || contains(bytes, text.getBytes(StandardCharsets.UTF_16BE))
                        || contains(bytes, text.getBytes(StandardCharsets.UTF_16LE))) {
                    found.add(folder.relativize(file).toString());
                }
            }
        }
        return found;
    }

    private static boolean contains(byte[] all, byte[] part) {
        return new String(all, StandardCharsets.ISO_8859_1).contains(new String(part, StandardCharsets.ISO_8859_1));
    }

    /** A row in each private table of the schema, whatever it is for, with a text of its own in each column that can hold one. */
    private List<String> plantEverywhere() {
        List<String> markers = new ArrayList<>();
        try (Store store = Store.open(folder)) {
            for (Table<?> table : PrivateData.tables()) {
                for (int row = 0; row < 2; row++) {
                    Map<Field<?>, Object> values = new HashMap<>();
                    int column = 0;
                    for (Field<?> field : table.fields()) {
                        values.put(field, planted(field, table.getName(), column++, row, markers));
                    }
                    store.jooq().insertInto(table).set(values).execute();
                }
            }
        }
        return markers;
    }

    private static Object planted(Field<?> field, String table, int column, int row, List<String> markers) {
        DataType<?> type = field.getDataType();
        if (field.getName().equals("kind")) {
            return row == 0 ? "rubbers" : "decider"; // read at every start
        }
        if (type.isString()) {
            // long enough that a large text also lies where the database keeps large texts
            int room = type.length() == 0 ? 100_000 : Math.min(type.length(), 1000);
            String marker =
                    ("q" + (char) ('a' + column) + row + Integer.toString(table.hashCode() & 0xFFFF, 36) + "zq");
            markers.add(marker.substring(0, Math.min(marker.length(), room)));
            return marker.repeat(Math.max(1, room / marker.length()))
                    .substring(0, Math.max(marker.length(), room / marker.length() * marker.length()));
        }
        if (type.getType() == OffsetDateTime.class) {
            return OffsetDateTime.of(2026, 2, 3, 9, 0, 0, 0, ZoneOffset.UTC);
        }
        if (type.isDate()) {
            return LocalDate.of(2026, 2, 3);
        }
        return type.getType() == Double.class ? (Object) (0.5 + row) : (Object) (7 + row);
    }

    /** Goes through the schema itself: a private table that is made later and forgotten by the erasing fails here. */
    @Test
    void no_private_table_is_forgotten_and_nothing_planted_in_any_is_left_in_a_byte_of_the_folder() throws Exception {
        try (Ledger ledger = open()) {
            aClub(ledger);
        }
        List<String> markers = plantEverywhere();
        assertThat(PrivateData.tables()).hasSizeGreaterThanOrEqualTo(10);
        for (String marker : markers) {
            assertThat(with(marker)).as(marker).contains(DataFolder.DATABASE);
        }
        try (Ledger ledger = open()) {
            Answer answer = erase(ledger);
            assertThat(answer).isInstanceOf(Answer.Done.class);
            Held before = new Held(
                    ((SetUpFact.DataErased)
                                    ((Answer.Done) answer).facts().get(0).fact())
                            .counts(),
                    new java.util.TreeMap<>());
            assertThat(before.all().keySet())
                    .containsExactlyInAnyOrderElementsOf(
                            PrivateData.tables().stream().map(PrivateData::kind).toList());
            assertThat(before.all().values()).as("each table was counted").allMatch(count -> count >= 2);
            assertThat(ledger.held().isNothing()).isTrue();
            assertGone(markers);
        }
        assertGone(markers);
        open().close();
        assertGone(markers);
    }

    private void assertGone(List<String> markers) throws IOException {
        assertThat(with(STAYS)).as("the same search finds what stays").contains(DataFolder.DATABASE);
        for (String marker : markers) {
            assertThat(with(marker)).as(marker).isEmpty();
        }
        assertThat(with("Surmarker")).isEmpty();
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .noneMatch(name -> name.startsWith("rewriting") || name.equals("erasing"));
        }
    }

    @Test
    void every_private_table_has_words_for_what_it_holds() {
        assertThat(PrivateData.tables())
                .allSatisfy(table -> assertThat(DeletionWords.kind(PrivateData.kind(table)))
                        .as("words for " + table.getName())
                        .isNotEqualTo(PrivateData.kind(table)));
    }

    @Test
    void facts_stay_as_they_were_and_the_ledger_goes_on() {
        try (Ledger ledger = open()) {
            aClub(ledger);
            Event before = ledger.event();
            var facts = ledger.facts(0);
            erase(ledger);
            assertThat(ledger.facts(0).subList(0, facts.size())).isEqualTo(facts);
            assertThat(ledger.asOf(before.seq())).isEqualTo(before);
            assertThat(ledger.directory()).isEqualTo(Directory.EMPTY);
            done(ledger, Asked.facts(new SetUpFact.CourtSet("1", Optional.empty(), Optional.empty(), true)));
            ledger.decide(
                    Asked.forClub(N, "k"),
                    Asked.kept(new FormJudged(N1, OptionalDouble.of(1), OptionalDouble.empty())));
        }
        try (Ledger ledger = open()) {
            assertThat(ledger.event().courts()).containsKey("1");
            assertThat(ledger.privateOf(N).forms()).containsKey(N1);
        }
    }

    @Test
    void of_names_only_first_name_and_initial_stay_and_nothing_of_minors_or_of_names_that_cannot_be_shortened()
            throws Exception {
        try (Ledger ledger = open()) {
            aClub(ledger);
            ledger.erase(Asked.request("e"), held -> erasing(held, NamesKept.INITIALS));
            assertThat(ledger.directory().people())
                    .isEqualTo(Map.of(N1, new Directory.Person("Gonename S.", OptionalInt.empty())));
        }
        try (Ledger ledger = open()) {
            assertThat(ledger.directory().people())
                    .isEqualTo(Map.of(N1, new Directory.Person("Gonename S.", OptionalInt.empty())));
        }
        assertThat(with("Gonename S.")).isNotEmpty();
        assertThat(with("Surmarker")).isEmpty();
        assertThat(with("Minorname")).isEmpty();
        assertThat(with("Onenameonly")).isEmpty();
    }

    @Test
    void erasing_twice_changes_nothing_more() {
        try (Ledger ledger = open()) {
            aClub(ledger);
            Request request = Asked.request("once");
            Answer first = ledger.erase(request, held -> erasing(held, NamesKept.CODES));
            Answer again = ledger.erase(request, held -> erasing(held, NamesKept.CODES));
            assertThat(((Answer.Done) again).again()).isTrue();
            assertThat(((Answer.Done) again).facts()).isEqualTo(((Answer.Done) first).facts());
            erase(ledger);
            assertThat(ledger.held().isNothing()).isTrue();
            assertThat(ledger.event().players()).hasSize(3);
        }
    }

    @Test
    void what_is_refused_deletes_nothing() throws Exception {
        try (Ledger ledger = open()) {
            aClub(ledger);
            byte[] key = Files.readAllBytes(folder.resolve(DataFolder.KEY));
            Answer answer = ledger.erase(
                    Asked.request("no"),
                    held -> (event, given) ->
                            Decision.Refused.because(tiewright.event.Refusal.of("setup.nothing-to-erase")));
            assertThat(answer).isInstanceOf(Answer.Refused.class);
            assertThat(ledger.directory().people()).hasSize(3);
            assertThat(Files.readAllBytes(folder.resolve(DataFolder.KEY))).isEqualTo(key);
            assertThat(folder.resolve("erasing")).doesNotExist();
        }
    }

    @Test
    void backups_in_the_folder_and_the_key_go_and_those_elsewhere_are_named(@TempDir Path elsewhere) throws Exception {
        Path inside = folder.resolve("one.zip");
        Path outside = elsewhere.resolve("two.zip");
        try (Ledger ledger = open()) {
            aClub(ledger);
            Files.writeString(folder.resolve("photos.zip"), "no backup");
            byte[] key = Files.readAllBytes(folder.resolve(DataFolder.KEY));
            ledger.backUp(inside, true);
            ledger.backUp(outside);
            Files.write(Letterbox.fileIn(folder), new byte[32]);
            Ledger.noteBackup(folder, Asked.NINE, Optional.empty());
            erase(ledger);
            assertThat(inside).doesNotExist();
            assertThat(Backup.keyOf(inside)).doesNotExist();
            assertThat(Letterbox.fileIn(folder)).doesNotExist();
            assertThat(folder.resolve("photos.zip")).exists();
            assertThat(outside).exists();
            assertThat(Files.readAllBytes(folder.resolve(DataFolder.KEY)))
                    .as("a fresh key")
                    .isNotEqualTo(key);
            assertThat(ledger.backups())
                    .extracting(KnownBackup::file)
                    .containsExactly(Optional.of(inside), Optional.of(outside), Optional.empty());
            assertThat(ledger.backups()).extracting(KnownBackup::isThere).containsExactly(false, true, false);
        }
    }

    /** A copy of the folder is what a killed process leaves; here at each of the moments between two steps. */
    @Test
    void cut_off_after_the_transaction_the_next_start_finishes_and_before_it_nothing_has_gone(@TempDir Path other)
            throws Exception {
        try (Ledger ledger = open()) {
            aClub(ledger);
            ledger.backUp(folder.resolve("one.zip"));
        }
        byte[] key = Files.readAllBytes(folder.resolve(DataFolder.KEY));
        Files.writeString(folder.resolve("erasing"), "cut");
        Files.writeString(folder.resolve("rewriting.mv.db"), "Surmarker half a file");
        try (Ledger ledger = open()) {
            assertThat(ledger.directory().people()).as("the mark alone").hasSize(3);
            assertThat(folder.resolve("one.zip")).exists();
            assertThat(Files.readAllBytes(folder.resolve(DataFolder.KEY))).isEqualTo(key);
        }
        try (Store store = Store.open(folder)) {
            Memory before = Memory.of(store);
            Held held = PrivateData.held(store.jooq(), before.event(), before.directory());
            new Asking(store, Asked.CLOCK).ask(before, Asked.request("cut"), erasing(held, NamesKept.CODES));
        }
        Files.writeString(folder.resolve("erasing"), "cut");
        assertThat(with("Surmarker")).as("rows are gone, old pages are not").isNotEmpty();
        try (Ledger ledger = open()) {
            assertThat(ledger.directory()).isEqualTo(Directory.EMPTY);
        }
        assertGone(List.of());
        assertThat(folder.resolve("one.zip")).doesNotExist();
        assertThat(Files.readAllBytes(folder.resolve(DataFolder.KEY))).isNotEqualTo(key);
    }

    @Test
    void what_a_club_noted_about_one_player_goes_early_and_leaves_no_byte() throws Exception {
        try (Ledger ledger = open()) {
            aClub(ledger);
            ledger.decide(
                    Asked.forClub(N, "notes"),
                    Asked.kept(
                            new FormJudged(N1, OptionalDouble.of(1), OptionalDouble.empty()),
                            new FormJudged(N2, OptionalDouble.of(2), OptionalDouble.empty()),
                            new ChemistryJudged(new Pair(N1, N2), 1, OptionalDouble.empty(), Optional.empty()),
                            new ChemistryJudged(new Pair(N2, N3), 1, OptionalDouble.empty(), Optional.empty()),
                            new TieWish(TieId.of("A1"), N, List.of(N1, N3), List.of(N2)),
                            new TieWish(TieId.of("A2"), N, List.of(N1), List.of()),
                            new HurtMarked(N1, true),
                            new HurtMarked(N2, true),
                            new FilmKept(N, "g1", "about", "filmmarker1".repeat(500)),
                            new FilmKept(N, "g2", "about", "filmmarker2".repeat(500))));
            PrivateAnswer gone =
                    ledger.forget(Asked.forClub(N, "gone"), Asked.kept(new PlayerForgotten(N, N1, List.of("g1"))));
            assertThat(gone).isEqualTo(new PrivateAnswer.Done(false));
            assertThat(ledger.privateOf(N).forms()).containsOnlyKeys(N2);
            assertThat(ledger.privateOf(N).chemistry()).containsOnlyKeys(new Pair(N2, N3));
            assertThat(ledger.privateOf(N).tieWishes())
                    .isEqualTo(Map.of(TieId.of("A1"), new TieWish(TieId.of("A1"), N, List.of(N3), List.of(N2))));
            assertThat(ledger.hurt()).containsExactly(N2);
            assertThat(ledger.filmsOf(N)).extracting(FilmKept::game).containsExactly("g2");
            assertThat(ledger.directory().people()).hasSize(3);
            assertThat(with("filmmarker1")).isEmpty();
            assertThat(with("filmmarker2")).isNotEmpty();
            assertThatThrownBy(() -> ledger.forget(
                            Asked.forClub(ClubId.of("S"), "theirs"),
                            Asked.kept(new PlayerForgotten(ClubId.of("S"), N2, List.of()))))
                    .isInstanceOf(IllegalStateException.class);
        }
    }
}
