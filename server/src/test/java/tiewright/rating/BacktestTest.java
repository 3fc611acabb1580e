package tiewright.rating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.event.OfRubber;
import tiewright.event.PrivateNote;
import tiewright.scoring.Format;
import tiewright.scoring.Score;

/** What is forecast from what follows from the rules of a backtest; how many games make a rubber from counting. */
class BacktestTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 1);
    private static final LocalDate LATER = LocalDate.of(2026, 3, 1);

    private static PrivateNote.PastGame game(LocalDate date, String four, Score score, Optional<OfRubber> rubber) {
        String[] players = four.split(" ");
        return new PrivateNote.PastGame(
                date, players[0], players[1], players[2], players[3], score, Format.rally(11), rubber);
    }

    private static PrivateNote.PastGame alone(LocalDate date, String four, int home, int away) {
        return game(date, four, Score.of(home, away), Optional.empty());
    }

    /** A game of the rubber m, won or lost by a and b; turned = these stand second in the row. */
    private static PrivateNote.PastGame part(boolean won, boolean turned, OptionalInt bestOf) {
        Score score = won == turned ? Score.of(7, 11) : Score.of(11, 7);
        return game(LATER, turned ? "c d b a" : "a b c d", score, Optional.of(new OfRubber("m", bestOf)));
    }

    private static List<PrivateNote.PastGame> known(PrivateNote.PastGame... asked) {
        List<PrivateNote.PastGame> games = new ArrayList<>();
        games.add(alone(FIRST, "a b c d", 11, 4));
        games.add(alone(FIRST, "a e c d", 11, 6));
        games.addAll(List.of(asked));
        return games;
    }

    private static List<Backtest.Line> tried(List<PrivateNote.PastGame> games, int every) {
        return Backtest.of(games, new Backtest.Stretches(Optional.of(LATER), every), Stated.nothing())
                .orElseThrow()
                .lines();
    }

    private static Backtest.Line last(PrivateNote.PastGame... asked) {
        List<Backtest.Line> lines = tried(known(asked), 30);
        return lines.get(lines.size() - 1);
    }

    @Test
    void a_rubber_is_told_in_the_row_of_its_last_game_from_the_side_of_that_row() {
        OptionalInt three = OptionalInt.of(3);
        List<Backtest.Line> lines =
                tried(known(part(true, false, three), part(false, false, three), part(true, true, three)), 30);
        assertThat(lines).extracting(line -> line.match().isPresent()).containsExactly(false, false, true);
        Backtest.Whole whole = lines.get(2).match().orElseThrow();
        assertThat(whole.won())
                .as("c and d stand first in it and lost the rubber")
                .isFalse();
        assertThat(whole.chance()).isLessThan(lines.get(2).chance()).isLessThan(0.5);
        assertThat(last(part(true, false, three), part(true, false, three))
                        .match()
                        .orElseThrow()
                        .chance())
                .as("the same from the other side")
                .isCloseTo(1 - whole.chance(), within(1e-9));
    }

    @Test
    void a_rubber_that_is_not_over_or_not_of_the_same_four_is_not_told() {
        OptionalInt five = OptionalInt.of(5);
        assertThat(last(part(true, false, five), part(true, false, five)).match())
                .isEmpty();
        assertThat(last(part(true, false, OptionalInt.empty()), part(false, false, OptionalInt.empty()))
                        .match())
                .as("one all")
                .isEmpty();
        PrivateNote.PastGame others =
                game(LATER, "a b c x", Score.of(11, 3), Optional.of(new OfRubber("m", OptionalInt.of(3))));
        assertThat(last(part(true, false, OptionalInt.of(3)), others).match()).isEmpty();
        PrivateNote.PastGame nextDay =
                game(LATER.plusDays(1), "a b c d", Score.of(11, 3), Optional.of(new OfRubber("m", OptionalInt.of(3))));
        assertThat(last(part(true, false, OptionalInt.of(3)), nextDay).match())
                .as("a rubber is played in one day")
                .isEmpty();
    }

    @Test
    void of_how_many_games_it_was_the_best_follows_from_who_won_where_nobody_says() {
        Backtest.Whole said = last(
                        part(true, false, OptionalInt.of(3)),
                        part(false, false, OptionalInt.empty()),
                        part(true, false, OptionalInt.empty()))
                .match()
                .orElseThrow();
        Backtest.Whole counted = last(
                        part(true, false, OptionalInt.empty()),
                        part(false, false, OptionalInt.empty()),
                        part(true, false, OptionalInt.empty()))
                .match()
                .orElseThrow();
        assertThat(counted).isEqualTo(said);
        Backtest.Line single = last(part(true, false, OptionalInt.of(1)));
        assertThat(single.match().orElseThrow().chance()).isEqualTo(single.chance());
        assertThat(single.chance())
                .as("nothing is shared by the only game of a rubber")
                .isEqualTo(last(alone(LATER, "a b c d", 11, 7)).chance());
    }

    @Test
    void rows_come_in_any_order_and_go_out_in_it() {
        List<PrivateNote.PastGame> games = known(
                alone(LATER, "a b c d", 11, 3),
                alone(LATER.plusDays(40), "a e c d", 4, 11),
                alone(LATER.plusDays(2), "c d x y", 11, 8));
        List<Backtest.Line> lines = tried(games, 30);
        Collections.shuffle(games, Seed.fresh().random());
        List<Backtest.Line> shuffled = tried(games, 30);
        assertThat(shuffled)
                .extracting(Backtest.Line::game)
                .containsExactlyElementsOf(games.stream()
                        .filter(game -> !game.date().isBefore(LATER))
                        .toList());
        for (Backtest.Line line : lines) {
            assertThat(shuffled.stream()
                            .filter(other -> other.game().equals(line.game()))
                            .findFirst()
                            .orElseThrow()
                            .chance())
                    .isCloseTo(line.chance(), within(1e-6));
        }
    }

    @Test
    void a_shorter_stretch_lets_a_game_of_the_day_before_speak() {
        List<PrivateNote.PastGame> games =
                known(alone(LATER, "x y z w", 11, 0), alone(LATER.plusDays(1), "x y z w", 11, 0));
        assertThat(tried(games, 30).get(1).chance()).isCloseTo(0.5, within(1e-9));
        assertThat(tried(games, 1).get(1).chance()).isGreaterThan(0.6);
    }

    /** Of six games the third by date ends the first third: floor(6 / 3) + 1. */
    @Test
    void begins_after_a_third_of_the_games_unless_told() {
        List<PrivateNote.PastGame> games = new ArrayList<>();
        for (int day = 5; day >= 0; day--) {
            games.add(alone(FIRST.plusDays(day), "a b c d", 11, 5));
        }
        Backtest tried = Backtest.of(games, new Backtest.Stretches(Optional.empty(), 30), Stated.nothing())
                .orElseThrow();
        assertThat(tried.lines())
                .extracting(line -> line.game().date())
                .containsExactly(FIRST.plusDays(5), FIRST.plusDays(4), FIRST.plusDays(3), FIRST.plusDays(2));
    }

    @Test
    void who_had_won_more_of_the_games_before_is_ahead() {
        assertThat(tried(
                        known(
                                alone(LATER, "a b c d", 11, 3),
                                alone(LATER, "c d a b", 11, 3),
                                alone(LATER, "x y z w", 11, 3)),
                        30))
                .extracting(Backtest.Line::byWins)
                .containsExactly(1, -1, 0);
    }

    /** An even pair stays even, whatever is stated; the surer the spread is nothing, the nearer to even everybody. */
    @Test
    void what_is_stated_is_believed() {
        Stated alike = new Stated(
                ServeRates.USUAL,
                OptionalDouble.of(0),
                OptionalDouble.of(0),
                OptionalDouble.of(0),
                OptionalDouble.of(0));
        Backtest tried = Backtest.of(
                        known(alone(LATER, "a b c d", 11, 3)), new Backtest.Stretches(Optional.of(LATER), 30), alike)
                .orElseThrow();
        assertThat(tried.lines().get(0).chance()).isCloseTo(0.5, within(1e-6));
        assertThat(tried.last()).isEqualTo(new Assumptions(ServeRates.USUAL, 0, 0, 0, 0));
    }
}
