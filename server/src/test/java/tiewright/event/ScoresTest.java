package tiewright.event;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Who won a rubber and a tie, and what a note may say in numbers. */
class ScoresTest {
    private static RubberScore rubber(String games, How how) {
        return new RubberScore(RubberNo.of(1), Days.games(games), how);
    }

    private static TieScore tie(boolean finished, String... rubbers) {
        return new TieScore(
                TieId.of("A1"),
                ClubId.of("N"),
                ClubId.of("S"),
                Arrays.stream(rubbers).map(games -> rubber(games, How.PLAYED)).toList(),
                finished);
    }

    @ParameterizedTest
    @CsvSource({
        "11-5, PLAYED, HOME, 1, 0, 11, 5",
        "5-11, PLAYED, AWAY, 0, 1, 5, 11",
        "11-5 5-11 11-9, PLAYED, HOME, 2, 1, 27, 25",
        "11-5 5-11, PLAYED, , 1, 1, 16, 16",
        "7-7, PLAYED, , 0, 0, 7, 7",
        "11-5, RETIRED_HOME, AWAY, 1, 0, 11, 5",
        "5-11, RETIRED_AWAY, HOME, 0, 1, 5, 11",
        "0-11, WALKOVER_HOME, AWAY, 0, 1, 0, 11",
        "11-0, WALKOVER_AWAY, HOME, 1, 0, 11, 0",
        "11-0, VOID, , 1, 0, 11, 0"
    })
    void a_rubber_goes_to_the_side_that_goes_on_or_has_more_games(
            String games, How how, Side winner, int home, int away, int pointsHome, int pointsAway) {
        RubberScore score = rubber(games, how);
        assertThat(score.winner()).isEqualTo(Optional.ofNullable(winner));
        assertThat(score.gamesWon(Side.HOME)).isEqualTo(home);
        assertThat(score.gamesWon(Side.AWAY)).isEqualTo(away);
        assertThat(score.points(Side.HOME)).isEqualTo(pointsHome);
        assertThat(score.points(Side.AWAY)).isEqualTo(pointsAway);
    }

    @Test
    void a_tie_goes_to_the_side_with_more_rubbers_once_it_is_finished() {
        assertThat(tie(true, "11-5", "11-5", "5-11").winner()).contains(Side.HOME);
        assertThat(tie(true, "5-11").winner()).contains(Side.AWAY);
        assertThat(tie(true, "11-5", "5-11").winner()).isEmpty();
        assertThat(tie(false, "11-5", "11-5").winner()).isEmpty();
        assertThat(tie(true, "11-5", "11-5", "5-11").rubbersWon(Side.HOME)).isEqualTo(2);
        assertThat(tie(true, "11-5", "11-5", "5-11").rubbersWon(Side.AWAY)).isEqualTo(1);
        assertThat(tie(true).club(Side.HOME)).isEqualTo(ClubId.of("N"));
        assertThat(tie(true).club(Side.AWAY)).isEqualTo(ClubId.of("S"));
        assertThat(List.of("N", "S", "E").stream()
                        .map(ClubId::of)
                        .filter(tie(true)::has)
                        .map(ClubId::code))
                .containsExactly("N", "S");
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 98, 99})
    void a_promise_is_none_to_ninety_nine_rubbers(int rubbers) {
        assertThat(new PrivateNote.RubbersPromised(PlayerId.of("N1"), rubbers).rubbers())
                .isEqualTo(rubbers);
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 100})
    void no_other_number_is_promised(int rubbers) {
        assertThatThrownBy(() -> new PrivateNote.RubbersPromised(PlayerId.of("N1"), rubbers))
                .hasMessage("a promise is 0 to 99 rubbers, not " + rubbers);
    }

    @Test
    void games_count_half_after_a_day_or_more() {
        assertThat(new PrivateNote.HalfLifeChosen(ClubId.of("N"), java.util.OptionalInt.of(1)).ends())
                .isFalse();
        assertThatThrownBy(() -> new PrivateNote.HalfLifeChosen(ClubId.of("N"), java.util.OptionalInt.of(0)))
                .hasMessage("a half-life is a day or more, not 0");
    }

    @ParameterizedTest
    @CsvSource({"0, -1, 0", "1, 1, 0.5", "0.5, 0, 0"})
    void a_forecast_is_a_chance(double chance, int byRating, double givenAway) {
        assertThat(forecast(chance, byRating, givenAway).ends()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"-0.01, 0, 0", "1.01, 0, 0", "NaN, 0, 0", "0.5, 2, 0", "0.5, -2, 0", "0.5, 0, -0.01", "0.5, 0, NaN"})
    void nothing_else_is_forecast(double chance, int byRating, double givenAway) {
        assertThatThrownBy(() -> forecast(chance, byRating, givenAway))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no forecast is " + chance + ", " + byRating + ", " + givenAway);
    }

    private static PrivateNote.Forecast forecast(double chance, int byRating, double givenAway) {
        return new PrivateNote.Forecast(TieId.of("A1"), ClubId.of("N"), Optional.empty(), chance, byRating, givenAway);
    }

    @Test
    void a_slot_has_a_club_or_a_source() {
        assertThatThrownBy(() -> new Slot(Optional.empty(), Optional.empty()))
                .hasMessage("a slot needs a club or a source");
    }
}
