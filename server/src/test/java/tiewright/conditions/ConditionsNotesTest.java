package tiewright.conditions;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What goes badly together, each beside its near miss. */
class ConditionsNotesTest {
    private static List<ConditionsNote.Kind> kinds(Preset base, String... changes) {
        return with(base, changes).notes().stream().map(ConditionsNote::kind).toList();
    }

    private static Conditions with(Preset base, String... changes) {
        Conditions conditions = Conditions.of(base);
        for (int i = 0; i < changes.length; i += 2) {
            conditions = conditions.with(Setting.parse(changes[i]).orElseThrow(), changes[i + 1]);
        }
        return conditions;
    }

    /** Eight players with pairs that each stand once fill 4 rubbers, twice 8. */
    @ParameterizedTest
    @CsvSource({"4, 1, false", "5, 1, true", "8, 2, false", "9, 2, true", "12, 3, false", "12, 2, true"})
    void warns_when_a_squad_of_eight_cannot_fill_a_sheet(String rubbers, String most, boolean warned) {
        List<ConditionsNote.Kind> kinds = kinds(Preset.CLUB_DAY, "rubbers", rubbers, "max_rubbers_per_player", most);
        assertThat(kinds.contains(ConditionsNote.Kind.SQUAD_TOO_SMALL)).isEqualTo(warned);
    }

    @Test
    void says_how_many_players_a_full_sheet_needs() {
        ConditionsNote note = with(Preset.CLUB_DAY, "rubbers", "9", "max_rubbers_per_player", "2")
                .notes()
                .get(0);
        assertThat(note.data()).isEqualTo(Map.of("needed", "9", "squad", "8"));
    }

    @ParameterizedTest
    @EnumSource
    void lets_a_squad_of_eight_fill_the_sheet_of_every_preset(Preset preset) {
        assertThat(kinds(preset))
                .doesNotContain(
                        ConditionsNote.Kind.SQUAD_TOO_SMALL,
                        ConditionsNote.Kind.NO_GRACE,
                        ConditionsNote.Kind.GRACE_PAST_START,
                        ConditionsNote.Kind.NO_ORDER_TO_FILL,
                        ConditionsNote.Kind.DRAW_LIKE_LOSS,
                        ConditionsNote.Kind.NOT_BLIND);
    }

    /** The contract of the plain files: with an odd number of rubbers the decider is unused, and that is no fault. */
    @Test
    void an_odd_number_of_rubbers_beside_a_decider_is_no_fault() {
        ConditionsReading reading = Conditions.read(Map.of("rubbers", "3", "decider", "any-two"));
        assertThat(reading.faults()).isEmpty();
        assertThat(reading.notes()).extracting(ConditionsNote::kind).contains(ConditionsNote.Kind.DECIDER_AFTER_VOID);
        assertThat(kinds(Preset.CLUB_DAY)).doesNotContain(ConditionsNote.Kind.DECIDER_AFTER_VOID);
    }

    @Test
    void warns_of_a_knockout_tie_that_nothing_decides() {
        assertThat(kinds(Preset.CLUB_DAY, "decider", "none"))
                .contains(ConditionsNote.Kind.LEVEL_KNOCKOUT, ConditionsNote.Kind.DRAW_LIKE_LOSS);
        assertThat(kinds(Preset.CLUB_DAY, "decider", "none", "rubbers", "3"))
                .doesNotContain(ConditionsNote.Kind.LEVEL_KNOCKOUT);
        assertThat(kinds(Preset.CLUB_DAY, "decider", "none", "tie_points", "2/1/0"))
                .contains(ConditionsNote.Kind.LEVEL_KNOCKOUT)
                .doesNotContain(ConditionsNote.Kind.DRAW_LIKE_LOSS);
    }

    @Test
    void warns_of_a_grace_of_no_minutes_or_beyond_the_start() {
        assertThat(kinds(Preset.CLUB_DAY, "grace_minutes", "0")).contains(ConditionsNote.Kind.NO_GRACE);
        assertThat(kinds(Preset.CLUB_DAY, "grace_minutes", "16")).contains(ConditionsNote.Kind.GRACE_PAST_START);
        assertThat(kinds(Preset.CLUB_DAY, "grace_minutes", "15"))
                .doesNotContain(ConditionsNote.Kind.NO_GRACE, ConditionsNote.Kind.GRACE_PAST_START);
        assertThat(kinds(Preset.CLUB_DAY, "grace_minutes", "0", "late_sheet", "forfeit"))
                .doesNotContain(ConditionsNote.Kind.NO_GRACE);
    }

    @Test
    void warns_of_filling_by_an_order_that_nobody_hands_in() {
        assertThat(kinds(Preset.CLUB_DAY, "late_sheet", "strength-order"))
                .contains(ConditionsNote.Kind.NO_ORDER_TO_FILL);
        assertThat(kinds(Preset.STRICT_ORDER, "late_sheet", "strength-order"))
                .doesNotContain(ConditionsNote.Kind.NO_ORDER_TO_FILL);
    }

    @Test
    void warns_of_steps_behind_the_lot() {
        ConditionsNote note =
                with(Preset.STRICT_ORDER, "level_teams", "rubbers-won>lots>points-won>games-won").notes().stream()
                        .filter(each -> each.kind() == ConditionsNote.Kind.STEPS_AFTER_LOTS)
                        .findFirst()
                        .orElseThrow();
        assertThat(note.data()).containsEntry("steps", "points-won>games-won");
        assertThat(kinds(Preset.STRICT_ORDER, "level_teams", "rubbers-won>lots"))
                .doesNotContain(ConditionsNote.Kind.STEPS_AFTER_LOTS);
    }

    @Test
    void warns_of_an_ending_that_changes_nothing() {
        assertThat(kinds(Preset.CLUB_DAY, "scoring", "side-out-11-serve-last"))
                .contains(ConditionsNote.Kind.IDLE_ENDING);
        assertThat(kinds(Preset.CLUB_DAY, "scoring", "rally-11-serve-last"))
                .doesNotContain(ConditionsNote.Kind.IDLE_ENDING);
    }

    @Test
    void warns_of_an_exchange_that_is_not_blind() {
        assertThat(kinds(Preset.CLUB_DAY, "exchange", "home-first")).contains(ConditionsNote.Kind.NOT_BLIND);
    }

    @Test
    void names_each_setting_without_effect_beside_the_one_that_makes_it_so() {
        Conditions conditions =
                with(Preset.STRICT_ORDER, "order_of_strength", "none", "decider", "none", "grace_minutes", "3");
        assertThat(conditions.notes().stream()
                        .filter(note -> note.kind() == ConditionsNote.Kind.IDLE)
                        .map(ConditionsNote::settings))
                .containsExactlyInAnyOrder(
                        List.of(Setting.GRACE_MINUTES, Setting.LATE_SHEET),
                        List.of(Setting.CHALLENGE_TO_ORDER, Setting.ORDER_OF_STRENGTH),
                        List.of(Setting.WRONG_ORDER_LATE, Setting.ORDER_OF_STRENGTH),
                        List.of(Setting.DECIDER_SCORING, Setting.DECIDER),
                        List.of(Setting.DECIDER_MINUTES, Setting.DECIDER));
    }

    @ParameterizedTest
    @EnumSource
    void calls_nothing_without_effect_that_a_preset_leaves_so(Preset preset) {
        assertThat(Conditions.of(preset).notes()).noneMatch(note -> note.kind() == ConditionsNote.Kind.IDLE);
    }
}
