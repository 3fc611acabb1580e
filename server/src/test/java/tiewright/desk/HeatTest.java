package tiewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Conditions;
import tiewright.conditions.Preset;
import tiewright.conditions.Setting;
import tiewright.desk.Heat.Measure;
import tiewright.desk.Heat.Published;
import tiewright.desk.Heat.Tier;
import tiewright.event.Days;
import tiewright.event.Event;
import tiewright.event.OfficialFact;

/** Readings of heat: published tiers, the tiers of the conditions, and that a decision is logged and moves nothing. */
class HeatTest {
    private static Heat wbgt(int tenths) {
        return new Heat(Measure.WBGT, tenths);
    }

    /** Japan Sports Association 2013, page of the Ministry of the Environment. */
    @Test
    void the_published_tiers_of_wbgt() {
        assertThat(List.of(209, 210, 250, 280, 305, 310).stream()
                        .map(tenths -> wbgt(tenths).published().orElseThrow()))
                .containsExactly(
                        Published.ALMOST_SAFE,
                        Published.CAUTION,
                        Published.WARNING,
                        Published.SEVERE_WARNING,
                        Published.SEVERE_WARNING,
                        Published.DANGER);
        assertThat(List.of(249, 279, 309).stream()
                        .map(tenths -> wbgt(tenths).published().orElseThrow()))
                .containsExactly(Published.CAUTION, Published.WARNING, Published.SEVERE_WARNING);
        assertThat(new Heat(Measure.AIR, 310).published()).isEmpty();
    }

    /** American Academy of Pediatrics, note to its table: wet 25, globe 40, air 32 give 28.7. */
    @Test
    void the_published_formula_of_wbgt() {
        assertThat(Heat.wbgt(250, 400, 320)).isEqualTo(287);
        assertThat(wbgt(287).degrees()).isEqualTo("28.7");
        assertThat(Heat.wbgt(-30, -10, 5)).isEqualTo(-22);
    }

    @Test
    void the_conditions_put_a_reading_into_a_tier_and_the_border_counts_upward() {
        Conditions clubDay = Conditions.of(Preset.CLUB_DAY);
        assertThat(wbgt(279).tier(clubDay)).isEqualTo(Tier.BELOW);
        assertThat(wbgt(280).tier(clubDay)).isEqualTo(Tier.CAUTION);
        assertThat(wbgt(305).tier(clubDay)).isEqualTo(Tier.CAUTION);
        assertThat(wbgt(310).tier(clubDay)).isEqualTo(Tier.STOP);
        assertThat(wbgt(305).tier(clubDay.with(Setting.HEAT_STOP_WBGT, "30.5"))).isEqualTo(Tier.STOP);
        assertThat(new Heat(Measure.AIR, 349).tier(clubDay)).isEqualTo(Tier.BELOW);
        assertThat(new Heat(Measure.AIR, 350).tier(clubDay)).isEqualTo(Tier.CAUTION);
        assertThat(new Heat(Measure.AIR, 380).tier(clubDay)).isEqualTo(Tier.STOP);
    }

    @Test
    void a_decision_is_logged_with_its_tier_and_name_and_play_stays_as_it_is() {
        Days day = Days.oneTie().opened("A1").at("15:00");
        Event before = day.event();
        day.does(new DecideOnHeat(wbgt(305), "Breaks of ten minutes", " Ines "));
        assertThat(day.event().heat()).singleElement().satisfies(heat -> {
            assertThat(heat.decided())
                    .isEqualTo(new OfficialFact.HeatDecided("wbgt", 305, "caution", "Breaks of ten minutes", "Ines"));
            assertThat(heat.at()).isEqualTo(Days.moment("15:00"));
        });
        assertThat(day.event().ties()).isEqualTo(before.ties());
        assertThat(day.event().courts()).isEqualTo(before.courts());
        assertThat(day.event().notices()).isEqualTo(before.notices());
    }

    @Test
    void refuses_a_decision_without_words_or_name_an_impossible_reading_and_others_than_officials() {
        Days day = Days.oneTie();
        assertThat(day.codes(new DecideOnHeat(wbgt(305), " ", "")))
                .containsExactly("desk.text-missing.decision", "desk.text-missing.by");
        assertThat(day.codes(new DecideOnHeat(wbgt(8700), "stop", "Ines"))).containsExactly("desk.no-such-heat");
        assertThat(day.by(Days.captain("N")).codes(new DecideOnHeat(wbgt(305), "stop", "Ines")))
                .containsExactly("desk.officials-only");
        assertThat(day.by(Days.volunteer("v")).codes(new DecideOnHeat(wbgt(305), "stop", "Ines")))
                .containsExactly("desk.officials-only");
    }
}
