package tiewright.rating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.scoring.Format;
import tiewright.scoring.Score;

/** Between the edges that are worked out exactly, against the chain itself. */
class ScoreCurveTest {
    @ParameterizedTest
    @CsvSource({
        "side-out-11,11,0",
        "side-out-11,11,9",
        "side-out-11,15,13",
        "side-out-7,7,4",
        "side-out-21,21,19",
        "rally-15,15,8",
        "rally-21-cap-30,30,29",
        "rally-21,21,2",
        "rally-11-by-1,11,10",
        "rally-15-serve-last,15,12"
    })
    void value_slope_and_bend_are_those_of_the_chain(String code, int home, int away) {
        Format format = Format.parse(code).orElseThrow();
        Score score = Score.of(home, away);
        ScoreCurve curve = new ScoreCurve(ServeRates.PLAIN, format, score);
        double step = 1e-3;
        for (double edge = -30.37; edge < 30; edge += 1.618) {
            double below = RallyModel.logChance(ServeRates.PLAIN, format, score, edge - step);
            double at = RallyModel.logChance(ServeRates.PLAIN, format, score, edge);
            double above = RallyModel.logChance(ServeRates.PLAIN, format, score, edge + step);
            assertThat(curve.log(edge)).as("log at %s", edge).isCloseTo(at, within(1e-6));
            assertThat(curve.slope(edge)).as("slope at %s", edge).isCloseTo((above - below) / (2 * step), within(1e-6));
            assertThat(curve.bend(edge))
                    .as("bend at %s", edge)
                    .isCloseTo(-(above - 2 * at + below) / (step * step), within(2e-6));
        }
    }

    @ParameterizedTest
    @CsvSource({"side-out-11,11,0", "rally-15,15,3", "rally-21,25,23"})
    void beyond_all_measure_it_goes_on_straight_and_stays_a_chance(String code, int home, int away) {
        ScoreCurve curve = new ScoreCurve(ServeRates.PLAIN, Format.parse(code).orElseThrow(), Score.of(home, away));
        for (double edge : new double[] {-1e4, -250, -100, 100, 250, 1e4}) {
            assertThat(curve.log(edge)).as("at %s", edge).isFinite().isLessThan(0.1);
            assertThat(curve.slope(edge)).isFinite();
            assertThat(curve.bend(edge)).isFinite();
        }
        assertThat(curve.log(-300)).isLessThan(curve.log(-200));
    }
}
