package tiewright.lineup.club;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.scoring.Format;
import tiewright.scoring.Score;

class TriedNumbersTest {
    private static final Set<PlayerId> OURS = Set.of(PlayerId.of("P1"), PlayerId.of("P2"));

    /** @param edge by how much more of the games the lower numbers win, from 0 to a half */
    private static List<PrivateNote.PastGame> season(Random random, int games, double edge) {
        List<PrivateNote.PastGame> season = new ArrayList<>();
        for (int i = 0; i < games; i++) {
            List<Integer> four =
                    new ArrayList<>(IntStream.rangeClosed(1, 8).boxed().toList());
            Collections.shuffle(four, random);
            int ahead = four.get(2) + four.get(3) - four.get(0) - four.get(1);
            boolean won = random.nextDouble() < 0.5 + edge * Math.signum(ahead);
            int lost = random.nextInt(10);
            season.add(new PrivateNote.PastGame(
                    LocalDate.of(2026, 1, 1).plusDays(i),
                    "P" + four.get(0),
                    "P" + four.get(1),
                    "P" + four.get(2),
                    "P" + four.get(3),
                    won ? Score.of(11, lost) : Score.of(lost, 11),
                    Format.sideOut(11),
                    Optional.empty()));
        }
        return season;
    }

    @Test
    void clear_differences_are_found_better_than_a_coin() {
        Seed seed = Seed.fresh();
        TriedNumbers tried =
                TriedNumbers.of(season(seed.random(), 240, 0.45), OURS).orElseThrow();
        assertThat(tried.all().record().scored()).as("%s", seed).isEqualTo(160);
        assertThat(tried.ours().record().scored()).as("%s", seed).isBetween(100, 150);
        assertThat(tried.all().verdict()).as("%s: %s", seed, tried.all()).isEqualTo(AgainstCoin.Verdict.BETTER);
    }

    /** Twelve seasons by lot: one in forty may look better by chance, more than three do in one of ten thousand builds. */
    @Test
    void where_everybody_is_equal_nothing_is_claimed() {
        Seed seed = Seed.fresh();
        Random random = seed.random();
        long better = IntStream.range(0, 12)
                .filter(any -> TriedNumbers.of(season(random, 90, 0), OURS)
                                .orElseThrow()
                                .all()
                                .verdict()
                        == AgainstCoin.Verdict.BETTER)
                .count();
        assertThat(better).as("%s", seed).isLessThanOrEqualTo(3);
    }

    @Test
    void a_single_day_leaves_nothing_to_try() {
        List<PrivateNote.PastGame> one = season(new Random(1), 1, 0);
        assertThat(TriedNumbers.of(one, OURS)).isEmpty();
        assertThat(TriedNumbers.of(List.of(), OURS)).isEmpty();
    }

    /** Only the latest are looked at, and it is said how many there are. */
    @Test
    void very_many_games_are_tried_on_the_latest() {
        TriedNumbers tried = TriedNumbers.of(season(new Random(2), TriedNumbers.MOST_GAMES + 60, 0.2), OURS)
                .orElseThrow();
        assertThat(tried.given()).isEqualTo(TriedNumbers.MOST_GAMES + 60);
        assertThat(tried.all().record().scored()).isLessThanOrEqualTo(TriedNumbers.MOST_GAMES);
    }

    /**
     * By hand: won at .8 gains ln(.8 / .5) = .470, lost at .8 gains ln(.2 / .5) = -.916; 32 and 8 of them .193 on average, the
     * standard deviation .5616, so the interval reaches 1.96 x .5616 / root 40 = .1740 to either side.
     */
    @Test
    void against_a_coin() {
        List<OwnRecord.Scored> forecasts = IntStream.range(0, 40)
                .mapToObj(i -> new OwnRecord.Scored(0.8, i < 32, 0))
                .toList();
        AgainstCoin coin = AgainstCoin.of(forecasts);
        assertThat(coin.mean()).isCloseTo(0.1927, within(0.0001));
        assertThat(coin.low()).isCloseTo(0.1927 - 0.1740, within(0.0002));
        assertThat(coin.high()).isCloseTo(0.1927 + 0.1740, within(0.0002));
        assertThat(coin.verdict(40)).isEqualTo(AgainstCoin.Verdict.BETTER);
        assertThat(coin.verdict(29)).isEqualTo(AgainstCoin.Verdict.TOO_FEW);
        assertThat(new AgainstCoin(-0.1, -0.2, 0).verdict(30)).isEqualTo(AgainstCoin.Verdict.OPEN);
        assertThat(new AgainstCoin(-0.1, -0.2, -0.01).verdict(30)).isEqualTo(AgainstCoin.Verdict.WORSE);
        assertThat(new AgainstCoin(0.1, 0, 0.2).verdict(30)).isEqualTo(AgainstCoin.Verdict.OPEN);
    }
}
