package tiewright.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tiewright.scoring.ScoreFault.Kind;

class LegalityTest {
    private static final Format ELEVEN = Format.sideOut(11);
    private static final Format BADMINTON = Format.parse("rally-21-cap-30").orElseThrow();

    /** USA Pickleball rulebook 2025, 12.B: to 11, win by two, no cap. */
    @ParameterizedTest
    @ValueSource(strings = {"11-9", "11-0", "12-10", "15-13", "21-19", "0-11", "13-15"})
    void accepts_finished_games_to_11(String score) {
        assertThat(Legality.game(ELEVEN, read(score))).isEmpty();
    }

    /** USA Pickleball rulebook 2025, 12.B. */
    @ParameterizedTest
    @CsvSource({
        "11-10, NOT_TWO_AHEAD, 12",
        "12-11, NOT_TWO_AHEAD, 13",
        "13-10, WENT_ON_TOO_LONG, 12",
        "10-8, NOBODY_REACHED_TARGET, 11",
        "11-11, LEVEL, 11",
        "0-0, LEVEL, 11",
        "10-10, LEVEL, 11",
        "9-12, WENT_ON_TOO_LONG, 11",
        "111-9, WENT_ON_TOO_LONG, 11"
    })
    void refuses_what_cannot_end_a_game_to_11_and_says_why(String score, Kind kind, int number) {
        assertThat(Legality.game(ELEVEN, read(score))).contains(new ScoreFault(kind, 1, read(score), number));
    }

    /** The formats of USA Pickleball rulebook 2025, 12.B and 12.B.1.a: 11, 15, 21, and 7 in bad weather, all by two. */
    @ParameterizedTest
    @ValueSource(ints = {7, 11, 15, 21})
    void a_published_target_is_won_by_two(int target) {
        for (Format format : List.of(Format.sideOut(target), Format.rally(target))) {
            assertThat(Legality.game(format, new Score(target, target - 2))).isEmpty();
            assertThat(Legality.game(format, new Score(target, target - 1))).isPresent();
            assertThat(Legality.game(format, new Score(target + 1, target - 1))).isEmpty();
        }
    }

    /** BWF Laws of Badminton 7.2, 7.4, 7.5. */
    @ParameterizedTest
    @ValueSource(strings = {"21-0", "21-19", "22-20", "23-21", "29-27", "30-28", "30-29"})
    void accepts_badminton_games(String score) {
        assertThat(Legality.game(BADMINTON, read(score))).isEmpty();
    }

    /** BWF Laws of Badminton 7.2, 7.4, 7.5. */
    @ParameterizedTest
    @CsvSource({
        "21-20, NOT_TWO_AHEAD, 22",
        "22-19, WENT_ON_TOO_LONG, 21",
        "30-27, WENT_ON_TOO_LONG, 29",
        "31-29, OVER_CAP, 30",
        "20-18, NOBODY_REACHED_TARGET, 21",
        "30-30, WENT_ON_TOO_LONG, 30",
        "29-29, LEVEL, 21"
    })
    void refuses_other_badminton_games(String score, Kind kind, int number) {
        assertThat(Legality.game(BADMINTON, read(score))).contains(new ScoreFault(kind, 1, read(score), number));
    }

    /** BWF Laws of Badminton 7.2, 7.4, 7.5: 20 + 9 + 1 results for each winner. */
    @Test
    void badminton_has_thirty_results() {
        long legal = IntStream.rangeClosed(0, 40)
                .boxed()
                .flatMap(winner -> IntStream.range(0, winner).mapToObj(loser -> new Score(winner, loser)))
                .filter(score -> Legality.game(BADMINTON, score).isEmpty())
                .count();
        assertThat(legal).isEqualTo(30);
    }

    /** ITTF Laws of Table Tennis 2.11.1. */
    @ParameterizedTest
    @CsvSource({"11-9, true", "12-10, true", "15-13, true", "11-10, false", "12-9, false", "13-12, false"})
    void table_tennis_games(String score, boolean legal) {
        assertThat(Legality.game(Format.rally(11), read(score)).isEmpty()).isEqualTo(legal);
    }

    /** ITTF Laws of Table Tennis 2.12.1: a match is the best of any odd number of games. */
    @Test
    void a_rubber_is_the_best_of_an_odd_number() {
        Score won = new Score(11, 4);
        for (int bestOf : new int[] {1, 3, 5, 7, 9}) {
            List<Score> games = Collections.nCopies(bestOf / 2 + 1, won);
            assertThat(Legality.rubber(Format.rally(11), bestOf, games)).isEmpty();
        }
        assertThatThrownBy(() -> Legality.rubber(Format.rally(11), 2, List.of(won)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Legality.rubber(Format.rally(11), 0, List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void by_one_ends_at_the_target() {
        Format format = Format.parse("rally-11-by-1").orElseThrow();
        assertThat(Legality.game(format, new Score(11, 10))).isEmpty();
        assertThat(kinds(Legality.game(format, new Score(12, 10)).stream().toList()))
                .containsExactly(Kind.WENT_ON_TOO_LONG);
        assertThat(kinds(Legality.game(format, new Score(11, 11)).stream().toList()))
                .containsExactly(Kind.WENT_ON_TOO_LONG);
    }

    @Test
    void huge_numbers_are_a_fault_not_a_crash() {
        int most = Integer.MAX_VALUE;
        assertThat(Legality.game(ELEVEN, new Score(most, 3))).isPresent();
        assertThat(Legality.game(ELEVEN, new Score(most, most))).isPresent();
        assertThat(Legality.game(BADMINTON, new Score(most, most - 1))).isPresent();
    }

    @Test
    void an_unfinished_score_needs_a_retirement() {
        assertThat(Legality.retired(ELEVEN, new Score(10, 5))).isEmpty();
        assertThat(Legality.retired(ELEVEN, new Score(11, 10))).isEmpty();
        assertThat(Legality.retired(ELEVEN, new Score(14, 14))).isEmpty();
        assertThat(Legality.retired(ELEVEN, new Score(11, 8)))
                .contains(new ScoreFault(Kind.ALREADY_WON, 1, new Score(11, 8), 11));
        assertThat(Legality.retired(ELEVEN, new Score(14, 11)).map(ScoreFault::kind))
                .contains(Kind.WENT_ON_TOO_LONG);
        assertThat(Legality.retired(BADMINTON, new Score(30, 29)).map(ScoreFault::kind))
                .contains(Kind.ALREADY_WON);
        assertThat(Legality.retired(BADMINTON, new Score(31, 29)).map(ScoreFault::kind))
                .contains(Kind.OVER_CAP);
    }

    @Test
    void a_rubber_stops_when_it_is_decided() {
        List<Score> games = List.of(new Score(11, 4), new Score(11, 9), new Score(3, 11));
        assertThat(Legality.rubber(ELEVEN, 3, games))
                .containsExactly(new ScoreFault(Kind.GAME_AFTER_DECIDED, 3, new Score(3, 11), 2));
        assertThat(Legality.rubber(ELEVEN, 5, games))
                .containsExactly(new ScoreFault(Kind.TOO_FEW_GAMES, 4, new Score(0, 0), 1));
        assertThat(Legality.rubber(ELEVEN, 3, games.subList(0, 2))).isEmpty();
        assertThat(Legality.rubber(ELEVEN, 3, List.of(new Score(11, 4), new Score(3, 11), new Score(13, 11))))
                .isEmpty();
    }

    @Test
    void every_late_game_names_the_game_that_decided() {
        Score won = new Score(11, 4);
        assertThat(Legality.rubber(ELEVEN, 3, Collections.nCopies(4, won)))
                .containsExactly(
                        new ScoreFault(Kind.GAME_AFTER_DECIDED, 3, won, 2),
                        new ScoreFault(Kind.GAME_AFTER_DECIDED, 4, won, 2));
    }

    @Test
    void every_fault_of_a_rubber_is_told() {
        List<Score> games = List.of(new Score(11, 10), new Score(11, 9), new Score(20, 3));
        List<ScoreFault> faults = Legality.rubber(ELEVEN, 3, games);
        assertThat(kinds(faults)).containsExactly(Kind.NOT_TWO_AHEAD, Kind.WENT_ON_TOO_LONG, Kind.GAME_AFTER_DECIDED);
        assertThat(faults).extracting(ScoreFault::game).containsExactly(1, 3, 3);
    }

    @Test
    void a_level_game_is_not_also_called_missing() {
        assertThat(kinds(Legality.rubber(ELEVEN, 1, List.of(new Score(11, 11)))))
                .containsExactly(Kind.LEVEL);
        assertThat(kinds(Legality.rubber(ELEVEN, 1, List.of()))).containsExactly(Kind.TOO_FEW_GAMES);
    }

    @Test
    void a_retired_rubber_is_not_decided_yet() {
        assertThat(Legality.retiredRubber(ELEVEN, 3, List.of(new Score(11, 4), new Score(6, 2))))
                .isEmpty();
        assertThat(Legality.retiredRubber(ELEVEN, 3, List.of(new Score(11, 4)))).isEmpty();
        assertThat(kinds(Legality.retiredRubber(ELEVEN, 3, List.of(new Score(10, 4), new Score(6, 2)))))
                .containsExactly(Kind.NOBODY_REACHED_TARGET);
        assertThat(kinds(Legality.retiredRubber(ELEVEN, 1, List.of(new Score(11, 4)))))
                .containsExactly(Kind.ALREADY_WON);
        assertThat(kinds(Legality.retiredRubber(
                        ELEVEN, 3, List.of(new Score(11, 4), new Score(11, 2), new Score(1, 0)))))
                .containsExactly(Kind.GAME_AFTER_DECIDED);
    }

    @Test
    void a_table_holds_a_retirement_as_it_stood_or_made_up_for_the_other_side() {
        assertThat(Legality.retiredForTheTable(ELEVEN, 1, List.of(new Score(8, 11)), SideNo.ONE))
                .isEmpty();
        assertThat(Legality.retiredForTheTable(ELEVEN, 1, List.of(new Score(8, 5)), SideNo.ONE))
                .isEmpty();
        assertThat(kinds(Legality.retiredForTheTable(ELEVEN, 1, List.of(new Score(8, 11)), SideNo.TWO)))
                .containsExactly(Kind.RETIRER_AHEAD_AT_END);
        assertThat(kinds(Legality.retiredForTheTable(ELEVEN, 1, List.of(new Score(8, 12)), SideNo.ONE)))
                .containsExactly(Kind.WENT_ON_TOO_LONG);
    }

    private static List<Kind> kinds(List<ScoreFault> faults) {
        return faults.stream().map(ScoreFault::kind).toList();
    }

    static Score read(String text) {
        String[] points = text.split("-");
        return new Score(Integer.parseInt(points[0]), Integer.parseInt(points[1]));
    }
}
