package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Preset;
import tiewright.conditions.Setting;
import tiewright.event.Days;
import tiewright.event.Role;

/** Rubbers of different weights, from the page on which they are chosen to the page of a tie. */
class WeighedTieTest {
    private static Map<String, String> conditions(String weights) {
        Map<String, String> typed = new LinkedHashMap<>(Map.of("preset", Preset.CLUB_DAY.printed()));
        for (Setting setting : Setting.values()) {
            typed.put(setting.code(), setting.of(Preset.CLUB_DAY));
        }
        typed.put(Setting.RUBBERS.code(), "3");
        typed.put(Setting.RUBBER_WEIGHTS.code(), weights);
        return typed;
    }

    @Test
    void the_organiser_types_weights_and_is_told_when_they_do_not_fit() {
        try (Served served = Served.of(Days.aDay().clubs("N", "S"), Days.moment("08:30"))) {
            Guest organiser = served.as(Role.ORGANISER);
            String page = "/organiser/conditions";
            assertThat(organiser.send(page, page, conditions("6/4")).text())
                    .contains("\"6/4\" weighs 2 rubbers, and a tie has 3. Give each rubber its weight.");
            assertThat(organiser.send(page, page, conditions("6/0/3")).text()).contains("cannot be weights for");
            organiser.send(page, page, conditions("6/4/3"));
            assertThat(served.ledger.event().conditions().tieRubbers().weights().each())
                    .containsExactly(6, 4, 3);
            assertThat(served.as(Role.ORGANISER).get("/conditions").text())
                    .contains("rubber 1 first: 6, 4 and 3; more than half of the weight played for wins the tie");
        }
    }

    /** By hand: rubber 1 weighs 6, rubbers 2 and 3 together 7 of 13. */
    @Test
    void the_page_of_a_tie_says_how_it_stands_by_weight() {
        Days day = Days.oneTie()
                .with(Setting.RUBBERS, "3")
                .with(Setting.RUBBER_WEIGHTS, "6/4/3")
                .opened("A1")
                .cards("A1", "11-5", "5-11");
        try (Served served = Served.of(day, Days.moment("11:00"))) {
            assertThat(served.as(Role.DESK).get("/tie/A1").text())
                    .contains("By the weight of the rubbers won it stands 6–4; 7 win the tie.");
        }
    }
}
