package tiewright.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.conditions.Plays;
import tiewright.event.ClubId;
import tiewright.event.ClubNotes;
import tiewright.event.Directory;
import tiewright.event.DrawFact.TieArranged;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.Held;
import tiewright.event.KeptGame;
import tiewright.event.OfRubber;
import tiewright.event.Pair;
import tiewright.event.PairWish;
import tiewright.event.PlayerId;
import tiewright.event.PlayerWish;
import tiewright.event.PrivateNote;
import tiewright.event.PrivateNote.ChemistryJudged;
import tiewright.event.PrivateNote.FilmDropped;
import tiewright.event.PrivateNote.FilmKept;
import tiewright.event.PrivateNote.Forecast;
import tiewright.event.PrivateNote.FormJudged;
import tiewright.event.PrivateNote.GameGiven;
import tiewright.event.PrivateNote.GameTakenBack;
import tiewright.event.PrivateNote.HalfLifeChosen;
import tiewright.event.PrivateNote.PastGame;
import tiewright.event.PrivateNote.PersonNamed;
import tiewright.event.PrivateNote.PlayerWished;
import tiewright.event.PrivateNote.RubbersPromised;
import tiewright.event.PrivateNote.TieWish;
import tiewright.event.RubberNo;
import tiewright.event.SetUpFact.ClubEntered;
import tiewright.event.SetUpFact.ClubRemoved;
import tiewright.event.SetUpFact.PlayerEntered;
import tiewright.event.SetUpFact.PlayerRemoved;
import tiewright.event.Slot;
import tiewright.event.Stage;
import tiewright.event.TieId;
import tiewright.scoring.Format;
import tiewright.scoring.Score;

class PrivateNotesTest {
    private static final ClubId N = ClubId.of("N");
    private static final ClubId S = ClubId.of("S");
    private static final PlayerId N1 = PlayerId.of("n1");
    private static final PlayerId N2 = PlayerId.of("n2");
    private static final PlayerId N3 = PlayerId.of("n3");
    private static final PlayerId S1 = PlayerId.of("s1");
    private static final TieId TIE = TieId.of("A1");
    private static final FormJudged FORM = new FormJudged(N1, OptionalDouble.of(-2.5), OptionalDouble.empty());
    private static final ChemistryJudged TOGETHER =
            new ChemistryJudged(new Pair(N2, N1), 0, OptionalDouble.empty(), Optional.of(PairWish.TOGETHER));
    private static final ChemistryJudged WELL =
            new ChemistryJudged(new Pair(N2, N3), 1.25, OptionalDouble.of(3), Optional.empty());
    private static final TieWish WISH = new TieWish(TIE, N, List.of(N3, N1), List.of(N2));

    private static final RubbersPromised PROMISE = new RubbersPromised(N2, 2);
    private static final ClubNotes NOTHING = new ClubNotes(Map.of(), Map.of(), Map.of(), Map.of(), OptionalInt.empty());

    @TempDir
    Path folder;

    private Ledger ledger;
    private int keys;

    @BeforeEach
    void twoSquads() {
        ledger = Ledger.open(folder, Asked.CLOCK);
        happened(
                new ClubEntered(N, "North", Optional.empty(), OptionalInt.empty()),
                new ClubEntered(S, "South", Optional.empty(), OptionalInt.empty()),
                player(N1, N),
                player(N2, N),
                player(N3, N),
                player(S1, S));
    }

    @AfterEach
    void close() {
        ledger.close();
    }

    private void reopen() {
        ledger.close();
        ledger = Ledger.open(folder, Asked.CLOCK);
    }

    private void happened(Fact... facts) {
        assertThat(ledger.decide(Asked.request("k" + keys++), Asked.facts(facts)))
                .isInstanceOf(Answer.Done.class);
    }

    private void noted(PrivateNote... notes) {
        assertThat(ledger.decide(Asked.request("k" + keys++), Asked.notes(notes)))
                .isInstanceOf(Answer.Done.class);
    }

    private void note(ClubId club, PrivateNote... notes) {
        assertThat(ledger.decide(Asked.forClub(club, "k" + keys++), Asked.kept(notes)))
                .isEqualTo(new PrivateAnswer.Done(false));
    }

    private static PlayerEntered player(PlayerId player, ClubId club) {
        return new PlayerEntered(player, club, OptionalInt.empty(), Optional.empty(), Optional.empty(), false);
    }

    @Test
    void film_is_kept_for_one_club_game_by_game() {
        String rallies = "game,rally,server,ending,player\n" + "g1,1,,gave,n1\n".repeat(20_000);
        note(N, new FilmKept(N, "g1", "about", "first"), new FilmKept(N, "g2", "about", "second"));
        note(S, new FilmKept(S, "g1", "theirs", "theirs"));
        note(N, new FilmKept(N, "g1", "again", rallies));
        reopen();
        assertThat(ledger.filmsOf(N))
                .containsExactly(new FilmKept(N, "g1", "again", rallies), new FilmKept(N, "g2", "about", "second"));
        note(N, new FilmDropped(N, "g1"));
        assertThat(ledger.filmsOf(N)).extracting(FilmKept::game).containsExactly("g2");
        assertThat(ledger.filmsOf(S)).containsExactly(new FilmKept(S, "g1", "theirs", "theirs"));
    }

    @Test
    void nobody_gives_or_drops_film_of_another_club_and_what_is_refused_leaves_nothing() {
        FilmKept own = new FilmKept(N, "g1", "about", "rallies");
        assertThatThrownBy(() -> note(N, own, new FilmKept(S, "g2", "about", "rallies")))
                .isInstanceOf(IllegalStateException.class);
        assertThat(ledger.filmsOf(N)).isEmpty();
        note(N, own);
        assertThatThrownBy(() -> note(S, new FilmDropped(N, "g1"))).isInstanceOf(IllegalStateException.class);
        assertThat(ledger.filmsOf(N)).containsExactly(own);
        assertThat(own.toString()).doesNotContain("rallies", "g1");
    }

    @Test
    void a_club_that_is_entered_anew_does_not_read_the_film_of_the_one_before() {
        note(N, new FilmKept(N, "g1", "about", "rallies"));
        happened(new PlayerRemoved(N1), new PlayerRemoved(N2), new PlayerRemoved(N3), new ClubRemoved(N));
        happened(new ClubEntered(N, "Northern", Optional.empty(), OptionalInt.empty()));
        assertThat(ledger.filmsOf(N)).isEmpty();
    }

    @Test
    void earlier_games_of_a_club_are_kept_for_it_alone_and_taken_back_by_number() {
        PastGame first = game(2, 11, 4);
        PastGame second = game(1, 11, 7);
        note(N, new GameGiven(N, 1, first), new GameGiven(N, 2, second), new GameGiven(N, 3, first));
        note(S, new GameGiven(S, 1, first));
        reopen();
        assertThat(ledger.pastGamesOf(N))
                .containsExactly(new KeptGame(2, second), new KeptGame(1, first), new KeptGame(3, first));
        assertThat(ledger.pastGamesOf(S)).containsExactly(new KeptGame(1, first));
        assertThat(ledger.pastGames()).as("nothing of it for everybody").isEmpty();
        note(N, new GameTakenBack(N, 1));
        assertThat(ledger.pastGamesOf(N)).extracting(KeptGame::number).containsExactly(2, 3);
        assertThat(ledger.pastGamesOf(S)).hasSize(1);
        assertThatThrownBy(() -> note(S, new GameTakenBack(N, 2))).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> note(S, new GameGiven(N, 4, first))).isInstanceOf(IllegalStateException.class);
        assertThat(new GameGiven(N, 1, first).toString()).doesNotContain("11");
    }

    private static PastGame game(int day, int home, int away) {
        return new PastGame(
                LocalDate.of(2031, 5, day),
                "n1",
                "n2",
                "s1",
                "s2",
                Score.of(home, away),
                Format.sideOut(11),
                Optional.empty());
    }

    /** Wishes are written one player at a time, so that two captains of a club are not in each other's way. */
    @Test
    void one_players_wish_leaves_the_others_of_the_tie_alone() {
        note(N, WISH);
        note(N, new PlayerWished(TIE, N, N2, Optional.of(PlayerWish.PLAY)));
        assertThat(ledger.privateOf(N).tieWishes())
                .isEqualTo(Map.of(TIE, new TieWish(TIE, N, List.of(N3, N1, N2), List.of())));
        note(N, new PlayerWished(TIE, N, N3, Optional.of(PlayerWish.REST)));
        note(N, new PlayerWished(TIE, N, N1, Optional.empty()));
        note(N, new PlayerWished(TIE, N, N2, Optional.empty()));
        assertThat(ledger.privateOf(N).tieWishes()).isEqualTo(Map.of(TIE, new TieWish(TIE, N, List.of(), List.of(N3))));
        note(N, new PlayerWished(TIE, N, N3, Optional.empty()));
        assertThat(ledger.privateOf(N)).isEqualTo(NOTHING);
    }

    /** Whatever a table keeps by the club's code: film, earlier games, forecasts, the half-life and wishes for a tie. */
    @Test
    void a_club_that_is_entered_anew_reads_nothing_of_the_one_before() {
        note(N, new GameGiven(N, 1, game(2, 11, 4)));
        note(N, new HalfLifeChosen(N, OptionalInt.of(90)));
        happened(new PlayerRemoved(N1), new PlayerRemoved(N2), new PlayerRemoved(N3), new ClubRemoved(N));
        happened(new ClubEntered(N, "Northern", Optional.empty(), OptionalInt.empty()));
        assertThat(ledger.pastGamesOf(N)).isEmpty();
        assertThat(ledger.privateOf(N)).isEqualTo(NOTHING);
    }

    @Test
    void a_captain_reads_the_own_notes_and_nobody_elses() {
        note(N, FORM);
        note(N, TOGETHER);
        note(N, WELL);
        note(N, WISH);
        note(N, new HalfLifeChosen(N, OptionalInt.of(90)));
        note(N, new HalfLifeChosen(N, OptionalInt.of(180)));
        note(N, PROMISE);
        reopen();
        assertThat(ledger.privateOf(N))
                .isEqualTo(new ClubNotes(
                        Map.of(N1, FORM),
                        Map.of(TOGETHER.pair(), TOGETHER, WELL.pair(), WELL),
                        Map.of(TIE, WISH),
                        Map.of(N2, PROMISE),
                        OptionalInt.of(180)));
        assertThat(ledger.privateOf(S)).isEqualTo(NOTHING);
    }

    @Test
    void what_was_expected_is_kept_for_a_club_of_the_tie_and_read_by_no_other() {
        Forecast tie = new Forecast(TIE, N, Optional.empty(), 0.625, 1, 0.01);
        Forecast rubber = new Forecast(TIE, N, Optional.of(RubberNo.of(2)), 0.25, -1, 0);
        Forecast again = new Forecast(TIE, N, Optional.of(RubberNo.of(2)), 0.5, 0, 0);
        assertThatThrownBy(() -> note(N, tie)).hasMessageContaining("not N's to keep");
        happened(new TieArranged(TIE, Stage.POOL, Optional.of("A"), 1, Slot.of(N), Slot.of(S)));
        note(N, rubber, tie);
        note(N, again);
        reopen();
        assertThat(ledger.forecasts(N)).containsExactly(again, tie);
        assertThat(ledger.forecasts(S)).isEmpty();
        happened(new TieArranged(TieId.of("A2"), Stage.POOL, Optional.of("A"), 2, Slot.of(S), Slot.of(ClubId.of("W"))));
        assertThatThrownBy(() -> note(N, new Forecast(TieId.of("A2"), N, Optional.empty(), 0.5, 0, 0)))
                .hasMessageContaining("not N's to keep");
    }

    @Test
    void how_much_is_held_is_told_club_by_club_and_kind_by_kind() {
        note(N, FORM, TOGETHER, WELL);
        note(N, new HalfLifeChosen(N, OptionalInt.of(90)));
        note(S, new FormJudged(S1, OptionalDouble.of(1), OptionalDouble.empty()));
        noted(new PersonNamed(N1, "Ada", OptionalInt.empty()), new PersonNamed(S1, "Sol", OptionalInt.empty()));
        Held held = ledger.held();
        assertThat(held.all())
                .containsEntry("person", 2)
                .containsEntry("form", 2)
                .containsEntry("chemistry", 2);
        assertThat(held.ofClubs().get(N))
                .containsEntry("person", 1)
                .containsEntry("form", 1)
                .containsEntry("chemistry", 2)
                .doesNotContainKey("film");
        assertThat(held.ofClubs().get(S))
                .containsEntry("person", 1)
                .containsEntry("form", 1)
                .doesNotContainKey("chemistry");
    }

    @Test
    void a_later_note_replaces_and_an_empty_one_ends() {
        FormJudged better = new FormJudged(N1, OptionalDouble.of(4), OptionalDouble.of(1));
        note(N, FORM);
        note(N, better);
        assertThat(ledger.privateOf(N).forms()).isEqualTo(Map.of(N1, better));
        note(N, new FormJudged(N1, OptionalDouble.empty(), OptionalDouble.empty()));
        note(N, TOGETHER);
        note(N, new ChemistryJudged(TOGETHER.pair(), 0, OptionalDouble.empty(), Optional.empty()));
        note(N, WISH);
        note(N, new TieWish(TIE, N, List.of(), List.of()));
        note(N, new HalfLifeChosen(N, OptionalInt.of(90)));
        note(N, new HalfLifeChosen(N, OptionalInt.empty()));
        note(N, new RubbersPromised(N1, 1));
        note(N, PROMISE);
        note(N, new RubbersPromised(N2, 3));
        assertThat(ledger.privateOf(N).promises())
                .isEqualTo(Map.of(N1, new RubbersPromised(N1, 1), N2, new RubbersPromised(N2, 3)));
        note(N, new RubbersPromised(N1, 0), new RubbersPromised(N2, 0));
        assertThat(ledger.privateOf(N)).isEqualTo(NOTHING);
    }

    @Test
    void a_captain_notes_nothing_about_others_and_nothing_else() {
        for (PrivateNote note : List.of(
                new FormJudged(S1, OptionalDouble.of(1), OptionalDouble.empty()),
                new ChemistryJudged(new Pair(N1, S1), 1, OptionalDouble.empty(), Optional.empty()),
                new TieWish(TIE, S, List.of(), List.of()),
                new HalfLifeChosen(S, OptionalInt.of(30)),
                new RubbersPromised(S1, 1),
                new TieWish(TIE, N, List.of(N1), List.of(S1)),
                new PersonNamed(N1, "Other", OptionalInt.empty()))) {
            assertThatThrownBy(() -> note(N, note))
                    .hasMessage("a decision of N gave a note that is not N's to keep: " + note.kind());
        }
        assertThat(ledger.privateOf(S)).isEqualTo(NOTHING);
        assertThat(ledger.directory().people()).isEmpty();
    }

    @Test
    void what_was_noted_about_a_player_does_not_follow_to_another_club() {
        noted(FORM, TOGETHER, WELL, PROMISE);
        happened(player(N1, S), player(N2, S));
        assertThat(ledger.privateOf(S).promises()).isEmpty();
        assertThat(ledger.privateOf(S).forms()).isEmpty();
        assertThat(ledger.privateOf(S).chemistry()).isEmpty();
        happened(player(N1, N), player(N2, N));
        assertThat(ledger.privateOf(N).forms()).as("gone for good").isEmpty();
        assertThat(ledger.privateOf(N).promises()).as("gone for good").isEmpty();
    }

    @Test
    void notes_go_with_a_removed_player_and_a_removed_club() {
        noted(FORM, WELL, PROMISE, new RubbersPromised(N1, 1));
        happened(new PlayerRemoved(N1));
        happened(player(N1, S));
        assertThat(ledger.privateOf(S).forms()).isEmpty();
        assertThat(ledger.privateOf(S).promises()).isEmpty();
        happened(new ClubRemoved(N));
        happened(player(N2, S), player(N3, S));
        assertThat(ledger.privateOf(S).promises()).isEmpty();
        assertThat(ledger.privateOf(S).chemistry()).isEmpty();
    }

    @Test
    void notes_stay_when_a_player_is_entered_again_in_the_same_squad() {
        noted(FORM, PROMISE);
        happened(player(N1, N), player(N2, N));
        assertThat(ledger.privateOf(N).forms()).isEqualTo(Map.of(N1, FORM));
        assertThat(ledger.privateOf(N).promises()).isEqualTo(Map.of(N2, PROMISE));
    }

    @Test
    void notes_change_neither_the_event_nor_what_others_hear() {
        Event before = ledger.event();
        java.util.List<Event> heard = new java.util.concurrent.CopyOnWriteArrayList<>();
        ledger.onChange(heard::add);
        note(N, FORM);
        note(N, PROMISE);
        noted(WISH);
        assertThat(ledger.event()).isEqualTo(before);
        ledger.close();
        assertThat(heard).isEmpty();
        ledger = Ledger.open(folder, Asked.CLOCK);
    }

    @Test
    void names_are_told_and_kept() throws Exception {
        java.util.concurrent.CountDownLatch heard = new java.util.concurrent.CountDownLatch(1);
        ledger.onChange(event -> heard.countDown());
        noted(
                new PersonNamed(
                        N1, new Directory.Person("Nïa 北 O'Neil", OptionalInt.of(2001), Optional.of(Plays.WOMEN))),
                new PersonNamed(S1, "Sol", OptionalInt.empty()));
        assertThat(heard.await(10, java.util.concurrent.TimeUnit.SECONDS)).isTrue();
        var directory = ledger.directory();
        reopen();
        assertThat(ledger.directory()).isEqualTo(directory);
        assertThat(ledger.directory().name(N1)).isEqualTo("Nïa 北 O'Neil");
        assertThat(ledger.directory().stated()).isEqualTo(Map.of(N1, Plays.WOMEN));
    }

    @Test
    void past_games_are_kept_in_order_and_like_ones_twice() {
        Format format = Format.parse("rally-21").orElseThrow();
        PastGame game = new PastGame(
                LocalDate.of(2025, 11, 2),
                "n1",
                "n2",
                "Somebody Else",
                "s1",
                Score.of(21, 12),
                format,
                Optional.empty());
        PastGame other = new PastGame(
                LocalDate.of(2024, 1, 31), "s1", "x", "n3", "n1", Score.of(19, 21), format, Optional.empty());
        noted(game, other);
        noted(game);
        reopen();
        assertThat(ledger.pastGames()).containsExactly(game, other, game);
    }

    @Test
    void the_rubber_of_an_earlier_game_is_kept_with_it_for_everybody_and_for_a_club() {
        PastGame three = game(2, 11, 4, new OfRubber("final, \"court 1\"", OptionalInt.of(3)));
        PastGame some = game(2, 11, 9, new OfRubber("m2", OptionalInt.empty()));
        noted(three, some);
        note(N, new GameGiven(N, 1, three), new GameGiven(N, 2, some));
        reopen();
        assertThat(ledger.pastGames()).containsExactly(three, some);
        assertThat(ledger.pastGamesOf(N)).containsExactly(new KeptGame(1, three), new KeptGame(2, some));
    }

    private static PastGame game(int day, int home, int away, OfRubber rubber) {
        return new PastGame(
                LocalDate.of(2031, 5, day),
                "n1",
                "n2",
                "s1",
                "s2",
                Score.of(home, away),
                Format.sideOut(11),
                Optional.of(rubber));
    }
}
