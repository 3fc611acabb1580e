package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import io.javalin.http.HandlerType;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Decision;
import tiewright.event.Fact;
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
        FullDisk.isMended();
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

    /** Those that need the disk say so in words, all others go on; none is a failure with a number. */
    @Test
    void no_page_of_anybody_fails_while_the_disk_can_only_be_read() {
        Served.MovableClock clock = new Served.MovableClock(Days.moment("09:00"));
        try (Ledger ledger = FullDisk.ledger(folder, clock);
                Service service = Service.start(ServiceOptions.onLoopback(folder, 0), ledger, clock)) {
            List<Fact> facts = new ArrayList<>(
                    Days.oneTie().facts().stream().map(Recorded::fact).toList());
            for (Role role : List.of(Role.ORGANISER, Role.DESK, Role.CAPTAIN)) {
                Optional<ClubId> club = role == Role.CAPTAIN ? Optional.of(ClubId.of("N")) : Optional.empty();
                facts.add(new SetUpFact.LinkIssued(
                        role.code(), role, club, Optional.empty(), role.code(), Service.hash(role.code())));
            }
            ledger.decide(
                    Request.of("day", Days.organiser()), (event, given) -> new Decision.Accepted(facts, List.of()));
            FullDisk.isReadOnly(true);
            for (Role role : List.of(Role.ORGANISER, Role.DESK, Role.CAPTAIN)) {
                Guest guest = new Guest(service.url());
                guest.get("/enter/" + role.code());
                assertThat(guest.post(
                                        "/organiser/help",
                                        Map.of("key", role.code(), "firstAid", "door", "emergency", "1"))
                                .status())
                        .isIn(403, 507);
                service.addresses().stream()
                        .filter(route -> route.method().equals(HandlerType.GET))
                        .map(route -> route.path().replace("{tie}", "A1").replace("{club}", "N"))
                        .filter(path -> !path.contains("{") && !path.equals("/events"))
                        .forEach(path -> assertThat(guest.get(path).status())
                                .as(role + " " + path)
                                .isNotEqualTo(500));
            }
        }
    }

    @Test
    void who_leaves_while_the_disk_takes_nothing_has_left_and_stays_so_once_it_does() throws IOException {
        try (Served served = Served.of(Days.oneTie(), Days.moment("09:00"))) {
            List<String> cookies = new ArrayList<>();
            Path inTheWay = Files.createDirectory(served.folder.resolve("ended-visits.txt"));
            for (Role role : List.of(Role.DESK, Role.REFEREE)) {
                Guest guest = served.as(role);
                cookies.add(guest.cookie());
                assertThat(guest.post("/leave", Map.of()).status()).isEqualTo(200);
                if (Files.isDirectory(inTheWay)) {
                    Files.delete(inTheWay);
                }
            }
            for (int start = 0; start < 2; start++) {
                for (String cookie : cookies) {
                    assertThat(new Browser(served.service.url())
                                    .ask("GET", "/desk", cookie, Map.of())
                                    .statusCode())
                            .isEqualTo(403);
                }
                served.restart();
            }
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
