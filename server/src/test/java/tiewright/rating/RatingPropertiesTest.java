package tiewright.rating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.scoring.Format;
import tiewright.scoring.Score;

/** What must hold for any games at all. */
class RatingPropertiesTest {
    private static final List<Format> FORMATS = List.of(
            Format.sideOut(11),
            Format.rally(15),
            Format.parse("rally-11-cap-13-serve-last").orElseThrow(),
            Format.sideOut(3));
    private static final List<PlayerId> PLAYERS = World.club("p", 9);

    private static Evidence any(Random random) {
        World world = World.from(Prior.none(), random, List.of(PLAYERS));
        for (int game = random.nextInt(40); game > 0; game--) {
            Pair one = world.anyPair(PLAYERS);
            Pair other = world.anyPair(PLAYERS);
            if (!one.has(other.first()) && !one.has(other.second())) {
                world.play(FORMATS.get(random.nextInt(FORMATS.size())), one, other, random.nextInt(3) == 0);
            }
        }
        return world.evidence();
    }

    private static Prior judged(Random random) {
        Map<PlayerId, Estimate> forms = new HashMap<>();
        PLAYERS.stream()
                .filter(any -> random.nextBoolean())
                .forEach(player -> forms.put(
                        player,
                        Estimate.of(100 * random.nextDouble() - 50, Math.pow(10, 3 * random.nextDouble() - 1.3))));
        return new Prior(forms, Map.of(Pair.of("p1", "p2"), Estimate.of(-50, 0.01)));
    }

    @RepeatedTest(40)
    void games_never_leave_more_doubt_than_there_was_and_their_order_does_not_matter(RepetitionInfo round) {
        Random random = Seed.random(round.getCurrentRepetition());
        String rerun = Seed.rerun(round.getCurrentRepetition());
        Prior prior = judged(random);
        Evidence evidence = any(random);
        Strengths found = Rating.fit(prior, evidence);
        List<PastGame> games = new ArrayList<>(evidence.games());
        Collections.shuffle(games, random);
        Strengths shuffled = Rating.fit(prior, new Evidence(games, evidence.films(), evidence.ageing()));
        for (PlayerId player : PLAYERS) {
            Estimate form = found.form(player);
            assertThat(form.sd())
                    .as(rerun)
                    .isPositive()
                    .isLessThanOrEqualTo(prior.form(player, 6).sd() + 1e-9);
            assertThat(shuffled.form(player).mean()).as(rerun).isCloseTo(form.mean(), within(1e-5));
        }
        for (Pair pair : World.pairs(PLAYERS)) {
            assertThat(found.extra(pair).sd())
                    .as(rerun)
                    .isLessThanOrEqualTo(prior.extra(pair, 3).sd() + 1e-9);
            assertThat(found.chanceAsStrong(pair, Pair.of("p8", "p9"))
                            + found.chanceAsStrong(Pair.of("p8", "p9"), pair))
                    .as(rerun)
                    .isCloseTo(1, within(1e-9));
        }
    }

    /** Who is named first says nothing: the same games told from the other side give the same strengths. */
    @RepeatedTest(20)
    void the_side_named_first_does_not_matter(RepetitionInfo round) {
        Random random = Seed.random(1000 + round.getCurrentRepetition());
        Evidence evidence = any(random);
        List<PastGame> turned = evidence.games().stream()
                .map(game -> new PastGame(
                        game.date(), game.away(), game.home(), game.score().swapped(), game.format()))
                .toList();
        List<FilmedGame> films = evidence.films().stream()
                .map(film -> new FilmedGame(
                        film.tie(),
                        film.rubber(),
                        film.played(),
                        film.format(),
                        film.two(),
                        film.one(),
                        film.card().map(Score::swapped),
                        film.byTwo(),
                        film.byOne()))
                .toList();
        Strengths found = Rating.fit(Prior.none(), evidence);
        Strengths again = Rating.fit(Prior.none(), new Evidence(turned, films, evidence.ageing()));
        for (PlayerId player : PLAYERS) {
            assertThat(again.form(player).mean())
                    .as(Seed.rerun(1000 + round.getCurrentRepetition()))
                    .isCloseTo(found.form(player).mean(), within(1e-5));
        }
    }

    @Test
    void three_hundred_games_to_nothing_stay_within_reason() {
        List<PastGame> games = new ArrayList<>();
        for (int game = 0; game < 300; game++) {
            games.add(new PastGame(
                    World.DAY, Pair.of("p1", "p2"), Pair.of("p3", "p4"), Score.of(11, 0), Format.sideOut(11)));
        }
        Map<PlayerId, Estimate> wide = new HashMap<>();
        PLAYERS.forEach(player -> wide.put(player, Estimate.of(0, 50)));
        Estimate edge = Rating.fit(new Prior(wide, Map.of()), games).edge(Pair.of("p1", "p2"), Pair.of("p3", "p4"));
        assertThat(edge.mean()).isBetween(20.0, 250.0);
        assertThat(edge.low()).isPositive();
    }
}
