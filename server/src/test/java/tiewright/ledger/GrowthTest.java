package tiewright.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.jooq.impl.DSL;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.event.ClubId;
import tiewright.event.PrivateNote;

/** The file is only ever appended to, and yet does not grow without bound. */
class GrowthTest {
    private static final ClubId CLUB = ClubId.of("N");
    private static final Growth NEVER = new Growth(Long.MAX_VALUE, Long.MAX_VALUE / 2);

    private static final Changes NOBODYS = new Changes(Map.of(), "test", Instant.EPOCH);

    @TempDir
    Path folder;

    private static void note(Store store, int from, int to) {
        for (int i = from; i < to; i++) {
            store.write(entry("k" + i, new PrivateNote.FilmKept(CLUB, "g", "note " + i, "rally; ".repeat(500))));
        }
    }

    private static Store.Entry entry(String key, PrivateNote note) {
        return new Store.Entry(key, 0, List.of(), List.of(note), NOBODYS, Set.of(), Set.of());
    }

    private static String spaceReused(Store store) {
        return store.jooq()
                .select(DSL.field("setting_value", String.class))
                .from("information_schema.settings")
                .where("setting_name = 'REUSE_SPACE'")
                .fetchOne()
                .value1()
                .toLowerCase(java.util.Locale.ROOT);
    }

    private static void holds(Store store, int last) {
        assertThat(store.filmsOf(CLUB)).extracting(PrivateNote.FilmKept::about).containsExactly("note " + (last - 1));
        assertThat(IntStream.range(0, last).filter(i -> store.answered("k" + i).isEmpty()))
                .isEmpty();
    }

    @Test
    void every_opening_asks_the_database_to_append_only() throws IOException, SQLException {
        try (Store store = Store.open(folder)) {
            assertThat(spaceReused(store)).as("a new file").isEqualTo("false");
            store.copyTo(folder.resolve("copy.zip"));
            assertThat(spaceReused(store)).as("after a backup").isEqualTo("false");
            store.whileClosed(() -> {});
            assertThat(spaceReused(store))
                    .as("after it was closed for a moment")
                    .isEqualTo("false");
        }
        try (Store store = Store.open(folder)) {
            assertThat(spaceReused(store)).as("a file that was there").isEqualTo("false");
        }
    }

    @Test
    void a_file_grown_too_large_is_written_anew_when_it_is_opened() {
        long large;
        try (Store store = Store.open(folder, NEVER)) {
            note(store, 0, 60);
            large = store.folder().size();
        }
        try (Store store = Store.open(folder, new Growth(1, Long.MAX_VALUE / 2))) {
            assertThat(store.folder().size()).isLessThan(large / 2);
            holds(store, 60);
        }
    }

    @Test
    void a_file_that_grows_while_it_is_open_is_written_anew_between_two_decisions() {
        long most = 600_000;
        long largest = 0;
        try (Store store = Store.open(folder, new Growth(Long.MAX_VALUE, most))) {
            long first = store.folder().size();
            for (int i = 0; i < 150; i++) {
                note(store, i, i + 1);
                largest = Math.max(largest, store.folder().size());
            }
            holds(store, 150);
            assertThat(spaceReused(store)).isEqualTo("false");
            assertThat(largest).isGreaterThan(first + most).isLessThan(first + 2 * most);
        }
        try (Store store = Store.open(folder, NEVER)) {
            holds(store, 150);
        }
    }

    @Test
    void private_notes_alone_do_not_let_it_grow_without_bound_either() {
        long most = 600_000;
        long largest = 0;
        try (Store store = Store.open(folder, new Growth(Long.MAX_VALUE, most))) {
            long first = store.folder().size();
            for (int i = 0; i < 80; i++) {
                store.write(
                        PrivateRequest.of(CLUB, "k" + i, Asked.DESK),
                        List.of(new PrivateNote.FilmKept(CLUB, "g", "note " + i, "rally; ".repeat(500))),
                        NOBODYS);
                largest = Math.max(largest, store.folder().size());
            }
            assertThat(largest).isGreaterThan(first + most).isLessThan(first + 2 * most);
            assertThat(store.filmsOf(CLUB))
                    .extracting(PrivateNote.FilmKept::about)
                    .containsExactly("note 79");
        }
    }
}
