package tiewright.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Conditions;
import tiewright.conditions.Preset;
import tiewright.conditions.RubberKind;
import tiewright.conditions.Setting;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.OfficialFact;
import tiewright.event.SetUpFact;

class PublishConditionsTest {
    private static final Conditions CLUB_DAY = Conditions.of(Preset.CLUB_DAY);
    private static final Conditions MORE_REST = CLUB_DAY.with(Setting.REST_MINUTES, "20");
    private static final Optional<SignedReason> RULING =
            Optional.of(new SignedReason("The hall is hotter than expected.", "Ida Brandt"));

    private static PublishConditions plain(Conditions conditions) {
        return new PublishConditions(conditions, Optional.empty());
    }

    @Test
    void each_change_is_the_next_version_and_no_change_is_refused() {
        Days day = Days.empty().by(Days.organiser()).does(plain(CLUB_DAY));
        assertThat(day.event().conditionsVersion()).isEqualTo(1);
        assertThat(Said.codes(day, plain(CLUB_DAY))).containsExactly("setup.conditions-unchanged");
        day.does(plain(MORE_REST));
        assertThat(day.event().conditionsVersion()).isEqualTo(2);
        assertThat(day.event().rulings()).isEmpty();
    }

    @Test
    void after_the_first_sealed_sheet_only_a_signed_ruling_changes_them() {
        Days day = Days.oneTie().opened("A1").by(Days.organiser());
        assertThat(Said.codes(day, plain(MORE_REST))).containsExactly("setup.conditions-frozen");
        assertThat(Said.codes(day, new PublishConditions(MORE_REST, Optional.of(new SignedReason(" ", "")))))
                .containsExactly("setup.missing.reason", "setup.missing.by");
        day.does(new PublishConditions(MORE_REST, RULING));
        assertThat(day.event().conditionsVersion()).isEqualTo(2);
        assertThat(day.event().conditions().restMinutes()).isEqualTo(20);
        OfficialFact.RulingStated ruling = day.event().rulings().get(0);
        assertThat(ruling.by()).isEqualTo("Ida Brandt");
        OfficialFact.NoticeStated notice = day.event().notices().get(0).notice();
        assertThat(notice.before().map(Days::said)).contains("rest minutes: 10");
        assertThat(notice.after().map(Days::said)).contains("rest minutes: 20");
        assertThat(day.facts())
                .anySatisfy(recorded -> assertThat(recorded.fact())
                        .isEqualTo(new SetUpFact.ConditionsPublished(2, MORE_REST, OptionalInt.of(ruling.number()))));
    }

    @Test
    void the_number_of_rubbers_stays_while_sheets_or_cards_hang_on_it() {
        Days day = Days.oneTie().opened("A1").by(Days.organiser());
        assertThat(Said.codes(day, new PublishConditions(CLUB_DAY.with(Setting.RUBBERS, "3"), RULING)))
                .containsExactly("setup.rubbers-in-play");
    }

    @Test
    void play_cannot_stop_for_heat_before_caution_begins() {
        Conditions hot = CLUB_DAY.with(Setting.HEAT_STOP_WBGT, "27");
        assertThat(Said.codes(Days.empty().by(Days.organiser()), plain(hot)))
                .containsExactly("setup.heat-stop-below-caution");
    }

    @Test
    void only_the_organiser_publishes() {
        assertThat(Said.codes(Days.empty().by(Days.referee()), plain(CLUB_DAY)))
                .containsExactly("setup.organiser-only");
    }

    @Test
    void a_captain_ticks_the_version_in_force_once() {
        Days day = Days.oneTie().by(Days.captain("N"));
        TickConditionsRead tick = new TickConditionsRead(ClubId.of("N"), 1);
        assertThat(Said.codes(day, new TickConditionsRead(ClubId.of("N"), 2)))
                .containsExactly("setup.not-current-version");
        day.does(tick);
        assertThat(day.event().conditionsRead()).containsEntry(ClubId.of("N"), 1);
        assertThat(Said.codes(day, tick)).containsExactly("setup.read-already");
        assertThat(Said.codes(day, new TickConditionsRead(ClubId.of("S"), 1))).containsExactly("setup.captain-only");
        assertThat(Said.codes(Days.empty().by(Days.captain("N")), tick))
                .containsExactly("setup.no-such-club", "setup.no-conditions");
        day.conditions(MORE_REST).does(new TickConditionsRead(ClubId.of("N"), 2));
    }

    @Test
    void takes_a_kind_for_each_rubber_and_no_other_number_of_them() {
        Days day = Days.empty().by(Days.organiser());
        Conditions kinds = CLUB_DAY.with(Setting.RUBBER_KINDS, "women;men;mixed");
        assertThat(Said.codes(day, plain(kinds))).containsExactly("setup.kinds-for-other-rubbers");
        day.does(plain(kinds.with(Setting.RUBBERS, "3")));
        assertThat(day.event().conditions().tieRubbers().kinds().of(3)).isEqualTo(RubberKind.MIXED);
        assertThat(Said.codes(day, plain(CLUB_DAY.with(Setting.RUBBER_WEIGHTS, "2/1"))))
                .containsExactly("setup.weights-for-other-rubbers");
    }
}
