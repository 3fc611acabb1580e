package tiewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static tiewright.sheet.Asked.N;
import static tiewright.sheet.Asked.SHEETS;
import static tiewright.sheet.Asked.player;
import static tiewright.sheet.Asked.sheet;
import static tiewright.sheet.Asked.straight;
import static tiewright.sheet.Asked.without;

import java.math.BigInteger;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.SetUpFact;
import tiewright.event.Sheet;

class SheetRulesTest {
    private static List<String> faults(Days day, Sheet sheet) {
        return Asked.codes(SheetRules.faults(new SheetOf(day.event(), SHEETS, N, day.directory()), sheet));
    }

    private static Days rankSum() {
        return Days.oneTie().with(Setting.ORDER_OF_STRENGTH, "rank-sum");
    }

    @Test
    void accepts_any_full_sheet_where_no_order_of_strength_binds() {
        assertThat(faults(Days.oneTie(), straight("N"))).isEmpty();
        assertThat(faults(Days.oneTie(), sheet("N", "78 56 34 12"))).isEmpty();
    }

    @Test
    void refuses_a_sheet_with_too_few_or_too_many_rubbers() {
        assertThat(faults(Days.oneTie(), sheet("N", "12 34 56"))).containsExactly("rubbers");
        assertThat(faults(Days.oneTie(), sheet("N", "12 34 56 78 -"))).containsExactly("rubbers");
    }

    @Test
    void refuses_a_player_named_twice() {
        List<Refusal> faults = SheetRules.faults(
                new SheetOf(Days.oneTie().event(), SHEETS, N, Days.oneTie().directory()), sheet("N", "12 34 56 17"));
        assertThat(Asked.codes(faults)).containsExactly("player-twice");
        assertThat(faults.get(0).data()).containsEntry("player", PlayerId.of("N1"));
        assertThat(faults.get(0).field()).isEqualTo("sheet-4");
    }

    @Test
    void lets_a_player_stand_in_two_rubbers_where_the_conditions_do_and_not_in_three() {
        Days day = Days.oneTie().with(Setting.MAX_RUBBERS_PER_PLAYER, "2");
        assertThat(faults(day, sheet("N", "12 34 56 17"))).isEmpty();
        assertThat(faults(day, sheet("N", "12 13 14 56"))).containsExactly("too-often");
    }

    @Test
    void refuses_a_rank_sum_that_falls_and_accepts_equal_ones() {
        assertThat(faults(rankSum(), sheet("N", "13 12 56 78"))).containsExactly("player-twice", "rank-sum");
        assertThat(faults(rankSum(), sheet("N", "34 12 56 78"))).containsExactly("rank-sum");
        assertThat(faults(rankSum(), sheet("N", "18 27 36 45"))).isEmpty();
        assertThat(faults(rankSum(), sheet("N", "12 34 56 78"))).isEmpty();
    }

    @Test
    void asks_only_for_the_strongest_pair_first_where_the_conditions_say_so() {
        Days day = Days.oneTie().with(Setting.ORDER_OF_STRENGTH, "strongest-first");
        assertThat(faults(day, sheet("N", "12 78 56 34"))).isEmpty();
        assertThat(faults(day, sheet("N", "34 78 56 12"))).containsExactly("strongest-first");
    }

    @Test
    void needs_a_rank_for_everybody_named_only_where_an_order_binds() {
        Days unranked = rankSum().fact(player("N3", "N", OptionalInt.empty(), "", ""));
        assertThat(faults(unranked, sheet("N", "12 34 56 78"))).contains("rank-missing");
        assertThat(faults(unranked.with(Setting.ORDER_OF_STRENGTH, "none"), sheet("N", "12 34 56 78")))
                .isEmpty();
    }

    @Test
    void six_of_eight_leave_the_bottom_rubber_empty_and_no_other() {
        Days six = without(Days.oneTie(), "N7", "N8");
        assertThat(faults(six, sheet("N", "12 34 56 -"))).isEmpty();
        assertThat(faults(six, sheet("N", "- 12 34 56"))).containsExactly("gap");
        assertThat(faults(six, sheet("N", "12 - 34 56"))).containsExactly("gap");
        assertThat(faults(six, sheet("N", "12 34 - -"))).containsExactly("not-full");
        assertThat(faults(six, sheet("N", "12 34 56 78"))).containsExactly("absent", "absent");
    }

    @Test
    void a_gap_stands_at_the_bottom_too_where_everybody_moves_up() {
        Days six = without(Days.oneTie().with(Setting.SHORT_SQUAD, "move-up"), "N1", "N8");
        assertThat(faults(six, sheet("N", "23 45 67 -"))).isEmpty();
        assertThat(faults(six, sheet("N", "- 23 45 67"))).containsExactly("gap");
    }

    @Test
    void eight_present_leave_nothing_empty() {
        assertThat(faults(Days.oneTie(), sheet("N", "12 34 56 -"))).containsExactly("not-full");
    }

    @Test
    void a_short_squad_doubles_up_where_the_conditions_allow_it() {
        Days six = without(Days.oneTie().with(Setting.MAX_RUBBERS_PER_PLAYER, "2"), "N7", "N8");
        assertThat(faults(six, sheet("N", "12 34 56 -"))).containsExactly("not-full");
        assertThat(faults(six, sheet("N", "12 34 56 12"))).isEmpty();
    }

    @Test
    void a_player_noted_absent_can_be_named_again_once_checked_in() {
        Days day = without(Days.oneTie(), "N8");
        assertThat(faults(day, straight("N"))).containsExactly("absent");
        assertThat(faults(day.fact(new SetUpFact.CheckedIn(PlayerId.of("N8"), true)), straight("N")))
                .isEmpty();
    }

    @Test
    void refuses_who_comes_after_the_start_unless_the_desk_has_seen_the_player() {
        Days late = Days.oneTie().fact(player("N8", "N", OptionalInt.of(8), "10:01", ""));
        assertThat(faults(late, straight("N"))).containsExactly("not-yet");
        assertThat(faults(late.fact(new SetUpFact.CheckedIn(PlayerId.of("N8"), true)), straight("N")))
                .isEmpty();
        assertThat(faults(Days.oneTie().fact(player("N8", "N", OptionalInt.of(8), "10:00", "")), straight("N")))
                .isEmpty();
    }

    @Test
    void refuses_who_leaves_by_the_start() {
        assertThat(faults(Days.oneTie().fact(player("N8", "N", OptionalInt.of(8), "", "10:00")), straight("N")))
                .containsExactly("leaves");
        assertThat(faults(Days.oneTie().fact(player("N8", "N", OptionalInt.of(8), "", "10:01")), straight("N")))
                .isEmpty();
    }

    @Test
    void refuses_who_is_no_longer_or_never_was_in_the_squad() {
        Days removed = Days.oneTie().fact(new SetUpFact.PlayerRemoved(PlayerId.of("N8")));
        assertThat(faults(removed, straight("N"))).containsExactly("not-in-squad");
        assertThat(faults(Days.oneTie(), straight("S"))).hasSize(8).containsOnly("other-squad");
    }

    @Test
    void refuses_a_code_that_another_club_entered_too() {
        Days twice = Days.oneTie().fact(player("N8", "S", OptionalInt.of(9), "", ""));
        List<Refusal> faults =
                SheetRules.faults(new SheetOf(twice.event(), SHEETS, N, twice.directory()), straight("N"));
        assertThat(Asked.codes(faults)).containsExactly("other-squad");
        assertThat(faults.get(0).data()).containsEntry("other", ClubId.of("S"));
    }

    @Test
    void refuses_who_has_played_for_another_club() {
        Days day = Days.oneTie().clubs("W").poolTie("A2", "A", 2, "N", "W").opened("A1");
        day.fact(player("S8", "N", OptionalInt.of(9), "", ""));
        List<Refusal> faults = SheetRules.faults(
                new SheetOf(
                        day.event(),
                        tiewright.event.ExchangeId.sheets(tiewright.event.TieId.of("A2")),
                        N,
                        day.directory()),
                Sheet.full(
                        tiewright.event.Pair.of("N1", "N2"), tiewright.event.Pair.of("N3", "N4"),
                        tiewright.event.Pair.of("N5", "N6"), tiewright.event.Pair.of("N7", "S8")));
        assertThat(Asked.codes(faults)).containsExactly("played-for-other");
    }

    /** 8!/2^4 = 2,520 and 6!/2^3 = 90: multinomial coefficients; 8!/(2^3 2!) = 2,520. Rank sums: plain counting here. */
    @Test
    void counts_what_it_allows_four_pairs_of_eight() {
        List<Sheet> all = Sheets.disjoint("N", 8, 4);
        assertThat(all)
                .hasSize(2520)
                .allMatch(sheet -> faults(Days.oneTie(), sheet).isEmpty());
        Days order = rankSum();
        assertThat(all.stream().filter(sheet -> faults(order, sheet).isEmpty())).hasSize(199);
        assertCounted(order, 8, 199, 2520);
    }

    @Test
    void counts_what_it_allows_three_pairs_of_eight_and_of_six_by_trying_everything() {
        Days eight = Days.oneTie().with(Setting.RUBBERS, "3");
        assertThat(legal(eight, 8, 3)).isEqualTo(2520);
        Days eightInOrder = eight.with(Setting.ORDER_OF_STRENGTH, "rank-sum");
        assertThat(legal(eightInOrder, 8, 3)).isEqualTo(568);
        assertCounted(eightInOrder, 8, 568, 2520);
        Days six = without(Days.oneTie().with(Setting.RUBBERS, "3"), "N7", "N8");
        assertThat(legal(six, 6, 3)).isEqualTo(90);
        Days sixInOrder = six.with(Setting.ORDER_OF_STRENGTH, "rank-sum");
        assertThat(legal(sixInOrder, 6, 3)).isEqualTo(24);
        assertCounted(sixInOrder, 6, 24, 90);
    }

    /** Short squads, doubling up and the strongest pair first: the count and the rules agree there too. */
    @Test
    void the_count_and_the_rules_agree_under_other_conditions() {
        for (int here = 2; here <= 5; here++) {
            for (String most : List.of("1", "2")) {
                for (String order : List.of("none", "rank-sum", "strongest-first")) {
                    Days day = Days.aDay()
                            .club("N", here)
                            .club("S", here)
                            .poolTie("A1", "A", 1, "N", "S")
                            .timed("A1", "10:00", "1")
                            .with(Setting.RUBBERS, "3")
                            .with(Setting.MAX_RUBBERS_PER_PLAYER, most)
                            .with(Setting.ORDER_OF_STRENGTH, order);
                    SheetCount count = counted(day, here);
                    assertThat(legal(day, here, 3))
                            .as("%s here, %s each, %s", here, most, order)
                            .isEqualTo(count.legal().longValueExact());
                }
            }
        }
    }

    private static long legal(Days day, int players, int rubbers) {
        long[] legal = {0};
        Sheets.everything(
                "N",
                players,
                rubbers,
                sheet -> legal[0] += SheetRules.faults(new SheetOf(day.event(), SHEETS, N, day.directory()), sheet)
                                .isEmpty()
                        ? 1
                        : 0);
        return legal[0];
    }

    private static void assertCounted(Days day, int players, long legal, long all) {
        assertThat(counted(day, players)).isEqualTo(new SheetCount(BigInteger.valueOf(legal), BigInteger.valueOf(all)));
    }

    private static SheetCount counted(Days day, int players) {
        return SheetCount.of(
                        IntStream.rangeClosed(1, players)
                                .mapToObj(OptionalInt::of)
                                .toList(),
                        day.event().conditions())
                .orElseThrow();
    }
}
