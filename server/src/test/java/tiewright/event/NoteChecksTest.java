package tiewright.event;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Who may note something for a club, and about whom. */
class NoteChecksTest {
    private static final Event EVENT = Days.oneTie().event();
    private static final Noted OF_N = Notes.nothing("N");
    private static final List<PrivateNote> NOTES = List.of(new PrivateNote.HurtMarked(PlayerId.of("N1"), true));

    private static List<String> refused(NoteChecks checks) {
        PrivateDecision.Outcome outcome = checks.kept(() -> NOTES);
        assertThat(Notes.kept(outcome)).isEqualTo(Notes.refused(outcome).isEmpty() ? NOTES : List.of());
        return Notes.refused(outcome);
    }

    private static Actor actor(Role role, String club) {
        return new Actor(role, Optional.of(ClubId.of(club)), "x", "");
    }

    @Test
    void only_a_captain_of_the_club_notes_for_it() {
        assertThat(refused(NoteChecks.byCaptain(EVENT, OF_N, Notes.captain("N"))))
                .isEmpty();
        for (Actor other : List.of(
                Notes.captain("S"),
                actor(Role.PLAYER, "N"),
                Days.desk(),
                Days.organiser(),
                Actor.of(Role.CAPTAIN, "x"))) {
            assertThat(refused(NoteChecks.byCaptain(EVENT, OF_N, other))).containsExactly("notes.captain-only");
        }
    }

    @Test
    void some_things_an_official_notes_as_well() {
        for (Actor may : List.of(Notes.captain("N"), Days.desk(), Days.referee())) {
            assertThat(refused(NoteChecks.byCaptainOrOfficial(EVENT, OF_N, may)))
                    .isEmpty();
        }
        for (Actor other : List.of(Notes.captain("S"), actor(Role.PLAYER, "N"), Days.volunteer("Ivo"))) {
            assertThat(refused(NoteChecks.byCaptainOrOfficial(EVENT, OF_N, other)))
                    .containsExactly("notes.captain-only");
        }
    }

    @Test
    void a_club_that_is_gone_notes_nothing_and_every_reason_is_told() {
        Noted gone = Notes.nothing("X");
        assertThat(refused(NoteChecks.of(EVENT, gone))).containsExactly("notes.club-gone");
        assertThat(refused(NoteChecks.byCaptain(EVENT, gone, Days.desk())))
                .containsExactly("notes.club-gone", "notes.captain-only");
        assertThat(refused(NoteChecks.byCaptainOrOfficial(EVENT, gone, Days.desk())))
                .containsExactly("notes.club-gone");
    }

    @Test
    void only_the_own_players_and_ties_are_noted() {
        assertThat(refused(NoteChecks.of(EVENT, OF_N)
                        .ownPlayer(PlayerId.of("N1"), "player")
                        .ownTie(TieId.of("A1"))))
                .isEmpty();
        PrivateDecision.Outcome outcome = NoteChecks.of(EVENT, OF_N)
                .ownPlayer(PlayerId.of("S1"), "second")
                .ownPlayer(PlayerId.of("none"), "third")
                .ownTie(TieId.of("none"))
                .kept(() -> NOTES);
        assertThat(((PrivateDecision.Refused) outcome).reasons())
                .containsExactly(
                        new Refusal(
                                "notes.not-own-player",
                                Map.of("player", PlayerId.of("S1"), "club", ClubId.of("N")),
                                "second"),
                        new Refusal(
                                "notes.not-own-player",
                                Map.of("player", PlayerId.of("none"), "club", ClubId.of("N")),
                                "third"),
                        new Refusal("notes.not-own-tie", Map.of("tie", TieId.of("none"), "club", ClubId.of("N")), ""));
        Event elsewhere = Days.oneTie().clubs("E").event();
        assertThat(refused(NoteChecks.of(elsewhere, Notes.nothing("E")).ownTie(TieId.of("A1"))))
                .containsExactly("notes.not-own-tie");
    }

    @Test
    void a_refusal_without_a_reason_is_a_mistake() {
        assertThatThrownBy(() -> new PrivateDecision.Refused(List.of())).hasMessage("a refusal needs a reason");
        assertThatThrownBy(() -> new Decision.Refused(List.of())).hasMessage("a refusal needs a reason");
    }
}
