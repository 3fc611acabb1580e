package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tiewright.event.Days;
import tiewright.event.ExchangeId;
import tiewright.event.Role;
import tiewright.event.TieId;

/** The blind exchange through the pages of a real service: what each viewer gets, byte by byte. */
class BlindExchangeTest {
    private static final List<String> STRAIGHT = List.of("N1", "N2", "N3", "N4", "N5", "N6", "N7", "N8");
    private static final List<String> CROSSED = List.of("N8", "N1", "N7", "N2", "N6", "N3", "N5", "N4");
    private static final List<String> PAGES = List.of(
            "/",
            "/ties",
            "/tie/A1",
            "/tables",
            "/needs",
            "/bracket",
            "/notices",
            "/clubs",
            "/club/N",
            "/club/S",
            "/player/N1",
            "/player/S1",
            "/paper/cards",
            "/paper/sheets",
            "/paper/tie/A1",
            "/captain",
            "/captain/sheet/A1",
            "/captain/decider/A1",
            "/captain/proposal/A1",
            "/captain/day",
            "/captain/record",
            "/captain/record/tried",
            "/desk",
            "/desk/tie/A1",
            "/cards",
            "/cards/A1",
            "/desk/check-in",
            "/log",
            "/organiser",
            "/conditions",
            "/nowhere");

    private static Served oneTie() {
        Days day = Days.oneTie();
        return Served.of(day, Days.moment("09:00"));
    }

    private static Map<String, String> names(String club, List<String> players) {
        Map<String, String> fields = new LinkedHashMap<>(Map.of("step", "seal"));
        for (int i = 0; i < 8; i++) {
            fields.put(
                    "sheet-" + (i / 2 + 1) + (i % 2 == 0 ? "-first" : "-second"),
                    players.get(i).replace("N", club));
        }
        return fields;
    }

    private static Guest.Got seal(Guest captain, String club, List<String> players) {
        return captain.send("/captain/sheet/A1", "/captain/sheet/A1", names(club, players));
    }

    /** Two days that differ only in what one club sealed look the same to everybody else, before and at the deadline. */
    @Test
    void twin_days_give_everybody_else_the_same_bytes() {
        same(seenByOthers(STRAIGHT, 1), seenByOthers(CROSSED, 1));
    }

    /** Replacing a sealed sheet makes no ripple on any other screen. */
    @Test
    void twin_days_with_a_replaced_sheet_look_the_same_to_others() {
        same(seenByOthers(STRAIGHT, 1), seenByOthers(CROSSED, 4));
    }

    /** A form that was made before the sheet was replaced is answered as if it had not been: status and words. */
    @Test
    void a_replaced_sheet_makes_no_form_of_others_stale() {
        Guest.Got once = ruledAfter(1);
        Guest.Got replaced = ruledAfter(2);
        assertThat(once.status()).isEqualTo(422);
        assertThat(replaced.status()).isEqualTo(once.status());
        assertThat(withoutForms(replaced.body())).isEqualTo(withoutForms(once.body()));
    }

    private static Guest.Got ruledAfter(int times) {
        try (Served served = oneTie()) {
            Guest home = served.captain("N");
            Guest organiser = served.as(Role.ORGANISER);
            seal(home, "N", STRAIGHT);
            Map<String, String> form = organiser.filled("/desk/check-in", "/desk/check-in", Map.of());
            for (int i = 1; i < times; i++) {
                seal(home, "N", CROSSED);
            }
            form.putAll(names("N", STRAIGHT));
            form.putAll(Map.of("supply-side", "N", "supply-reason", "From paper.", "supply-by", "Ida Brandt"));
            return organiser.post("/desk/tie/A1/supply", form);
        }
    }

    /** A pair sealed for a decider before it is known to be needed is as secret as a sheet. */
    @Test
    void twin_days_that_differ_in_a_decider_pair_look_the_same_to_others() {
        same(seenWithDecider("N1", "N4"), seenWithDecider("N7", "N2"));
    }

    private static List<String> seenWithDecider(String first, String second) {
        try (Served served = oneTie()) {
            Guest.Got sealed = served.captain("N")
                    .send(
                            "/captain/decider/A1",
                            "/captain/decider/A1",
                            Map.of("step", "seal", "sheet-D-first", first, "sheet-D-second", second));
            assertThat(sealed.text()).contains("sealed once");
            return pages(List.of(
                    served.stranger(),
                    served.captain("S"),
                    served.player("N", "N1"),
                    served.as(Role.VOLUNTEER),
                    served.as(Role.DESK),
                    served.as(Role.REFEREE),
                    served.as(Role.ORGANISER)));
        }
    }

    /** Moving a sealed sheet to the phone replaces it, and that too is nobody else's business before the deadline. */
    @Test
    void a_sheet_that_moves_to_the_phone_looks_the_same_to_others() {
        same(seenAfter(false), seenAfter(true));
    }

    private static List<String> seenAfter(boolean onPhone) {
        try (Served served = oneTie()) {
            ExchangeId id = ExchangeId.sheets(TieId.of("A1"));
            tiewright.event.ClubId club = tiewright.event.ClubId.of("N");
            served.ask(
                    Days.captain("N"), new tiewright.sheet.SealSheet(id, club, Days.straight("N", 4), "ab".repeat(32)));
            served.ask(
                    Days.captain("N"),
                    onPhone
                            ? new tiewright.sheet.KeepOnPhone(id, club, "0".repeat(64))
                            : new tiewright.sheet.SealSheet(id, club, Days.straight("N", 4), "cd".repeat(32)));
            return pages(
                    List.of(served.stranger(), served.captain("S"), served.as(Role.DESK), served.as(Role.ORGANISER)));
        }
    }

    /** Page by page, so that a failure shows the one line that betrays. */
    private static void same(List<String> one, List<String> other) {
        assertThat(one).hasSameSizeAs(other);
        for (int i = 0; i < one.size(); i++) {
            assertThat(other.get(i).lines().toList())
                    .containsExactlyElementsOf(one.get(i).lines().toList());
        }
    }

    private static List<String> seenByOthers(List<String> sheet, int times) {
        try (Served served = oneTie()) {
            Guest home = served.captain("N");
            List<Guest> others = List.of(
                    served.stranger(),
                    served.captain("S"),
                    served.player("S", "S1"),
                    served.player("N", "N1"),
                    served.as(Role.VOLUNTEER),
                    served.as(Role.DESK),
                    served.as(Role.REFEREE),
                    served.as(Role.ORGANISER));
            for (int i = 0; i < times; i++) {
                Guest.Got sealed = seal(home, "N", i + 1 < times ? STRAIGHT : sheet);
                assertThat(sealed.status()).as(sealed.text()).isEqualTo(200);
            }
            served.ask(
                    Days.organiser(),
                    new tiewright.desk.PostNotice(
                            "Lunch is served",
                            java.util.Optional.empty(),
                            java.util.Optional.empty(),
                            java.util.Optional.empty(),
                            "It is noon."));
            List<String> seen = new ArrayList<>(pages(others));
            served.at(Days.moment("09:44:59"));
            seen.addAll(pages(others));
            return seen;
        }
    }

    private static List<String> pages(List<Guest> guests) {
        List<String> seen = new ArrayList<>();
        for (Guest guest : guests) {
            for (String page : PAGES) {
                Guest.Got got = guest.get(page);
                seen.add(page + " " + got.status() + " " + withoutForms(got.body()));
            }
        }
        return seen;
    }

    /** Keys of forms are random in every page, with or without a sealed sheet. */
    private static String withoutForms(String body) {
        return body.replaceAll("127\\.0\\.0\\.1:[0-9]+", "here").replaceAll("name=\"(key|seen)\" value=\"[^\"]*\"", "");
    }

    @Test
    void both_open_together_at_the_deadline_and_anybody_can_check_the_receipts() {
        try (Served served = oneTie()) {
            Guest home = served.captain("N");
            Guest away = served.captain("S");
            seal(home, "N", STRAIGHT);
            seal(away, "S", CROSSED);
            assertThat(served.stranger().get("/tie/A1").text())
                    .doesNotContain("Player N1")
                    .contains("both sheets in");
            served.at(Days.moment("09:45"));
            String open = served.stranger().get("/tie/A1").text();
            assertThat(open)
                    .contains(
                            "Player N1",
                            "Player S8",
                            "opened at 09:45",
                            "It is the SHA-256 of these lines",
                            "A1 N 1,N1,N2 2,N3,N4");
            assertThat(served.ledger
                            .event()
                            .exchange(ExchangeId.sheets(TieId.of("A1")))
                            .isOpened())
                    .isTrue();
            assertThat(served.ledger.ownSheet(ExchangeId.sheets(TieId.of("A1")), tiewright.event.ClubId.of("N")))
                    .isEmpty();
        }
    }

    @Test
    void no_name_of_a_sealed_sheet_stands_in_clear_in_any_file() throws Exception {
        try (Served served = oneTie()) {
            seal(served.captain("N"), "N", CROSSED);
            try (Stream<Path> files = Files.walk(served.folder)) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    String bytes = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
                    assertThat(bytes)
                            .as(file.toString())
                            .doesNotContain("N1,N8")
                            .doesNotContain("1,N1,N8")
                            .doesNotContain("N2,N7");
                }
            }
        }
    }

    @Test
    void a_refused_sheet_is_shown_again_with_all_that_was_chosen() {
        try (Served served = oneTie()) {
            Map<String, String> twice = names("N", STRAIGHT);
            twice.put("sheet-2-first", "N1");
            Guest.Got got = served.captain("N").send("/captain/sheet/A1", "/captain/sheet/A1", twice);
            assertThat(got.status()).isEqualTo(422);
            assertThat(got.text()).contains("Player N1").contains("Not done");
            assertThat(got.body()).contains("value=\"N1\" selected");
        }
    }

    @Test
    void the_same_form_sent_twice_seals_once() {
        try (Served served = oneTie()) {
            Guest home = served.captain("N");
            Map<String, String> form = home.filled("/captain/sheet/A1", "/captain/sheet/A1", names("N", STRAIGHT));
            home.post("/captain/sheet/A1", form);
            home.post("/captain/sheet/A1", form);
            assertThat(home.get("/captain/sheet/A1").text()).contains("sealed once");
        }
    }

    @Test
    void a_captain_cannot_open_the_other_clubs_sheet_page_nor_the_desk() {
        try (Served served = oneTie()) {
            Guest stranger = served.stranger();
            assertThat(stranger.get("/captain/sheet/A1").status()).isEqualTo(403);
            assertThat(stranger.get("/desk").status()).isEqualTo(403);
            assertThat(served.captain("S").get("/desk").status()).isEqualTo(403);
            assertThat(served.as(Role.VOLUNTEER).get("/desk").status()).isEqualTo(403);
            assertThat(served.as(Role.DESK).get("/captain/sheet/A1").status()).isEqualTo(403);
        }
    }

    @Test
    void a_form_of_another_site_is_refused() throws Exception {
        try (Served served = oneTie()) {
            Guest desk = served.as(Role.DESK);
            Map<String, String> form =
                    desk.filled("/desk/check-in", "/desk/check-in", Map.of("player", "N1", "present", "yes"));
            assertThat(desk.postFrom("http://elsewhere.example", "/desk/check-in", form)
                            .status())
                    .isEqualTo(403);
            assertThat(desk.postFrom("null", "/desk/check-in", form).status()).isEqualTo(403);
            assertThat(desk.post("/desk/check-in", form).status()).isEqualTo(200);
            assertThat(desk.get("/desk/check-in").text()).contains("1 of 8 here");
        }
    }
}
