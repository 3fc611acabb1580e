package tiewright.correction;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tiewright.desk.Correction;
import tiewright.event.CorrectionChoice;
import tiewright.event.Days;
import tiewright.event.Event;
import tiewright.event.How;
import tiewright.event.RubberNo;
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
                .with(tiewright.conditions.Setting.RUBBERS, "3")
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
}
