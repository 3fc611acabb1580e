package tiewright.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.rating.Ageing;
import tiewright.rating.Estimate;
import tiewright.rating.Evidence;
import tiewright.rating.FilmedGame;
import tiewright.rating.PastGame;
import tiewright.rating.Prior;
import tiewright.rating.Ratings;
import tiewright.rating.Ratings.Kind;
import tiewright.rating.Seen;
import tiewright.rating.Verdict;
import tiewright.scoring.Format;
import tiewright.scoring.Score;

class RatingWordsTest {
    private static final RatingWords WORDS = RatingWords.ofCodes(Format.sideOut(11));
    private static final LocalDate DAY = LocalDate.of(2026, 5, 2);
    private static final PlayerId A = PlayerId.of("a");

    private static FilmedGame film(Format format, Pair one, Pair two, int rallies, int won) {
        return new FilmedGame(
                Optional.empty(),
                Optional.empty(),
                Optional.of(DAY),
                format,
                one,
                two,
                Optional.empty(),
                new FilmedGame.Served(rallies, won),
                new FilmedGame.Served(0, 0));
    }

    private static Ratings ratings() {
        List<PastGame> games = new ArrayList<>();
        games.add(new PastGame(DAY, Pair.of("a", "b"), Pair.of("x", "y"), Score.of(11, 4), Format.sideOut(11)));
        for (String other : List.of("p", "q", "r", "s", "t")) {
            games.add(new PastGame(DAY, Pair.of("a", "b"), Pair.of("x", other), Score.of(11, 9), Format.sideOut(11)));
        }
        return Ratings.of(
                Prior.none(),
                new Evidence(
                        games,
                        List.of(
                                film(Format.sideOut(11), Pair.of("a", "b"), Pair.of("x", "y"), 1, 1),
                                film(Format.rally(15), Pair.of("a", "c"), Pair.of("x", "y"), 90, 50)),
                        new Ageing(DAY, OptionalInt.of(90))),
                List.of(List.of(A, PlayerId.of("b"), PlayerId.of("c"))));
    }

    private static Ratings.Line line(Ratings ratings, int index) {
        return ratings.lines().get(index);
    }

    @Test
    void a_player_hears_best_guess_range_a_game_what_it_rests_on_and_whom_they_played() {
        Ratings ratings = ratings();
        assertThat(WORDS.sentences(ratings, line(ratings, 0))).hasSize(4).satisfies(said -> {
            assertThat(said.get(0))
                    .matches(
                            "a: best guess [+-]\\d+\\.\\d rallies in 100; could be [+-]\\S+ to [+-]\\S+\\. With an even partner this"
                                    + " would move a game to 11 \\(side-out\\) from 50 to about \\d+ %; could be \\d+ to \\d+ %\\.");
            assertThat(said.get(1))
                    .isEqualTo(
                            "Rests on 8 games, 91 rallies on film, and on an even start, for nobody has given a rating.");
            assertThat(said.get(2))
                    .startsWith("Played against x + y (3 games, 91 rallies on film), ")
                    .contains("(1 game)", "and 2 more pairs; on the whole pairs rated");
            assertThat(said.get(3)).startsWith("A first look");
        });
        assertThat(WORDS.sentences(ratings, line(ratings, 3)))
                .anyMatch(sentence -> sentence.startsWith("a + b as a pair, beyond what each brings"))
                .anyMatch(sentence -> sentence.startsWith("All told the pair is rated"))
                .anyMatch(sentence -> sentence.contains("cannot be told apart"));
        assertThat(WORDS.counted(line(ratings, 0))).isEqualTo("from 8 games, 91 rallies on film");
    }

    @Test
    void the_captains_own_judgement_is_named_only_where_there_is_one() {
        Ratings judged = Ratings.of(
                new Prior(Map.of(A, Estimate.of(3, 4)), Map.of()),
                new Evidence(List.of(), List.of(), Ageing.none()),
                List.of(List.of(A, PlayerId.of("b"))));
        assertThat(WORDS.sentences(judged, line(judged, 0)))
                .contains("Nothing was seen yet: this is the captain's own judgement.");
        assertThat(WORDS.sentences(judged, line(judged, 1)))
                .contains("Nothing was seen yet and nobody has given a rating: an even start with wide doubt.")
                .noneMatch(sentence -> sentence.contains("judgement"));
    }

    @Test
    void a_rally_event_hears_of_games_as_it_scores_them() {
        Ratings ratings = ratings();
        assertThat(RatingWords.ofCodes(Format.rally(21))
                        .sentences(ratings, line(ratings, 0))
                        .get(0))
                .contains("would move a game to 21 (every rally a point) from 50")
                .doesNotContain("side-out");
    }

    /** Two rallies in a hundred are 61 % of games to 11: worked out with plain recursion, as in {@code RallyModelTest}. */
    @Test
    void two_rallies_in_a_hundred_move_a_game_from_50_to_61() {
        Ratings.Line pair = new Ratings.Line(
                Kind.CHEMISTRY,
                List.of(A, PlayerId.of("b")),
                Estimate.of(2, 2.55),
                Estimate.of(2, 2.55),
                new Seen(0, 0, List.of()),
                Verdict.NO_DIFFERENCE,
                true);
        assertThat(WORDS.sentences(ratings(), pair).get(0))
                .startsWith(
                        "a + b as a pair, beyond what each brings: best guess +2.0 rallies in 100; could be -3.0 to +7.0.")
                .contains("from 50 to about 61 %");
    }

    @Test
    void notes_say_what_all_of_it_rests_on_and_how_not_to_read_it() {
        assertThat(WORDS.notes(ratings()))
                .contains(
                        "All of it rests on 8 games, with 91 rallies on film. A game that is on a card and on film counts once.",
                        "Older games count less: one that is 90 days old counts half.",
                        "Small samples: they describe past film and do not judge a person.")
                .anyMatch(
                        note -> note.matches(
                                "On film the side that serves won \\d+ of 100 rallies between equal pairs where only the server scores; could be \\d+ to \\d+\\."))
                .anyMatch(note -> note.contains("in rally scoring"));
        Ratings nothing = Ratings.of(Prior.none(), Evidence.of(List.of()), List.of(List.of(A)));
        assertThat(WORDS.notes(nothing))
                .contains(
                        "Before any game players are taken to differ by about 6.0 rallies in 100. Pairs differ beyond that by about 3.0.",
                        "Older games count as much as new ones.")
                .hasSize(4);
        assertThat(WORDS.tooLittle(nothing))
                .contains("There is not enough film of 1 player and 0 pairs to say more than the table does.");
        assertThat(WORDS.sentences(nothing, line(nothing, 0)))
                .anyMatch(sentence -> sentence.startsWith("Nothing was seen yet"));
    }

    @Test
    void every_verdict_has_its_words() {
        Map<Kind, List<Verdict>> never =
                Map.of(Kind.FORM, List.of(Verdict.CANNOT_TELL_APART), Kind.CHEMISTRY, List.of(Verdict.FIRST_LOOK));
        for (Verdict verdict : Verdict.values()) {
            assertThat(WORDS.brief(verdict)).isNotEmpty();
            for (Kind kind : Kind.values()) {
                String code = "rating.verdict." + kind.code() + "." + verdict.code();
                assertThat(Words.has(code)).as(code).isEqualTo(!never.get(kind).contains(verdict));
            }
        }
        assertThat(RatingWords.figure(-0.04)).isEqualTo("+0.0");
    }
}
