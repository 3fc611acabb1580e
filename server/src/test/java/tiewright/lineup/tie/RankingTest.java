package tiewright.lineup.tie;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.lineup.Ties;

class RankingTest {
    /** Perfect matchings (2n-1)!!, On-Line Encyclopedia of Integer Sequences A001147: each pairing of a squad is tried once. */
    @ParameterizedTest
    @CsvSource({"2, 1", "4, 3", "6, 15", "8, 105", "10, 945", "12, 10395"})
    void tries_every_pairing_once(int players, long pairings) {
        Ranking ranking = Ranking.of(new Board(Ties.problem(players / 2, players, Ties.even())), false, 1);
        assertThat(ranking.complete()).isTrue();
        assertThat(ranking.tried()).isEqualTo(pairings);
    }

    /** 8!/2!^4 = 2520 and 8!/(2!^3 2!) = 2520, 6!/2!^3 = 90: multinomial coefficients. */
    @ParameterizedTest
    @CsvSource({"8, 4, 2520", "8, 3, 2520", "6, 3, 90"})
    void tries_every_ordered_sheet_once(int players, int rubbers, long sheets) {
        assertThat(Ranking.of(new Board(Ties.problem(rubbers, players, Ties.even())), true, 1)
                        .tried())
                .isEqualTo(sheets);
    }
}
