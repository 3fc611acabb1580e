package tiewright.correction;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Decision;
import tiewright.event.DrawFact;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.Fact;
import tiewright.event.How;
import tiewright.event.OfficialFact;
import tiewright.event.PlayFact;
import tiewright.event.PrivateNote;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.TieId;

/** Which facts let play begin again, and which keep everybody where they are; worked by hand, no source. */
class BegunAgainTest {
    private static final ClubId N = ClubId.of("N");
    private static final ClubId S = ClubId.of("S");
    private static final ClubId E = ClubId.of("E");
    private static final TieId F = TieId.of("F");
    private static final TieId P3 = TieId.of("P3");

    private static PlayFact.CardCorrected correct(String tie, String rubber, String games) {
        return new PlayFact.CardCorrected(
                TieId.of(tie), RubberNo.parse(rubber).orElseThrow(), Days.games(games), How.PLAYED, "misread");
    }

    private static Decision.Accepted replayed(Days day, Fact corrected) {
        return Replay.of(day.event(), day.given(), List.of(corrected), 7, "R. Referee");
    }

    private static Decision.Accepted stayed(Days day, Fact corrected) {
        return Stay.of(day.event(), day.given(), List.of(corrected), 7);
    }

    private static DrawFact.TieRestarted restarted(TieId tie, ClubId home, ClubId away) {
        return new DrawFact.TieRestarted(tie, Optional.of(home), Optional.of(away), 7);
    }

    private static DrawFact.TieTimed untimed(TieId tie) {
        return new DrawFact.TieTimed(tie, Optional.empty(), Optional.empty());
    }

    private static OfficialFact.SignatureWithdrawn withdrawn(String... pool) {
        return new OfficialFact.SignatureWithdrawn(List.of(pool).stream().findFirst(), 7);
    }

    @Test
    void play_begins_again_where_the_score_leads_and_nowhere_else() {
        Days day = CupDay.advanced();
        Fact card = correct("A1", "1", "5-11");
        Decision.Accepted accepted = replayed(day, card);
        assertThat(accepted.facts())
                .containsExactly(
                        card,
                        withdrawn("A"),
                        new OfficialFact.TableSigned("A", List.of(S, N), "R. Referee"),
                        restarted(F, S, E),
                        untimed(F),
                        new ExchangeFact.SheetReturned(ExchangeId.sheets(P3), S, "ruling 7"),
                        restarted(P3, N, ClubId.of("W")));
        assertThat(accepted.notes()).containsExactly(new PrivateNote.SheetDropped(ExchangeId.sheets(P3), S));
    }

    @Test
    void a_score_that_moves_nobody_is_put_right_alone() {
        Fact card = correct("A1", "1", "11-6");
        assertThat(replayed(CupDay.advanced(), card).facts()).containsExactly(card);
        assertThat(stayed(CupDay.advanced(), card).facts()).containsExactly(card);
    }

    @Test
    void a_table_whose_order_is_open_now_is_signed_no_more_and_one_signed_so_already_stays_signed() {
        Days day = CupDay.signed();
        Fact gone = new PlayFact.CardTakenBack(TieId.of("A1"), RubberNo.of(3), "never played");
        assertThat(replayed(day, gone).facts())
                .contains(withdrawn("A"))
                .noneMatch(fact -> fact instanceof OfficialFact.TableSigned);
        Days ruled = CupDay.signed().fact(new OfficialFact.TableSigned("A", List.of(S, N), "R. Signer"));
        assertThat(replayed(ruled, correct("A1", "1", "5-11")).facts())
                .noneMatch(fact -> fact instanceof OfficialFact.SignatureWithdrawn);
    }

    /** The final was called or opened: its hour is over. One of which nobody has seen anything keeps its hour. */
    @Test
    void a_tie_that_had_begun_gets_a_new_time_and_one_that_had_not_keeps_its_own() {
        Fact card = correct("A1", "1", "5-11");
        assertThat(replayed(CupDay.signed(), card).facts())
                .contains(restarted(F, S, E))
                .doesNotContain(untimed(F));
        for (DrawFact.TieTimed timed : List.of(
                new DrawFact.TieTimed(F, Optional.of(java.time.LocalTime.of(13, 0)), Optional.empty()),
                new DrawFact.TieTimed(F, Optional.empty(), Optional.of("1")))) {
            Days called = CupDay.signed().fact(timed).opened("F");
            assertThat(replayed(called, card).facts()).contains(untimed(F));
        }
        Days never = CupDay.signed().fact(untimed(F)).opened("F");
        assertThat(replayed(never, card).facts()).contains(restarted(F, S, E)).doesNotContain(untimed(F));
    }

    @Test
    void final_standings_are_signed_no_more_once_more_than_a_score_changes() {
        Days day = CupDay.signed().fact(new OfficialFact.EventSigned(List.of(N, S), "R. Signer"));
        assertThat(replayed(day, correct("A1", "1", "5-11")).facts()).contains(withdrawn());
        assertThat(replayed(day, correct("A1", "1", "11-6")).facts()).doesNotContain(withdrawn());
        assertThat(replayed(CupDay.signed(), correct("A1", "1", "5-11")).facts())
                .doesNotContain(withdrawn());
    }

    /** A semi-final SF (N and S) of three rubbers is played; its winner stands in F, its loser in P3. */
    private static Days semifinal() {
        return Days.aDay()
                .with(Setting.RUBBERS, "3")
                .clubs("N", "S", "E", "W")
                .courts("1", "2")
                .knockoutTie("SF", 1, "N", "S")
                .knockoutTie("F", 2, "winner-SF", "E")
                .knockoutTie("P3", 2, "loser-SF", "W")
                .opened("SF")
                .cards("SF", "11-5", "11-6", "4-11")
                .fact(new DrawFact.SlotFilled(F, Side.HOME, N), new DrawFact.SlotFilled(P3, Side.HOME, S));
    }

    @Test
    void winner_and_loser_change_places_when_a_tie_turns() {
        Fact card = correct("SF", "1", "5-11");
        assertThat(replayed(semifinal(), card).facts())
                .containsExactly(card, restarted(F, S, E), restarted(P3, N, ClubId.of("W")));
        assertThat(CupDay.lines(Impact.between(
                        semifinal().event(), semifinal().fact(card).event())))
                .containsExactly("rubber SF 1: 11-5 > 5-11 (played)", "tie SF: 2-1 > 1-2 (played)");
    }

    @Test
    void nobody_takes_the_place_of_a_tie_that_is_not_over_any_more() {
        Days day = semifinal();
        Fact gone = new PlayFact.CardTakenBack(TieId.of("SF"), RubberNo.of(1), "never played");
        assertThat(replayed(day, gone).facts())
                .containsExactly(
                        gone,
                        new DrawFact.TieRestarted(F, Optional.empty(), Optional.of(E), 7),
                        new DrawFact.TieRestarted(P3, Optional.empty(), Optional.of(ClubId.of("W")), 7));
    }

    @Test
    void what_a_ruling_settled_before_stays() {
        Days day = semifinal().fact(new DrawFact.SlotKept(F, Side.HOME, E, 3));
        Fact card = correct("SF", "1", "11-7");
        assertThat(replayed(day, card).facts()).containsExactly(card);
        assertThat(stayed(day, card).facts()).containsExactly(card);
    }

    @Test
    void for_the_record_alone_clubs_stay_by_ruling_in_the_slots_that_would_change() {
        Fact card = correct("SF", "1", "5-11");
        assertThat(stayed(semifinal(), card).facts())
                .containsExactly(
                        card, new DrawFact.SlotKept(F, Side.HOME, N, 7), new DrawFact.SlotKept(P3, Side.HOME, S, 7));
    }

    @Test
    void a_club_that_stands_already_where_the_right_score_puts_it_needs_no_ruling() {
        Days day = semifinal().fact(new DrawFact.SlotKept(F, Side.HOME, S, 3));
        Fact card = correct("SF", "1", "5-11");
        assertThat(stayed(day, card).facts()).containsExactly(card, new DrawFact.SlotKept(P3, Side.HOME, S, 7));
    }

    @Test
    void a_slot_that_nobody_has_taken_is_kept_for_nobody() {
        Days day = Days.aDay()
                .with(Setting.RUBBERS, "3")
                .clubs("N", "S", "E")
                .knockoutTie("SF", 1, "N", "S")
                .knockoutTie("F", 2, "winner-SF", "E")
                .cards("SF", "11-5", "11-6", "4-11");
        Fact card = correct("SF", "1", "5-11");
        assertThat(stayed(day, card).facts()).containsExactly(card);
        assertThat(replayed(day, card).facts()).containsExactly(card);
    }

    /** Level after four rubbers, pairs for the decider sealed: a score that parts the clubs leaves nothing to decide. */
    @Test
    void pairs_for_a_decider_that_is_not_played_go_back_unseen() {
        ExchangeId decider = ExchangeId.decider(TieId.of("A1"));
        Days day = Days.oneTie()
                .opened("A1")
                .cards("A1", "11-1", "1-11", "11-2", "2-11")
                .fact(new ExchangeFact.SheetSealed(decider, N, "1".repeat(64), false));
        Fact card = correct("A1", "4", "11-2");
        Fact returned = new ExchangeFact.SheetReturned(decider, N, "ruling 7");
        for (Decision.Accepted accepted : List.of(replayed(day, card), stayed(day, card))) {
            assertThat(accepted.facts()).containsExactly(card, returned);
            assertThat(accepted.notes()).containsExactly(new PrivateNote.SheetDropped(decider, N));
        }
    }

    @Test
    void a_tie_that_was_only_called_had_begun() {
        Days day = CupDay.signed().fact(new PlayFact.CourtCalled(F, Optional.of(RubberNo.of(1)), "1"));
        assertThat(replayed(day, correct("A1", "1", "5-11")).facts()).contains(untimed(F));
    }
}
