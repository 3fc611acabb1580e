package tiewright.http.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import tiewright.event.Directory;

/** Pages that a hall full of phones asks for at once: made once, and never older than they may be. */
class EverybodysPagesTest {
    private static final Instant NOW = Instant.parse("2031-05-10T09:00:00.200Z");

    private final EverybodysPages pages = new EverybodysPages();
    private final AtomicInteger made = new AtomicInteger();

    private String ask(long seq, Directory directory, Instant at, String address) {
        return pages.page(seq, directory, at, address, () -> address + " made " + made.incrementAndGet());
    }

    @Test
    void a_page_is_made_once_in_a_second() {
        assertThat(ask(7, Directory.EMPTY, NOW, "/?")).isEqualTo("/? made 1");
        assertThat(ask(7, Directory.EMPTY, NOW.plusMillis(700), "/?")).isEqualTo("/? made 1");
        assertThat(ask(7, Directory.EMPTY, NOW.plusMillis(700), "/ties?")).isEqualTo("/ties? made 2");
    }

    @Test
    void it_is_made_anew_with_a_fact_a_name_and_a_second() {
        ask(7, Directory.EMPTY, NOW, "/?");
        assertThat(ask(8, Directory.EMPTY, NOW, "/?")).isEqualTo("/? made 2");
        assertThat(ask(8, new Directory(Map.of()), NOW, "/?")).isEqualTo("/? made 3");
        assertThat(ask(8, Directory.EMPTY, NOW.plusMillis(800), "/?"))
                .as("the next second may be past a deadline")
                .isEqualTo("/? made 4");
        assertThat(ask(7, Directory.EMPTY, NOW.plusMillis(800), "/?"))
                .as("who began before the fact gets no newer page")
                .isEqualTo("/? made 5");
    }

    @Test
    void a_page_that_cannot_be_made_is_tried_again() {
        assertThatThrownBy(() -> pages.page(7, Directory.EMPTY, NOW, "/?", () -> {
                    throw new NotFound("There is no such page.");
                }))
                .isInstanceOf(NotFound.class);
        assertThat(ask(7, Directory.EMPTY, NOW, "/?")).isEqualTo("/? made 1");
    }

    @Test
    void made_up_addresses_are_not_heaped_up() {
        for (int i = 0; i < 1_000; i++) {
            ask(7, Directory.EMPTY, NOW, "/?at=" + i);
        }
        assertThat(ask(7, Directory.EMPTY, NOW, "/?at=0")).as("still kept").isEqualTo("/?at=0 made 1");
        assertThat(ask(7, Directory.EMPTY, NOW, "/?at=999")).as("made alone").isEqualTo("/?at=999 made 1001");
    }
}
