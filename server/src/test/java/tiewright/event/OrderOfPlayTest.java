package tiewright.event;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What was published of times and courts, what changed and which notice told of it: our own, no source. */
class OrderOfPlayTest {
    private static final TieId A1 = TieId.of("A1");
    private static final TieId A2 = TieId.of("A2");
    private static final ClubId N = ClubId.of("N");
    private static final ClubId S = ClubId.of("S");
    private static final ClubId E = ClubId.of("E");
    private static final ClubId W = ClubId.of("W");

    /** A1 (N and S) at 10:00 on court 1, A2 (E and W) without a time. */
    private static Days day() {
        return Days.oneTie().clubs("E", "W").courts("3").poolTie("A2", "A", 1, "W", "E");
    }

    private static OfficialFact.NoticeStated notice(int number, TieId... tie) {
        return new OfficialFact.NoticeStated(
                number,
                Saying.typed("text"),
                List.of(tie).stream().findFirst(),
                Optional.empty(),
                Optional.empty(),
                Saying.typed("why"));
    }

    private static DrawFact.PlanPublished plan(int version, int notice) {
        return new DrawFact.PlanPublished(version, notice, 20, "7", "rain", "D. Desk");
    }

    private static DrawFact.RubberTimed placed(TieId tie, int rubber, String start, String court, ClubId... umpires) {
        return new DrawFact.RubberTimed(
                tie,
                RubberNo.of(rubber),
                LocalTime.parse(start),
                court,
                List.of(umpires).stream().findFirst());
    }

    private static OrderOfPlay.Times times(String start, String... courts) {
        return new OrderOfPlay.Times(Optional.of(LocalTime.parse(start)), List.of(courts));
    }

    private static OrderOfPlay.Change only(List<OrderOfPlay.Change> changes) {
        assertThat(changes).hasSize(1);
        return changes.get(0);
    }

    @Test
    void a_change_says_who_meets_what_was_and_what_is_and_when_it_was_made() {
        Days day = day().at("09:10").timed("A1", "11:30", "2");
        assertThat(day.event().order().of(A1).get(1))
                .isEqualTo(new OrderOfPlay.Change(
                        A1,
                        Saying.of("notices.between")
                                .with("home", Saying.typed("Club N"))
                                .with("away", Saying.typed("Club S")),
                        List.of(N, S),
                        times("10:00", "1"),
                        times("11:30", "2"),
                        OptionalInt.empty(),
                        false,
                        Days.moment("09:10")));
        assertThat(day.event().order().of(A2)).isEmpty();
        assertThat(day.event().order().courts(day.tie("A1"))).containsExactly("2");
        assertThat(day.event().order().courts(day.tie("A2"))).isEmpty();
    }

    @Test
    void sides_that_are_open_are_told_by_where_they_come_from_and_a_club_that_is_gone_by_its_code() {
        Days day = day().knockoutTie("F", 2, "winner-SF1", "A-2")
                .knockoutTie("P", 2, "loser-SF1", "N")
                .fact(new SetUpFact.ClubRemoved(N))
                .timed("F", "15:00", "1")
                .timed("P", "15:00", "2");
        assertThat(only(day.event().order().of(TieId.of("F"))).between())
                .isEqualTo(Saying.of("notices.between")
                        .with("home", Saying.of("notices.winner").with("tie", "SF1"))
                        .with(
                                "away",
                                Saying.of("notices.place-of-pool")
                                        .with("place", 2)
                                        .with("pool", "A")));
        assertThat(only(day.event().order().of(TieId.of("P"))).between())
                .isEqualTo(Saying.of("notices.between")
                        .with("home", Saying.of("notices.loser").with("tie", "SF1"))
                        .with("away", Saying.typed("N")));
        assertThat(only(day.event().order().of(TieId.of("F"))).clubs()).isEmpty();
        assertThat(only(day.event().order().of(TieId.of("P"))).clubs()).containsExactly(N);
    }

    @Test
    void a_tie_had_a_time_once_a_start_or_a_court_was_published() {
        Days day = day();
        assertThat(day.event().order().hadTime(A1)).isTrue();
        assertThat(day.event().order().hadTime(A2)).isFalse();
        day.fact(new DrawFact.TieTimed(A2, Optional.empty(), Optional.empty()));
        assertThat(day.event().order().hadTime(A2)).isFalse();
        Days court = day().fact(new DrawFact.TieTimed(A2, Optional.empty(), Optional.of("2")));
        assertThat(court.event().order().hadTime(A2)).isTrue();
        Days start = day().fact(new DrawFact.TieTimed(A2, Optional.of(LocalTime.NOON), Optional.empty()));
        assertThat(start.event().order().hadTime(A2)).isTrue();
        start.fact(new DrawFact.TieTimed(A2, Optional.empty(), Optional.empty()));
        assertThat(start.event().order().hadTime(A2)).as("taken away again").isTrue();
    }

    @Test
    void a_notice_tells_of_the_last_change_of_its_tie_and_of_no_other() {
        Days day = day().timed("A1", "11:00", "1");
        assertThat(day.fact(notice(1, A2), notice(2)).event().order().under(1)).isEmpty();
        assertThat(day.event().order().under(2)).isEmpty();
        day.fact(notice(3, A1));
        OrderOfPlay.Change told = only(day.event().order().under(3));
        assertThat(told.after()).isEqualTo(times("11:00", "1"));
        assertThat(told.notice()).hasValue(3);
        day.fact(notice(4, A1));
        assertThat(day.event().order().under(4)).as("told already").isEmpty();
        assertThat(day.event().order().under(3)).hasSize(1);
        assertThat(day.event().order().of(A1)).hasSize(2);
    }

    @Test
    void a_notice_before_any_change_tells_of_none() {
        Days day = Days.aDay().clubs("N", "S").poolTie("A1", "A", 1, "N", "S").fact(notice(1, A1));
        assertThat(day.event().order().changes()).isEmpty();
        assertThat(day.event().order().plan()).isEmpty();
        Days first = Days.oneTie().fact(notice(1, A1));
        assertThat(only(first.event().order().under(1)).tie()).isEqualTo(A1);
    }

    @Test
    void the_notice_of_a_plan_tells_of_all_that_changed_with_it_and_what_stayed_is_no_change() {
        Days day = day().at("12:00")
                .fact(plan(1, 5))
                .timed("A1", "10:00", "1")
                .timed("A2", "11:00", "3")
                .fact(notice(5));
        OrderOfPlay order = day.event().order();
        assertThat(order.plan())
                .contains(new OrderOfPlay.Plan(1, 5, 20, "7", "rain", "D. Desk", Days.moment("12:00"), 1));
        assertThat(only(order.under(5)).tie()).isEqualTo(A2);
        assertThat(order.changes()).hasSize(2);
        assertThat(only(order.of(A1)).notice()).as("from before the plan").isEmpty();
        day.fact(plan(2, 6)).timed("A2", "12:00", "3").fact(notice(6));
        assertThat(only(day.event().order().under(6)).after()).isEqualTo(times("12:00", "3"));
        assertThat(only(day.event().order().under(5)).after()).isEqualTo(times("11:00", "3"));
        assertThat(day.event().order().plan()).map(OrderOfPlay.Plan::version).contains(2);
        assertThat(day.event().order().plans()).hasSize(2);
    }

    @Test
    void another_notice_after_a_plan_tells_of_its_own_tie() {
        Days day = day().fact(plan(1, 5)).timed("A2", "11:00", "3").fact(notice(5));
        day.timed("A1", "10:30", "1").fact(notice(6, A1));
        assertThat(only(day.event().order().under(6)).tie()).isEqualTo(A1);
        assertThat(only(day.event().order().under(5)).tie()).isEqualTo(A2);
    }

    @Test
    void a_tie_called_off_is_a_change_though_it_never_had_a_time() {
        Days day = day().fact(plan(1, 5), new DrawFact.TieCalledOff(A2, 1), notice(5));
        OrderOfPlay.Change off = only(day.event().order().under(5));
        assertThat(off.calledOff()).isTrue();
        assertThat(off.after().isNone()).isTrue();
        assertThat(off.before().isNone()).isTrue();
        assertThat(off.between())
                .isEqualTo(Saying.of("notices.tie-between")
                        .with("tie", "A2")
                        .with("home", Saying.typed("Club W"))
                        .with("away", Saying.typed("Club E")));
        assertThat(day.event().order().hadTime(A2)).isFalse();
    }

    @Test
    void a_tie_stands_on_the_courts_of_its_rubbers_each_once_and_under_the_umpires_named() {
        Days day = day().fact(plan(1, 5)).timed("A2", "11:00", "1");
        day.fact(
                placed(A2, 2, "11:20", "1", N),
                placed(A2, 1, "11:00", "3", S),
                placed(A2, 3, "11:20", "3", N),
                placed(A2, 4, "11:40", "3"));
        OrderOfPlay order = day.event().order();
        assertThat(order.courts(day.tie("A2"))).containsExactly("3", "1");
        assertThat(order.umpires(A2)).containsExactly(S, N);
        assertThat(order.umpires(A1)).isEmpty();
        assertThat(order.rubbers(A2)).hasSize(4);
        assertThat(order.rubbers(A2).get(RubberNo.of(2)))
                .isEqualTo(new OrderOfPlay.Place(LocalTime.of(11, 20), "1", Optional.of(N)));
        assertThat(order.rubbers(A2).get(RubberNo.of(4))).isEqualTo(new OrderOfPlay.Place(LocalTime.of(11, 40), "3"));
        assertThat(order.rubbers(A1)).isEmpty();
        assertThat(only(order.of(A2)).after()).isEqualTo(times("11:00", "3", "1"));
    }

    @Test
    void courts_of_rubbers_go_to_the_last_change_only_if_it_is_of_their_tie_and_not_told_yet() {
        Days other = day().timed("A2", "11:00", "1").timed("A1", "10:30", "1").fact(placed(A2, 1, "11:00", "3"));
        assertThat(only(other.event().order().of(A2)).after()).isEqualTo(times("11:00", "1"));
        assertThat(other.event().order().of(A1).get(1).after()).isEqualTo(times("10:30", "1"));
        Days told = day().timed("A2", "11:00", "1").fact(notice(1, A2), placed(A2, 1, "11:00", "3"));
        assertThat(only(told.event().order().of(A2)).after()).isEqualTo(times("11:00", "1"));
        Days first = Days.aDay().clubs("N", "S").poolTie("A1", "A", 1, "N", "S").fact(placed(A1, 1, "11:00", "3"));
        assertThat(first.event().order().changes()).isEmpty();
        assertThat(first.event().order().courts(first.tie("A1"))).containsExactly("3");
        Days alone = Days.aDay().clubs("N", "S").poolTie("A1", "A", 1, "N", "S").timed("A1", "11:00", "1");
        alone.fact(placed(A1, 1, "11:00", "3"));
        assertThat(only(alone.event().order().changes()).after()).isEqualTo(times("11:00", "3"));
    }

    @Test
    void a_tie_moved_by_hand_has_no_planned_rubbers_any_more_and_says_on_which_courts_it_was() {
        Days day = day().timed("A2", "11:00", "1").fact(placed(A2, 1, "11:00", "3"), placed(A1, 1, "10:00", "2"));
        day.timed("A2", "12:00", "2");
        assertThat(day.event().order().rubbers(A2)).isEmpty();
        assertThat(day.event().order().rubbers(A1)).hasSize(1);
        assertThat(day.event().order().of(A2).get(1).before()).isEqualTo(times("11:00", "3"));
        assertThat(day.event().order().courts(day.tie("A2"))).containsExactly("2");
    }

    @Test
    void a_notice_concerns_the_clubs_of_its_ties_and_those_it_names_in_the_order_of_codes() {
        Days day = day().timed("A2", "11:00", "1").fact(notice(1, A2).concerning(List.of(S, E)));
        assertThat(day.event().order().concerned(1)).containsExactly(E, S, W);
        assertThat(day.event().order().others()).isEqualTo(Map.of(1, List.of(S, E)));
        assertThat(day.event().order().concerned(2)).isEmpty();
    }

    @Test
    void a_club_is_told_until_the_tick_is_taken_back() {
        Days day = day().fact(new OfficialFact.NoticeTold(1, N, true), new OfficialFact.NoticeTold(1, S, true));
        assertThat(day.event().order().told(1)).containsExactly(N, S);
        assertThat(day.event().order().told(2)).isEmpty();
        day.fact(new OfficialFact.NoticeTold(1, N, false));
        assertThat(day.event().order().told(1)).containsExactly(S);
    }
}
