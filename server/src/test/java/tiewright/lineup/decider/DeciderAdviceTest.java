package tiewright.lineup.decider;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.conditions.DeciderKind;
import tiewright.conditions.OrderOfStrength;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Sheet;
import tiewright.lineup.Freshness;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Squad;
import tiewright.lineup.Ties;
import tiewright.lineup.Wish;
import tiewright.lineup.decider.DeciderAdvice.Candidate;
import tiewright.lineup.decider.DeciderAdvice.Verdict;
import tiewright.rating.Estimate;
import tiewright.rating.Prior;
import tiewright.rating.RallyModel;
import tiewright.rating.Rating;
import tiewright.rating.Strengths;

/**
 * The advice about the decider beside an exhaustive look at every pair against every pair (a way of our own). Chances of the judge
 * come from the model itself, those of the game from a table that is good to 1e-6.
 */
class DeciderAdviceTest {
    private static final int ROUNDS = 200;
    private static final double TABLE = 1e-5;

    private static LineupProblem problem(DeciderKind kind, Squad ours, Squad theirs, Strengths strengths) {
        return LineupProblem.of(
                Ties.rules(2, 2, OrderOfStrength.NONE, kind),
                ours,
                theirs,
                strengths,
                LineupProblem.Against.STRAIGHT,
                1);
    }

    private static LineupProblem any(Random random) {
        int players = 4 + random.nextInt(3);
        Map<PlayerId, Freshness.Load> loads = new HashMap<>();
        for (int i = 1; i <= players; i++) {
            OptionalInt since = random.nextBoolean() ? OptionalInt.of(random.nextInt(60)) : OptionalInt.empty();
            loads.put(PlayerId.of("a" + i), new Freshness.Load(random.nextInt(6), since));
            loads.put(PlayerId.of("b" + i), new Freshness.Load(random.nextInt(6), OptionalInt.empty()));
        }
        return problem(
                        DeciderKind.ANY_TWO,
                        Ties.squad("a", players),
                        Ties.squad("b", players),
                        Ties.random(random, players))
                .after(new Freshness(loads, Freshness.Cost.USUAL));
    }

    private static List<Pair> pairs(String club, int players) {
        List<Pair> pairs = new ArrayList<>();
        for (int i = 1; i <= players; i++) {
            for (int j = i + 1; j <= players; j++) {
                pairs.add(Pair.of(club + i, club + j));
            }
        }
        return pairs;
    }

    private static double chance(LineupProblem problem, Pair ours, Pair theirs) {
        return RallyModel.rubberChance(problem.rules().deciderScoring(), 1, problem.edge(ours, theirs));
    }

    private static DeciderAdvice of(LineupProblem problem, PlayerId... hurt) {
        return DeciderAdvice.of(problem, Optional.empty(), Optional.empty(), Set.of(hurt));
    }

    private static Candidate candidate(DeciderAdvice advice, Pair pair) {
        return advice.candidates().stream()
                .filter(one -> one.pair().equals(pair))
                .findFirst()
                .orElseThrow();
    }

    /** Each chooses one pair: what we can make sure of, and what they can hold us to, by looking at every one. */
    @Test
    void is_worth_what_an_exhaustive_look_says() {
        for (int round = 0; round < ROUNDS; round++) {
            LineupProblem problem = any(Seed.random(round));
            int players = problem.ours().members().size();
            double sure = 0;
            for (Pair own : pairs("a", players)) {
                sure = Math.max(
                        sure,
                        pairs("b", players).stream()
                                .mapToDouble(other -> chance(problem, own, other))
                                .min()
                                .orElseThrow());
            }
            double held = 1;
            for (Pair other : pairs("b", players)) {
                held = Math.min(
                        held,
                        pairs("a", players).stream()
                                .mapToDouble(own -> chance(problem, own, other))
                                .max()
                                .orElseThrow());
            }
            DeciderAdvice advice = of(problem);
            assertThat(advice.sure().orElseThrow().guarantee())
                    .as(Seed.rerun(round))
                    .isCloseTo(sure, within(TABLE));
            assertThat(advice.chance()).as(Seed.rerun(round)).isBetween(sure - TABLE, held + TABLE);
            assertThat(pairs("b", players))
                    .as(Seed.rerun(round))
                    .allMatch(other ->
                            chance(problem, advice.sure().orElseThrow().pair(), other) > advice.chance() - TABLE);
        }
    }

    @Test
    void looks_at_every_pair_once_the_best_first() {
        for (int round = 0; round < ROUNDS; round++) {
            LineupProblem problem = any(Seed.random(round));
            List<Candidate> all = of(problem).candidates();
            assertThat(all)
                    .as(Seed.rerun(round))
                    .extracting(Candidate::pair)
                    .containsExactlyInAnyOrderElementsOf(
                            pairs("a", problem.ours().members().size()));
            assertThat(all)
                    .extracting(Candidate::rank)
                    .containsExactlyElementsOf(
                            IntStream.rangeClosed(1, all.size()).boxed().toList());
            assertThat(all)
                    .as(Seed.rerun(round))
                    .isSortedAccordingTo((one, other) -> Double.compare(other.chance(), one.chance()));
            assertThat(all.stream().mapToDouble(Candidate::weight).sum()).isCloseTo(1, within(1e-9));
            assertThat(all)
                    .as(Seed.rerun(round))
                    .allMatch(one -> one.low() <= one.chance() && one.chance() <= one.high());
        }
    }

    /** Two who played in two different rubbers, one in each: every way to take one rubber for the one and another for the other. */
    @Test
    void one_from_each_of_two_rubbers_as_an_exhaustive_look_says() {
        for (int round = 0; round < ROUNDS; round++) {
            Random random = Seed.random(round);
            List<Pair> all = pairs("a", 5);
            List<Optional<Pair>> named = new ArrayList<>();
            for (int rubber = 0; rubber < 4; rubber++) {
                named.add(random.nextInt(5) == 0 ? Optional.empty() : Optional.of(all.get(random.nextInt(all.size()))));
            }
            Set<Pair> expected = new HashSet<>();
            for (int one = 0; one < named.size(); one++) {
                for (int other = 0; other < named.size(); other++) {
                    if (one != other
                            && named.get(one).isPresent()
                            && named.get(other).isPresent()) {
                        for (PlayerId first : named.get(one).get().players()) {
                            named.get(other).get().players().stream()
                                    .filter(second -> !second.equals(first))
                                    .forEach(second -> expected.add(Pair.of(first, second)));
                        }
                    }
                }
            }
            List<Pair> allowed =
                    DeciderPairs.allowed(DeciderKind.ONE_FROM_EACH, Ties.squad("a", 5), Optional.of(Sheet.of(named)));
            assertThat(allowed).as(Seed.rerun(round)).containsExactlyInAnyOrderElementsOf(expected);
            Closers closers = new Closers(
                    DeciderKind.ONE_FROM_EACH, Ties.even(), Freshness.rested(), DeciderPairs.all(Ties.squad("a", 5)));
            int[] rubbers = closers.rubbers(Sheet.of(named));
            assertThat(IntStream.range(0, closers.pairs().size())
                            .filter(pair -> closers.isAllowed(pair, rubbers))
                            .mapToObj(closers.pairs()::get)
                            .toList())
                    .as(Seed.rerun(round))
                    .containsExactlyInAnyOrderElementsOf(expected);
        }
    }

    @Test
    void any_two_may_play_where_the_conditions_say_so_or_no_sheet_is_known() {
        Sheet sheet = Sheet.full(Pair.of("a1", "a2"));
        Squad squad = Ties.squad("a", 4);
        assertThat(DeciderPairs.allowed(DeciderKind.ANY_TWO, squad, Optional.of(sheet)))
                .hasSize(6);
        assertThat(DeciderPairs.allowed(DeciderKind.SINGLES_TURNS, squad, Optional.of(sheet)))
                .hasSize(6);
        assertThat(DeciderPairs.allowed(DeciderKind.ONE_FROM_EACH, squad, Optional.empty()))
                .hasSize(6);
        assertThat(DeciderPairs.allowed(DeciderKind.ONE_FROM_EACH, squad, Optional.of(sheet)))
                .isEmpty();
    }

    @Test
    void names_nobody_where_nobody_can_play() {
        Squad here = Ties.squad("a", 2);
        Squad away = new Squad(List.of(new Squad.Member(PlayerId.of("b1"), OptionalInt.of(1), false)));
        Squad one = Ties.squad("a", 1);
        DeciderAdvice none = of(problem(DeciderKind.NONE, here, Ties.squad("b", 2), Ties.even()));
        assertThat(none.chance()).as("what a drawn tie is worth").isEqualTo(0.5);
        assertThat(none.candidates()).isEmpty();
        assertThat(none.sure()).isEmpty();
        assertThat(none.notes()).singleElement().satisfies(note -> {
            assertThat(note.code()).isEqualTo("lineup.decider-nobody-named");
            assertThat(note.data()).containsEntry("kind", "none");
        });
        assertThat(of(problem(DeciderKind.ANY_TWO, one, Ties.squad("b", 2), Ties.even()))
                        .chance())
                .isEqualTo(0);
        assertThat(of(problem(DeciderKind.ANY_TWO, here, away, Ties.even())).chance())
                .isEqualTo(1);
    }

    /** Pairs of no form, one with an extra of its own: it counts between pairs, not between singles. */
    @Test
    void singles_in_turns_are_played_without_what_a_pair_has_together() {
        Pair friends = Pair.of("a1", "a2");
        Strengths strengths = Rating.fit(
                new Prior(
                        Map.of(PlayerId.of("a3"), Estimate.of(2, 1), PlayerId.of("a4"), Estimate.of(2, 1)),
                        Map.of(friends, Estimate.of(9, 1))),
                List.of());
        LineupProblem doubles = problem(DeciderKind.ANY_TWO, Ties.squad("a", 4), Ties.squad("b", 4), strengths);
        LineupProblem singles = problem(DeciderKind.SINGLES_TURNS, Ties.squad("a", 4), Ties.squad("b", 4), strengths);
        assertThat(of(doubles).best().orElseThrow().pair()).isEqualTo(friends);
        assertThat(of(singles).best().orElseThrow().pair()).isEqualTo(Pair.of("a3", "a4"));
        assertThat(Closers.strength(DeciderKind.SINGLES_TURNS, strengths, Pair.of("a3", "a4")))
                .isCloseTo(
                        (strengths.form(PlayerId.of("a3")).mean()
                                        + strengths.form(PlayerId.of("a4")).mean())
                                / 2,
                        within(1e-12));
    }

    @Test
    void a_pair_that_shall_not_play_together_does_not_play_the_decider() {
        Pair best = Pair.of("a1", "a2");
        LineupProblem problem = problem(
                        DeciderKind.ANY_TWO, Ties.squad("a", 4), Ties.squad("b", 4), Ties.forms(8, 8, 0, 0))
                .wishing(Wish.apart(best));
        assertThat(of(problem).candidates())
                .extracting(Candidate::pair)
                .hasSize(5)
                .doesNotContain(best);
    }

    @Test
    void says_the_best_where_it_is_clear_and_either_where_nobody_can_tell() {
        DeciderAdvice clear = of(problem(
                DeciderKind.ANY_TWO, Ties.squad("a", 4), Ties.squad("b", 4), Ties.forms(0.1, new double[] {40, 40, 0, 0
                })));
        assertThat(clear.withinNoise()).containsExactly(Pair.of("a1", "a2"));
        assertThat(clear.best().orElseThrow().verdict()).isEqualTo(Verdict.BEST);
        assertThat(clear.notes()).extracting(note -> note.code()).contains("lineup.decider-clear");
        DeciderAdvice level = of(problem(DeciderKind.ANY_TWO, Ties.squad("a", 4), Ties.squad("b", 4), Ties.even()));
        assertThat(level.withinNoise()).hasSize(6);
        assertThat(level.candidates()).extracting(Candidate::verdict).containsOnly(Verdict.EITHER);
        assertThat(level.notes()).extracting(note -> note.code()).contains("lineup.decider-either");
        assertThat(level.chance()).isCloseTo(0.5, within(TABLE));
    }

    /** Nobody is barred: a mark only widens what can be said, and asks. */
    @Test
    void a_pair_with_somebody_hurt_is_doubted_more_and_asked() {
        LineupProblem problem = problem(
                DeciderKind.ANY_TWO, Ties.squad("a", 4), Ties.squad("b", 4), Ties.forms(0.5, new double[] {2, 2, 0, 0
                }));
        Pair first = Pair.of("a1", "a2");
        Candidate well = candidate(of(problem), first);
        DeciderAdvice asked = of(problem, PlayerId.of("a2"));
        Candidate hurt = candidate(asked, first);
        assertThat(hurt.chance()).isEqualTo(well.chance());
        assertThat(hurt.low()).isLessThan(well.low());
        assertThat(hurt.high()).isGreaterThan(well.high());
        assertThat(hurt.hurt()).isTrue();
        assertThat(well.hurt()).isFalse();
        assertThat(candidate(asked, Pair.of("a3", "a4")).hurt()).isFalse();
        assertThat(candidate(asked, Pair.of("a3", "a4")).asBest())
                .isGreaterThan(candidate(of(problem), Pair.of("a3", "a4")).asBest());
        assertThat(asked.notes())
                .filteredOn(note -> note.code().equals("lineup.decider-hurt"))
                .singleElement()
                .satisfies(note ->
                        assertThat(note.data().get("players")).asString().contains("a2"));
    }

    @Test
    void tells_who_is_tired_among_those_who_may_be_the_best() {
        PlayerId tired = PlayerId.of("a3");
        Map<PlayerId, Freshness.Load> loads = Map.of(
                tired,
                new Freshness.Load(1, OptionalInt.of(0)),
                PlayerId.of("a1"),
                new Freshness.Load(1, OptionalInt.of(29)));
        DeciderAdvice advice = of(problem(DeciderKind.ANY_TWO, Ties.squad("a", 4), Ties.squad("b", 4), Ties.even())
                .after(new Freshness(loads, Freshness.Cost.USUAL)));
        assertThat(advice.notes())
                .filteredOn(note -> note.code().equals("lineup.decider-tired"))
                .singleElement()
                .satisfies(note -> assertThat(note.data()).containsEntry("players", List.of(tired)));
        assertThat(candidate(advice, Pair.of("a3", "a4")).loss())
                .as("the mean of 1.5 and nothing")
                .isCloseTo(0.75, within(1e-12));
        assertThat(advice.best().orElseThrow().pair()).isEqualTo(Pair.of("a2", "a4"));
    }

    /** Equal forms: the two who do not stand on the sheet are fresher, so they come first; both come off court where all play. */
    @Test
    void before_the_tie_whoever_sits_out_will_be_fresher() {
        LineupProblem problem = problem(DeciderKind.ANY_TWO, Ties.squad("a", 4), Ties.squad("b", 4), Ties.even());
        DeciderAdvice advice =
                DeciderAdvice.planned(problem, Sheet.full(Pair.of("a1", "a2"), Pair.of("a1", "a2")), Set.of());
        assertThat(advice.best().orElseThrow().pair()).isEqualTo(Pair.of("a3", "a4"));
        assertThat(candidate(advice, Pair.of("a1", "a2")).loss())
                .as("straight off court")
                .isEqualTo(Freshness.Cost.USUAL.noRest());
        assertThat(candidate(advice, Pair.of("a3", "a4")).loss()).isZero();
        assertThat(advice.chance()).as("theirs all come off court").isGreaterThan(0.5);
    }
}
