package tiewright.standings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.wording.StandingsWords;

/**
 * Tables that were published. A football match stands as a tie of one rubber of one game with the goals as its points; a
 * match of individual matches as a tie with a rubber for each.
 */
class PublishedTablesTest {
    private static final TieShape GOALS =
            Rules.tie(1, false, new Games(1, 1, false, 1, 1, true).stoppedByTime(), Optional.empty());

    private static TableRules football(String steps, String tiePoints) {
        return Rules.of(steps, tiePoints, GOALS);
    }

    /** 2022 World Team Table Tennis Championships, men, group 2: PTI 4 Oct 2022, dpa 4 Oct 2022, Scroll 2 and 4 Oct 2022. */
    private static Pool worldTeam2022() {
        // Each of the three also beat both other teams of the group; those scores are invented and count for no step.
        return Pool.of("IND", "KAZ", "GER", "UZB", "FRA")
                .rubbers("GER", "FRA", 3, 1)
                .rubbers("IND", "GER", 3, 1)
                .rubbers("FRA", "IND", 3, 0)
                .rubbers("GER", "KAZ", 3, 2)
                .rubbers("IND", "KAZ", 3, 0)
                .rubbers("FRA", "KAZ", 3, 2)
                .rubbers("GER", "UZB", 3, 2)
                .rubbers("IND", "UZB", 3, 0)
                .rubbers("FRA", "UZB", 3, 2)
                .rubbers("KAZ", "UZB", 3, 1);
    }

    /** The order of criteria is that of ITTF 3.7.5 (second-hand). */
    @Test
    void three_level_teams_are_parted_by_the_ratio_of_matches_among_them() {
        Table table = worldTeam2022().table(Rules.of("among-level-ratio", "2/1/1"));
        assertThat(Pool.order(table)).isEqualTo("FRA GER IND KAZ UZB");
        assertThat(table.rows().subList(0, 3)).extracting(Row::tiePoints).containsExactly(7, 7, 7);
        Line.Compared deciding = (Line.Compared) table.rows().get(0).decidedBy().deciding();
        assertThat(deciding.criterion()).isEqualTo(new Criterion(Quantity.RUBBERS, Form.RATIO, true));
        assertThat(deciding.values())
                .extracting(ClubValue::value)
                .containsExactly(new Value(Form.RATIO, 4, 3), new Value(Form.RATIO, 4, 4), new Value(Form.RATIO, 3, 4));
    }

    @Test
    void over_all_ties_the_same_three_stand_in_another_order() {
        Table table = worldTeam2022().table(Rules.of("overall-difference", "2/1/1"));
        assertThat(Pool.order(table))
                .startsWith("IND"); // rubbers +6 against +4 and +2: only the ties among them gave France the lead
    }

    /** Sudirman Cup 2019, group 1B (IANS 22 May 2019, JPNN May 2019), ranked by BWF GCR 16.2 (BWF news 12 Dec 2019). */
    @Test
    void three_level_teams_are_parted_by_the_difference_of_matches() {
        Table table = Pool.of("ENG", "DEN", "INA")
                .rubbers("INA", "ENG", 4, 1)
                .rubbers("ENG", "DEN", 3, 2)
                .rubbers("DEN", "INA", 3, 2)
                .table(Rules.of("overall-difference", "1/0/0", Rules.shape(5, false, 2, 21)));
        assertThat(Pool.order(table)).isEqualTo("INA DEN ENG");
        assertThat(table.rows()).extracting(Row::rubbersWon).containsExactly(6, 5, 4);
        assertThat(table.rows()).extracting(Row::rubbersLost).containsExactly(4, 5, 6);
        assertThat(StandingsWords.withCodes()
                        .reason(ClubId.of("DEN"), table.rows().get(1).decidedBy()))
                .isEqualTo(
                        "tie points 1, level with ENG and INA; rubbers difference 0 (5-5), ahead of ENG -2 (4-6), behind INA +2 (6-4)");
    }

    /** EURO 2004 group C, data set openfootball/euro; the quarter-finals agree. */
    @Test
    void a_table_among_the_level_teams_is_followed_to_its_third_step() {
        Table table = Pool.of("BUL", "DEN", "ITA", "SWE")
                .tie("DEN", "ITA", "0-0")
                .tie("SWE", "BUL", "5-0")
                .tie("BUL", "DEN", "0-2")
                .tie("ITA", "SWE", "1-1")
                .tie("ITA", "BUL", "2-1")
                .tie("DEN", "SWE", "2-2")
                .table(football("head-to-head>points-difference-among>points-won-among>lots", "3/1/0"));
        assertThat(Pool.order(table)).isEqualTo("SWE DEN ITA BUL");
        assertThat(table.rows()).extracting(Row::tiePoints).containsExactly(5, 5, 5, 0);
        List<Line> lines = table.rows().get(2).decidedBy().lines();
        assertThat(lines).hasSize(4);
        assertThat(((Line.Compared) lines.get(1)).values())
                .extracting(v -> v.value().won())
                .containsOnly(2L);
        assertThat(((Line.Compared) lines.get(2)).values())
                .extracting(v -> v.value().difference())
                .containsOnly(0L);
        assertThat(((Line.Compared) lines.get(3)).values())
                .extracting(v -> v.value().won())
                .containsExactly(3L, 2L, 1L);
    }

    private static Pool euro1996() {
        return Pool.of("CZE", "GER", "ITA", "RUS")
                .tie("GER", "CZE", "2-0")
                .tie("ITA", "RUS", "2-1")
                .tie("CZE", "ITA", "2-1")
                .tie("RUS", "GER", "0-3")
                .tie("RUS", "CZE", "3-3")
                .tie("ITA", "GER", "0-0");
    }

    /** EURO 1996 group C, data set openfootball/euro: the official order. */
    @Test
    void the_mutual_result_first_gives_the_official_order() {
        Table table = euro1996().table(football("head-to-head>points-difference>lots", "3/1/0"));
        assertThat(Pool.order(table)).isEqualTo("GER CZE ITA RUS");
        assertThat(StandingsWords.withCodes()
                        .reason(
                                ClubId.of("ITA"),
                                table.row(ClubId.of("ITA")).orElseThrow().decidedBy()))
                .isEqualTo("tie points 4, level with CZE, ahead of RUS 1, behind GER 7; lost to CZE 0-1 (tie T3)");
    }

    /** The same results under the other rule; recomputed, no source for the order. */
    @Test
    void the_overall_difference_first_gives_another_order() {
        Table table = euro1996().table(football("points-difference>head-to-head>lots", "3/1/0"));
        assertThat(Pool.order(table)).isEqualTo("GER ITA CZE RUS");
    }

    /** World Cup 1990 group F, data set openfootball/worldcup; that lots were drawn for places two and three is from memory. */
    @Test
    void where_everything_is_equal_only_a_lot_can_part_two_teams() {
        Pool pool = Pool.of("EGY", "ENG", "IRL", "NED")
                .tie("ENG", "IRL", "1-1")
                .tie("NED", "EGY", "1-1")
                .tie("ENG", "NED", "0-0")
                .tie("IRL", "EGY", "0-0")
                .tie("ENG", "EGY", "1-0")
                .tie("IRL", "NED", "1-1");
        TableRules rules = football("points-difference>points-won>head-to-head>points-ratio>lots", "2/1/0");
        Table table = pool.table(rules);
        assertThat(Pool.order(table)).isEqualTo("ENG (IRL NED) EGY");
        assertThat(table.lotsToDraw()).containsExactly(List.of(ClubId.of("IRL"), ClubId.of("NED")));
        assertThat(table.rows()).extracting(Row::place).containsExactly(1, 2, 2, 4);
        assertThat(StandingsWords.withCodes()
                        .reason(ClubId.of("IRL"), table.rows().get(1).decidedBy()))
                .endsWith("everything equal with NED: only a lot can part them, and none has been drawn");

        Table drawn = pool.lot("W. Itness", "IRL", "NED").table(rules);
        assertThat(Pool.order(drawn)).isEqualTo("ENG IRL NED EGY");
        assertThat(StandingsWords.withCodes()
                        .reason(ClubId.of("NED"), drawn.rows().get(2).decidedBy()))
                .endsWith("everything equal: number 2 in the lot drawn among IRL and NED, witness W. Itness");
        assertThat(Pool.order(pool.lot("W. Itness", "NED", "IRL").table(rules))).isEqualTo("ENG NED IRL EGY");
    }

    /** World Cup 1962 group 4, data set openfootball/worldcup; that the goal ratio was the rule is from memory. */
    @Test
    void goal_ratio_parts_two_level_teams() {
        Table table = Pool.of("ARG", "BUL", "ENG", "HUN")
                .tie("ARG", "BUL", "1-0")
                .tie("HUN", "ENG", "2-1")
                .tie("ENG", "ARG", "3-1")
                .tie("HUN", "BUL", "6-1")
                .tie("HUN", "ARG", "0-0")
                .tie("ENG", "BUL", "0-0")
                .table(football("points-ratio>lots", "2/1/0"));
        assertThat(Pool.order(table)).isEqualTo("HUN ENG ARG BUL");
        assertThat(StandingsWords.withCodes()
                        .reason(ClubId.of("ENG"), table.rows().get(1).decidedBy()))
                .endsWith("points ratio 1.3333 (4-3), ahead of ARG 0.6667 (2-3)");
    }

    /** Lithuanian badminton federation, team rules 7.12: all results of a withdrawn team are deleted. */
    @Test
    void an_annulled_club_leaves_no_trace() {
        Pool pool = Pool.of("A", "B", "C", "D")
                .rubbers("A", "B", 3, 1)
                .rubbers("A", "C", 1, 3)
                .rubbers("B", "C", 3, 1)
                .rubbers("D", "A", 4, 0)
                .unfinished("D", "B");
        Table annulled = pool.withdrew("D", Treatment.ANNUL).table(Rules.of("overall-difference"));
        assertThat(annulled.row(ClubId.of("D"))).isEmpty();
        assertThat(annulled.tiesLeft()).isZero();
        Table without = Pool.of("A", "B", "C")
                .rubbers("A", "B", 3, 1)
                .rubbers("A", "C", 1, 3)
                .rubbers("B", "C", 3, 1)
                .table(Rules.of("overall-difference"));
        assertThat(annulled).isEqualTo(without);
    }
}
