package tiewright.standings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tiewright.conditions.Conditions;
import tiewright.conditions.Preset;
import tiewright.conditions.Setting;
import tiewright.conditions.Withdrawal;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.OfficialFact;
import tiewright.event.TieId;

/** The values that tables, needs and chances are made of, at their limits and one beyond. */
class TableValuesTest {
    private static final ClubId A = ClubId.of("A");
    private static final ClubId B = ClubId.of("B");
    private static final ClubId C = ClubId.of("C");

    @Test
    void places_run_from_the_first() {
        assertThat(new PlaceRange(1, 1)).hasToString("1").matches(PlaceRange::isCertain);
        assertThat(new PlaceRange(1, 2)).hasToString("1-2").matches(range -> !range.isCertain());
        assertThat(new PlaceRange(2, 3).and(new PlaceRange(1, 2))).isEqualTo(new PlaceRange(1, 3));
        assertThat(new PlaceRange(1, 2).and(new PlaceRange(2, 3))).isEqualTo(new PlaceRange(1, 3));
        assertThatThrownBy(() -> new PlaceRange(0, 1)).hasMessage("no places from 0 to 1");
        assertThatThrownBy(() -> new PlaceRange(2, 1)).hasMessage("no places from 2 to 1");
    }

    @ParameterizedTest
    @CsvSource({"1, 1, 1, THROUGH", "1, 2, 1, OPEN", "2, 2, 1, OUT", "1, 2, 2, THROUGH", "2, 3, 2, OPEN", "3, 4, 2, OUT"
    })
    void who_goes_through_follows_from_the_places(int best, int worst, int through, Prospect prospect) {
        assertThat(Prospect.of(new PlaceRange(best, worst), through)).isEqualTo(prospect);
    }

    @Test
    void a_ratio_with_nothing_lost_is_ahead_of_all_and_others_compare_as_fractions() {
        Value unbeaten = new Value(Form.RATIO, 1, 0);
        assertThat(unbeaten)
                .isGreaterThan(new Value(Form.RATIO, 100, 1))
                .isEqualByComparingTo(new Value(Form.RATIO, 9, 0));
        assertThat(new Value(Form.RATIO, 100, 1)).isLessThan(unbeaten);
        assertThat(new Value(Form.RATIO, 2, 3)).isEqualByComparingTo(new Value(Form.RATIO, 4, 6));
        assertThat(new Value(Form.RATIO, 2, 3)).isLessThan(new Value(Form.RATIO, 3, 4));
        assertThat(new Value(Form.DIFFERENCE, 3, 1)).isGreaterThan(new Value(Form.DIFFERENCE, 9, 8));
        assertThat(new Value(Form.WON, 3, 9)).isGreaterThan(new Value(Form.WON, 2, 0));
    }

    @Test
    void a_line_says_who_is_ahead_behind_and_still_level() {
        Line.Compared line = new Line.Compared(
                Criterion.TIE_POINTS,
                Stream.of(
                                new ClubValue(A, new Value(Form.WON, 3, 0)),
                                new ClubValue(B, new Value(Form.WON, 2, 0)),
                                new ClubValue(C, new Value(Form.WON, 2, 0)))
                        .toList(),
                List.of());
        assertThat(line.kind()).isEqualTo(Line.Kind.COMPARED);
        assertThat(line.level()).containsExactly(A, B, C);
        assertThat(line.ahead(B)).containsExactly(A);
        assertThat(line.stillLevelWith(B)).containsExactly(C);
        assertThat(line.behind(B)).isEmpty();
        assertThat(line.behind(A)).containsExactly(B, C);
        assertThat(line.of(A)).isEqualTo(new Value(Form.WON, 3, 0));
        assertThatThrownBy(() -> line.of(ClubId.of("X"))).hasMessage("X was not compared here");
    }

    @Test
    void a_result_seen_by_the_other_club_is_its_mirror() {
        assertThat(Stream.of(Result.values()).map(Result::other))
                .containsExactly(Result.LOST, Result.DRAWN, Result.WON, Result.LOST_BY_BOTH);
        assertThat(List.of(Result.ofLead(1), Result.ofLead(0), Result.ofLead(-1)))
                .containsExactly(Result.WON, Result.DRAWN, Result.LOST);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "rubbers", "rubbers-lost", "points-won-between", "head-to-head-", "ties-won"})
    void nothing_else_is_a_criterion(String word) {
        assertThat(Criterion.parse(word)).isEmpty();
        assertThat(Procedure.parse(word)).isEmpty();
    }

    @Test
    void a_criterion_reads_what_when_and_among_whom() {
        assertThat(Criterion.parse("rubbers-ratio-among")).contains(new Criterion(Quantity.RUBBERS, Form.RATIO, true));
        assertThat(Criterion.parse("points-difference"))
                .contains(new Criterion(Quantity.POINTS, Form.DIFFERENCE, false));
        assertThat(Criterion.parse("games-won")).contains(new Criterion(Quantity.GAMES, Form.WON, false));
        assertThat(Criterion.parse("head-to-head")).contains(Criterion.HEAD_TO_HEAD);
        assertThat(Criterion.parse("head-to-head-among")).contains(Criterion.HEAD_TO_HEAD);
        assertThat(Criterion.parse("ties-won-among")).contains(Criterion.TIES_WON_AMONG);
    }

    @Test
    void games_and_ties_are_played_like_this() {
        assertThat(new Games(1, 1, false, 1, 1, true).target()).isEqualTo(1);
        for (int[] wrong : new int[][] {{0, 11, 1, 11}, {1, 0, 1, 11}, {1, 11, 0, 11}, {1, 11, 3, 2}}) {
            assertThatThrownBy(() -> new Games(wrong[0], wrong[1], false, wrong[2], wrong[3], true))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageStartingWith("no rubber is played like this");
        }
        Games games = new Games(1, 11, false, 2, 11, true);
        assertThat(Rules.tie(1, false, games, Optional.empty()).canBeDrawn()).isFalse();
        assertThat(Rules.tie(2, false, games, Optional.empty()).canBeDrawn()).isTrue();
        assertThat(Rules.tie(2, false, games, Optional.of(games)).canBeDrawn()).isFalse();
        assertThatThrownBy(() -> Rules.tie(0, false, games, Optional.empty()))
                .hasMessage("a tie has a rubber or more, got 0");
        assertThat(games.stoppedByTime().leastMargin()).isEqualTo(1);
        assertThat(games.stoppedByTime().reachesTarget()).isFalse();
    }

    @Test
    void a_lot_is_drawn_among_two_or_more_before_a_witness_and_the_last_among_just_these_counts() {
        assertThatThrownBy(() -> new LotDrawn(List.of(A), "Wim")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new LotDrawn(List.of(A, A), "Wim")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new LotDrawn(List.of(A, B), " ")).isInstanceOf(IllegalArgumentException.class);
        LotDrawn first = new LotDrawn(List.of(A, B), "Wim");
        LotDrawn last = new LotDrawn(List.of(B, A), "Ola");
        LotDrawn other = new LotDrawn(List.of(A, B, C), "Wim");
        assertThat(LotDrawn.among(List.of(A, B), List.of(first, last, other))).contains(last);
        assertThat(LotDrawn.among(List.of(A, C), List.of(first, last, other))).isEmpty();
    }

    @Test
    void a_table_is_between_clubs_that_stand_in_it_once() {
        assertThatThrownBy(() -> TableInput.of(List.of(A, A), List.of(), Rules.of("lots")))
                .hasMessage("a club stands twice in the table: [A, A]");
        for (Pool pool : List.of(
                Pool.of("A", "B").unfinished("A", "X"),
                Pool.of("A", "B").unfinished("X", "B"),
                Pool.of("A", "B").unfinished("A", "A"))) {
            assertThatThrownBy(() -> pool.input(Rules.of("lots")))
                    .hasMessage("tie T1 is not between two clubs of the table");
        }
        assertThat(Pool.of().table(Rules.of("lots")).rows()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "9, 1", "2, 0", "2, 10001"})
    void a_dry_run_has_two_to_eight_clubs_and_one_to_ten_thousand_runs(int clubs, int runs) {
        assertThatThrownBy(() -> DryRun.of(Conditions.of(Preset.CLUB_DAY), clubs, runs, 1))
                .hasMessage(clubs + " clubs, " + runs + " runs");
    }

    @Test
    void a_dry_run_at_its_limits_says_its_share() {
        Conditions coin = Conditions.of(Preset.CLUB_DAY)
                .with(Setting.SCORING, "rally-3")
                .with(Setting.RUBBERS, "2")
                .with(Setting.DECIDER, "none")
                .with(Setting.TIE_POINTS, "2/1/0")
                .with(Setting.LEVEL_TEAMS, "lots");
        assertThat(DryRun.of(coin, 8, 1, 1).clubs()).isEqualTo(8);
        DryRun.Report most = DryRun.of(coin, 2, 10_000, 1);
        assertThat(most.runs()).isEqualTo(10_000);
        assertThat(most.share()).isEqualTo(most.withLot() / 10_000.0).isBetween(most.low(), most.high());
        assertThat(most.ways()).extracting(DryRun.Found::way).containsExactly(new DryRun.Way(1, 2));
        assertThat(most.ways().get(0).times()).isEqualTo(most.withLot());
        assertThat(most.ways().get(0).example().ties()).hasSize(1);
        assertThat(Stream.of(new DryRun.Way(2, 2), new DryRun.Way(1, 3), new DryRun.Way(1, 2))
                        .sorted())
                .containsExactly(new DryRun.Way(1, 2), new DryRun.Way(1, 3), new DryRun.Way(2, 2));
    }

    @Test
    void ends_of_a_tie_sort_from_lost_to_won() {
        assertThat(Stream.of("4-0", "2-3", "0-4", "3-2", "3-1", "1-0", "0-1")
                        .map(TableValuesTest::end)
                        .sorted())
                .containsExactly(end("0-4"), end("0-1"), end("2-3"), end("1-0"), end("3-2"), end("3-1"), end("4-0"));
    }

    private static ThroughChances.End end(String text) {
        return new ThroughChances.End(text.charAt(0) - '0', text.charAt(2) - '0');
    }

    @Test
    void a_club_goes_through_from_its_pool_to_the_places_that_the_knockout_has_for_it() {
        Days day =
                Days.aDay().clubs("N", "S", "E").poolTie("A1", "A", 1, "N", "S").poolTie("A2", "A", 2, "S", "E");
        assertThat(PoolTables.through(day.event(), "A")).as("none is drawn").isEqualTo(1);
        day.knockoutTie("SF1", 1, "A-1", "B-2")
                .knockoutTie("SF2", 1, "B-1", "A-2")
                .knockoutTie("Q", 1, "A-2", "winner-A");
        assertThat(PoolTables.through(day.event(), "A")).isEqualTo(2);
        assertThat(PoolTables.through(day.event(), "B")).isEqualTo(2);
        assertThat(PoolTables.through(day.event(), "C")).isEqualTo(1);
    }

    @Test
    void chances_are_asked_of_a_tie_of_a_pool_as_the_event_stands() {
        Days day = Days.oneTie().knockoutTie("F", 1, "A-1", "N");
        ClubId n = ClubId.of("N");
        Map<ThroughChances.End, Double> chances = ThroughChances.of(day.event(), TieId.of("A1"), n, 10, 1);
        assertThat(chances.get(end("4-0"))).isEqualTo(1.0);
        assertThat(chances.get(end("0-4"))).isEqualTo(0.0);
        assertThat(ThroughChances.of(day.event(), TieId.of("F"), n, 10, 1)).isEmpty();
        assertThat(ThroughChances.of(day.event(), TieId.of("none"), n, 10, 1)).isEmpty();
        day.cards("A1", "15-3", "15-3", "15-3", "15-3");
        assertThat(ThroughChances.of(day.event(), TieId.of("A1"), n, 10, 1))
                .as("over")
                .isEmpty();
    }

    /** What stands on the card of a tie after the last that a club played was not played by that club. */
    @Test
    void a_tie_after_the_last_of_a_club_that_withdrew_counts_as_not_played() {
        Days day = Days.aDay()
                .clubs("N", "S", "E")
                .poolTie("A2", "A", 2, "N", "E")
                .poolTie("A1", "A", 1, "N", "S")
                .poolTie("A3", "A", 3, "S", "E")
                .cards("A1", "15-3", "15-3", "15-3", "15-3")
                .cards("A2", "15-3", "15-3", "15-3", "15-3")
                .cards("A3", "15-3", "15-3", "15-3", "15-3");
        ClubId n = ClubId.of("N");
        assertThat(finished(day)).containsExactly(true, true, true);
        day.fact(new OfficialFact.ClubWithdrawn(n, Optional.of(TieId.of("A1")), Withdrawal.KEEP, 1));
        assertThat(finished(day)).containsExactly(false, true, true);
        assertThat(PoolTables.input(day.event(), "A").ties().get(0).rubbers()).isEmpty();
        assertThat(PoolTables.input(day.event(), "A").withdrawals()).isEqualTo(Map.of(n, Treatment.KEEP));
        day.fact(new OfficialFact.ClubWithdrawn(n, Optional.of(TieId.of("A2")), Withdrawal.AWARD, 1));
        assertThat(finished(day)).containsExactly(true, true, true);
        assertThat(PoolTables.input(day.event(), "A").withdrawals()).isEqualTo(Map.of(n, Treatment.AWARD));
        day.fact(new OfficialFact.ClubWithdrawn(n, Optional.of(TieId.of("A3")), Withdrawal.ANNUL, 1));
        assertThat(finished(day)).as("not one of its ties").containsExactly(true, true, true);
        day.fact(new OfficialFact.ClubWithdrawn(n, Optional.empty(), Withdrawal.ANNUL, 1));
        assertThat(finished(day)).containsExactly(true, true, true);
        assertThat(PoolTables.input(day.event(), "A").withdrawals()).isEqualTo(Map.of(n, Treatment.ANNUL));
    }

    private static List<Boolean> finished(Days day) {
        return PoolTables.input(day.event(), "A").ties().stream()
                .map(tiewright.event.TieScore::finished)
                .toList();
    }

    @Test
    void a_table_finds_its_rows_and_knows_whether_it_is_final() {
        Table table = Pool.of("A", "B", "C")
                .rubbers("A", "B", 3, 1)
                .unfinished("B", "C")
                .table(Rules.of("lots"));
        assertThat(table.isProvisional()).isTrue();
        assertThat(table.tiesLeft()).isEqualTo(1);
        assertThat(table.row(A)).map(Row::place).contains(1);
        assertThat(table.row(ClubId.of("X"))).isEmpty();
        assertThat(table.order()).containsExactly(A, B, C);
        assertThat(Pool.of("A", "B")
                        .rubbers("A", "B", 3, 1)
                        .table(Rules.of("lots"))
                        .isProvisional())
                .isFalse();
        assertThat(table.lotsToDraw()).containsExactly(List.of(B, C));
    }

    @Test
    void needs_say_whether_only_the_two_ends_are_told() {
        Pool two =
                Pool.of("A", "B", "C").unfinished("A", "B").unfinished("A", "C").rubbers("B", "C", 3, 1);
        NeedsReport report = Needs.of(two.input(Rules.of("overall-difference")), A, OptionalInt.empty())
                .orElseThrow();
        assertThat(report.onlyEnds()).isFalse();
        assertThat(report.cases()).hasSize(4);
    }
}
