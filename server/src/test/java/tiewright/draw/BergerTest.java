package tiewright.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Berger tables: FIDE Handbook C.05, Annex 1 (3-4, 5-6 and 7-8 players). */
class BergerTest {
    @ParameterizedTest
    @CsvSource({
        "4, 1-4 2-3 / 4-3 1-2 / 2-4 3-1",
        "6, 1-6 2-5 3-4 / 6-4 5-3 1-2 / 2-6 3-1 4-5 / 6-5 1-4 2-3 / 3-6 4-2 5-1",
        "8, 1-8 2-7 3-6 4-5 / 8-5 6-4 7-3 1-2 / 2-8 3-1 4-7 5-6 / 8-6 7-5 1-4 2-3 / 3-8 4-2 5-1 6-7"
                + " / 8-7 1-6 2-5 3-4 / 4-8 5-3 6-2 7-1",
    })
    void prints_the_published_tables(int n, String table) {
        assertThat(printed(n)).isEqualTo(table);
    }

    @ParameterizedTest
    @CsvSource({
        "3, 2-3 / 1-2 / 3-1",
        "5, 2-5 3-4 / 5-3 1-2 / 3-1 4-5 / 1-4 2-3 / 4-2 5-1",
        "7, 2-7 3-6 4-5 / 6-4 7-3 1-2 / 3-1 4-7 5-6 / 7-5 1-4 2-3 / 4-2 5-1 6-7 / 1-6 2-5 3-4 / 5-3 6-2 7-1",
    })
    void the_highest_number_of_the_table_is_the_bye_of_an_odd_entry(int n, String table) {
        assertThat(printed(n)).isEqualTo(table);
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
    void every_pair_meets_once_and_nobody_twice_in_a_round(int n) {
        Set<Set<Integer>> pairs = new HashSet<>();
        List<List<Berger.Pairing>> rounds = Berger.rounds(n);
        assertThat(rounds).hasSize(n % 2 == 0 ? n - 1 : n);
        for (List<Berger.Pairing> round : rounds) {
            List<Integer> busy = new ArrayList<>();
            for (Berger.Pairing p : round) {
                busy.addAll(List.of(p.home(), p.away()));
                assertThat(pairs.add(Set.of(p.home(), p.away()))).isTrue();
            }
            assertThat(busy).hasSize(n - n % 2).doesNotHaveDuplicates().allMatch(x -> x >= 1 && x <= n);
        }
        assertThat(pairs).hasSize(n * (n - 1) / 2);
    }

    /** For 8 the table itself shows it: numbers 1 to 4 are named first four times, 5 to 8 three times. */
    @ParameterizedTest
    @ValueSource(ints = {2, 4, 6, 8, 10, 12, 14, 16})
    void the_first_half_is_named_first_once_more_than_the_second(int n) {
        for (int number = 1; number <= n; number++) {
            assertThat(timesHome(n, number))
                    .as("number %s of %s", number, n)
                    .isEqualTo(number <= n / 2 ? n / 2 : n / 2 - 1);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 5, 7, 9, 11, 13, 15})
    void an_odd_entry_differs_by_at_most_two_from_balance(int n) {
        for (int number = 1; number <= n; number++) {
            assertThat(Math.abs(2 * timesHome(n, number) - (n - 1)))
                    .as("number %s of %s", number, n)
                    .isLessThanOrEqualTo(2);
        }
    }

    @Test
    void refuses_a_pool_of_one_and_of_seventeen() {
        assertThatThrownBy(() -> Berger.rounds(1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Berger.rounds(17)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void knows_the_round_of_a_pair() {
        assertThat(IntStream.of(2, 3, 4).map(other -> Berger.roundOf(1, other, 4)))
                .containsExactly(2, 3, 1);
    }

    private static long timesHome(int n, int number) {
        return Berger.rounds(n).stream()
                .flatMap(List::stream)
                .filter(p -> p.home() == number)
                .count();
    }

    private static String printed(int n) {
        return Berger.rounds(n).stream()
                .map(r -> r.stream().map(p -> p.home() + "-" + p.away()).collect(Collectors.joining(" ")))
                .collect(Collectors.joining(" / "));
    }
}
