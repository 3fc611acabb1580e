package tiewright.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.Fact;
import tiewright.event.NoteSubject;
import tiewright.event.PlayerId;
import tiewright.event.PlayerWish;
import tiewright.event.PrivateDecision;
import tiewright.event.PrivateNote;
import tiewright.event.PrivateNote.FilmDropped;
import tiewright.event.PrivateNote.FilmKept;
import tiewright.event.PrivateNote.FormJudged;
import tiewright.event.PrivateNote.HurtMarked;
import tiewright.event.PrivateNote.PlayerForgotten;
import tiewright.event.PrivateNote.PlayerWished;
import tiewright.event.PrivateNote.RubbersPromised;
import tiewright.event.Refusal;
import tiewright.event.Role;
import tiewright.event.SetUpFact.ClubEntered;
import tiewright.event.SetUpFact.ClubRemoved;
import tiewright.event.SetUpFact.PlayerEntered;
import tiewright.event.SetUpFact.PlayerRemoved;
import tiewright.event.TieId;

/** The door of private decisions: keys, what a form has seen, two who write at once. */
class PrivateDecisionsTest {
    private static final ClubId N = ClubId.of("N");
    private static final ClubId S = ClubId.of("S");
    private static final PlayerId N1 = PlayerId.of("n1");
    private static final PlayerId N2 = PlayerId.of("n2");
    private static final TieId TIE = TieId.of("A1");
    private static final FormJudged THREE = form(N1, 3);
    private static final FormJudged FOUR = form(N1, 4);

    @TempDir
    Path folder;

    private Ledger ledger;
    private int keys;

    @BeforeEach
    void twoSquads() {
        ledger = Ledger.open(folder, Asked.CLOCK);
        happened(club(N), club(S), player(N1, N), player(N2, N), player(PlayerId.of("s1"), S));
    }

    @AfterEach
    void close() {
        ledger.close();
    }

    private static ClubEntered club(ClubId club) {
        return new ClubEntered(club, "Club", Optional.empty(), OptionalInt.empty());
    }

    private static PlayerEntered player(PlayerId player, ClubId club) {
        return new PlayerEntered(player, club, OptionalInt.empty(), Optional.empty(), Optional.empty(), false);
    }

    private static FormJudged form(PlayerId player, double form) {
        return new FormJudged(player, OptionalDouble.of(form), OptionalDouble.empty());
    }

    private static PlayerWished wish(PlayerId player, PlayerWish wish) {
        return new PlayerWished(TIE, N, player, Optional.of(wish));
    }

    private void happened(Fact... facts) {
        assertThat(ledger.decide(Asked.request("k" + keys++), Asked.facts(facts)))
                .isInstanceOf(Answer.Done.class);
    }

    private void reopen() {
        ledger.close();
        ledger = Ledger.open(folder, Asked.CLOCK);
    }

    private PrivateAnswer asked(String who, long seen, PrivateNote... notes) {
        Actor by = new Actor(Role.CAPTAIN, Optional.of(N), who, "");
        return ledger.decide(new PrivateRequest(N, who + keys++, by, OptionalLong.of(seen)), Asked.kept(notes));
    }

    private static List<PrivateAnswer.Clash> clashes(PrivateAnswer answer) {
        assertThat(answer).isInstanceOf(PrivateAnswer.Stale.class);
        return ((PrivateAnswer.Stale) answer).clashes();
    }

    private void done(PrivateAnswer answer) {
        assertThat(answer).isEqualTo(new PrivateAnswer.Done(false));
    }

    @Test
    void the_same_form_sent_twice_counts_once_also_after_a_restart() {
        PrivateRequest request = Asked.forClub(N, "one form");
        done(ledger.decide(request, Asked.kept(THREE)));
        done(ledger.decide(Asked.forClub(N, "another"), Asked.kept(FOUR)));
        assertThat(ledger.decide(request, Asked.kept(THREE))).isEqualTo(new PrivateAnswer.Done(true));
        reopen();
        assertThat(ledger.decide(request, Asked.kept(THREE))).isEqualTo(new PrivateAnswer.Done(true));
        assertThat(ledger.privateOf(N).forms()).containsEntry(N1, FOUR);
        assertThat(ledger.noted(N)).isEqualTo(2);
    }

    /** A key is a club's own: nobody can use up the key of somebody else, nor learn that it was used. */
    @Test
    void a_key_is_good_within_its_club_alone() {
        done(ledger.decide(Asked.forClub(S, "key"), Asked.kept(form(PlayerId.of("s1"), 1))));
        done(ledger.decide(Asked.forClub(N, "key"), Asked.kept(THREE)));
        assertThat(ledger.decide(Asked.request("key"), Asked.facts(player(N1, N))))
                .isInstanceOf(Answer.Done.class);
    }

    @Test
    void two_who_note_something_else_about_the_same_are_both_told() {
        long seen = ledger.noted(N);
        done(asked("captain", seen, THREE));
        assertThat(clashes(asked("deputy", seen, FOUR)))
                .containsExactly(new PrivateAnswer.Clash(
                        NoteSubject.of(FOUR).orElseThrow(),
                        "captain",
                        Asked.NINE,
                        Optional.of(THREE),
                        Optional.of(FOUR)));
        assertThat(ledger.privateOf(N).forms()).as("nothing of it is kept").containsEntry(N1, THREE);
        done(asked("deputy", ledger.noted(N), FOUR));
        assertThat(ledger.privateOf(N).forms()).containsEntry(N1, FOUR);
    }

    @Test
    void a_form_stays_old_after_a_restart() {
        done(asked("captain", 0, THREE));
        reopen();
        assertThat(clashes(asked("deputy", 0, FOUR))).hasSize(1);
    }

    @Test
    void what_is_about_something_else_or_says_the_same_is_in_nobodys_way() {
        done(asked("captain", 0, wish(N1, PlayerWish.PLAY), THREE));
        done(asked("deputy", 0, wish(N2, PlayerWish.REST)));
        done(asked("deputy", 0, form(N2, 1), new RubbersPromised(N1, 1)));
        done(asked("deputy", 0, THREE));
        assertThat(ledger.privateOf(N).tieWishes().get(TIE))
                .isEqualTo(new PrivateNote.TieWish(TIE, N, List.of(N1), List.of(N2)));
        assertThat(clashes(asked("deputy", 0, wish(N1, PlayerWish.REST)))).hasSize(1);
    }

    @Test
    void ending_what_was_changed_meanwhile_is_asked_again_and_ending_what_has_ended_is_not() {
        done(asked("captain", 0, new FilmKept(N, "g1", "about", "first")));
        long seen = ledger.noted(N);
        done(asked("captain", seen, new FilmKept(N, "g1", "about", "more")));
        assertThat(clashes(asked("deputy", seen, new FilmDropped(N, "g1"))))
                .extracting(PrivateAnswer.Clash::asked)
                .containsExactly(Optional.empty());
        done(asked("captain", ledger.noted(N), new FilmDropped(N, "g1")));
        done(asked("deputy", seen, new FilmDropped(N, "g1")));
    }

    @Test
    void of_a_set_nothing_is_kept_where_one_of_it_clashes() {
        done(asked("captain", 0, new FilmKept(N, "g2", "about", "captain's")));
        PrivateAnswer answer = asked(
                "deputy", 0, new FilmKept(N, "g1", "about", "deputy's"), new FilmKept(N, "g2", "about", "deputy's"));
        assertThat(clashes(answer)).extracting(clash -> clash.subject().what()).containsExactly("g2");
        assertThat(ledger.filmsOf(N)).containsExactly(new FilmKept(N, "g2", "about", "captain's"));
    }

    @Test
    void what_only_adds_is_never_stale_and_neither_is_a_form_that_does_not_say_what_it_saw() {
        done(asked("captain", 0, THREE));
        PrivateDecision adds = new PrivateDecision() {
            @Override
            public Outcome decide(tiewright.event.Event event, tiewright.event.Noted noted, Actor by) {
                return Kept.of(FOUR);
            }

            @Override
            public boolean isNeverStale() {
                return true;
            }
        };
        Actor by = Asked.captain(N);
        done(ledger.decide(new PrivateRequest(N, "adds", by, OptionalLong.of(0)), adds));
        done(ledger.decide(PrivateRequest.of(N, "unsaid", by), Asked.kept(THREE)));
    }

    @Test
    void a_note_about_a_player_who_was_forgotten_meanwhile_is_asked_again() {
        done(asked("captain", 0, THREE));
        long seen = ledger.noted(N);
        done(ledger.forget(Asked.forClub(N, "forget"), Asked.kept(new PlayerForgotten(N, N1, List.of()))));
        assertThat(ledger.privateOf(N).forms()).isEmpty();
        assertThat(clashes(asked("deputy", seen, FOUR)))
                .containsExactly(new PrivateAnswer.Clash(
                        NoteSubject.of(FOUR).orElseThrow(),
                        "captain",
                        Asked.NINE,
                        Optional.empty(),
                        Optional.of(FOUR)));
        done(asked("deputy", ledger.noted(N), FOUR));
    }

    @Test
    void a_refusal_changes_nothing_and_is_not_remembered() {
        PrivateRequest request = Asked.forClub(N, "key");
        List<Refusal> reasons = List.of(Refusal.of("notes.captain-only"));
        PrivateAnswer refused = ledger.decide(request, (event, noted, by) -> new PrivateDecision.Refused(reasons));
        assertThat(refused).isEqualTo(new PrivateAnswer.Refused(reasons));
        assertThat(ledger.noted(N)).isZero();
        assertThat(ledger.forget(Asked.forClub(N, "f"), (event, noted, by) -> new PrivateDecision.Refused(reasons)))
                .isEqualTo(new PrivateAnswer.Refused(reasons));
        done(ledger.decide(request, Asked.kept(THREE)));
    }

    @Test
    void each_clubs_changes_are_counted_for_it_alone() {
        done(asked("captain", 0, THREE, wish(N1, PlayerWish.PLAY)));
        done(asked("captain", 1, new RubbersPromised(N1, 1)));
        assertThat(ledger.noted(N)).isEqualTo(2);
        assertThat(ledger.noted(S)).isZero();
        done(ledger.decide(Asked.forClub(S, "s"), Asked.kept(form(PlayerId.of("s1"), 1))));
        assertThat(ledger.noted(N)).isEqualTo(2);
        assertThat(ledger.noted(S)).isEqualTo(1);
        reopen();
        assertThat(ledger.noted(N)).isEqualTo(2);
    }

    /** A folder that is brought in holds notes too: they count for the forms of the club. */
    @Test
    void notes_that_come_by_another_door_are_seen_as_well() {
        ledger.decide(Asked.request("import"), Asked.notes(THREE, new HurtMarked(N2, true)));
        assertThat(ledger.noted(N)).isEqualTo(1);
        assertThat(clashes(asked("deputy", 0, FOUR)))
                .extracting(PrivateAnswer.Clash::by)
                .containsExactly("desk 2");
    }

    @Test
    void a_decision_sees_what_its_club_noted_and_nothing_of_others() {
        done(ledger.decide(Asked.forClub(S, "s"), Asked.kept(new HurtMarked(PlayerId.of("s1"), true))));
        done(asked("captain", 0, THREE, new HurtMarked(N2, true), new FilmKept(N, "g", "about", "rallies")));
        List<tiewright.event.Noted> seen = new ArrayList<>();
        ledger.decide(Asked.forClub(N, "look"), (event, noted, by) -> {
            seen.add(noted);
            return PrivateDecision.Kept.of();
        });
        assertThat(seen.get(0).club()).isEqualTo(N);
        assertThat(seen.get(0).notes()).isEqualTo(ledger.privateOf(N));
        assertThat(seen.get(0).films()).extracting(FilmKept::game).containsExactly("g");
        assertThat(seen.get(0).hurt()).containsExactly(N2);
    }

    /** Whoever is second to a thing is told; with so many at once every wish is kept or its writer knows. */
    @Test
    void of_many_who_write_at_once_one_is_kept_and_the_others_are_told() throws Exception {
        ExecutorService many = Executors.newFixedThreadPool(8);
        CountDownLatch begin = new CountDownLatch(1);
        try {
            List<Future<PrivateAnswer>> answers = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                FormJudged mine = form(N1, i + 1);
                PrivateRequest request = new PrivateRequest(N, "writer" + i, Asked.captain(N), OptionalLong.of(0));
                answers.add(many.submit(() -> {
                    begin.await();
                    return ledger.decide(request, Asked.kept(mine));
                }));
            }
            begin.countDown();
            int kept = 0;
            for (Future<PrivateAnswer> answer : answers) {
                kept += answer.get() instanceof PrivateAnswer.Done ? 1 : 0;
            }
            assertThat(kept).isEqualTo(1);
        } finally {
            many.shutdownNow();
        }
    }

    @Test
    void a_club_that_is_entered_anew_finds_no_answered_form_and_no_old_one_fits() {
        PrivateRequest request = Asked.forClub(N, "key");
        done(ledger.decide(request, Asked.kept(THREE)));
        happened(new PlayerRemoved(N1), new PlayerRemoved(N2), new ClubRemoved(N));
        happened(club(N), player(N1, N));
        done(ledger.decide(request, Asked.kept(FOUR)));
        assertThat(ledger.noted(N)).as("the count goes on").isEqualTo(2);
    }
}
