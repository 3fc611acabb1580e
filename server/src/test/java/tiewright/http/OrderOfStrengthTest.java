package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.event.Days;
import tiewright.event.Role;

/** A ranking of players is public only where the conditions publish one. */
class OrderOfStrengthTest {
    private static final List<String> PUBLIC = List.of("/club/N", "/clubs", "/", "/player/N1", "/ties");

    /** Squad Z: the strongest has the last name of the alphabet. */
    private static Days day(boolean turned) {
        Days day = Days.aDay().clubs("S");
        day.club("N", 0);
        for (int i = 1; i <= 8; i++) {
            day.player("N" + i, "N", turned ? 9 - i : i).named("N" + i, "Player " + (char) ('Z' - i));
        }
        return day.courts("1", "2").poolTie("A1", "A", 1, "N", "S").timed("A1", "10:00", "1");
    }

    private static String read(Guest guest, String path) {
        return guest.get(path)
                .body()
                .replaceAll("name=\"(key|seen)\" value=\"[^\"]*\"", "")
                .replaceAll("localhost:[0-9]+|127\\.0\\.0\\.1:[0-9]+", "");
    }

    @Test
    void days_that_differ_only_in_ranks_read_the_same_to_strangers_players_and_the_other_club() {
        try (Served one = Served.of(day(false), Days.moment("09:00"));
                Served other = Served.of(day(true), Days.moment("09:00"))) {
            for (String path : PUBLIC) {
                assertThat(read(one.stranger(), path)).as(path).isEqualTo(read(other.stranger(), path));
                assertThat(read(one.captain("S"), path)).as(path).isEqualTo(read(other.captain("S"), path));
                assertThat(read(one.player("N", "N2"), path)).as(path).isEqualTo(read(other.player("N", "N2"), path));
            }
            String squad = one.stranger().get("/club/N").text();
            assertThat(squad.indexOf("Player R")).as("by name, not as entered").isLessThan(squad.indexOf("Player Y"));
            assertThat(squad).doesNotContain("in the order of strength");
            assertThat(one.captain("N").get("/club/N").text()).contains("in the order of strength");
            assertThat(one.as(Role.REFEREE).get("/club/N").text()).contains("in the order of strength");
        }
    }

    @Test
    void an_order_that_the_conditions_ask_for_is_published() {
        Days day = day(false).with(Setting.ORDER_OF_STRENGTH, "rank-sum");
        try (Served served = Served.of(day, Days.moment("09:00"))) {
            String squad = served.stranger().get("/club/N").text();
            assertThat(squad).contains("in the order of strength");
            assertThat(squad.indexOf("Player Y")).isLessThan(squad.indexOf("Player R"));
        }
    }

    @Test
    void a_rank_changed_after_the_first_sheet_is_told_only_where_ranks_are_published() {
        for (boolean published : new boolean[] {false, true}) {
            Days day = day(false)
                    .with(Setting.ORDER_OF_STRENGTH, published ? "rank-sum" : "none")
                    .opened("A1");
            try (Served served = Served.of(day, Days.moment("10:00"))) {
                Guest organiser = served.as(Role.ORGANISER);
                String page = "/organiser/club/N";
                Map<String, String> squad = FormFields.of(organiser.get(page), page + "/squad");
                String rank = squad.keySet().stream()
                        .filter(field ->
                                field.endsWith("-rank") && squad.get(field).equals("1"))
                        .findFirst()
                        .orElseThrow();
                Guest.Got done = FormFields.fill(organiser, page, page + "/squad", Map.of(rank, "9"));
                assertThat(done.status()).as(done.text()).isEqualTo(200);
                assertThat(served.stranger().get("/notices").text().contains("The rank of player"))
                        .as("published: " + published)
                        .isEqualTo(published);
            }
        }
    }
}
