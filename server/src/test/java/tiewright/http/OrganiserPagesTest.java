package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.DrawFact;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.Role;
import tiewright.event.SetUpFact;
import tiewright.event.Slot;
import tiewright.event.Stage;
import tiewright.event.TieId;

/** The organiser's pages through a real service: what they show, what they refuse, what they keep, for whom they are. */
class OrganiserPagesTest {
    private static final List<String> PAGES = List.of(
            "/organiser",
            "/organiser/event",
            "/organiser/conditions",
            "/organiser/courts",
            "/organiser/clubs",
            "/organiser/opening",
            "/organiser/draw",
            "/organiser/knockout",
            "/organiser/times",
            "/organiser/budget",
            "/organiser/plan",
            "/organiser/day-breaks",
            "/organiser/links",
            "/organiser/rulings",
            "/organiser/notices",
            "/organiser/tables",
            "/organiser/backup",
            "/conditions",
            "/log");

    private final Served served = Served.empty(Instant.parse("2027-09-04T07:00:00Z"));

    @AfterEach
    void stop() {
        served.close();
    }

    private Served withClubs() {
        return served.given(
                List.of(
                        new SetUpFact.EventDescribed(
                                "Harvest Cup",
                                LocalDate.of(2027, 9, 4),
                                "Mill Hall",
                                ZoneId.of("Europe/Dublin"),
                                LocalTime.of(9, 0),
                                Optional.empty()),
                        new SetUpFact.ClubEntered(
                                ClubId.of("BRK"), "Brackenfold", Optional.of("Ost"), OptionalInt.of(1)),
                        new SetUpFact.ClubEntered(
                                ClubId.of("ÅL 2"), "Ålesund \"Zwei\" & <Co>", Optional.empty(), OptionalInt.empty()),
                        new SetUpFact.CourtSet("1", Optional.empty(), Optional.empty(), true),
                        new SetUpFact.CourtSet("Strand ö", Optional.empty(), Optional.empty(), false),
                        new DrawFact.TieArranged(
                                TieId.of("A-1-1"),
                                Stage.POOL,
                                Optional.of("A"),
                                1,
                                Slot.of(ClubId.of("BRK")),
                                Slot.of(ClubId.of("ÅL 2")))),
                List.of());
    }

    @Test
    void every_page_opens_on_an_empty_event_and_on_a_full_one() {
        Guest organiser = served.as(Role.ORGANISER);
        for (int turn = 0; turn < 2; turn++) {
            for (String path : PAGES) {
                Guest.Got page = organiser.get(path);
                assertThat(page.status()).as(path + ": " + page.text()).isEqualTo(200);
                assertThat(page.body()).as(path).containsOnlyOnce("<h1").doesNotContain(" style=", "onclick=");
                Set<String> ids = new HashSet<>();
                Pattern.compile(" id=\"([^\"]+)\"")
                        .matcher(page.body())
                        .results()
                        .map(found -> found.group(1))
                        .forEach(id -> assertThat(ids.add(id))
                                .as(path + " has twice the id " + id)
                                .isTrue());
                assertThat(ids).as(path).noneMatch(id -> id.contains(" "));
            }
            withClubs();
        }
        assertThat(organiser.get("/organiser/club/BRK").status()).isEqualTo(200);
        assertThat(organiser.get("/organiser/clubs").body()).contains("Ålesund \"Zwei\" &amp; &lt;Co&gt;");
    }

    @Test
    void a_captains_link_opens_none_of_them_and_changes_nothing() {
        withClubs();
        Guest captain = served.captain("BRK");
        Guest stranger = served.stranger();
        for (String path : PAGES) {
            if (!path.equals("/conditions")) {
                assertThat(captain.get(path).status()).as(path).isEqualTo(403);
                assertThat(stranger.get(path).status()).as(path).isEqualTo(403);
            }
        }
        long before = served.ledger.event().seq();
        Map<String, String> event = Map.of(
                "key", "1", "name", "Mine", "date", "2027-01-01", "venue", "x", "zone", "UTC", "starts", "09:00");
        assertThat(captain.post("/organiser/event", event).status()).isEqualTo(403);
        assertThat(stranger.post("/organiser/links/captains", Map.of("key", "2"))
                        .status())
                .isEqualTo(403);
        assertThat(served.as(Role.DESK)
                        .post("/organiser/rulings", Map.of("key", "3"))
                        .status())
                .isEqualTo(403);
        assertThat(served.ledger.event().seq()).isEqualTo(before + 1); // the link of the desk
    }

    @Test
    void nonsense_gets_a_sentence_beside_its_field_and_keeps_what_was_typed() {
        withClubs();
        Guest organiser = served.as(Role.ORGANISER);
        long before = served.ledger.event().seq();

        Guest.Got event = FormFields.fill(
                organiser,
                "/organiser/event",
                "/organiser/event",
                Map.of(
                        "name",
                        "  ",
                        "date",
                        "tomorrow <b>",
                        "venue",
                        "Ort 渡辺",
                        "starts",
                        "25:99",
                        "closes",
                        "half past"));
        assertThat(event.status()).isEqualTo(422);
        assertThat(event.text())
                .contains(
                        "This must be filled in.",
                        "\"tomorrow &lt;b&gt;\" is not a date",
                        "\"25:99\" is not a time",
                        "\"half past\" is not a time");
        assertThat(FormFields.of(event, "/organiser/event"))
                .containsEntry("date", "tomorrow <b>")
                .containsEntry("venue", "Ort 渡辺");
        assertThat(event.body()).contains("href=\"#starts\"", "id=\"starts-error\"");

        Guest.Got courts = FormFields.fill(
                organiser, "/organiser/courts", "/organiser/courts/add", Map.of("court", "1-9999", "from", "later"));
        assertThat(courts.text()).contains("\"1-9999\" gives no courts", "\"later\" is not a time");
        assertThat(FormFields.of(courts, "/organiser/courts/add")).containsEntry("court", "1-9999");

        Guest.Got club = FormFields.fill(
                organiser, "/organiser/clubs", "/organiser/clubs", Map.of("club", "a,b", "name", "", "seed", "first"));
        assertThat(club.text()).contains("\"a,b\" cannot be a code", "\"first\" is not a whole number");
        Guest.Got taken = FormFields.fill(
                organiser, "/organiser/clubs", "/organiser/clubs", Map.of("club", "BRK", "name", "Other"));
        assertThat(taken.text()).contains("The code of Brackenfold is taken");

        Guest.Got squad = FormFields.fill(
                organiser,
                "/organiser/club/BRK",
                "/organiser/club/BRK/squad",
                Map.of("new-1-name", "Ada", "new-1-rank", "best", "new-2-rank", "3"));
        assertThat(squad.text()).contains("\"best\" is not a whole number", "A player needs a name.");
        assertThat(FormFields.of(squad, "/organiser/club/BRK/squad"))
                .containsEntry("new-1-name", "Ada")
                .containsEntry("new-1-rank", "best");

        Guest.Got draw = FormFields.fill(
                organiser, "/organiser/draw", "/organiser/draw", Map.of("pools", "two", "witness", "Ines"));
        assertThat(draw.text()).contains("\"two\" is not a whole number", "This must be filled in.");
        assertThat(FormFields.of(draw, "/organiser/draw"))
                .containsEntry("pools", "two")
                .containsEntry("witness", "Ines");

        Guest.Got times =
                FormFields.fill(organiser, "/organiser/times", "/organiser/times", Map.of("tie-A-1-1-start", "nine"));
        assertThat(times.text()).contains("\"nine\" is not a time");

        Guest.Got ruling =
                FormFields.fill(organiser, "/organiser/rulings", "/organiser/rulings", Map.of("about", "tie A-1-1"));
        assertThat(ruling.text()).contains("This must be filled in.");
        assertThat(FormFields.of(ruling, "/organiser/rulings")).containsEntry("about", "tie A-1-1");

        Guest.Got conditions =
                FormFields.fill(organiser, "/organiser/conditions", "/organiser/conditions", Map.of("rubbers", "many"));
        assertThat(conditions.status()).isEqualTo(422);
        assertThat(FormFields.of(conditions, "/organiser/conditions")).containsEntry("rubbers", "many");
        assertThat(served.ledger.event().seq()).isEqualTo(before);
    }

    @Test
    void the_log_shows_what_was_entered_but_no_replaced_sheet_no_hash_and_no_receipt() {
        withClubs();
        Guest desk = served.as(Role.DESK);
        ExchangeId sheets = ExchangeId.sheets(TieId.of("A-1-1"));
        served.given(
                List.of(new ExchangeFact.SheetSealed(sheets, ClubId.of("BRK"), "ab".repeat(32), false)), List.of());
        String before = desk.get("/log").text();
        assertThat(before)
                .contains("Brackenfold sealed a sheet for the rubbers of tie A-1-1.", "Link T1 made: desk, desk.");
        served.given(List.of(new ExchangeFact.SheetSealed(sheets, ClubId.of("BRK"), "cd".repeat(32), true)), List.of());
        served.given(List.of(new ExchangeFact.ClubTold(sheets, ClubId.of("BRK"))), List.of());
        Guest.Got after = desk.get("/log");
        assertThat(withoutClock(after.text())).isEqualTo(withoutClock(before));
        assertThat(after.body()).doesNotContain("ab".repeat(32), "cd".repeat(32));
        served.ledger
                .event()
                .links()
                .values()
                .forEach(link -> assertThat(after.body()).doesNotContain(link.hash()));
    }

    private static String withoutClock(String words) {
        return words.replaceAll("as of [0-9:]+", "");
    }

    @Test
    void a_long_log_is_paged_newest_first() {
        for (int court = 1; court <= 130; court++) {
            served.given(
                    List.of(new SetUpFact.CourtSet("c" + court, Optional.empty(), Optional.empty(), true)), List.of());
        }
        Guest desk = served.as(Role.DESK);
        assertThat(desk.get("/log").text())
                .contains("131 entries", "Court c130 can", "Page 1 of 2")
                .doesNotContain("Court c29 can");
        assertThat(desk.get("/log?page=2").text())
                .contains("Court c1 can", "Court c29 can")
                .doesNotContain("Court c130 can");
        assertThat(desk.get("/log?page=nonsense").status()).isEqualTo(200);
        assertThat(desk.get("/log?page=9999999").text()).contains("Page 2 of 2");
    }

    @Test
    void a_backup_is_one_file_without_the_key_of_the_sealed_sheets() {
        Guest.Got zip = FormFields.fill(served.as(Role.ORGANISER), "/organiser/backup", "/organiser/backup", Map.of());
        assertThat(zip.status()).isEqualTo(200);
        assertThat(zip.body()).startsWith("PK").doesNotContain("seal.key", "letterbox.key");
        assertThat(served.as(Role.DESK).get("/organiser/backup").status()).isEqualTo(403);
    }

    @Test
    void the_wall_shows_the_address_as_a_code() {
        Guest.Got code = served.stranger().get("/qr.svg");
        assertThat(code.status()).isEqualTo(200);
        assertThat(code.body())
                .startsWith("<svg")
                .contains(tiewright.paper.QrCode.of(served.service.url()).path());
    }

    @Test
    void pools_that_came_with_files_are_shown_and_not_drawn_over_without_a_word() {
        withClubs();
        Guest organiser = served.as(Role.ORGANISER);
        assertThat(organiser.get("/organiser/draw").text())
                .contains("These pools came with the files of the event.", "Pool A", "Brackenfold", "Draw again");
        Guest.Got draw = FormFields.fill(
                organiser,
                "/organiser/draw",
                "/organiser/draw",
                Map.of("pools", "1", "spokenSeed", "three red kites", "witness", "Ines"));
        assertThat(draw.text()).contains("This must be filled in.");
        assertThat(served.ledger.event().draw()).isEmpty();
    }
}
