package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.ExchangeId;
import tiewright.event.Role;
import tiewright.event.TieId;

/** Whoever makes links reads by none of them what a club has sealed or noted, and changes nothing of it unseen. */
class LinksOfClubTest {
    private static final String SHEET = "/captain/sheet/A1";
    private static final String LINKS = "/organiser/links";
    private static final String OWN = "/captain/links";
    private static final Pattern ADDRESS = Pattern.compile("/enter/[A-Za-z0-9_-]+");
    private static final List<String> PRIVATE = List.of(
            "/captain/squad",
            "/captain/day",
            "/captain/playing-time",
            "/captain/record",
            "/captain/record/tried",
            "/captain/proposal/A1",
            "/captain/film",
            "/captain/past");

    private static Served oneTie() {
        Days day = Days.oneTie();
        return Served.of(day, Days.moment("09:00"));
    }

    private static Guest.Got seal(Guest captain, String club, int first) {
        Map<String, String> fields = new LinkedHashMap<>(Map.of("step", "seal"));
        for (int i = 0; i < 8; i++) {
            fields.put("sheet-" + (i / 2 + 1) + (i % 2 == 0 ? "-first" : "-second"), club + ((i + first) % 8 + 1));
        }
        Guest.Got got = captain.send(SHEET, SHEET, fields);
        assertThat(got.status()).as(got.text()).isEqualTo(200);
        return got;
    }

    /** As the organiser does it: a captain's link of a club, and its page opened in another browser. */
    private static Guest made(Served served, Guest organiser, String club, String label) {
        served.clock.pass(Duration.ofMinutes(1));
        Guest.Got slips = organiser.send(
                LINKS, LINKS + "/one", Map.of("role", "captain", "club", club, "player", "", "label", label));
        return opened(served, slips);
    }

    private static Guest opened(Served served, Guest.Got slips) {
        Matcher address = ADDRESS.matcher(slips.body());
        assertThat(address.find()).as(slips.text()).isTrue();
        Guest guest = served.stranger();
        assertThat(guest.get(address.group()).path()).isEqualTo("/captain");
        return guest;
    }

    private static String name(Served served, String label) {
        return served.ledger.event().links().values().stream()
                .filter(link -> link.label().equals(label) && !link.revoked())
                .findFirst()
                .orElseThrow()
                .name();
    }

    @Test
    void whoever_waits_to_be_let_in_is_offered_nothing_that_stays_closed() {
        try (Served served = oneTie()) {
            served.captain("N");
            Guest late = made(served, served.as(Role.ORGANISER), "N", "late");
            for (String page : List.of("/captain", OWN, SHEET, "/tie/A1")) {
                Matcher ways = Pattern.compile("href=\"(/[^\"#]*)")
                        .matcher(late.get(page).body());
                while (ways.find()) {
                    assertThat(late.get(ways.group(1)).status())
                            .as(ways.group(1) + " on " + page)
                            .isEqualTo(200);
                }
            }
        }
    }

    @Test
    void a_press_that_is_sent_twice_ends_or_replaces_a_link_once() {
        try (Served served = oneTie()) {
            Guest captain = served.captain("N");
            Guest organiser = served.as(Role.ORGANISER);
            made(served, organiser, "N", "second");
            made(served, organiser, "N", "third");
            for (String act : List.of("end", "replace")) {
                String press = act + " " + name(served, act.equals("end") ? "second" : "third");
                Map<String, String> form = captain.filled(OWN, OWN + "/change", Map.of("press", press));
                assertThat(captain.post(OWN + "/change", form).status())
                        .as(press)
                        .isEqualTo(200);
                long facts = served.ledger.event().seq();
                assertThat(captain.post(OWN + "/change", form).status())
                        .as(press + " again")
                        .isEqualTo(200);
                assertThat(served.ledger.event().seq()).isEqualTo(facts);
            }
            Map<String, String> form =
                    organiser.filled(LINKS, LINKS + "/change", Map.of("press", "revoke " + name(served, "third")));
            organiser.post(LINKS + "/change", form);
            assertThat(organiser.post(LINKS + "/change", form).status()).isEqualTo(200);
        }
    }

    @Test
    void an_organiser_who_makes_a_link_for_a_club_reads_neither_its_sheet_nor_its_notes() {
        try (Served served = oneTie()) {
            Guest captain = served.captain("N");
            seal(captain, "N", 0);
            assertThat(captain.get(SHEET).body()).contains("value=\"N1\" selected");
            Guest spy = made(served, served.as(Role.ORGANISER), "N", "spy");
            Guest.Got page = spy.get(SHEET);
            assertThat(page.status()).isEqualTo(200);
            assertThat(page.body()).doesNotContain("selected>Player").doesNotContain("value=\"N1\" selected");
            assertThat(page.text()).contains("it does not show it").doesNotContain("In for you now");
            for (String one : PRIVATE) {
                Guest.Got refused = spy.get(one);
                assertThat(refused.status()).as(one).isEqualTo(403);
                assertThat(refused.text()).contains("this link is new", "The links of my club");
            }
            served.clock.pass(Duration.ofHours(1));
            assertThat(spy.get("/captain/squad").status())
                    .as("an older link is there")
                    .isEqualTo(403);
            assertThat(captain.get("/captain/squad").status()).isEqualTo(200);
            assertThat(served.stranger().get("/notices").text())
                    .contains("A captain's link of Club N was made: spy. Made by organiser.");
        }
    }

    /** The sheet that is told to the club's players is a sealed sheet too. */
    @Test
    void neither_telling_the_club_nor_a_players_link_made_later_shows_the_sheet() {
        try (Served served = oneTie()) {
            Guest captain = served.captain("N");
            Guest player = served.player("N", "N1");
            seal(captain, "N", 0);
            Guest spy = made(served, served.as(Role.ORGANISER), "N", "spy");
            Guest.Got told = spy.post(SHEET + "/tell", spy.filled(SHEET, SHEET + "/tell", Map.of()));
            assertThat(told.status()).isEqualTo(422);
            assertThat(spy.post(SHEET + "/ask", spy.filled(SHEET, SHEET + "/ask", Map.of()))
                            .status())
                    .isEqualTo(422);
            captain.send(SHEET, SHEET + "/tell", Map.of());
            served.clock.pass(Duration.ofMinutes(1));
            String shown = player.get("/player/N1").text();
            assertThat(shown).contains("Player N2");
            assertThat(served.player("N", "N3").get("/player/N3").text()).doesNotContain("Player N4");
        }
    }

    @Test
    void a_sheet_that_a_newer_link_put_in_its_place_is_said_in_red_until_an_older_one_confirms() {
        try (Served served = oneTie()) {
            Guest captain = served.captain("N");
            seal(captain, "N", 0);
            Guest spy = made(served, served.as(Role.ORGANISER), "N", "spy");
            seal(spy, "N", 1);
            assertThat(captain.get("/captain").text())
                    .contains("was sealed at 09:01 by the link spy. That link was made at 09:01 by organiser");
            assertThat(captain.get(SHEET).body()).contains("value=\"N2\" selected");
            assertThat(served.captain("S").get("/captain").text()).doesNotContain("spy");
            seal(captain, "N", 0);
            assertThat(captain.get("/captain").text()).doesNotContain("was sealed at 09:01");
            assertThat(spy.get(SHEET).body()).doesNotContain("value=\"N1\" selected");
        }
    }

    @Test
    void at_the_opening_everybody_reads_that_no_older_link_confirmed_a_sheet() {
        try (Served served = oneTie()) {
            Guest captain = served.captain("N");
            seal(captain, "N", 0);
            seal(served.captain("S"), "S", 0);
            Guest organiser = served.as(Role.ORGANISER);
            seal(made(served, organiser, "N", "spy"), "N", 1);
            assertThat(served.stranger().get("/tie/A1").text()).doesNotContain("spy");
            served.at(Days.moment("09:45"));
            String said = "the sheet of Club N was sealed by the link spy, made by organiser";
            assertThat(served.stranger().get("/tie/A1").text()).contains(said);
            assertThat(served.stranger().get("/notices").text()).contains(said);
            assertThat(organiser.get("/log").text()).contains(said);
        }
    }

    @Test
    void an_opening_without_a_newer_link_says_nothing_of_links() {
        try (Served served = oneTie()) {
            seal(served.captain("N"), "N", 0);
            seal(served.captain("S"), "S", 0);
            served.at(Days.moment("09:45"));
            assertThat(served.ledger
                            .event()
                            .exchange(ExchangeId.sheets(TieId.of("A1")))
                            .isOpened())
                    .isTrue();
            assertThat(served.stranger().get("/notices").text()).doesNotContain("No older link");
        }
    }

    @Test
    void an_older_link_lets_a_newer_one_in_by_one_press() {
        try (Served served = oneTie()) {
            Guest captain = served.captain("N");
            Guest deputy = made(served, served.as(Role.ORGANISER), "N", "deputy");
            assertThat(captain.get("/captain").text())
                    .contains("waits to be let in: deputy, made by organiser at 09:01");
            assertThat(deputy.get("/captain").text()).doesNotContain("waits to be let in");
            assertThat(deputy.get(OWN).body()).doesNotContain("let-in");
            Map<String, String> press = Map.of("press", "let-in " + name(served, "deputy"));
            assertThat(captain.send(OWN, OWN + "/change", press).status()).isEqualTo(200);
            assertThat(deputy.get("/captain/squad").status()).isEqualTo(200);
            assertThat(captain.get("/captain").text()).doesNotContain("waits to be let in");
            assertThat(captain.get(OWN).text())
                    .contains("09:01 by organiser (organiser)", "Let in at 09:01 by captain (captain)");
        }
    }

    @Test
    void a_club_whose_phones_are_lost_waits_ten_minutes_after_the_notice() {
        try (Served served = oneTie()) {
            served.captain("N");
            Guest organiser = served.as(Role.ORGANISER);
            served.clock.pass(Duration.ofMinutes(5));
            Guest.Got slips =
                    organiser.send(LINKS, LINKS + "/change", Map.of("press", "replace " + name(served, "captain")));
            Guest again = opened(served, slips);
            assertThat(again.get("/captain/squad").status()).isEqualTo(403);
            assertThat(again.get(OWN).text()).contains("no older link of your club is left", "at 09:15");
            assertThat(served.stranger().get("/notices").text())
                    .contains("A captain's link of Club N was replaced: captain. Replaced by organiser.");
            assertThat(again.get(SHEET).status()).isEqualTo(200);
            served.clock.pass(Duration.ofMinutes(10));
            assertThat(again.get("/captain/squad").status()).isEqualTo(200);
        }
    }

    @Test
    void a_captain_makes_a_deputys_link_replaces_the_own_one_and_ends_what_a_stranger_made() {
        try (Served served = oneTie()) {
            Guest captain = served.captain("N");
            Guest spy = made(served, served.as(Role.ORGANISER), "N", "spy");
            Guest.Got slips =
                    captain.send(OWN, OWN + "/make", Map.of("role", "captain", "player", "N2", "label", "N2 deputy"));
            Guest deputy = opened(served, slips);
            assertThat(deputy.get("/captain/squad").status()).isEqualTo(200);
            Guest.Got ownSlip =
                    captain.send(OWN, OWN + "/change", Map.of("press", "replace " + name(served, "captain")));
            assertThat(ownSlip.body())
                    .as("offers nothing that the ended link no longer opens")
                    .doesNotContain("href=\"/captain");
            assertThat(ownSlip.text()).contains("Go on with the new link");
            Guest own = opened(served, ownSlip);
            assertThat(captain.get("/captain").status()).isEqualTo(403);
            assertThat(own.get("/captain/squad").status()).isEqualTo(200);
            own.send(OWN, OWN + "/change", Map.of("press", "end " + name(served, "spy")));
            assertThat(spy.get("/captain").status()).isEqualTo(403);
            assertThat(own.get(OWN).text()).contains("Ended", "spy", "Ended at 09:01 by captain (captain)");
        }
    }

    @Test
    void where_the_organiser_captains_the_neutral_person_makes_captains_links() {
        try (Served served = oneTie()) {
            Guest organiser = served.as(Role.ORGANISER);
            Guest neutral = served.enter(Role.REFEREE, Optional.empty(), Optional.empty(), "second person");
            Guest desk = served.as(Role.DESK);
            served.captain("N");
            organiser.send(
                    "/organiser/opening",
                    "/organiser/opening",
                    Map.of("organiserIsCaptain", "yes", "opens", "person", "neutral", "second person"));
            served.clock.pass(Duration.ofMinutes(1));
            Map<String, String> link = Map.of("role", "captain", "club", "N", "player", "", "label", "N again");
            Guest.Got refused = organiser.send(LINKS, LINKS + "/one", link);
            assertThat(refused.status()).isEqualTo(422);
            assertThat(refused.text()).contains("Ask second person");
            assertThat(neutral.get("/desk").body()).contains("href=\"/organiser/links\"");
            assertThat(neutral.send(LINKS, LINKS + "/one", link).text()).contains("New personal links");
            Map<String, String> other = Map.of("role", "captain", "club", "S", "player", "", "label", "S again");
            assertThat(desk.send(LINKS, LINKS + "/one", other).status()).isEqualTo(422);
            assertThat(ClubId.of("N"))
                    .isEqualTo(served.ledger
                            .event()
                            .links()
                            .get(name(served, "N again"))
                            .club()
                            .orElseThrow());
        }
    }
}
