package tiewright.rating;

import static org.assertj.core.api.Assertions.assertThat;
import static tiewright.event.Notes.captain;
import static tiewright.event.Notes.kept;
import static tiewright.event.Notes.nothing;
import static tiewright.event.Notes.refused;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Event;
import tiewright.event.KeptGame;
import tiewright.event.Notes;
import tiewright.event.Pair;
import tiewright.event.PairWish;
import tiewright.event.PlayerId;
import tiewright.event.PrivateDecision;
import tiewright.event.PrivateNote.ChemistryJudged;
import tiewright.event.PrivateNote.FormJudged;
import tiewright.event.PrivateNote.GameGiven;
import tiewright.event.PrivateNote.GameTakenBack;
import tiewright.event.PrivateNote.HalfLifeChosen;
import tiewright.event.PrivateNote.PastGame;
import tiewright.scoring.Format;
import tiewright.scoring.Score;

/** What a captain tells the ratings. */
class JudgingTest {
    private static final ClubId N = ClubId.of("N");
    private static final Event DAY = Days.oneTie().event();
    private static final PlayerId N1 = PlayerId.of("N1");
    private static final OptionalDouble NONE = OptionalDouble.empty();

    private static PrivateDecision.Outcome asked(PrivateDecision decision) {
        return decision.decide(DAY, nothing("N"), captain("N"));
    }

    private static JudgeSquad judging(PlayerId player, OptionalDouble form, OptionalDouble doubt) {
        return new JudgeSquad(List.of(new FormJudged(player, form, doubt)));
    }

    private static OptionalDouble of(double value) {
        return OptionalDouble.of(value);
    }

    @Test
    void a_judgement_is_kept_with_its_doubt_or_refused_with_every_reason() {
        assertThat(kept(asked(judging(N1, of(-50), of(50))))).containsExactly(new FormJudged(N1, of(-50), of(50)));
        assertThat(kept(asked(judging(N1, NONE, NONE)))).containsExactly(new FormJudged(N1, NONE, NONE));
        assertThat(refused(asked(judging(PlayerId.of("S1"), of(50.1), of(0)))))
                .containsExactly("notes.not-own-player", "notes.form-out-of-range", "notes.doubt-out-of-range");
        assertThat(refused(asked(judging(N1, of(-50.1), of(50.1)))))
                .containsExactly("notes.form-out-of-range", "notes.doubt-out-of-range");
        assertThat(refused(asked(judging(N1, of(Double.NaN), of(Double.NaN))))).hasSize(2);
    }

    @Test
    void only_a_captain_of_the_own_club_judges() {
        for (PrivateDecision decision : List.of(
                new JudgeSquad(List.of(new FormJudged(N1, of(1), NONE))),
                new JudgePair(Pair.of("N1", "N2"), 1, NONE, Optional.empty()),
                new ChooseHalfLife(OptionalInt.of(9)),
                new GivePastGames(List.of()),
                new TakeBackPastGames(Optional.empty()))) {
            assertThat(refused(decision.decide(DAY, nothing("N"), captain("S"))))
                    .containsExactly("notes.captain-only");
            assertThat(refused(decision.decide(DAY, nothing("N"), Days.organiser())))
                    .containsExactly("notes.captain-only");
            assertThat(refused(decision.decide(DAY, nothing("N"), captain("N"))))
                    .isEmpty();
            assertThat(refused(decision.decide(DAY, nothing("X"), captain("X"))))
                    .contains("notes.club-gone");
        }
    }

    @Test
    void a_pair_is_two_of_the_own_players() {
        Pair pair = Pair.of("N1", "N2");
        assertThat(kept(asked(new JudgePair(pair, 2.5, of(1), Optional.of(PairWish.APART)))))
                .containsExactly(new ChemistryJudged(pair, 2.5, of(1), Optional.of(PairWish.APART)));
        assertThat(refused(asked(new JudgePair(Pair.of("N1", "S2"), 51, of(-1), Optional.empty()))))
                .containsExactly("notes.not-own-player", "notes.form-out-of-range", "notes.doubt-out-of-range");
    }

    @Test
    void a_half_life_is_a_number_of_days() {
        assertThat(kept(asked(new ChooseHalfLife(OptionalInt.of(1)))))
                .containsExactly(new HalfLifeChosen(N, OptionalInt.of(1)));
        assertThat(kept(asked(new ChooseHalfLife(OptionalInt.of(Ageing.MOST_DAYS)))))
                .hasSize(1);
        assertThat(kept(asked(new ChooseHalfLife(OptionalInt.empty()))))
                .containsExactly(new HalfLifeChosen(N, OptionalInt.empty()));
        for (int days : List.of(0, -1, Ageing.MOST_DAYS + 1)) {
            assertThat(refused(asked(new ChooseHalfLife(OptionalInt.of(days))))).containsExactly("notes.half-life");
        }
    }

    private static PastGame game(int away) {
        return new PastGame(
                Days.DATE, "N1", "N2", "S1", "S2", Score.of(11, away), Format.sideOut(11), Optional.empty());
    }

    /** Two like games are two; a list given again adds nothing. */
    @Test
    void earlier_games_are_kept_once_each_under_free_numbers() {
        GivePastGames given = new GivePastGames(List.of(game(1), game(2), game(2)));
        assertThat(kept(given.decide(DAY, Notes.games("N", new KeptGame(7, game(2))), captain("N"))))
                .containsExactly(new GameGiven(N, 8, game(1)), new GameGiven(N, 9, game(2)));
        assertThat(kept(asked(given)))
                .extracting(note -> ((GameGiven) note).number())
                .containsExactly(1, 2, 3);
        assertThat(given.isNeverStale()).isTrue();
        assertThat(given.toString()).doesNotContain("11");
    }

    @Test
    void no_more_than_so_many_earlier_games_are_kept() {
        List<PastGame> most = Collections.nCopies(GivePastGames.MOST, game(1));
        assertThat(kept(asked(new GivePastGames(most)))).hasSize(GivePastGames.MOST);
        assertThat(refused(new GivePastGames(most)
                        .decide(DAY, Notes.games("N", new KeptGame(1, game(2))), captain("N"))))
                .containsExactly("notes.past-too-many");
    }

    @Test
    void games_are_taken_back_by_number_or_all_and_what_is_gone_needs_nothing() {
        var noted = Notes.games("N", new KeptGame(1, game(1)), new KeptGame(4, game(2)));
        assertThat(kept(new TakeBackPastGames(Optional.of(Set.of(4, 5))).decide(DAY, noted, captain("N"))))
                .containsExactly(new GameTakenBack(N, 4));
        assertThat(kept(new TakeBackPastGames(Optional.empty()).decide(DAY, noted, captain("N"))))
                .containsExactly(new GameTakenBack(N, 1), new GameTakenBack(N, 4));
        assertThat(new TakeBackPastGames(Optional.empty()).isNeverStale()).isFalse();
    }
}
