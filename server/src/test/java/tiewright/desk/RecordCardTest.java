package tiewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tiewright.conditions.Setting;
import tiewright.event.Card;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.ExchangeId;
import tiewright.event.How;
import tiewright.event.Pair;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.Side;
import tiewright.event.TieId;

/**
 * A card is entered.
 *
 * <p>Scores to 11, win by two: USA Pickleball official rulebook, scoring (games to 11, win by 2). The score of a
 * retirement made up for the other side: the same rulebook, 2024, 12.F. Who may enter what, and the rest: common
 * practice, no source.
 */
class RecordCardTest {
    private final Days day = Days.oneTie().opened("A1").at("10:20");

    static RecordCard card(String rubber, String games, How how) {
        return new RecordCard(TieId.of("A1"), RubberNo.parse(rubber).orElseThrow(), Days.games(games), how);
    }

    static RecordCard card(String rubber, String games) {
        return card(rubber, games, How.PLAYED);
    }

    private Card.Standing standing(String rubber) {
        return day.tie("A1").card(RubberNo.parse(rubber).orElseThrow()).standing();
    }

    private String counted(String rubber) {
        RubberNo no = RubberNo.parse(rubber).orElseThrow();
        return day.tie("A1")
                .card(no)
                .score(no)
                .map(score -> score.games() + " " + score.how().code())
                .orElse("nothing");
    }

    @ParameterizedTest
    @ValueSource(strings = {"11-9", "11-0", "12-10", "15-13", "21-19", "9-11", "0-11", "10-12"})
    void takes_a_score_that_ends_a_game_to_eleven(String score) {
        day.does(card("2", score));
        assertThat(counted("2")).isEqualTo("[" + score + "] played");
        assertThat(standing("2")).isEqualTo(Card.Standing.RECORDED);
    }

    @ParameterizedTest
    @ValueSource(strings = {"11-10", "12-11", "13-10", "10-8", "11-11", "10-11", "8-10", "0-0", "99-0"})
    void refuses_a_score_that_ends_no_game_to_eleven(String score) {
        assertThat(Why.not(day, card("2", score))).contains("desk.score");
    }

    @Test
    void an_unfinished_game_needs_the_mark_of_a_retirement() {
        assertThat(Why.not(day, card("1", "8-6"))).containsExactly("desk.score");
        assertThat(Why.not(day, card("1", "8-6", How.RETIRED_HOME))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "keep-points, 8-6, RETIRED_HOME, 8-11",
        "keep-points, 10-5, RETIRED_HOME, 10-12",
        "keep-points, 8-6, RETIRED_AWAY, 11-6",
        "keep-points, 8-11, RETIRED_HOME, 8-11",
        "zero, 8-6, RETIRED_HOME, 0-11",
        "zero, 0-11, RETIRED_HOME, 0-11",
        "as-it-stood, 8-6, RETIRED_HOME, 8-6"
    })
    void a_retired_rubber_counts_as_the_conditions_say(String setting, String games, How how, String counted) {
        day.with(Setting.RETIREMENT_SCORE, setting).does(card("1", games, how));
        assertThat(counted("1")).isEqualTo("[" + counted + "] " + how.code());
        assertThat(day.event()
                        .progress(day.tie("A1"))
                        .won(how.missing().orElseThrow().other()))
                .isEqualTo(1);
    }

    @Test
    void what_the_card_said_of_a_retired_rubber_is_kept_beside_what_counts() {
        day.does(card("1", "8-6", How.RETIRED_HOME))
                .does(card("2", "8-11", How.RETIRED_HOME))
                .does(card("3", "8-11"));
        assertThat(day.tie("A1").card(RubberNo.of(1)).entries().get(0).asItStood())
                .isEqualTo(Days.games("8-6"));
        assertThat(day.tie("A1").card(RubberNo.of(2)).entries().get(0).asItStood())
                .isEmpty();
        assertThat(day.tie("A1").card(RubberNo.of(3)).entries().get(0).asItStood())
                .isEmpty();
        day.does(new CorrectCard(
                TieId.of("A1"), RubberNo.of(1), Days.games("9-6"), How.RETIRED_HOME, "the card says 9"));
        assertThat(day.tie("A1").card(RubberNo.of(1)).inForce())
                .singleElement()
                .satisfies(entry -> assertThat(entry.asItStood()).isEqualTo(Days.games("9-6")));
    }

    @Test
    void nobody_retires_from_a_game_that_is_won() {
        assertThat(Why.not(day, card("1", "11-8", How.RETIRED_HOME))).containsExactly("desk.score");
        assertThat(Why.not(day.with(Setting.RETIREMENT_SCORE, "zero"), card("1", "8-11", How.RETIRED_HOME)))
                .containsExactly("desk.retired-to-nil");
        assertThat(Why.not(day.with(Setting.RETIREMENT_SCORE, "as-it-stood"), card("1", "8-11", How.RETIRED_HOME)))
                .containsExactly("desk.retired-as-it-stood");
    }

    @Test
    void every_game_of_a_best_of_three_is_checked() {
        day.with(Setting.BEST_OF, "3");
        assertThat(Why.not(day, card("1", "11-9 9-11"))).containsExactly("desk.score-of-game");
        assertThat(Why.not(day, card("1", "11-9 11-9 11-9"))).containsExactly("desk.score-of-game");
        assertThat(Why.not(day, card("1", "11-9 11-10 8-8"))).hasSizeGreaterThan(1);
        assertThat(Why.not(day, card("1", "11-9 9-11 13-11"))).isEmpty();
        assertThat(Why.not(day, card("1", "11-0 ".repeat(10).strip()))).containsExactly("desk.too-many-games");
    }

    @Test
    void follows_the_format_of_the_conditions() {
        day.with(Setting.SCORING, "rally-21-cap-30");
        assertThat(Why.not(day, card("1", "30-29"))).isEmpty();
        assertThat(Why.not(day, card("1", "11-9"))).containsExactly("desk.score");
        assertThat(Why.not(day, card("1", "31-29"))).containsExactly("desk.score");
    }

    @Test
    void a_walkover_takes_its_score_from_the_conditions() {
        day.does(card("4", "", How.WALKOVER_HOME));
        assertThat(counted("4")).isEqualTo("[0-11] walkover-home");
        assertThat(Why.not(day, card("3", "3-11", How.WALKOVER_HOME))).containsExactly("desk.walkover-score");
        day.with(Setting.BEST_OF, "3").does(card("3", "", How.WALKOVER_AWAY));
        assertThat(counted("3")).isEqualTo("[11-0, 11-0] walkover-away");
    }

    @Test
    void six_of_eight_lose_the_bottom_rubber_and_nothing_else() {
        Sheet six = Sheet.of(List.of(
                Optional.of(Pair.of("N1", "N2")),
                Optional.of(Pair.of("N3", "N4")),
                Optional.of(Pair.of("N5", "N6")),
                Optional.empty()));
        Days short_ = Days.oneTie().opened(ExchangeId.sheets(TieId.of("A1")), six, Days.straight("S", 4));
        assertThat(Why.not(short_, card("4", "11-9"))).containsExactly("desk.side-empty");
        assertThat(Why.not(short_, card("4", "", How.WALKOVER_AWAY))).containsExactly("desk.side-empty");
        assertThat(Why.not(short_, card("3", "11-9"))).isEmpty();
        short_.does(card("4", "", How.WALKOVER_HOME));
        assertThat(short_.event().progress(short_.tie("A1")).won(Side.AWAY)).isEqualTo(1);
    }

    @Test
    void a_void_rubber_has_no_points_and_comes_from_an_official() {
        assertThat(Why.not(day, card("4", "0-0", How.VOID))).containsExactly("desk.void-score");
        assertThat(Why.not(day, card("4", "", How.VOID))).isEmpty();
        assertThat(Why.not(day.by(Days.volunteer("V")), card("4", "", How.VOID)))
                .containsExactly("desk.void-by-officials");
    }

    @Test
    void only_rubbers_of_the_tie_have_cards() {
        assertThat(Why.not(day, card("4", "11-0"))).isEmpty();
        assertThat(Why.not(day, card("5", "11-0"))).containsExactly("desk.no-such-rubber");
        assertThat(Why.not(day, new RecordCard(TieId.of("Z9"), RubberNo.of(1), Days.games("11-0"), How.PLAYED)))
                .containsExactly("desk.no-such-tie");
    }

    @Test
    void sheets_are_opened_before_a_card_but_for_a_walkover() {
        Days closed = Days.oneTie();
        assertThat(Why.not(closed, card("1", "11-0"))).containsExactly("desk.sheets-not-opened");
        assertThat(Why.not(closed, card("1", "", How.WALKOVER_AWAY))).isEmpty();
    }

    @Test
    void a_tie_waits_for_its_clubs() {
        Days later = Days.aDay().clubs("N", "S").knockoutTie("F", 2, "winner-SF1", "N");
        assertThat(Why.not(later, new RecordCard(TieId.of("F"), RubberNo.of(1), List.of(), How.WALKOVER_HOME)))
                .containsExactly("desk.clubs-not-known");
    }

    @Test
    void volunteers_and_the_two_captains_enter_cards_and_nobody_else() {
        assertThat(Why.not(day.by(Days.volunteer("court 3")), card("1", "11-0")))
                .isEmpty();
        assertThat(Why.not(day.by(Days.captain("N")), card("1", "0-11"))).isEmpty();
        assertThat(Why.not(day.by(Days.captain("S")), card("1", "11-0"))).isEmpty();
        assertThat(Why.not(day.by(Days.captain("X")), card("1", "11-0"))).containsExactly("desk.not-your-card");
        assertThat(Why.not(day.by(Days.player("N")), card("1", "11-0"))).containsExactly("desk.not-your-card");
    }

    @Test
    void a_captain_gives_a_walkover_and_takes_none() {
        day.by(Days.captain("N"));
        assertThat(Why.not(day, card("1", "", How.WALKOVER_HOME))).isEmpty();
        assertThat(Why.not(day, card("1", "", How.WALKOVER_AWAY))).containsExactly("desk.walkover-by-desk");
    }

    @Test
    void the_decider_comes_when_the_tie_is_level() {
        assertThat(Why.not(day, card("D", "11-0"))).containsExactly("desk.decider-not-yet");
        day.cards("A1", "11-0", "11-0", "0-11", "0-11");
        assertThat(Why.not(day, card("D", "11-0"))).containsExactly("desk.decider-not-opened");
        day.opened(
                ExchangeId.decider(TieId.of("A1")),
                Sheet.decider(Pair.of("N1", "N2")),
                Sheet.decider(Pair.of("S1", "S2")));
        day.does(card("D", "11-9"));
        assertThat(day.event().progress(day.tie("A1")).winner()).contains(Side.HOME);
    }

    @Test
    void there_is_no_decider_when_one_club_leads_or_a_rubber_is_held() {
        day.cards("A1", "11-0", "11-0", "11-0", "0-11");
        assertThat(Why.not(day, card("D", "11-0"))).containsExactly("desk.decider-not-needed");
        day.by(Days.volunteer("V")).card("A1", "3", "0-11");
        assertThat(Why.not(day, card("D", "11-0"))).containsExactly("desk.decider-waits-for-held");
        assertThat(Why.not(Days.oneTie().with(Setting.DECIDER, "none").opened("A1"), card("D", "11-0")))
                .containsExactly("desk.no-decider");
    }

    @Test
    void a_knockout_tie_stops_when_it_is_decided_and_a_pool_tie_goes_on() {
        Days knockout =
                Days.aDay().clubs("N", "S").knockoutTie("A1", 1, "N", "S").opened("A1");
        knockout.cards("A1", "11-0", "11-0");
        assertThat(Why.not(knockout, card("4", "11-0"))).isEmpty();
        knockout.card("A1", "3", "11-0");
        assertThat(Why.not(knockout, card("4", "11-0"))).containsExactly("desk.rubber-not-needed");
        assertThat(Why.not(knockout, card("3", "0-11"))).isEmpty();
        assertThat(Why.not(day.cards("A1", "11-0", "11-0", "11-0"), card("4", "11-0")))
                .isEmpty();
    }

    @Test
    void says_who_has_won_by_the_numbers_before_they_count() {
        assertThat(Echo.of(day.event(), TieId.of("A1"), RubberNo.of(1), Days.games("7-11"), How.PLAYED))
                .map(Echo::club)
                .contains(Optional.of(ClubId.of("S")));
        assertThat(Echo.of(day.event(), TieId.of("A1"), RubberNo.of(1), Days.games("8-6"), How.RETIRED_HOME))
                .map(echo -> echo.games() + " " + echo.club().orElseThrow())
                .contains("[8-11] S");
        assertThat(Echo.of(day.event(), TieId.of("A1"), RubberNo.of(1), List.of(), How.VOID))
                .map(Echo::winner)
                .contains(Optional.empty());
        assertThat(Echo.of(day.event(), TieId.of("A1"), RubberNo.of(1), Days.games("10-8"), How.PLAYED))
                .isEmpty();
    }
}
