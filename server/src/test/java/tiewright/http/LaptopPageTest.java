package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.clock.WitnessedClock;
import tiewright.event.Days;
import tiewright.event.Role;

/** The laptop itself: its time, its sleep, its copies, as the desk reads them. Our own aims, no source. */
class LaptopPageTest {
    private static final String HERE = "/desk/laptop";

    @TempDir
    Path place;

    private final AtomicReference<Instant> wall = new AtomicReference<>(Days.moment("09:00"));
    private final AtomicLong nanos = new AtomicLong();

    /** Both witnesses agree, as on a machine that was asleep and whose counter went on. */
    private void pass(Duration time) {
        wall.updateAndGet(now -> now.plus(time));
        nanos.addAndGet(time.toNanos());
    }

    private Served served(Optional<Path> copies) {
        return Served.of(Days.oneTie(), Days.moment("09:00"))
                .servedBy(WitnessedClock.of(wall::get, nanos::get), copies);
    }

    @Test
    void after_each_start_the_desk_is_asked_whether_the_time_is_the_halls() {
        try (Served served = served(Optional.empty())) {
            Guest desk = served.as(Role.DESK);
            assertThat(desk.get("/desk").text()).contains("on this computer: is that the hall's clock?");
            desk.send(HERE, HERE + "/time", Map.of());
            assertThat(desk.get("/desk").text()).doesNotContain("is that the hall's clock?");
            assertThat(desk.get(HERE).text()).contains("Somebody has compared it with the hall's clock.");
        }
    }

    /** The service goes on from the time that was known; that is not what the computer shows, and nobody can confirm it as that. */
    @Test
    void a_clock_in_doubt_is_settled_on_its_own_page_first() {
        try (Served served = served(Optional.empty())) {
            Guest desk = served.as(Role.DESK);
            wall.updateAndGet(now -> now.plus(Duration.ofDays(1)));
            served.service.openWhatIsDue();
            String asked = "is that the hall's clock?";
            String disagree = "This computer's clock and the time that was known before disagree.";
            assertThat(desk.get("/desk").text()).doesNotContain(asked);
            assertThat(desk.get(HERE).text()).contains(disagree).doesNotContain("It is ", "Somebody has held it");
            desk.send("/desk/clock", "/desk/clock", Map.of("right", "counted"));
            assertThat(desk.get(HERE).text())
                    .contains("Somebody has compared it with the hall's clock.")
                    .doesNotContain(disagree);
            assertThat(desk.get("/desk").text()).doesNotContain(asked);
        }
    }

    @Test
    void a_lid_that_was_closed_over_a_deadline_is_told_with_what_became_of_it() {
        try (Served served = served(Optional.empty())) {
            Guest desk = served.as(Role.DESK);
            served.service.openWhatIsDue();
            pass(Duration.ofMinutes(90));
            served.service.openWhatIsDue();
            assertThat(desk.get("/desk").text()).contains("This computer slept from 09:00 to 10:30");
            assertThat(desk.get(HERE).text()).contains("Nothing was done from 09:00 to 10:30", "not open.");
            desk.send(HERE, HERE + "/slept", Map.of());
            assertThat(desk.get("/desk").text()).doesNotContain("This computer slept");
        }
    }

    @Test
    void a_pause_of_seconds_is_no_sleep() {
        try (Served served = served(Optional.empty())) {
            served.service.openWhatIsDue();
            pass(Duration.ofSeconds(50));
            served.service.openWhatIsDue();
            assertThat(served.as(Role.DESK).get("/desk").text()).doesNotContain("This computer slept");
        }
    }

    @Test
    void the_desk_sees_the_newest_copy_and_makes_one_by_a_press() throws IOException {
        Path stick = place.resolve("stick");
        try (Served served = served(Optional.of(stick))) {
            Guest desk = served.as(Role.DESK);
            desk.send(HERE, HERE + "/copy", Map.of());
            assertThat(desk.get("/desk").text()).contains("Copy of 09:00");
            assertThat(desk.get(HERE).text()).contains("The newest is tiewright-", stick.toString());
            try (var files = Files.list(stick)) {
                assertThat(files.count()).isPositive();
            }
        }
    }

    @Test
    void a_stick_that_cannot_be_written_is_amber_and_waits_in_the_list() throws IOException {
        Path stick = Files.writeString(place.resolve("stick"), "no folder");
        try (Served served = served(Optional.of(stick))) {
            Guest desk = served.as(Role.DESK);
            desk.send(HERE, HERE + "/copy", Map.of());
            assertThat(desk.get("/desk").text()).contains("No copy of the data can be made");
            assertThat(desk.get("/desk").body()).contains("state-held");
            assertThat(desk.get(HERE).text()).contains("The last attempt failed:");
        }
    }

    @Test
    void without_a_folder_the_page_says_that_no_copies_are_made() {
        try (Served served = served(Optional.empty())) {
            Guest desk = served.as(Role.DESK);
            assertThat(desk.get(HERE).text()).contains("No copies are made yet.");
            assertThat(served.captain("N").get(HERE).status()).isEqualTo(403);
        }
    }
}
