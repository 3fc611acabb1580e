package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.event.Days;
import tiewright.event.Decision;
import tiewright.event.Recorded;
import tiewright.event.Role;
import tiewright.event.SetUpFact;
import tiewright.ledger.FullDisk;
import tiewright.ledger.Ledger;
import tiewright.ledger.Request;

/** What people see while the disk is full, and after a start with half a file. */
class DiskPageTest {
    @TempDir
    Path folder;

    @AfterEach
    void makeRoom() {
        FullDisk.isFull(false);
    }

    @Test
    void a_page_says_that_the_disk_is_full_and_the_same_form_is_taken_once_there_is_room() {
        Served.MovableClock clock = new Served.MovableClock(Days.moment("09:00"));
        try (Ledger ledger = FullDisk.ledger(folder, clock);
                Service service = Service.start(ServiceOptions.onLoopback(folder, 0), ledger, clock)) {
            Decision day = (event, given) -> new Decision.Accepted(
                    Days.oneTie().facts().stream().map(Recorded::fact).toList(), List.of());
            ledger.decide(Request.of("day", Days.organiser()), day);
            ledger.decide(
                    Request.of("link", Days.organiser()),
                    (event, given) -> Decision.Accepted.of(new SetUpFact.LinkIssued(
                            "L", Role.ORGANISER, Optional.empty(), Optional.empty(), "L", Service.hash("secret"))));
            Guest organiser = new Guest(service.url());
            organiser.get("/enter/secret");
            Map<String, String> form = organiser.filled(
                    "/organiser/help",
                    "/organiser/help",
                    Map.of("firstAid", "hall door", "defibrillator", "", "emergency", "112"));
            FullDisk.isFull(true);
            Guest.Got full = organiser.post("/organiser/help", form);
            assertThat(full.status()).isEqualTo(507);
            assertThat(full.text()).contains("Nothing was kept", "is full", "Make room on that disk");
            assertThat(new Guest(service.url()).get("/").status())
                    .as("pages are shown")
                    .isEqualTo(200);
            FullDisk.isFull(false);
            assertThat(organiser.post("/organiser/help", form).status()).isEqualTo(200);
            assertThat(ledger.event().safety().firstAid()).isEqualTo("hall door");
        }
    }

    @Test
    void half_a_session_key_stops_no_start() throws IOException {
        Path key = Files.write(folder.resolve("session.key"), new byte[0]);
        for (int start = 0; start < 2; start++) {
            Served.MovableClock clock = new Served.MovableClock(Days.moment("09:00"));
            try (Ledger ledger = Ledger.open(folder, clock);
                    Service service = Service.start(ServiceOptions.onLoopback(folder, 0), ledger, clock)) {
                assertThat(new Guest(service.url()).get("/").status()).isEqualTo(200);
            }
            assertThat(Files.size(key)).isEqualTo(32);
        }
    }
}
