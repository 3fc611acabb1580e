package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote.FormJudged;
import tiewright.event.PrivateNote.TieWish;
import tiewright.event.Recorded;
import tiewright.event.Role;
import tiewright.event.TieId;

/** Captain and deputy of one club write at once: nothing of either is lost without a word. */
class TwoCaptainsTest {
    private static final ClubId N = ClubId.of("N");
    private static final TieId A1 = TieId.of("A1");
    private static final String SQUAD = "/captain/squad";
    private static final String WISHES = "/captain/proposal/A1/wishes";

    private Served served;
    private Guest captain;
    private Guest deputy;

    @BeforeEach
    void oneTie() {
        served = Served.empty(Days.moment("09:00"))
                .given(Days.oneTie().facts().stream().map(Recorded::fact).toList(), List.of());
        captain = served.enter(Role.CAPTAIN, Optional.of(N), Optional.empty(), "Captain Ada");
        deputy = served.enter(Role.CAPTAIN, Optional.of(N), Optional.empty(), "Deputy Bo");
    }

    @AfterEach
    void close() {
        served.close();
    }

    private Map<String, String> wish(Guest guest, String player, String wish) {
        return guest.filled("/captain/proposal/A1", WISHES, Map.of("player", player, "wish", wish));
    }

    private TieWish wishes() {
        return served.ledger.privateOf(N).tieWishes().get(A1);
    }

    @Test
    void two_wishes_about_one_player_are_both_shown_and_the_second_is_asked_again() {
        Map<String, String> first = wish(captain, "N1", "play");
        Map<String, String> second = wish(deputy, "N1", "rest");
        assertThat(captain.post(WISHES, first).status()).isEqualTo(200);
        Guest.Got stale = deputy.post(WISHES, second);
        assertThat(stale.status()).isEqualTo(409);
        assertThat(stale.text())
                .contains(
                        "Somebody of your club noted something else",
                        "Captain Ada changed this at 09:00",
                        "N1 in tie A1: kept now: must play. Yours, not kept: must rest.",
                        "(must play)");
        assertThat(wishes()).isEqualTo(new TieWish(A1, N, List.of(PlayerId.of("N1")), List.of()));
        Map<String, String> fresh = FormFields.of(stale, WISHES);
        assertThat(fresh).containsEntry("player", "N1").containsEntry("wish", "rest");
        assertThat(deputy.post(WISHES, fresh).status()).isEqualTo(200);
        assertThat(wishes()).isEqualTo(new TieWish(A1, N, List.of(), List.of(PlayerId.of("N1"))));
    }

    @Test
    void wishes_about_two_players_from_pages_of_the_same_moment_are_both_kept() {
        Map<String, String> first = wish(captain, "N1", "play");
        Map<String, String> second = wish(deputy, "N2", "rest");
        captain.post(WISHES, first);
        assertThat(deputy.post(WISHES, second).status()).isEqualTo(200);
        assertThat(wishes()).isEqualTo(new TieWish(A1, N, List.of(PlayerId.of("N1")), List.of(PlayerId.of("N2"))));
    }

    @Test
    void a_form_that_is_sent_again_late_takes_back_nothing_that_came_after_it() {
        Map<String, String> first = wish(captain, "N1", "play");
        captain.post(WISHES, first);
        deputy.post(WISHES, wish(deputy, "N1", "rest"));
        assertThat(captain.post(WISHES, first).status()).isEqualTo(200);
        assertThat(wishes()).isEqualTo(new TieWish(A1, N, List.of(), List.of(PlayerId.of("N1"))));
    }

    @Test
    void judgements_promises_and_half_lives_are_asked_again_too_with_what_was_typed() {
        Map<String, String> form =
                deputy.filled(SQUAD, SQUAD + "/form", Map.of("player", "N1", "form-N1", "4", "doubt-N1", ""));
        Map<String, String> pair = deputy.filled(
                SQUAD,
                SQUAD + "/pair",
                Map.of("pair-first", "N1", "pair-second", "N2", "pair-wish", "apart", "pair-extra", "2.5"));
        Map<String, String> half = deputy.filled(SQUAD, SQUAD + "/half-life", Map.of("half-life", "90"));
        Map<String, String> promise = deputy.filled(
                "/captain/day", "/captain/day/promise", Map.of("promise-player", "N8", "promise-rubbers", "3"));
        captain.send(SQUAD, SQUAD + "/form", Map.of("player", "N1", "form-N1", "3", "doubt-N1", ""));
        captain.send(SQUAD, SQUAD + "/pair", Map.of("pair-first", "N2", "pair-second", "N1", "pair-wish", "together"));
        captain.send(SQUAD, SQUAD + "/half-life", Map.of("half-life", "180"));
        captain.send("/captain/day", "/captain/day/promise", Map.of("promise-player", "N8", "promise-rubbers", "1"));

        Guest.Got stale = deputy.post(SQUAD + "/form", form);
        assertThat(stale.status()).isEqualTo(409);
        assertThat(stale.text()).contains("kept now: +3 rallies in 100. Yours, not kept: +4 rallies in 100.");
        assertThat(FormFields.of(stale, SQUAD + "/form")).containsEntry("form-N1", "4");
        assertThat(served.ledger.privateOf(N).forms())
                .containsEntry(
                        PlayerId.of("N1"),
                        new FormJudged(PlayerId.of("N1"), OptionalDouble.of(3), OptionalDouble.empty()));
        stale = deputy.post(SQUAD + "/pair", pair);
        assertThat(stale.status()).isEqualTo(409);
        assertThat(stale.text()).contains("should play together", "should not play together");
        assertThat(FormFields.of(stale, "/captain/squad/pair")).isNotEmpty();
        stale = deputy.post(SQUAD + "/half-life", half);
        assertThat(stale.status()).isEqualTo(409);
        assertThat(stale.text()).contains("after 180 days", "after 90 days");
        stale = deputy.post("/captain/day/promise", promise);
        assertThat(stale.status()).isEqualTo(409);
        assertThat(stale.text()).contains("at least 1 rubber today", "at least 3 rubbers today");
        assertThat(served.ledger.privateOf(N).promises().get(PlayerId.of("N8")).rubbers())
                .isEqualTo(1);
    }

    /** The rival's changes are no number of ours: what one club notes makes no form of another one old. */
    @Test
    void what_another_club_notes_makes_no_form_old() {
        Map<String, String> mine =
                deputy.filled(SQUAD, SQUAD + "/form", Map.of("player", "N1", "form-N1", "4", "doubt-N1", ""));
        Guest rival = served.captain("S");
        rival.send(SQUAD, SQUAD + "/form", Map.of("player", "S1", "form-S1", "3", "doubt-S1", ""));
        assertThat(deputy.post(SQUAD + "/form", mine).status()).isEqualTo(200);
    }

    @Test
    void what_cannot_be_is_refused_with_its_reason_beside_the_field() {
        Guest.Got refused =
                captain.send(SQUAD, SQUAD + "/form", Map.of("player", "N1", "form-N1", "60", "doubt-N1", "0"));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.text())
                .contains(
                        "Form lies between -50 and 50 rallies in 100.", "The doubt must be more than 0 and at most 50");
        assertThat(captain.send(SQUAD, SQUAD + "/half-life", Map.of("half-life", "0"))
                        .text())
                .contains("A half-life is a number of days from 1 to 36500");
        assertThat(served.ledger.noted(N)).isZero();
    }
}
