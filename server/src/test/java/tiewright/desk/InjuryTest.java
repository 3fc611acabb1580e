package tiewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.conditions.Setting;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.ExchangeId;
import tiewright.event.How;
import tiewright.event.Pair;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.TieId;
import tiewright.sheet.ReplacePair;

/**
 * A fall in rubber 3 at 8-6, tie 1-1, 11:02. Fifteen minutes, then the referee: USA Pickleball rulebook 2025, 10.B; points
 * kept and the other side lifted: 2024, 12.F. The warning two minutes before the end is common practice, no source.
 */
class InjuryTest {
    private static final TieId A1 = TieId.of("A1");
    private static final RubberNo THREE = RubberNo.of(3);
    private final Days day = Days.oneTie()
            .opened("A1")
            .cards("A1", "11-4", "4-11")
            .at("10:50")
            .does(new CallToCourt(A1, THREE, "1"))
            .at("11:02");

    private MedicalClock clock() {
        return MedicalClock.of(day.tie("A1"), day.event().conditions()).get(0);
    }

    @Test
    void one_press_stops_the_rubber_and_the_clock_runs_to_its_end() {
        day.by(Days.captain("N")).does(new StopPlay(A1, THREE));
        assertThat(day.tie("A1").stopped()).containsEntry(THREE, Days.moment("11:02"));
        assertThat(clock().court()).contains("1");
        assertThat(clock().warnsAt()).isEqualTo(Days.moment("11:15"));
        assertThat(clock().endsAt()).isEqualTo(Days.moment("11:17"));
    }

    @ParameterizedTest
    @CsvSource({
        "11:02, RUNS, PLAY_STOPPED",
        "11:14, RUNS, PLAY_STOPPED",
        "11:15, WARNS, MEDICAL_SOON",
        "11:16, WARNS, MEDICAL_SOON",
        "11:17, OVER, MEDICAL_OVER",
        "12:30, OVER, MEDICAL_OVER"
    })
    void the_desk_is_told_and_nothing_is_lost_by_the_clock(String at, MedicalClock.State state, DoNext.Kind kind) {
        day.does(new StopPlay(A1, THREE));
        int facts = day.facts().size();
        day.at(at);
        assertThat(clock().state(day.now())).isEqualTo(state);
        assertThat(DoNext.of(day.event(), day.now()).get(0)).satisfies(item -> {
            assertThat(item.kind()).isEqualTo(kind);
            assertThat(item.at()).contains(Days.moment("11:17"));
        });
        assertThat(DoNext.of(day.event(), day.now()))
                .extracting(DoNext.Item::kind)
                .doesNotContain(DoNext.Kind.CARD_MISSING);
        assertThat(day.tie("A1").card(THREE).entries()).isEmpty();
        assertThat(day.facts()).hasSize(facts);
    }

    @ParameterizedTest
    @CsvSource({"keep-points, 8-11", "zero, 0-11", "as-it-stood, 8-6"})
    void a_retirement_counts_as_configured_and_ends_the_stop(String setting, String counts) {
        Days other = Days.aDay()
                .with(Setting.RETIREMENT_SCORE, setting)
                .clubs("N", "S")
                .poolTie("A1", "A", 1, "N", "S")
                .opened("A1")
                .cards("A1", "11-4", "4-11")
                .does(new StopPlay(A1, THREE))
                .does(new RecordCard(A1, THREE, Days.games("8-6"), How.RETIRED_HOME));
        assertThat(other.tie("A1").card(THREE).score(THREE)).hasValueSatisfying(score -> {
            assertThat(score.games()).isEqualTo(Days.games(counts));
            assertThat(score.winner()).contains(Side.AWAY);
        });
        assertThat(other.event().progress(other.tie("A1")).won(Side.AWAY)).isEqualTo(2);
        assertThat(other.tie("A1").stopped()).isEmpty();
    }

    @Test
    void a_pair_is_changed_in_a_rubber_that_began_only_where_substitutes_are_free() {
        ReplacePair change = new ReplacePair(
                ExchangeId.sheets(A1), ClubId.of("N"), THREE, Optional.of(Pair.of("N1", "N6")), "injury", "R. Referee");
        day.does(new StopPlay(A1, THREE)).by(Days.referee());
        assertThat(day.codes(change)).contains("sheet.rubber-began");
        Days free = Days.aDay()
                .with(Setting.CHANGES_AFTER_OPENING, "free-substitution")
                .with(Setting.MAX_RUBBERS_PER_PLAYER, "2")
                .clubs("N", "S")
                .poolTie("A1", "A", 1, "N", "S")
                .opened("A1")
                .does(new StopPlay(A1, THREE));
        free.by(Days.referee()).does(change);
        assertThat(free.tie("A1").opened().get(THREE).home()).contains(Pair.of("N1", "N6"));
    }

    @Test
    void play_goes_on_when_an_official_says_so() {
        day.does(new StopPlay(A1, THREE)).does(new ResumePlay(A1, THREE));
        assertThat(day.tie("A1").stopped()).isEmpty();
        assertThat(Why.not(day, new ResumePlay(A1, THREE))).containsExactly("desk.not-stopped");
        day.does(new StopPlay(A1, THREE));
        assertThat(Why.not(day.by(Days.captain("N")), new ResumePlay(A1, THREE)))
                .containsExactly("desk.officials-only");
    }

    @Test
    void somebody_with_the_cards_stops_a_court_too_and_only_an_official_lets_play_go_on() {
        day.by(Days.volunteer("V")).does(new StopPlay(A1, THREE));
        assertThat(day.tie("A1").stopped()).containsKey(THREE);
        assertThat(Why.not(day.by(Days.volunteer("V")), new ResumePlay(A1, THREE)))
                .containsExactly("desk.officials-only");
    }

    @Test
    void what_cannot_be_stopped_says_why() {
        assertThat(Why.not(day, new StopPlay(A1, RubberNo.of(1)))).containsExactly("desk.rubber-has-card");
        assertThat(Why.not(day, new StopPlay(A1, RubberNo.DECIDER))).containsExactly("desk.nothing-to-stop");
        assertThat(Why.not(day, new StopPlay(TieId.of("Z"), THREE))).containsExactly("desk.no-such-tie");
        assertThat(Why.not(day.by(Days.captain("E")), new StopPlay(A1, THREE))).containsExactly("desk.stop-by-court");
        day.by(Days.desk()).does(new StopPlay(A1, THREE));
        assertThat(Why.not(day, new StopPlay(A1, THREE))).containsExactly("desk.stopped-already");
    }

    @Test
    void conditions_without_medical_time_ask_the_referee_at_once() {
        day.with(Setting.MEDICAL_MINUTES, "0").does(new StopPlay(A1, THREE));
        assertThat(clock().state(day.now())).isEqualTo(MedicalClock.State.OVER);
    }
}
