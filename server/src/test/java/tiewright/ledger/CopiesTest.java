package tiewright.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.event.Decision;

/** Copies that are made by themselves: when, how many, tried, without the key. Our own aims, no source. */
class CopiesTest {
    private static final Instant NOW = Instant.parse("2026-11-28T10:00:00Z");

    @TempDir
    Path place;

    private final AtomicLong nanos = new AtomicLong();
    private Ledger ledger;

    @BeforeEach
    void open() {
        ledger = Ledger.open(place.resolve("event"), Asked.CLOCK);
        Decision decision = (event, given) -> new Decision.Accepted(ExampleFacts.all(), List.of());
        ledger.decide(Asked.request("all"), decision);
    }

    @AfterEach
    void close() {
        ledger.close();
    }

    private Copies copies() {
        return new Copies(ledger, place.resolve("stick"), nanos::get);
    }

    private void pass(Duration time) {
        nanos.addAndGet(time.toNanos());
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(place.resolve("stick"))) {
            return all.sorted().toList();
        }
    }

    @Test
    void one_is_made_at_once_and_then_every_ten_minutes() throws IOException {
        Copies copies = copies();
        copies.look(NOW);
        copies.look(NOW);
        assertThat(files()).hasSize(1);
        pass(Duration.ofMinutes(9));
        copies.look(NOW.plusSeconds(540));
        assertThat(files()).hasSize(1);
        pass(Duration.ofMinutes(1));
        copies.look(NOW.plusSeconds(600));
        assertThat(files()).hasSize(2);
    }

    @Test
    void each_is_read_back_and_can_be_restored() throws IOException {
        Copies copies = copies();
        copies.look(NOW);
        long facts = ledger.event().seq();
        assertThat(copies.state().facts()).isEqualTo(facts).isPositive();
        assertThat(Ledger.restore(files().get(0), place.resolve("spare")).facts())
                .isEqualTo(facts);
        try (Stream<Path> inside = Files.list(ledger.folder())) {
            assertThat(inside.map(each -> each.getFileName().toString()))
                    .as("nothing of the trial stays")
                    .noneMatch(name -> name.contains("trying"));
        }
    }

    @Test
    void none_holds_the_key_of_the_sealed_sheets() throws IOException {
        copies().look(NOW);
        byte[] key = Files.readAllBytes(ledger.folder().resolve("seal.key"));
        for (Path file : files()) {
            assertThat(file.toString()).endsWith(".zip");
            try (var zip = new java.util.zip.ZipFile(file.toFile())) {
                for (var entry : java.util.Collections.list(zip.entries())) {
                    assertThat(entry.getName()).doesNotContain("key");
                    String bytes = new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.ISO_8859_1);
                    assertThat(bytes.contains(new String(key, StandardCharsets.ISO_8859_1)))
                            .isFalse();
                }
            }
        }
    }

    @Test
    void one_is_old_after_twenty_minutes_without_another() {
        Copies copies = copies();
        assertThat(copies.state().isOld()).as("at the start").isFalse();
        copies.look(NOW);
        pass(Duration.ofMinutes(20));
        assertThat(copies.state().isOld()).isFalse();
        pass(Duration.ofSeconds(1));
        assertThat(copies.state().isOld()).isTrue();
        copies.make(NOW);
        assertThat(copies.state().isOld()).isFalse();
    }

    @Test
    void a_folder_that_cannot_be_written_is_told_and_tried_again_a_minute_later() throws IOException {
        Path stick = place.resolve("stick");
        Files.writeString(stick, "no folder");
        Copies copies = copies();
        copies.look(NOW);
        assertThat(copies.state().trouble()).isNotEmpty();
        assertThat(copies.state().at()).isEmpty();
        Files.delete(stick);
        copies.look(NOW);
        assertThat(copies.state().trouble()).isNotEmpty();
        pass(Duration.ofMinutes(1));
        copies.look(NOW);
        assertThat(copies.state().trouble()).isEmpty();
        assertThat(copies.state().at()).contains(NOW);
    }

    @Test
    void the_newest_twelve_of_this_run_stay_and_nothing_else_is_touched() throws IOException {
        Path stick = Files.createDirectories(place.resolve("stick"));
        Path other = Files.writeString(stick.resolve("tiewright-20260101-000000.zip"), "somebody else's");
        Copies copies = copies();
        for (int i = 0; i < 14; i++) {
            copies.make(NOW.plusSeconds(i));
        }
        assertThat(files()).hasSize(13).contains(other);
        assertThat(files()).noneMatch(file -> file.toString().contains("100001"));
    }
}
