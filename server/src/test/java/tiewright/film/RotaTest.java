package tiewright.film;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tiewright.event.Pair;
import tiewright.event.PlayerId;

/** The definition of a whist tournament: everybody partners everybody once and opposes everybody twice (Anderson 1997, from memory). */
class RotaTest {
    private static List<PlayerId> players(int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(i -> PlayerId.of("P" + i))
                .toList();
    }

    private static List<PlayerId> four(Rota.Game game) {
        return List.of(
                game.one().first(),
                game.one().second(),
                game.two().first(),
                game.two().second());
    }

    private static Map<Pair, Integer> partners(Rota rota) {
        Map<Pair, Integer> times = new HashMap<>();
        rota.games()
                .forEach(game -> List.of(game.one(), game.two()).forEach(pair -> times.merge(pair, 1, Integer::sum)));
        return times;
    }

    private static Map<Pair, Integer> opponents(Rota rota) {
        Map<Pair, Integer> times = new HashMap<>();
        rota.games()
                .forEach(game -> List.of(game.one().first(), game.one().second())
                        .forEach(one -> List.of(game.two().first(), game.two().second())
                                .forEach(other -> times.merge(Pair.of(one, other), 1, Integer::sum))));
        return times;
    }

    @ParameterizedTest
    @ValueSource(ints = {4, 5, 8, 9, 12, 13, 16, 17})
    void every_two_partner_once_and_oppose_twice(int count) {
        Rota rota = Rota.of(players(count)).orElseThrow();
        int pairs = count * (count - 1) / 2;
        assertThat(partners(rota))
                .hasSize(pairs)
                .allSatisfy((pair, times) -> assertThat(times).isEqualTo(1));
        assertThat(opponents(rota))
                .hasSize(pairs)
                .allSatisfy((pair, times) -> assertThat(times).isEqualTo(2));
        assertThat(rota.rounds()).isEqualTo(count % 4 == 0 ? count - 1 : count);
    }

    @ParameterizedTest
    @ValueSource(ints = {4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17})
    void nobody_is_on_two_courts_at_once_and_no_court_is_idle_that_could_mix(int count) {
        Rota rota = Rota.of(players(count)).orElseThrow();
        Map<Integer, Set<PlayerId>> busy = new HashMap<>();
        Map<Integer, Set<Integer>> courts = new HashMap<>();
        for (Rota.Game game : rota.games()) {
            four(game)
                    .forEach(player -> assertThat(busy.computeIfAbsent(game.round(), round -> new HashSet<>())
                                    .add(player))
                            .isTrue());
            assertThat(courts.computeIfAbsent(game.round(), round -> new HashSet<>())
                            .add(game.court()))
                    .isTrue();
            assertThat(game.court()).isBetween(1, count / 4);
            assertThat(game.round()).isBetween(1, rota.rounds());
        }
    }

    /** By counting: n players have n(n-1)/2 pairs, a round of c courts has 2c of them; so many rounds are needed at least. */
    @ParameterizedTest
    @CsvSource({"6, 8", "7, 11", "10, 12", "11, 14", "14, 16", "15, 18"})
    void where_no_even_rota_is_known_every_two_still_partner_and_nobody_is_left_resting(int count, int least) {
        Rota rota = Rota.of(players(count)).orElseThrow();
        int pairs = count * (count - 1) / 2;
        assertThat((pairs + 2 * (count / 4) - 1) / (2 * (count / 4))).isEqualTo(least);
        assertThat(rota.rounds()).isBetween(least, least + 2);
        assertThat(partners(rota))
                .hasSize(pairs)
                .allSatisfy((pair, times) -> assertThat(times).isBetween(1, 2));
        assertThat(opponents(rota).values()).allMatch(times -> times <= 4);
        Map<PlayerId, Integer> played = new HashMap<>();
        rota.games().forEach(game -> four(game).forEach(player -> played.merge(player, 1, Integer::sum)));
        assertThat(played).hasSize(count);
        assertThat(Collections.max(played.values()) - Collections.min(played.values()))
                .as(played.toString())
                .isLessThanOrEqualTo(2);
        assertThat(Rota.of(players(count))).as("the same again").contains(rota);
    }

    @Test
    void eight_players_have_seven_rounds_on_two_courts() {
        Rota rota = Rota.of(players(8)).orElseThrow();
        assertThat(rota.games()).hasSize(14);
        assertThat(rota.rounds()).isEqualTo(7);
    }

    @Test
    void too_few_or_too_many_have_none() {
        assertThat(Rota.of(players(3))).isEmpty();
        assertThat(Rota.of(players(18))).isEmpty();
    }
}
