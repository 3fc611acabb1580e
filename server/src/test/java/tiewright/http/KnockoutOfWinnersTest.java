package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tiewright.event.Days;
import tiewright.event.How;
import tiewright.event.PlayFact;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.Stage;
import tiewright.scoring.Score;

/** Five winners in a bracket of eight lines: three have a bye, and the rounds are still called what they are. */
class KnockoutOfWinnersTest {
    private static final String POOLS = "/organiser/draw";
    private static final String PAGE = "/organiser/knockout";

    private static Served drawn(String each) {
        Days day = Days.aDay().clubs("A", "B", "C", "D", "E", "F", "G", "H", "I", "J");
        Served served = Served.of(day, Days.moment("08:00"));
        Guest organiser = served.as(Role.ORGANISER);
        organiser.send(POOLS, POOLS, Map.of("pools", "5", "spokenSeed", "seven grey owls", "witness", "Ann"));
        Guest.Got laid =
                organiser.send(PAGE, PAGE, Map.of("fromEachPool", each, "spokenSeed", "two kites", "witness", "Bo"));
        assertThat(laid.status()).as(laid.text()).isEqualTo(200);
        return served;
    }

    @Test
    void a_round_with_byes_is_not_called_by_how_many_ties_are_left_in_it() {
        try (Served served = drawn("1")) {
            String page = served.as(Role.ORGANISER).get(PAGE).text();
            assertThat(page)
                    .contains(
                            "QF2 Quarter-final QF2",
                            "SF1 Semi-final SF1",
                            "SF2 Semi-final SF2",
                            "F Final winner of SF1")
                    .doesNotContain("QF2 Final");
            assertThat(served.stranger().get("/bracket").text())
                    .containsPattern("Quarter-finals.*QF2.*Semi-finals.*SF1.*Final");
        }
    }

    /** By docs/draw.md: 1 and 8 for the first two seeds, 3 and 6 drawn for the next, and the line that is left for the fifth. */
    @Test
    void every_step_of_its_draw_stands_on_the_page() {
        try (Served served = drawn("1")) {
            String steps = served.as(Role.ORGANISER).get(PAGE).text();
            steps = steps.substring(steps.indexOf("Step by step"));
            assertThat(steps)
                    .containsPattern("A-1 1 .*B-1 8 .*C-1 [36] purpose \"knockout\", i = 0: [01] 3 \\(1\\), 6 \\(1\\)")
                    .containsPattern("D-1 [36] only choice left .*E-1 [45] only choice left");
        }
    }

    @Test
    void two_of_each_pool_are_called_right_too() {
        try (Served served = drawn("2")) {
            assertThat(served.stranger().get("/bracket").text())
                    .containsPattern("Round of 16.*Quarter-finals.*QF1.*Semi-finals.*SF1.*Final");
        }
    }

    /** The line in a pool's table: a round with byes has one tie left in it and is no final. */
    @Test
    void a_table_says_which_round_its_first_plays_byes_or_not() {
        try (Served served = drawn("1")) {
            served.ledger.event().ties().values().stream()
                    .filter(tie -> tie.stage() == Stage.POOL)
                    .flatMap(tie -> IntStream.rangeClosed(1, 4)
                            .mapToObj(rubber -> new PlayFact.CardEntered(
                                    tie.id(), RubberNo.of(rubber), List.of(Score.of(11, 3)), How.PLAYED)))
                    .forEach(card -> served.given(List.of(card), List.of()));
            assertThat(served.stranger().get("/tables").text())
                    .contains("the first plays the quarter-finals", "the first plays the semi-finals")
                    .doesNotContain("the first plays the final");
        }
    }
}
