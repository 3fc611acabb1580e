package tiewright.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.PlayerId;
import tiewright.event.TieId;
import tiewright.standings.ClubValue;
import tiewright.standings.Criterion;
import tiewright.standings.Form;
import tiewright.standings.Line;
import tiewright.standings.LotDrawn;
import tiewright.standings.Quantity;
import tiewright.standings.Reason;
import tiewright.standings.Result;
import tiewright.standings.TieBetween;
import tiewright.standings.Value;

class StandingsWordsTest {
    private static final ClubId A = ClubId.of("A");
    private static final ClubId B = ClubId.of("B");
    private static final ClubId C = ClubId.of("C");

    private final StandingsWords words = StandingsWords.withCodes();

    private static ClubValue value(ClubId club, Form form, long won, long lost) {
        return new ClubValue(club, new Value(form, won, lost));
    }

    private static Line headToHead(long a, long b, TieBetween... ties) {
        return new Line.Compared(
                Criterion.HEAD_TO_HEAD, List.of(value(A, Form.WON, a, 0), value(B, Form.WON, b, 0)), List.of(ties));
    }

    private static TieBetween tie(Result homeResult, int home, int away) {
        return new TieBetween(TieId.of("A1"), B, A, homeResult, home, away);
    }

    @Test
    void says_how_the_tie_between_two_ended_from_either_side() {
        Line line = headToHead(1, 0, tie(Result.LOST, 2, 3));
        assertThat(words.line(A, line)).isEqualTo("beat B 3-2 (tie A1)");
        assertThat(words.line(B, line)).isEqualTo("lost to A 2-3 (tie A1)");
        assertThat(words.line(A, headToHead(1, 1, tie(Result.DRAWN, 2, 2))))
                .isEqualTo("drew with B 2-2 (tie A1), still level");
        assertThat(words.line(A, headToHead(0, 0))).isEqualTo("no finished tie between this club and B, still level");
        assertThat(words.line(A, headToHead(0, 0, tie(Result.LOST_BY_BOTH, 0, 0))))
                .isEqualTo("neither this club nor B came (tie A1), still level");
    }

    @Test
    void shows_differences_with_their_sign_and_ratios_with_what_was_lost() {
        Line differences = new Line.Compared(
                new Criterion(Quantity.RUBBERS, Form.DIFFERENCE, false),
                List.of(
                        value(A, Form.DIFFERENCE, 9, 6),
                        value(B, Form.DIFFERENCE, 7, 7),
                        value(C, Form.DIFFERENCE, 6, 9)),
                List.of());
        assertThat(words.line(B, differences))
                .isEqualTo("rubbers difference 0 (7-7), ahead of C -3 (6-9), behind A +3 (9-6)");
        Line ratios = new Line.Compared(
                new Criterion(Quantity.GAMES, Form.RATIO, true),
                List.of(value(A, Form.RATIO, 4, 0), value(B, Form.RATIO, 2, 3), value(C, Form.RATIO, 2, 3)),
                List.of());
        assertThat(words.line(A, ratios))
                .isEqualTo(
                        "games ratio in the ties among them nothing lost (4-0), ahead of B 0.6667 (2-3), C 0.6667 (2-3)");
        assertThat(words.line(B, ratios))
                .isEqualTo(
                        "games ratio in the ties among them 0.6667 (2-3), level with C, behind A nothing lost (4-0)");
    }

    @Test
    void names_clubs_as_the_page_does() {
        StandingsWords named = new StandingsWords(
                new Words(Language.ENGLISH, PlayerId::code, club -> "Club {0} d'" + club, ZoneOffset.UTC));
        assertThat(named.line(A, new Line.LotNeeded(List.of(A, B, C))))
                .isEqualTo(
                        "everything equal with Club {0} d'B and Club {0} d'C: only a lot can part them, and none has been drawn");
        assertThat(named.line(B, new Line.ByLot(new LotDrawn(List.of(B, A), "Zoë"))))
                .isEqualTo(
                        "everything equal: number 1 in the lot drawn among Club {0} d'B and Club {0} d'A, witness Zoë");
    }

    @Test
    void a_table_of_one_club_has_a_reason_too() {
        Line alone = new Line.Compared(Criterion.TIE_POINTS, List.of(value(A, Form.WON, 12_345, 0)), List.of());
        assertThat(words.reason(A, new Reason(List.of(alone))))
                .isEqualTo("tie points 12345, no other club in the table");
    }

    /** Every step that a list can hold has words. */
    @Test
    void every_criterion_can_be_said() {
        for (Quantity quantity : Quantity.values()) {
            for (Form form : Form.values()) {
                for (boolean among : new boolean[] {false, true}) {
                    assertThat(words.criterion(new Criterion(quantity, form, among)))
                            .isNotBlank()
                            .doesNotContain("{");
                }
            }
        }
    }
}
