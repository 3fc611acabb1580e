package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tiewright.event.Days;

/** Shuffle on the sheet's form: from the club's own secret, the same again for the same press, another for another club. */
class ShuffleTest {
    private static final String SHEET = "/captain/sheet/A1";

    private static Served served() {
        return Served.of(Days.oneTie(), Days.moment("09:00"));
    }

    /** Where pairs 1 to 4 went, with the answer's own count of draws. */
    private static Map<String, String> press(Guest captain, Map<String, String> filled) {
        Map<String, String> form = new LinkedHashMap<>(filled);
        form.put("step", "shuffle");
        Map<String, String> drawn = FormFields.of(captain.post(SHEET, form), SHEET);
        assertThat(drawn.get("draws")).isEqualTo(Integer.toString(Integer.parseInt(filled.get("draws")) + 1));
        return drawn;
    }

    private static Map<String, String> straight(Guest captain, String club) {
        Map<String, String> form = new LinkedHashMap<>(FormFields.of(captain.get(SHEET), SHEET));
        for (int i = 0; i < 8; i++) {
            form.put("sheet-" + (i / 2 + 1) + (i % 2 == 0 ? "-first" : "-second"), club + (i + 1));
        }
        return form;
    }

    private static List<Integer> order(Map<String, String> form) {
        return IntStream.rangeClosed(1, 4)
                .mapToObj(rubber ->
                        Integer.parseInt(form.get("sheet-" + rubber + "-first").substring(1)) / 2)
                .toList();
    }

    private static List<List<Integer>> presses(Guest captain, String club, int times) {
        List<List<Integer>> orders = new ArrayList<>();
        Map<String, String> form = straight(captain, club);
        for (int i = 0; i < times; i++) {
            form = press(captain, form);
            orders.add(order(form));
        }
        return orders;
    }

    @Test
    void the_same_captain_draws_the_same_again_and_the_other_captain_draws_otherwise() {
        try (Served served = served()) {
            Guest home = served.captain("N");
            List<List<Integer>> first = presses(home, "N", 8);
            assertThat(presses(home, "N", 8)).as("the page opened again").isEqualTo(first);
            assertThat(presses(served.captain("S"), "S", 8))
                    .as("eight draws of 24 orders agree by chance once in 10^11 days; the key of this folder is fixed")
                    .isNotEqualTo(first);
            assertThat(new HashSet<>(first)).as("a press draws another one").hasSizeGreaterThan(4);
            first.forEach(order -> assertThat(order).containsExactlyInAnyOrder(0, 1, 2, 3));
        }
    }

    @Test
    void a_draw_does_not_hang_on_how_the_pairs_stood_before() {
        try (Served served = served()) {
            Guest home = served.captain("N");
            Map<String, String> form = straight(home, "N");
            Map<String, String> turned = new LinkedHashMap<>(form);
            for (String seat : List.of("-first", "-second")) {
                turned.put("sheet-1" + seat, form.get("sheet-4" + seat));
                turned.put("sheet-4" + seat, form.get("sheet-1" + seat));
            }
            assertThat(order(press(home, turned))).isEqualTo(order(press(home, form)));
        }
    }

    /** A link that somebody outside the club made learns nothing of what the club will draw. */
    @Test
    void a_link_that_is_not_let_in_is_given_chance_of_its_own() {
        try (Served served = served()) {
            Guest home = served.captain("N");
            served.ask(
                    Days.captain("N"),
                    new tiewright.sheet.SealSheet(
                            tiewright.event.ExchangeId.sheets(tiewright.event.TieId.of("A1")),
                            tiewright.event.ClubId.of("N"),
                            Days.straight("N", 4),
                            "ab".repeat(32)));
            List<List<Integer>> own = presses(home, "N", 6);
            served.clock.pass(java.time.Duration.ofMinutes(1));
            Guest.Got slips = served.as(tiewright.event.Role.ORGANISER)
                    .send(
                            "/organiser/links",
                            "/organiser/links/one",
                            Map.of("role", "captain", "club", "N", "player", "", "label", "late"));
            Matcher address = Pattern.compile("/enter/[A-Za-z0-9_-]+").matcher(slips.body());
            assertThat(address.find()).isTrue();
            Guest late = served.stranger();
            late.get(address.group());
            assertThat(late.get("/captain/squad").status()).as("not let in").isNotEqualTo(200);
            Set<List<List<Integer>>> drawn = new HashSet<>(List.of(own, presses(late, "N", 6), presses(late, "N", 6)));
            assertThat(drawn).as("three rows of six draws, all different").hasSize(3);
        }
    }
}
