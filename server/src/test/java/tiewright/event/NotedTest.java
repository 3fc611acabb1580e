package tiewright.event;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tiewright.event.PrivateNote.ChemistryJudged;
import tiewright.event.PrivateNote.FilmDropped;
import tiewright.event.PrivateNote.FilmKept;
import tiewright.event.PrivateNote.FormJudged;
import tiewright.event.PrivateNote.GameGiven;
import tiewright.event.PrivateNote.GameTakenBack;
import tiewright.event.PrivateNote.HalfLifeChosen;
import tiewright.event.PrivateNote.HurtMarked;
import tiewright.event.PrivateNote.PlayerForgotten;
import tiewright.event.PrivateNote.PlayerWished;
import tiewright.event.PrivateNote.RubbersPromised;
import tiewright.event.PrivateNote.TieWish;
import tiewright.scoring.Format;
import tiewright.scoring.Score;

/** What a note is about, when it says nothing, and what stands in its place. */
class NotedTest {
    private static final ClubId N = ClubId.of("N");
    private static final PlayerId N1 = PlayerId.of("N1");
    private static final PlayerId N2 = PlayerId.of("N2");
    private static final TieId A1 = TieId.of("A1");
    private static final FormJudged FORM = new FormJudged(N1, OptionalDouble.of(3), OptionalDouble.empty());
    private static final ChemistryJudged PAIR =
            new ChemistryJudged(Pair.of(N1, N2), 1, OptionalDouble.empty(), Optional.of(PairWish.APART));
    private static final TieWish WISHES = new TieWish(A1, N, List.of(N1), List.of(N2));
    private static final PlayerWished PLAY = new PlayerWished(A1, N, N1, Optional.of(PlayerWish.PLAY));
    private static final RubbersPromised PROMISE = new RubbersPromised(N2, 2);
    private static final HalfLifeChosen HALF = new HalfLifeChosen(N, OptionalInt.of(90));
    private static final HurtMarked HURT = new HurtMarked(N2, true);
    private static final FilmKept FILM = new FilmKept(N, "g1", "about", "rallies");
    private static final GameGiven GAME = new GameGiven(
            N,
            4,
            new PrivateNote.PastGame(
                    Days.DATE, "N1", "N2", "S1", "S2", Score.of(11, 4), Format.sideOut(11), Optional.empty()));

    private static final Noted ALL = new Noted(
            N,
            new ClubNotes(
                    Map.of(N1, FORM), Map.of(PAIR.pair(), PAIR), Map.of(A1, WISHES), Map.of(N2, PROMISE), HALF.days()),
            List.of(FILM),
            List.of(new KeptGame(4, GAME.game())),
            Set.of(N2));

    @Test
    void what_stands_in_the_place_of_a_note_is_the_note_of_its_subject() {
        for (PrivateNote note : List.of(FORM, PAIR, WISHES, PLAY, PROMISE, HALF, HURT, FILM, GAME)) {
            assertThat(ALL.instead(note)).as(note.kind().name()).contains(note);
            assertThat(Notes.nothing("N").instead(note)).as(note.kind().name()).isEmpty();
        }
        assertThat(ALL.instead(new FilmDropped(N, "g1"))).contains(FILM);
        assertThat(ALL.instead(new FilmDropped(N, "g2"))).isEmpty();
        assertThat(ALL.instead(new GameTakenBack(N, 4))).contains(GAME);
        assertThat(ALL.instead(new GameTakenBack(N, 5))).isEmpty();
        assertThat(ALL.instead(new PlayerWished(A1, N, N2, Optional.empty())))
                .contains(new PlayerWished(A1, N, N2, Optional.of(PlayerWish.REST)));
        assertThat(ALL.instead(new PlayerWished(TieId.of("A2"), N, N2, Optional.empty())))
                .isEmpty();
    }

    @Test
    void a_note_that_says_nothing_ends_what_was_noted() {
        assertThat(Stream.of(FORM, PAIR, WISHES, PLAY, PROMISE, HALF, HURT, FILM, GAME))
                .noneMatch(PrivateNote::ends);
        assertThat(Stream.of(
                        new FormJudged(N1, OptionalDouble.empty(), OptionalDouble.empty()),
                        new ChemistryJudged(PAIR.pair(), 0, OptionalDouble.empty(), Optional.empty()),
                        new TieWish(A1, N, List.of(), List.of()),
                        new PlayerWished(A1, N, N1, Optional.empty()),
                        new RubbersPromised(N2, 0),
                        new HalfLifeChosen(N, OptionalInt.empty()),
                        new HurtMarked(N2, false),
                        new FilmDropped(N, "g1"),
                        new GameTakenBack(N, 4)))
                .allMatch(PrivateNote::ends);
        assertThat(Stream.of(
                        new FormJudged(N1, OptionalDouble.empty(), OptionalDouble.of(1)),
                        new ChemistryJudged(PAIR.pair(), 0, OptionalDouble.of(1), Optional.empty()),
                        new ChemistryJudged(PAIR.pair(), 0, OptionalDouble.empty(), Optional.of(PairWish.APART)),
                        new ChemistryJudged(PAIR.pair(), 1, OptionalDouble.empty(), Optional.empty()),
                        new TieWish(A1, N, List.of(), List.of(N1)),
                        new TieWish(A1, N, List.of(N1), List.of())))
                .noneMatch(PrivateNote::ends);
    }

    private static NoteSubject about(PrivateNote note) {
        return NoteSubject.of(note).orElseThrow();
    }

    @Test
    void two_notes_touch_only_where_they_are_about_the_same() {
        List<PrivateNote> apart = List.of(
                FORM,
                new FormJudged(N2, OptionalDouble.of(3), OptionalDouble.empty()),
                PAIR,
                new ChemistryJudged(Pair.of("N1", "N3"), 1, OptionalDouble.empty(), Optional.empty()),
                PLAY,
                new PlayerWished(A1, N, N2, Optional.of(PlayerWish.PLAY)),
                new PlayerWished(TieId.of("A2"), N, N1, Optional.of(PlayerWish.PLAY)),
                PROMISE,
                new RubbersPromised(N1, 1),
                HALF,
                HURT,
                FILM,
                new FilmKept(N, "g2", "about", "rallies"),
                GAME,
                new GameGiven(N, 5, GAME.game()));
        for (PrivateNote one : apart) {
            for (PrivateNote other : apart) {
                assertThat(about(one).isTouchedBy(about(other)))
                        .as(one.kind() + " by " + other.kind())
                        .isEqualTo(one == other);
            }
        }
        assertThat(about(FILM).isTouchedBy(about(new FilmDropped(N, "g1")))).isTrue();
        assertThat(about(GAME).isTouchedBy(about(new GameTakenBack(N, 4)))).isTrue();
    }

    @Test
    void forgetting_a_player_touches_every_note_about_that_player() {
        NoteSubject forgotten = about(new PlayerForgotten(N, N2, List.of()));
        assertThat(about(PAIR).isTouchedBy(forgotten)).isTrue();
        assertThat(about(PROMISE).isTouchedBy(forgotten)).isTrue();
        assertThat(about(new PlayerWished(A1, N, N2, Optional.empty())).isTouchedBy(forgotten))
                .isTrue();
        assertThat(about(FORM).isTouchedBy(forgotten)).isFalse();
        assertThat(about(HALF).isTouchedBy(forgotten)).isFalse();
    }

    @Test
    void what_is_no_clubs_to_note_is_about_nothing() {
        assertThat(NoteSubject.of(new PrivateNote.PersonNamed(N1, "Name", OptionalInt.empty())))
                .isEmpty();
        assertThat(NoteSubject.of(GAME.game())).isEmpty();
    }

    @Test
    void a_wish_about_one_player_takes_the_place_of_the_earlier_one_and_leaves_the_others() {
        PlayerId n3 = PlayerId.of("N3");
        TieWish wishes = new TieWish(A1, N, List.of(N1, n3), List.of(N2));
        assertThat(wishes.with(new PlayerWished(A1, N, N1, Optional.of(PlayerWish.REST))))
                .isEqualTo(new TieWish(A1, N, List.of(n3), List.of(N2, N1)));
        assertThat(wishes.with(new PlayerWished(A1, N, N1, Optional.of(PlayerWish.PLAY))))
                .isEqualTo(new TieWish(A1, N, List.of(n3, N1), List.of(N2)));
        assertThat(wishes.with(new PlayerWished(A1, N, N2, Optional.empty())))
                .isEqualTo(new TieWish(A1, N, List.of(N1, n3), List.of()));
        assertThat(wishes.of(N1)).contains(PlayerWish.PLAY);
        assertThat(wishes.of(N2)).contains(PlayerWish.REST);
        assertThat(wishes.of(PlayerId.of("N4"))).isEmpty();
    }

    @Test
    void a_forecast_is_about_its_tie_or_one_rubber_of_it() {
        assertThat(about(forecast(Optional.empty())).what()).isEqualTo("A1");
        assertThat(about(forecast(Optional.of(RubberNo.of(2)))).what()).isEqualTo("A1,2");
    }

    private static PrivateNote forecast(Optional<RubberNo> part) {
        return new PrivateNote.Forecast(A1, N, part, 0.5, 0, 0);
    }
}
