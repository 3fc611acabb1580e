package tiewright.event;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.event.PrivateNote.PastGame;
import tiewright.scoring.Format;
import tiewright.scoring.Score;

class SameGameTest {
    private static PastGame game(int day, String home1, String home2, String away1, String away2, int home, int away) {
        return new PastGame(
                LocalDate.of(2026, 5, day),
                home1,
                home2,
                away1,
                away2,
                Score.of(home, away),
                Format.sideOut(11),
                Optional.empty());
    }

    private static SameGame same(int day, String home1, String home2, String away1, String away2, int home, int away) {
        return SameGame.of(game(day, home1, home2, away1, away2, home, away));
    }

    @Test
    void a_game_is_the_same_whichever_side_or_partner_was_written_first() {
        SameGame game = same(2, "N1", "X", "B", "A", 11, 4);
        assertThat(same(2, "X", "N1", "A", "B", 11, 4)).isEqualTo(game);
        assertThat(same(2, "A", "B", "N1", "X", 4, 11)).isEqualTo(game);
        assertThat(game.pair()).as("the side whose codes come first").containsExactly("A", "B");
        assertThat(game.others()).containsExactly("N1", "X");
        assertThat(game.score()).isEqualTo(Score.of(4, 11));
        assertThat(SameGame.of(LocalDate.of(2026, 5, 2), Pair.of("A", "B"), Pair.of("X", "N1"), Score.of(4, 11)))
                .isEqualTo(game);
    }

    @Test
    void another_day_score_winner_player_or_pairing_is_another_game() {
        SameGame game = same(2, "N1", "X", "A", "B", 11, 4);
        assertThat(List.of(
                        same(3, "N1", "X", "A", "B", 11, 4),
                        same(2, "N1", "X", "A", "B", 11, 5),
                        same(2, "N1", "X", "A", "B", 4, 11),
                        same(2, "N1", "X", "A", "C", 11, 4),
                        same(2, "N1", "A", "X", "B", 11, 4)))
                .doesNotContain(game);
    }

    @Test
    void as_many_alike_are_known_as_are_known() {
        PastGame game = game(2, "N1", "X", "A", "B", 11, 4);
        PastGame other = game(2, "N1", "X", "A", "B", 11, 5);
        List<PastGame> given = List.of(game, other, game, game);
        assertThat(SameGame.beyond(List.of(), given, SameGame::of)).isEqualTo(given);
        assertThat(SameGame.beyond(List.of(SameGame.of(game)), given, SameGame::of))
                .containsExactly(other, game, game);
        assertThat(SameGame.beyond(Collections.nCopies(4, SameGame.of(game)), given, SameGame::of))
                .containsExactly(other);
    }

    /** Against taking one out of a list for each one known; and what was given once is all known when it is given again. */
    @RepeatedTest(200)
    void any_two_lists_make_the_larger_number_of_each_game(RepetitionInfo round) {
        Random random = Seed.random(round.getCurrentRepetition());
        List<PastGame> known = list(random);
        List<PastGame> given = list(random);
        List<SameGame> same = known.stream().map(SameGame::of).toList();
        List<SameGame> left = new ArrayList<>(same);
        List<PastGame> expected =
                given.stream().filter(game -> !left.remove(SameGame.of(game))).toList();
        String rerun = Seed.rerun(round.getCurrentRepetition());
        assertThat(SameGame.beyond(same, given, SameGame::of)).as(rerun).isEqualTo(expected);
        List<PastGame> all = new ArrayList<>(known);
        all.addAll(expected);
        assertThat(SameGame.beyond(all.stream().map(SameGame::of).toList(), given, SameGame::of))
                .as(rerun)
                .isEmpty();
    }

    private static List<PastGame> list(Random random) {
        List<PastGame> games = new ArrayList<>();
        for (int i = random.nextInt(12); i > 0; i--) {
            List<String> four = new ArrayList<>(List.of("a", "b", "c", "d"));
            Collections.shuffle(four, random);
            boolean won = random.nextBoolean();
            games.add(game(
                    1 + random.nextInt(2),
                    four.get(0),
                    four.get(1),
                    four.get(2),
                    four.get(3),
                    won ? 11 : 4,
                    won ? 4 : 11));
        }
        return games;
    }
}
