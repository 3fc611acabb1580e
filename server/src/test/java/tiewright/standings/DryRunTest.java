package tiewright.standings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tiewright.conditions.Conditions;
import tiewright.conditions.Preset;
import tiewright.conditions.Setting;

/** Wilson's interval: the examples of R. G. Newcombe, Stat. Med. 17:857 (1998), Table I, method 3. The rest is arithmetic. */
class DryRunTest {
    private static Conditions day() {
        return Conditions.of(Preset.CLUB_DAY).with(Setting.SCORING, "rally-3").with(Setting.DECIDER_SCORING, "rally-3");
    }

    /** Two clubs, two even rubbers, no decider, lots at once: 1-1, and so a lot, in half of all pools. */
    private static Conditions aCoin() {
        return day().with(Setting.RUBBERS, "2")
                .with(Setting.DECIDER, "none")
                .with(Setting.TIE_POINTS, "2/1/0")
                .with(Setting.LEVEL_TEAMS, "lots");
    }

    @Test
    void a_lot_in_half_of_all_pools_is_found_so_often() {
        int held = 0;
        for (int seed = 0; seed < 300; seed++) {
            DryRun.Report report = DryRun.of(aCoin(), 2, 100, seed);
            held += report.low() <= 0.5 && report.high() >= 0.5 ? 1 : 0;
        }
        assertThat(held / 300.0).as("intervals of 95 %% that hold the half").isBetween(0.90, 0.99);
    }

    @Test
    void every_way_has_an_example_that_only_a_lot_parts() {
        DryRun.Report report = DryRun.of(day().with(Setting.LEVEL_TEAMS, "rubbers-difference>lots"), 4, 500, 7);
        assertThat(report.ways())
                .isNotEmpty()
                .allSatisfy(found -> assertThat(Standings.of(found.example()).lotsToDraw())
                        .anySatisfy(level -> {
                            assertThat(level).hasSize(found.way().clubs());
                            assertThat(Standings.of(found.example())
                                            .row(level.get(0))
                                            .orElseThrow()
                                            .place())
                                    .isEqualTo(found.way().place());
                        }));
        assertThat(report.ways().stream().mapToInt(DryRun.Found::times).sum()).isGreaterThanOrEqualTo(report.withLot());
    }

    /** Where a decider parts every tie and two level clubs are parted by it, no two clubs alone ever need a lot. */
    @Test
    void two_alone_need_no_lot_under_the_rule_of_the_tie_between_them() {
        assertThat(DryRun.of(day(), 4, 1_000, 3).ways())
                .extracting(found -> found.way().clubs())
                .doesNotContain(2);
    }

    @Test
    void the_same_seed_gives_the_same_report() {
        DryRun.Report one = DryRun.of(day(), 3, 200, 5);
        DryRun.Report other = DryRun.of(day(), 3, 200, 5);
        assertThat(one.withLot()).isPositive().isEqualTo(other.withLot());
        assertThat(one.ways())
                .extracting(found -> found.example().ties())
                .isEqualTo(other.ways().stream()
                        .map(found -> found.example().ties())
                        .toList());
        for (Preset preset : Preset.values()) {
            assertThat(DryRun.of(Conditions.of(preset), 3, 20, 1).runs()).isEqualTo(20);
        }
    }
}
