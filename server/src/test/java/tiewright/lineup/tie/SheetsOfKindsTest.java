package tiewright.lineup.tie;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.conditions.Conditions;
import tiewright.conditions.DeciderKind;
import tiewright.conditions.OrderOfStrength;
import tiewright.conditions.Plays;
import tiewright.conditions.Preset;
import tiewright.conditions.RubberKind;
import tiewright.conditions.Setting;
import tiewright.event.Pair;
import tiewright.event.RubberNo;
import tiewright.lineup.Belief;
import tiewright.lineup.Budget;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Squad;
import tiewright.lineup.TieRules;
import tiewright.lineup.Ties;
import tiewright.lineup.order.BlindGame;
import tiewright.sheet.SheetCount;

/** Proposals where rubbers are for women, for men or mixed: the search sees as many sheets as are counted, and the right ones. */
class SheetsOfKindsTest {
    private static final Optional<Plays> WOMEN = Optional.of(Plays.WOMEN);
    private static final Optional<Plays> MEN = Optional.of(Plays.MEN);

    private static Squad squad(String club, List<Optional<Plays>> plays) {
        return new Squad(IntStream.range(0, plays.size())
                .mapToObj(i -> new Squad.Member(
                        Squad.Member.of(club + (i + 1), i + 1).id(), OptionalInt.of(i + 1), true, plays.get(i)))
                .toList());
    }

    private static LineupProblem problem(TieRules rules, Squad ours, Squad theirs, LineupProblem.Against against) {
        return LineupProblem.of(rules, ours, theirs, Ties.random(new Random(3), 8), against, 1);
    }

    @Test
    void the_search_goes_through_exactly_the_sheets_that_are_counted() {
        for (int round = 0; round < 60; round++) {
            Random random = Seed.random(round);
            List<Optional<Plays>> plays = IntStream.range(0, 5 + random.nextInt(3))
                    .mapToObj(
                            any -> List.of(WOMEN, MEN, Optional.<Plays>empty()).get(random.nextInt(3)))
                    .toList();
            List<RubberKind> kinds = Stream.generate(() -> RubberKind.values()[random.nextInt(4)])
                    .limit(3)
                    .toList();
            OrderOfStrength order = OrderOfStrength.values()[random.nextInt(3)];
            int most = 1 + random.nextInt(2);
            TieRules rules = Ties.withKinds(Ties.rules(3, most, order), kinds);
            Board board =
                    new Board(problem(rules, squad("a", plays), squad("b", plays), LineupProblem.Against.STRAIGHT));
            long[] seen = {0};
            SheetSearch.run(board, true, Ranking.MOST_STEPS, line -> {
                seen[0]++;
                return true;
            });
            Conditions conditions = Conditions.of(Preset.CLUB_DAY)
                    .with(Setting.RUBBERS, "3")
                    .with(Setting.RUBBER_KINDS, rules.each().kinds().code(3))
                    .with(Setting.MAX_RUBBERS_PER_PLAYER, Integer.toString(most))
                    .with(Setting.ORDER_OF_STRENGTH, order.code());
            SheetCount counted = SheetCount.of(
                            IntStream.rangeClosed(1, plays.size())
                                    .mapToObj(OptionalInt::of)
                                    .toList(),
                            plays,
                            conditions)
                    .orElseThrow();
            assertThat(seen[0])
                    .as("%s %s %s %d, %s", plays, kinds, order, most, Seed.rerun(round))
                    .isEqualTo(counted.legal().longValue());
        }
    }

    /** By hand: a1 and a2 play in women's rubbers, a3 and a4 in men's; a mixed rubber first, then men's: nobody is left for it. */
    @Test
    void a_rubber_that_nobody_may_fill_stays_empty_wherever_it_stands() {
        TieRules rules = Ties.withKinds(Ties.rules(3), List.of(RubberKind.WOMEN, RubberKind.MIXED, RubberKind.MEN));
        Board board = new Board(problem(
                rules,
                squad("a", List.of(MEN, MEN, WOMEN, MEN, MEN)),
                squad("b", List.of(WOMEN, WOMEN, MEN, MEN, MEN, WOMEN)),
                LineupProblem.Against.STRAIGHT));
        int[] best = Ranking.of(board, true, 1).best().get(0).line();
        assertThat(best[0]).isEqualTo(Board.EMPTY);
        assertThat(best[1]).isNotEqualTo(Board.EMPTY);
        assertThat(best[2]).isNotEqualTo(Board.EMPTY);
        assertThat(LineupSolver.best(board, Budget.usual(1)))
                .hasValueSatisfying(found -> assertThat(Merit.of(board, found))
                        .isEqualTo(Ranking.of(board, true, 1).best().get(0).merit()));
    }

    /** By hand: b1 w, b2 m, b3 m, b4 w, b5 w, b6 m. Women's b1 b4, men's b2 b3, mixed b5 b6. */
    @Test
    void the_other_club_is_expected_with_its_strongest_who_may() {
        TieRules rules = Ties.withKinds(Ties.rules(3), List.of(RubberKind.WOMEN, RubberKind.MEN, RubberKind.MIXED));
        Belief straight = Belief.straight(rules, squad("b", List.of(WOMEN, MEN, MEN, WOMEN, WOMEN, MEN)));
        assertThat(straight.sheets().get(0).sheet().pairs())
                .containsEntry(RubberNo.of(1), Optional.of(Pair.of("b1", "b4")))
                .containsEntry(RubberNo.of(2), Optional.of(Pair.of("b2", "b3")))
                .containsEntry(RubberNo.of(3), Optional.of(Pair.of("b5", "b6")));
        TieRules twoMixed = Ties.withKinds(Ties.rules(3), List.of(RubberKind.MIXED, RubberKind.MEN, RubberKind.MIXED));
        Belief unknown = Belief.unknownOrder(twoMixed, squad("b", List.of(WOMEN, MEN, MEN, WOMEN, MEN, MEN)), 1);
        assertThat(unknown.anyOrder()).isFalse();
        assertThat(unknown.sheets()).hasSize(2);
        assertThat(unknown.sheets())
                .allSatisfy(expected -> assertThat(expected.sheet().pair(RubberNo.of(2)))
                        .isEqualTo(unknown.sheets().get(0).sheet().pair(RubberNo.of(2))));
    }

    @Test
    void a_blind_game_is_played_over_sheets_that_keep_to_the_kinds() {
        TieRules rules = Ties.withKinds(
                Ties.rules(3, 1, OrderOfStrength.NONE, DeciderKind.ANY_TWO),
                List.of(RubberKind.WOMEN, RubberKind.MEN, RubberKind.MIXED));
        List<Optional<Plays>> plays = List.of(WOMEN, MEN, MEN, WOMEN, WOMEN, MEN);
        BlindGame game = BlindGame.of(
                        problem(rules, squad("a", plays), squad("b", plays), LineupProblem.Against.STRAIGHT))
                .orElseThrow();
        assertThat(game.interchangeable()).isFalse();
        assertThat(game.ourSheets()).isEqualTo(9); // 3 x 3 pairs, and then the two who are left
        Map<String, Optional<Plays>> stated =
                Map.of("a1", WOMEN, "a2", MEN, "a3", MEN, "a4", WOMEN, "a5", WOMEN, "a6", MEN);
        game.mix()
                .forEach(one -> one.sheet()
                        .pairs()
                        .forEach((rubber, pair) -> assertThat(rules.each()
                                        .kinds()
                                        .of(rubber.number())
                                        .admits(
                                                stated.get(pair.orElseThrow()
                                                        .first()
                                                        .code()),
                                                stated.get(pair.orElseThrow()
                                                        .second()
                                                        .code())))
                                .isTrue()));
    }
}
