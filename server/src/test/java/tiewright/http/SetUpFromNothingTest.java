package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Preset;
import tiewright.conditions.Setting;
import tiewright.event.ClubId;
import tiewright.event.Role;
import tiewright.event.Tie;

/** An organiser sets an event up by forms alone, without scripts: from an empty folder to times, links and ticks. */
class SetUpFromNothingTest {
    private static final List<String> CLUBS = List.of("BRK", "HOL", "MOS", "SEE");
    private static final Pattern ADDRESS =
            Pattern.compile("<p class=\"code\"><a href=\"http://[^/]+(/enter/[^\"]+)\">");

    private final Served served = Served.empty(Instant.parse("2027-09-03T07:00:00Z"));
    private Guest organiser;

    @BeforeEach
    void enter() {
        organiser = served.as(Role.ORGANISER);
    }

    @AfterEach
    void stop() {
        served.close();
    }

    @Test
    void from_nothing_to_a_published_day() {
        setUp();
        assertThat(served.ledger.event().about().orElseThrow().name()).isEqualTo("Harvest Cup");
        assertThat(served.ledger.event().conditions().base()).isEqualTo(Preset.TIMED);
        assertThat(served.ledger.event().conditions().value(Setting.RUBBERS)).isEqualTo("5");
        assertThat(served.ledger.event().courts()).containsOnlyKeys("1", "2", "3", "Garden");
        assertThat(served.ledger.event().squad(ClubId.of("BRK"))).hasSize(8);
        assertThat(served.ledger.directory().people().values())
                .anyMatch(person -> person.name().equals("渡辺 1 BRK"));
        assertThat(served.ledger.event().pools().values()).hasSize(2).allMatch(pool -> pool.size() == 2);
        assertThat(served.ledger.event().ties().values())
                .allMatch(tie -> tie.start().isPresent());
        assertThat(organiser.get("/organiser").body())
                .doesNotContain("Still to do, in this order")
                .contains("2 pools");
        assertThat(served.stranger().get("/ties").text()).contains("09:30", "Garden", "Brackenfold");
        assertThat(served.stranger().get("/conditions").text()).contains("Version 1", "(differs)");
    }

    private void setUp() {
        done(
                "/organiser/event",
                "/organiser/event",
                Map.of(
                        "name",
                        "Harvest Cup",
                        "date",
                        "2027-09-04",
                        "venue",
                        "Mill Hall",
                        "zone",
                        "Europe/Dublin",
                        "starts",
                        "9.00",
                        "closes",
                        "18:00"));
        done("/organiser/conditions?preset=Timed", "/organiser/conditions", Map.of("rubbers", "5"));
        done("/organiser/courts", "/organiser/courts/add", Map.of("court", "1-3, Garden", "until", "17:00"));
        for (String club : CLUBS) {
            done(
                    "/organiser/clubs",
                    "/organiser/clubs",
                    Map.of("club", club, "name", name(club), "seed", club.equals("SEE") ? "1" : ""));
            done("/organiser/club/" + club, "/organiser/club/" + club + "/squad", squad(club));
        }
        done("/organiser/opening", "/organiser/opening", Map.of("organiserIsCaptain", "yes", "opens", "automatic"));
        done(
                "/organiser/draw",
                "/organiser/draw",
                Map.of("pools", "2", "spokenSeed", "three red hats", "witness", "Ines"));
        done(
                "/organiser/knockout",
                "/organiser/knockout",
                Map.of("fromEachPool", "2", "thirdPlace", "yes", "spokenSeed", "a boat at noon", "witness", "Ines"));
        done("/organiser/times", "/organiser/times", times());
        done("/organiser/help", "/organiser/help", Map.of("firstAid", "By the entrance, Ines", "emergency", "112"));
        done("/organiser/links", "/organiser/links/captains", Map.of());
    }

    private static String name(String club) {
        return Map.of("BRK", "Brackenfold", "HOL", "Hollowmere", "MOS", "Mossgarth", "SEE", "Seewinkel")
                .get(club);
    }

    private static Map<String, String> squad(String club) {
        Map<String, String> squad = new LinkedHashMap<>();
        for (int player = 1; player <= 8; player++) {
            squad.put("new-" + player + "-name", "渡辺 " + player + " " + club);
            squad.put("new-" + player + "-rank", Integer.toString(player));
        }
        squad.put("new-2-deputy", "yes");
        squad.put("new-3-bornYear", "2012");
        squad.put("new-4-from", "10:15");
        return squad;
    }

    private Map<String, String> times() {
        Map<String, String> times = new LinkedHashMap<>();
        int half = 0;
        for (Tie tie : served.ledger.event().ties().values()) {
            times.put("tie-" + tie.id() + "-start", (9 + (half + 1) / 2) + (half % 2 == 0 ? ":30" : ":00"));
            times.put("tie-" + tie.id() + "-court", half == 0 ? "Garden" : "1");
            half++;
        }
        return times;
    }

    private Guest.Got done(String page, String action, Map<String, String> changes) {
        Guest.Got got = FormFields.fill(organiser, page, action, changes);
        assertThat(got.status()).as(action + ": " + got.text()).isEqualTo(200);
        return got;
    }

    private Guest.Got refused(String page, String action, Map<String, String> changes) {
        Guest.Got got = FormFields.fill(organiser, page, action, changes);
        assertThat(got.status()).as(action + ": " + got.text()).isEqualTo(422);
        return got;
    }

    @Test
    void a_captain_comes_in_by_the_slip_reads_the_conditions_and_the_organiser_sees_it() {
        setUp();
        done("/organiser/links", "/organiser/links/players", Map.of("of-club", "BRK"));
        Guest.Got slips = done(
                "/organiser/links",
                "/organiser/links/one",
                Map.of("role", "captain", "club", "BRK", "label", "BRK second phone"));
        Guest captain = served.stranger();
        captain.get(address(slips));
        assertThat(captain.get("/conditions").text()).contains("I have read version 1");
        Guest.Got ticked = FormFields.fill(captain, "/conditions", "/conditions/read", Map.of("tick", "yes"));
        assertThat(ticked.text())
                .contains("Brackenfold: version 1 read")
                .doesNotContain("I have read version 1", "Hollowmere:");
        assertThat(organiser.get("/conditions").text())
                .contains("Brackenfold: version 1 read", "Hollowmere: no version ticked yet");
        assertThat(served.stranger().get("/conditions").text()).doesNotContain("ticked", "version 1 read");
    }

    private static String address(Guest.Got slips) {
        Matcher found = ADDRESS.matcher(slips.body());
        assertThat(found.find()).as(slips.text()).isTrue();
        return found.group(1);
    }

    @Test
    void a_link_is_shown_once_and_replaced_in_one_press() {
        setUp();
        Map<String, String> press =
                new LinkedHashMap<>(FormFields.of(organiser.get("/organiser/links"), "/organiser/links/one"));
        press.putAll(Map.of("role", "desk", "label", "desk 2"));
        Guest.Got first = organiser.post("/organiser/links/one", press);
        Guest.Got again = organiser.post("/organiser/links/one", press);
        assertThat(again.text()).contains("These links were shown once already");
        assertThat(ADDRESS.matcher(again.body()).find()).isFalse();
        String old = address(first);
        assertThat(organiser.get("/organiser/links").body())
                .contains("desk 2")
                .doesNotContain(old.substring("/enter/".length()));

        String link = served.ledger.event().links().values().stream()
                .filter(one -> one.label().equals("desk 2"))
                .findFirst()
                .orElseThrow()
                .name();
        Guest.Got replaced = done("/organiser/links", "/organiser/links/change", Map.of("press", "replace " + link));
        assertThat(served.stranger().get(old).status()).isEqualTo(410);
        Guest desk = served.stranger();
        assertThat(desk.get(address(replaced)).path()).isEqualTo("/desk");

        Guest.Got none = refused("/organiser/links", "/organiser/links/captains", Map.of());
        assertThat(none.text()).contains("Everybody asked for has a link already");
        Guest.Got own = refused("/organiser/links", "/organiser/links/change", Map.of("press", "revoke T1"));
        assertThat(own.text()).contains("You are here with T1 yourself");
        assertThat(organiser.get("/organiser").status()).isEqualTo(200);
    }

    @Test
    void a_published_time_changes_only_with_a_reason_and_all_rows_or_none() {
        setUp();
        List<Tie> ties = List.copyOf(served.ledger.event().ties().values());
        String one = "tie-" + ties.get(0).id();
        String other = "tie-" + ties.get(1).id();
        long before = served.ledger.event().seq();
        Guest.Got refused = refused(
                "/organiser/times", "/organiser/times", Map.of(one + "-start", "11:45", other + "-court", "Nowhere"));
        assertThat(FormFields.of(refused, "/organiser/times"))
                .containsEntry(one + "-start", "11:45")
                .containsEntry(other + "-court", "Nowhere");
        assertThat(refused.body()).contains("id=\"" + other + "-court-error\"", "id=\"reason-error\"");
        assertThat(served.ledger.event().seq()).isEqualTo(before);

        done(
                "/organiser/times",
                "/organiser/times",
                Map.of(one + "-start", "11:45", other + "-court", "2", "reason", "The hall opens late."));
        assertThat(served.ledger.event().notices()).hasSize(2);
        assertThat(served.stranger().get("/notices").text()).contains("The hall opens late.", "11:45");
    }

    @Test
    void decisions_that_are_refused_say_why_beside_the_field_and_keep_what_was_typed() {
        setUp();
        Guest.Got seed = refused("/organiser/club/BRK", "/organiser/club/BRK/club", Map.of("seed", "1"));
        assertThat(seed.text()).contains("Seewinkel has seed 1 already.");
        assertThat(FormFields.of(seed, "/organiser/club/BRK/club"))
                .containsEntry("seed", "1")
                .containsEntry("name", "Brackenfold");
        assertThat(FormFields.of(seed, "/organiser/club/BRK/squad")).containsEntry("p-BRK-1-name", "渡辺 1 BRK");

        Guest.Got squad = refused(
                "/organiser/club/BRK",
                "/organiser/club/BRK/squad",
                Map.of("p-BRK-1-rank", "0", "new-1-name", "New One", "new-1-from", "12:00", "new-1-until", "11:00"));
        assertThat(squad.body()).contains("id=\"p-BRK-1-rank-error\"", "id=\"new-1-until-error\"");
        assertThat(FormFields.of(squad, "/organiser/club/BRK/squad")).containsEntry("new-1-name", "New One");
        assertThat(served.ledger.event().squad(ClubId.of("BRK"))).hasSize(8);

        Guest.Got again = refused("/organiser/conditions", "/organiser/conditions", Map.of());
        assertThat(again.text()).contains("Nothing differs from version 1");
        Guest.Got lot = refused("/organiser/tables", "/organiser/tables/sign/A", Map.of("sign-A-by", "Ines"));
        assertThat(FormFields.of(lot, "/organiser/tables/sign/A")).containsEntry("sign-A-by", "Ines");
    }

    @Test
    void a_squad_is_changed_row_by_row_and_a_code_is_never_used_twice() {
        setUp();
        done(
                "/organiser/club/BRK",
                "/organiser/club/BRK/squad",
                Map.of("p-BRK-8-out", "yes", "p-BRK-1-rank", "2", "p-BRK-2-rank", "1"));
        long before = served.ledger.event().seq();
        done("/organiser/club/BRK", "/organiser/club/BRK/squad", Map.of());
        assertThat(served.ledger.event().seq()).isEqualTo(before);
        done("/organiser/club/BRK", "/organiser/club/BRK/squad", Map.of("new-1-name", "Ninth", "new-1-rank", "8"));
        assertThat(served.ledger.event().squad(ClubId.of("BRK")))
                .extracting(player -> player.id().code())
                .contains("BRK-9")
                .doesNotContain("BRK-8");
    }

    @Test
    void both_entries_of_a_player_in_two_squads_are_shown() {
        setUp();
        done("/organiser/club/HOL", "/organiser/club/HOL/squad", Map.of("new-1-name", "渡辺 1 BRK"));
        assertThat(organiser.get("/organiser/clubs").text())
                .contains("BRK-1", "HOL-9", "Brackenfold", "Hollowmere", "have the same name");
        assertThat(organiser.get("/organiser").text()).contains("1 warning about clubs or names");
    }

    @Test
    void minors_are_shortened_on_public_pages_and_their_year_stays_with_the_organiser() {
        setUp();
        done("/organiser/club/BRK", "/organiser/club/BRK/squad", Map.of("p-BRK-3-name", "Mira Kestrel"));
        assertThat(organiser.get("/organiser/club/BRK").body()).contains("Mira Kestrel", "2012");
        Guest.Got open = served.stranger().get("/club/BRK");
        assertThat(open.text()).contains("Mira K.").doesNotContain("Kestrel", "2012");
    }

    @Test
    void anybody_can_follow_the_draw_step_by_step() {
        setUp();
        Guest.Got draw = organiser.get("/organiser/draw");
        assertThat(draw.text())
                .contains("Drawn from the words \"three red hats\", witness Ines.", "Step by step", "placed as a seed");
        Guest.Got again = refused(
                "/organiser/draw",
                "/organiser/draw",
                Map.of("pools", "1", "spokenSeed", "other words", "witness", "Ines"));
        assertThat(again.body()).contains("again-error");
        assertThat(organiser.get("/log").text()).contains("drawn from the words \"three red hats\"");
    }
}
