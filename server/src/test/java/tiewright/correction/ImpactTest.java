package tiewright.correction;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.desk.Correction;
import tiewright.event.ClubId;
import tiewright.event.CorrectionChoice;
import tiewright.event.Days;
import tiewright.event.DrawFact;
import tiewright.event.Event;
import tiewright.event.How;
import tiewright.event.OfficialFact;
import tiewright.event.PlayFact;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.TieId;

/** What hangs on a score, worked by hand on a small cup; the list itself is our own, no source. */
class ImpactTest {
    private static final String NO_RECEIPT = "0".repeat(64);

    private static Impact impact(Days day, String tie, String rubber, String games, CorrectionChoice choice) {
        return new Correction(TieId.of(tie), RubberNo.parse(rubber).orElseThrow(), Days.games(games), How.PLAYED)
                .impact(day.event(), day.given(), choice);
    }

    @Test
    void a_swapped_score_found_after_the_final_began_lists_everything_built_on_it() {
        Impact impact = impact(CupDay.advanced(), "A1", "1", "5-11", CorrectionChoice.REPLAY);
        assertThat(CupDay.lines(impact))
                .containsExactly(
                        "rubber A1 1: 11-5 > 5-11 (played)",
                        "rubber F 1: 11-3 > - (played)",
                        "tie A1: 2-1 > 1-2 (played)",
                        "tie F: 1-0 > 0-0 (played)",
                        "place N: 1 > 2 (played)",
                        "place S: 2 > 1 (seen)",
                        "table A: N>S, by R. Signer > S>N (played)",
                        "slot F home: N > S (played)",
                        "slot P3 home: S > N (seen)",
                        "sheet F N: opened > - (played)",
                        "sheet F E: opened > - (played)",
                        "sheet P3 S: sealed > - (plain)",
                        "receipt F N: " + NO_RECEIPT + " > - (seen)",
                        "receipt F E: " + NO_RECEIPT + " > - (seen)",
                        "receipt P3 S: sealed > - (plain)",
                        "call F 1: 1 > - (played)",
                        "time F: 13:00, court 1 > - (played)",
                        "told N F: 13:00 > - (played)",
                        "told E F: 13:00 > - (played)",
                        "told S P3: 13:00 > - (seen)",
                        "told N P3: - > 13:00 (plain)");
    }

    @Test
    void the_record_alone_changes_score_tie_and_places_and_letting_it_stand_changes_nothing() {
        Days day = CupDay.advanced();
        assertThat(impact(day, "A1", "1", "5-11", CorrectionChoice.LET_STAND).nodes())
                .isEmpty();
        assertThat(CupDay.lines(impact(day, "A1", "1", "5-11", CorrectionChoice.RECORD_ONLY)))
                .containsExactly(
                        "rubber A1 1: 11-5 > 5-11 (played)",
                        "tie A1: 2-1 > 1-2 (played)",
                        "place N: 1 > 2 (played)",
                        "place S: 2 > 1 (seen)");
    }

    @Test
    void a_score_whose_winner_stays_touches_nobody_else() {
        Impact impact = impact(CupDay.advanced(), "A1", "1", "11-6", CorrectionChoice.REPLAY);
        assertThat(CupDay.lines(impact)).containsExactly("rubber A1 1: 11-5 > 11-6 (played)");
        assertThat(impact.reachesOthers()).isFalse();
        assertThat(impact(CupDay.advanced(), "A1", "1", "11-5", CorrectionChoice.REPLAY)
                        .nodes())
                .isEmpty();
    }

    /** A decider that was played and is not needed after all counts no longer; its opened pairs are told too. */
    @Test
    void a_decider_that_is_not_needed_any_more_is_listed_with_its_pairs() {
        Days day = Days.oneTie().opened("A1").cards("A1", "11-1", "1-11", "11-2", "2-11");
        day.opened(
                        tiewright.event.ExchangeId.decider(TieId.of("A1")),
                        tiewright.event.Sheet.decider(tiewright.event.Pair.of("N1", "N2")),
                        tiewright.event.Sheet.decider(tiewright.event.Pair.of("S1", "S2")))
                .card("A1", "D", "11-9");
        assertThat(CupDay.lines(impact(day, "A1", "4", "11-2", CorrectionChoice.REPLAY)))
                .contains(
                        "rubber A1 D: 11-9 > - (played)",
                        "tie A1: 3-2 > 3-1 (played)",
                        "sheet A1 D N: opened > - (played)");
    }

    /** While nobody stands in a slot, the list says who would. */
    @Test
    void a_slot_that_nobody_has_taken_yet_is_plain() {
        Days day = Days.aDay()
                .with(Setting.RUBBERS, "3")
                .clubs("N", "S")
                .poolTie("A1", "A", 1, "N", "S")
                .knockoutTie("F", 1, "A-1", "B-1")
                .opened("A1")
                .cards("A1", "11-5", "11-6", "4-11");
        assertThat(CupDay.lines(impact(day, "A1", "1", "5-11", CorrectionChoice.REPLAY)))
                .contains("slot F home: N > S (plain)");
    }

    @Test
    void asking_changes_nothing() {
        Days day = CupDay.advanced();
        Event before = day.event();
        List<String> first = CupDay.lines(impact(day, "A1", "1", "5-11", CorrectionChoice.REPLAY));
        assertThat(CupDay.lines(impact(day, "A1", "1", "5-11", CorrectionChoice.REPLAY)))
                .isEqualTo(first);
        assertThat(day.event()).isEqualTo(before);
    }

    private static List<String> between(Days before, Days after) {
        return CupDay.lines(Impact.between(before.event(), after.event()));
    }

    @Test
    void before_the_final_began_what_was_signed_and_told_is_seen_and_nothing_played_but_the_score() {
        assertThat(CupDay.lines(impact(CupDay.signed(), "A1", "1", "5-11", CorrectionChoice.REPLAY)))
                .containsExactly(
                        "rubber A1 1: 11-5 > 5-11 (played)",
                        "tie A1: 2-1 > 1-2 (played)",
                        "place N: 1 > 2 (seen)",
                        "place S: 2 > 1 (seen)",
                        "table A: N>S, by R. Signer > S>N (seen)",
                        "slot F home: N > S (seen)",
                        "slot P3 home: S > N (seen)",
                        "told N F: 13:00 > - (seen)",
                        "told S P3: 13:00 > - (seen)",
                        "told S F: - > 13:00 (plain)",
                        "told N P3: - > 13:00 (plain)");
    }

    /** N came into the final by ruling and played there; in the semi-final, which its place led to, nothing was played. */
    @Test
    void a_place_is_as_far_gone_on_from_as_the_tie_that_it_leads_to() {
        Days day = Days.aDay()
                .with(Setting.RUBBERS, "3")
                .clubs("N", "S", "E")
                .poolTie("A1", "A", 1, "N", "S")
                .knockoutTie("SF1", 1, "A-1", "E")
                .knockoutTie("F", 2, "winner-SF1", "E")
                .cards("A1", "11-5", "11-6", "4-11")
                .fact(
                        new DrawFact.SlotFilled(TieId.of("SF1"), Side.HOME, ClubId.of("N")),
                        new DrawFact.SlotKept(TieId.of("F"), Side.HOME, ClubId.of("N"), 1))
                .card("F", "1", "11-3");
        assertThat(CupDay.lines(impact(day, "A1", "1", "5-11", CorrectionChoice.RECORD_ONLY)))
                .contains("place N: 1 > 2 (seen)", "place S: 2 > 1 (plain)");
        day.fact(new OfficialFact.TableSigned("A", List.of(ClubId.of("N"), ClubId.of("S")), ""));
        assertThat(CupDay.lines(impact(day, "A1", "1", "5-11", CorrectionChoice.REPLAY)))
                .contains("table A: N>S > S>N (seen)");
    }

    /** A tie may have the code of a pool: its winner comes from no place of that pool. */
    @Test
    void the_winner_of_a_tie_called_like_a_pool_comes_from_no_pool() {
        Days day = Days.aDay()
                .with(Setting.RUBBERS, "3")
                .clubs("N", "S", "E")
                .poolTie("A1", "A", 1, "N", "S")
                .knockoutTie("A", 1, "N", "E")
                .knockoutTie("F", 2, "winner-A", "E")
                .cards("A1", "11-5", "11-6", "4-11")
                .fact(new DrawFact.SlotFilled(TieId.of("F"), Side.HOME, ClubId.of("N")))
                .card("F", "1", "11-3");
        assertThat(CupDay.lines(impact(day, "A1", "1", "5-11", CorrectionChoice.RECORD_ONLY)))
                .contains("place N: 1 > 2 (plain)", "place S: 2 > 1 (plain)");
    }

    @Test
    void a_place_in_a_pool_that_nobody_signed_and_that_leads_nowhere_yet_is_plain() {
        Days day = Days.oneTie().cards("A1", "11-5", "11-5", "11-5", "11-5");
        assertThat(between(Days.oneTie(), day))
                .contains("tie A1: 0-0 > 4-0 (plain)")
                .noneMatch(line -> line.startsWith("slot") || line.startsWith("lot"));
        assertThat(between(day, Days.oneTie().cards("A1", "5-11", "5-11", "5-11", "5-11")))
                .contains("place N: 1 > 2 (plain)", "place S: 2 > 1 (plain)", "tie A1: 4-0 > 0-4 (played)");
    }

    @Test
    void a_tie_is_seen_once_opened_or_called_and_played_once_a_card_counts() {
        Days opened = Days.oneTie().opened("A1");
        assertThat(between(opened, Days.oneTie().opened("A1").card("A1", "1", "11-5")))
                .contains("tie A1: 0-0 > 1-0 (seen)");
        Days called = Days.oneTie().fact(new PlayFact.CourtCalled(TieId.of("A1"), Optional.of(RubberNo.of(1)), "1"));
        assertThat(between(called, Days.oneTie().card("A1", "1", "11-5")))
                .contains("tie A1: 0-0 > 1-0 (seen)", "call A1 1: 1 > - (seen)");
        Days takenBack = Days.oneTie()
                .card("A1", "1", "11-5")
                .fact(new PlayFact.CardTakenBack(TieId.of("A1"), RubberNo.of(1), "why"));
        assertThat(between(takenBack, Days.oneTie().card("A1", "2", "11-5"))).contains("tie A1: 0-0 > 1-0 (plain)");
    }

    @Test
    void a_call_is_played_on_when_its_own_rubber_is() {
        Days called = Days.oneTie()
                .fact(
                        new PlayFact.CourtCalled(TieId.of("A1"), Optional.of(RubberNo.of(1)), "1"),
                        new PlayFact.CourtCalled(TieId.of("A1"), Optional.of(RubberNo.of(2)), "2"))
                .card("A1", "1", "11-5");
        assertThat(between(called, Days.oneTie().card("A1", "1", "11-5")))
                .containsExactly("call A1 1: 1 > - (played)", "call A1 2: 2 > - (seen)");
    }

    @Test
    void pairs_for_a_decider_that_was_not_begun_are_seen() {
        Days day = Days.oneTie().opened("A1").cards("A1", "11-1", "1-11", "11-2", "2-11");
        day.opened(
                tiewright.event.ExchangeId.decider(TieId.of("A1")),
                tiewright.event.Sheet.decider(tiewright.event.Pair.of("N1", "N2")),
                tiewright.event.Sheet.decider(tiewright.event.Pair.of("S1", "S2")));
        assertThat(CupDay.lines(impact(day, "A1", "4", "11-2", CorrectionChoice.REPLAY)))
                .contains("sheet A1 D N: opened > - (seen)", "sheet A1 D S: opened > - (seen)");
    }

    /** Two clubs that nothing parts: two rubbers each, the same points, no decider. */
    @Test
    void a_lot_that_parts_clubs_is_listed_with_those_that_it_parts() {
        Days level = levelled();
        Days drawn = levelled().fact(new OfficialFact.LotDrawn("A", List.of(ClubId.of("S"), ClubId.of("N")), "Wim"));
        assertThat(between(level, drawn)).contains("lot A N>S: - > S>N (plain)");
        Days again = levelled().fact(new OfficialFact.LotDrawn("A", List.of(ClubId.of("N"), ClubId.of("S")), "Wim"));
        assertThat(between(drawn, again)).contains("lot A N>S: S>N > N>S (seen)", "place N: 2 > 1 (plain)");
    }

    private static Days levelled() {
        return Days.oneTie().with(Setting.DECIDER, "none").cards("A1", "11-5", "11-5", "5-11", "5-11");
    }

    @Test
    void the_final_order_is_listed_as_it_was_signed() {
        OfficialFact.EventSigned signed =
                new OfficialFact.EventSigned(List.of(ClubId.of("N"), ClubId.of("S")), "R. Signer");
        OfficialFact.EventSigned other = new OfficialFact.EventSigned(List.of(ClubId.of("S"), ClubId.of("N")), "");
        assertThat(between(Days.oneTie(), Days.oneTie().fact(signed)))
                .containsExactly("final event: - > N>S, by R. Signer (plain)");
        assertThat(between(Days.oneTie().fact(signed), Days.oneTie().fact(other)))
                .containsExactly("final event: N>S, by R. Signer > S>N (seen)");
    }

    @Test
    void what_is_of_one_kind_is_told_apart_and_another_list_has_another_fingerprint() {
        Impact impact = impact(CupDay.advanced(), "A1", "1", "5-11", CorrectionChoice.REPLAY);
        assertThat(impact.of(Impact.Kind.PLACE))
                .extracting(Impact.Node::subjectText)
                .containsExactly("N", "S");
        assertThat(impact.of(Impact.Kind.LOT)).isEmpty();
        assertThat(impact.fingerprint())
                .matches("[0-9a-f]{1,8}")
                .isEqualTo(impact(CupDay.advanced(), "A1", "1", "5-11", CorrectionChoice.REPLAY)
                        .fingerprint())
                .isNotEqualTo(impact(CupDay.advanced(), "A1", "1", "6-11", CorrectionChoice.REPLAY)
                        .fingerprint())
                .isNotEqualTo(impact(CupDay.signed(), "A1", "1", "5-11", CorrectionChoice.REPLAY)
                        .fingerprint())
                .isNotEqualTo(new Impact(List.of()).fingerprint());
    }

    @Test
    void others_are_reached_where_they_went_on_from_more_than_score_and_place_or_sealed_a_sheet() {
        assertThat(reaches(Impact.Kind.RUBBER, Impact.State.PLAYED)).isFalse();
        assertThat(reaches(Impact.Kind.PLACE, Impact.State.PLAYED)).isFalse();
        assertThat(reaches(Impact.Kind.LOT, Impact.State.SEEN)).isTrue();
        assertThat(reaches(Impact.Kind.SLOT, Impact.State.PLAIN)).isFalse();
        assertThat(reaches(Impact.Kind.SHEET, Impact.State.PLAIN)).isTrue();
        assertThat(reaches(Impact.Kind.FINAL, Impact.State.PLAYED)).isTrue();
    }

    private static boolean reaches(Impact.Kind kind, Impact.State state) {
        return new Impact(List.of(new Impact.Node(kind, List.of("x"), Optional.of("1"), Optional.of("2"), state)))
                .reachesOthers();
    }

    @Test
    void a_time_is_told_with_its_court_as_far_as_they_are_known() {
        Days none = Days.aDay().clubs("N", "S").poolTie("A1", "A", 1, "N", "S");
        Days court = Days.aDay()
                .clubs("N", "S")
                .poolTie("A1", "A", 1, "N", "S")
                .fact(new DrawFact.TieTimed(TieId.of("A1"), Optional.empty(), Optional.of("2")));
        Days both = Days.aDay().clubs("N", "S").poolTie("A1", "A", 1, "N", "S").timed("A1", "10:00", "2");
        assertThat(between(none, court)).containsExactly("time A1: - > 2 (plain)");
        assertThat(between(court, both)).containsExactly("time A1: 2 > 10:00, court 2 (seen)");
    }

    @Test
    void a_score_is_told_with_how_it_ended() {
        Days played = Days.oneTie().card("A1", "1", "11-5");
        assertThat(between(played, Days.oneTie().card("A1", "1", "11-5", How.RETIRED_AWAY)))
                .contains("rubber A1 1: 11-5 > 11-5 retired-away (played)");
        assertThat(between(played, Days.oneTie().card("A1", "1", "", How.VOID)))
                .contains("rubber A1 1: 11-5 > void (played)");
    }
}
