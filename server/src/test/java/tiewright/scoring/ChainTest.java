package tiewright.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values of published models. Where a publication gives the model and not the digits, they were recomputed from it outside this project. */
class ChainTest {
    private static final Offset<Double> NINE = within(1e-9);

    /** DeFord and Ethier, arXiv 2303.02942: with even sides the first server is a hair below one half at 11, above it at 15. */
    @Test
    void serving_first_is_worth_nothing_measurable() {
        assertThat(0.5 - Chain.of(Format.sideOut(11), .5, .5).winChance(SideNo.ONE))
                .isCloseTo(2.477886e-9, within(1e-14));
        assertThat(Chain.of(Format.sideOut(15), .5, .5).winChance(SideNo.ONE) - 0.5)
                .isCloseTo(5.029663e-12, within(1e-15));
    }

    /** Model of DeFord and Ethier, arXiv 2303.02942. */
    @ParameterizedTest
    @CsvSource({"11, 34.96066971, 9.00109160", "15, 49.10382682, 10.62373666"})
    void rallies_of_an_even_side_out_game(int target, double mean, double sd) {
        Rallies rallies = Chain.of(Format.sideOut(target), .5, .5).rallies(SideNo.ONE);
        assertThat(rallies.mean()).isCloseTo(mean, within(1e-8));
        assertThat(rallies.sd()).isCloseTo(sd, within(1e-8));
    }

    /** Model of DeFord and Ethier, arXiv 2303.02942. */
    @ParameterizedTest
    @CsvSource({"11-0, 0.008681251", "0-11, 0.008660279", "11-9, 0.063710058", "10-10, 0.124177985"})
    void scores_of_an_even_side_out_game(String score, double chance) {
        Chain chain = Chain.of(Format.sideOut(11), .5, .5);
        assertThat(chain.chanceOf(SideNo.ONE, LegalityTest.read(score))).isCloseTo(chance, NINE);
        assertThat(chain.chanceOf(SideNo.TWO, LegalityTest.read(score).swapped()))
                .isCloseTo(chance, NINE);
    }

    /** Model of DeFord and Ethier, arXiv 2303.02942; side one serves first. */
    @ParameterizedTest
    @CsvSource({
        "11, .55, .45, 0.7482532107",
        "15, .55, .45, 0.7821957416",
        "11, .51, .49, 0.5531762622",
        "11, .52, .48, 0.6054224051",
        "11, .50, .45, 0.6345675315"
    })
    void unequal_sides(int target, double serve1, double serve2, double win) {
        assertThat(Chain.of(Format.sideOut(target), serve1, serve2).winChance(SideNo.ONE))
                .isCloseTo(win, within(1e-10));
        assertThat(Chain.of(Format.sideOut(target), serve2, serve1).winChance(SideNo.TWO))
                .isCloseTo(1 - win, within(1e-10));
    }

    /** Side-out with one server a side, first to 15: model of Paindaveine and Swan, arXiv 1004.1292. */
    @ParameterizedTest
    @CsvSource({".5, .5, 0.526480425, 48.715336", ".6, .4, 0.946456899, 40.982880"})
    void one_server_a_side(double serve1, double serve2, double win, double rallies) {
        Format format = Format.parse("side-out-15-by-1").orElseThrow();
        Chain chain = Chain.of(format, new ServeOrder(format, 1), serve1, serve2);
        assertThat(chain.winChance(SideNo.ONE)).isCloseTo(win, NINE);
        assertThat(chain.rallies(SideNo.ONE).mean()).isCloseTo(rallies, within(1e-6));
    }

    /** Rally scoring, first to 21: model of Paindaveine and Swan, arXiv 1004.1292. */
    @ParameterizedTest
    @CsvSource({".5, .5, 0.5, 36.859802", ".6, .4, 0.903482784, 34.417071"})
    void rally_scoring_to_21(double serve1, double serve2, double win, double rallies) {
        Chain chain = Chain.of(Format.parse("rally-21-by-1").orElseThrow(), serve1, serve2);
        assertThat(chain.winChance(SideNo.ONE)).isCloseTo(win, NINE);
        assertThat(chain.rallies(SideNo.ONE).mean()).isCloseTo(rallies, within(1e-6));
    }

    /** Two ahead from level: p^2 / (p^2 + q^2), standard. */
    @ParameterizedTest
    @CsvSource({".6, 0.692307692", ".55, 0.599009901"})
    void two_ahead(double p, double win) {
        assertThat(Chain.of(Format.rally(1), p, 1 - p).winChance(SideNo.ONE)).isCloseTo(win, NINE);
        assertThat(Chain.of(Format.rally(2), p, 1 - p).winChance(SideNo.TWO)).isCloseTo(win, NINE);
    }

    /** Rally scoring two ahead, whoever serves wins a rally with .55 for side one: plain recursion. */
    @ParameterizedTest
    @CsvSource({
        "rally-11, 0.686813086",
        "rally-15, 0.713330501",
        "rally-21, 0.745837597",
        "rally-21-cap-30, 0.745828630"
    })
    void rally_scoring_with_one_chance(String code, double win) {
        Chain chain = Chain.of(Format.parse(code).orElseThrow(), .55, .45);
        assertThat(chain.winChance(SideNo.ONE)).isCloseTo(win, NINE);
        assertThat(chain.winChance(SideNo.TWO)).isCloseTo(win, NINE);
    }

    /** ITF Rules of Tennis 5 (from memory): a game is four points two ahead, a tie-break seven. */
    @ParameterizedTest
    @CsvSource({"4, .6, 0.735729231", "7, .55, 0.654150767", "7, .6, 0.787455661"})
    void tennis_points(int target, double p, double win) {
        assertThat(Chain.of(Format.rally(target), p, 1 - p).winChance(SideNo.ONE))
                .isCloseTo(win, NINE);
    }

    @Test
    void sure_servers_and_hopeless_ones() {
        Chain sure = Chain.of(Format.sideOut(11), 1, 0);
        assertThat(sure.winChance(SideNo.TWO)).isEqualTo(1);
        assertThat(sure.rallies(SideNo.ONE)).isEqualTo(new Rallies(11, 0));
        assertThat(sure.rallies(SideNo.TWO)).isEqualTo(new Rallies(12, 0));
        assertThat(Chain.of(Format.sideOut(11), 0, .3).winChance(SideNo.ONE)).isEqualTo(0);
        assertThat(Chain.of(Format.sideOut(11), 1, 1).winChance(SideNo.ONE)).isEqualTo(1);
        // neither side ever wins on its serve: the points alternate, side two first, and 10-11 becomes 11-11, to the
        // cap
        Chain alternating = Chain.of(Format.parse("rally-11-cap-13").orElseThrow(), 0, 0);
        assertThat(alternating.winChance(SideNo.ONE)).isEqualTo(0);
        assertThat(alternating.rallies(SideNo.ONE)).isEqualTo(new Rallies(25, 0));
        assertThat(alternating.chanceOf(SideNo.ONE, new Score(12, 13))).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({
        "side-out-11",
        "side-out-11-by-1",
        "side-out-11-cap-15",
        "rally-11",
        "rally-11-serve-last",
        "rally-11-by-1-serve-last"
    })
    void refuses_a_game_that_never_ends(String code) {
        Format format = Format.parse(code).orElseThrow();
        assertThat(Chain.ends(format, 0, 0)).isFalse();
        assertThatThrownBy(() -> Chain.of(format, 0, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("does not end");
        assertThat(Chain.ends(format, 0, 0.001)).isTrue();
        assertThat(Chain.of(format, 0, 0.001).winChance(SideNo.ONE)).isEqualTo(0);
    }

    @Test
    void refuses_chances_that_are_none() {
        for (double bad : new double[] {-0.1, 1.1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> Chain.of(Format.rally(11), bad, .5)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> Chain.of(Format.rally(11), .5, bad)).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void a_score_that_cannot_be_has_no_chance() {
        Chain chain = Chain.of(Format.sideOut(11), .5, .5);
        assertThat(chain.chanceOf(SideNo.ONE, new Score(13, 10))).isEqualTo(0);
        assertThat(chain.chanceOf(SideNo.ONE, new Score(11, 11))).isGreaterThan(0);
        assertThatThrownBy(() -> chain.chanceOf(SideNo.ONE, new Score(1001, 999)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_state_of_another_format_is_refused() {
        Chain chain = Chain.of(Format.sideOut(11), .5, .5);
        GameState other = GameState.start(Format.sideOut(15), SideNo.ONE);
        assertThatThrownBy(() -> chain.winChance(other)).isInstanceOf(IllegalArgumentException.class);
    }
}
