package tiewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Conditions;
import tiewright.conditions.Setting;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.DrawFact;
import tiewright.event.Fact;
import tiewright.event.FactKind;
import tiewright.event.OrderOfPlay;
import tiewright.event.PrivateNote;
import tiewright.event.Recorded;
import tiewright.event.RubberNo;
import tiewright.event.Slot;
import tiewright.event.SlotSource;
import tiewright.event.Stage;
import tiewright.event.TieId;

/** One press publishes one plan: one notice, old and new times, what may not move, what needs a ruling, and by whom. */
class PublishPlanTest {
    private static final TieId A1 = TieId.of("A1");
    private static final TieId A2 = TieId.of("A2");

    /** Four clubs, four courts, two ties without a time. */
    private static Days day() {
        return Days.aDay()
                .clubs("N", "S", "E", "W")
                .courts("1", "2", "3", "4")
                .poolTie("A1", "A", 1, "N", "S")
                .poolTie("A2", "A", 1, "E", "W")
                .by(Days.organiser())
                .at("08:00");
    }

    private static PublishPlan.Placed on(TieId tie, String start, String... courts) {
        TreeMap<RubberNo, OrderOfPlay.Place> places = new TreeMap<>();
        for (int i = 0; i < courts.length; i++) {
            places.put(RubberNo.of(i + 1), new OrderOfPlay.Place(LocalTime.parse(start), courts[i]));
        }
        return new PublishPlan.Placed(tie, places);
    }

    private static PublishPlan plan(PublishPlan.Placed... placed) {
        return new PublishPlan(List.of(placed), PublishPlan.Cuts.NONE, Optional.empty(), 20, "7", "first plan", "Ines");
    }

    private static PublishPlan cutting(PublishPlan.Cuts cuts) {
        return new PublishPlan(List.of(), cuts, Optional.empty(), 20, "7", "rain", "Ines");
    }

    private static Days planned() {
        return day().does(plan(on(A1, "10:00", "1", "2", "3", "4"), on(A2, "10:20", "1", "2", "3", "4")));
    }

    @Test
    void a_first_plan_gives_each_tie_its_time_and_courts_under_one_notice() {
        Days day = planned();
        OrderOfPlay order = day.event().order();
        assertThat(day.event().notices()).hasSize(1);
        assertThat(order.plan())
                .hasValueSatisfying(plan -> assertThat(List.of(plan.version(), plan.notice(), plan.slotMinutes()))
                        .containsExactly(1, 1, 20));
        assertThat(day.tie("A2").start()).contains(LocalTime.of(10, 20));
        assertThat(order.courts(day.tie("A2"))).containsExactly("1", "2", "3", "4");
        assertThat(order.rubbers(A1).get(RubberNo.of(3))).isEqualTo(new OrderOfPlay.Place(LocalTime.of(10, 0), "3"));
        assertThat(order.under(1)).extracting(OrderOfPlay.Change::tie).containsExactly(A1, A2);
        assertThat(order.under(1))
                .allMatch(change ->
                        change.before().isNone() && change.after().courts().size() == 4);
        assertThat(order.concerned(1)).extracting(ClubId::code).containsExactly("E", "N", "S", "W");
        assertThat(day.event().rulings()).isEmpty();
    }

    @Test
    void a_club_on_duty_is_published_with_the_rubber_and_a_change_of_it_is_a_change() {
        Days day = planned().does(umpired("E"));
        assertThat(day.event().order().umpires(A1)).containsExactly(ClubId.of("E"));
        assertThat(day.does(umpired("W")).event().order().umpires(A1)).containsExactly(ClubId.of("W"));
        assertThat(day.event().order().umpires(A2)).isEmpty();
    }

    private static PublishPlan umpired(String club) {
        TreeMap<RubberNo, OrderOfPlay.Place> places = new TreeMap<>();
        RubberNo.upTo(4)
                .forEach(rubber -> places.put(
                        rubber, new OrderOfPlay.Place(LocalTime.of(10, 0), "1", Optional.of(ClubId.of(club)))));
        return plan(new PublishPlan.Placed(A1, places));
    }

    @Test
    void the_next_plan_tells_only_of_what_it_changes_with_old_and_new() {
        Days day = planned().does(plan(on(A1, "10:00", "1", "2", "3", "4"), on(A2, "10:40", "1", "2")));
        OrderOfPlay order = day.event().order();
        assertThat(day.event().notices()).hasSize(2);
        assertThat(order.plan().orElseThrow().version()).isEqualTo(2);
        assertThat(order.under(2)).singleElement().satisfies(change -> {
            assertThat(change.tie()).isEqualTo(A2);
            assertThat(change.before())
                    .isEqualTo(new OrderOfPlay.Times(Optional.of(LocalTime.of(10, 20)), List.of("1", "2", "3", "4")));
            assertThat(change.after())
                    .isEqualTo(new OrderOfPlay.Times(Optional.of(LocalTime.of(10, 40)), List.of("1", "2")));
        });
        assertThat(order.concerned(2)).extracting(ClubId::code).containsExactly("E", "W");
        assertThat(order.under(1)).hasSize(2);
    }

    @Test
    void moving_a_tie_by_hand_takes_it_out_of_the_plan_and_keeps_its_history() {
        Days day = planned().does(new RetimeTie(A2, Optional.of(LocalTime.of(11, 0)), Optional.of("2"), "late bus"));
        assertThat(day.event().order().rubbers(A2)).isEmpty();
        assertThat(day.event().order().courts(day.tie("A2"))).containsExactly("2");
        assertThat(day.event().order().under(2))
                .singleElement()
                .satisfies(change -> assertThat(change.before().courts()).containsExactly("1", "2", "3", "4"));
    }

    @Test
    void only_the_organiser_and_the_referee_publish() {
        PublishPlan plan = plan(on(A1, "10:00", "1"));
        assertThat(day().by(Days.referee()).codes(plan)).isEmpty();
        assertThat(day().by(Days.desk()).codes(plan)).containsExactly("desk.organiser-or-referee-only");
        assertThat(day().by(Days.captain("N")).codes(plan)).containsExactly("desk.organiser-or-referee-only");
        assertThat(day().by(Days.volunteer("v")).codes(plan)).containsExactly("desk.organiser-or-referee-only");
    }

    @Test
    void refuses_a_plan_without_reason_or_name_and_one_that_changes_nothing() {
        assertThat(day().codes(new PublishPlan(
                        List.of(on(A1, "10:00", "1")), PublishPlan.Cuts.NONE, Optional.empty(), 20, "", " ", "")))
                .containsExactly("desk.text-missing.reason", "desk.text-missing.by");
        assertThat(planned().codes(plan(on(A1, "10:00", "1", "2", "3", "4")))).containsExactly("desk.plan-unchanged");
    }

    @Test
    void a_start_within_the_freeze_window_stays_and_one_outside_may_move() {
        PublishPlan later = plan(on(A1, "10:20", "1", "2", "3", "4"));
        assertThat(planned().at("09:41").codes(later)).containsExactly("desk.plan-moves-frozen");
        assertThat(planned().at("10:00").codes(later)).containsExactly("desk.plan-moves-frozen");
        assertThat(planned().at("09:40").codes(later)).isEmpty();
        assertThat(planned().at("10:01").codes(later)).isEmpty();
        assertThat(planned().with(Setting.FREEZE_MINUTES, "0").at("09:59").codes(later))
                .isEmpty();
    }

    /** N is still in A1 at 10:15; A2, published for 10:20, has N too in this day. */
    @Test
    void a_frozen_start_moves_when_a_club_of_it_is_still_in_another_tie() {
        Days late = day().poolTie("A9", "A", 2, "N", "W")
                .does(plan(on(A1, "10:00", "1"), on(TieId.of("A9"), "10:20", "2")))
                .opened("A1")
                .at("10:02")
                .does(new CallToCourt(A1, RubberNo.of(1), "1"));
        assertThat(late.at("10:10").codes(plan(on(TieId.of("A9"), "10:40", "2"))))
                .isEmpty();
        assertThat(late.at("10:10").codes(plan(on(TieId.of("A9"), "10:15", "2"))))
                .as("never earlier")
                .containsExactly("desk.plan-moves-frozen", "desk.earlier-than-published");
    }

    @Test
    void what_has_begun_is_not_moved_and_not_cut() {
        Days begun = planned().opened("A1").at("10:02").does(new CallToCourt(A1, RubberNo.of(1), "1"));
        assertThat(begun.codes(plan(on(A1, "09:50", "1", "2", "3", "4")))).containsExactly("desk.plan-moves-begun");
        assertThat(begun.codes(cutting(new PublishPlan.Cuts(List.of(A1), List.of(), List.of()))))
                .containsExactly("desk.plan-cuts-begun");
        Days after = begun.does(plan(on(A1, "10:40", "3", "4")));
        assertThat(after.tie("A1").start())
                .as("the tie itself began when it began")
                .contains(LocalTime.of(10, 0));
    }

    @Test
    void nothing_begins_before_its_published_start_unless_each_club_was_ticked_as_told_and_the_notice_says_so() {
        PublishPlan earlier = plan(on(A2, "10:10", "1", "2", "3", "4"));
        assertThat(planned().codes(earlier)).containsExactly("desk.earlier-than-published");
        assertThat(planned().codes(earlier.tellingBefore(Set.of(ClubId.of("E")))))
                .as("each club, not one of them")
                .containsExactly("desk.earlier-than-published");
        assertThat(earlier.earlier(planned().event())).extracting(ClubId::code).containsExactly("E", "W");
        Days day = planned().does(earlier.tellingBefore(Set.of(ClubId.of("E"), ClubId.of("W"))));
        assertThat(day.event().notices().get(1).notice().after().map(Days::said))
                .contains("1 tie has a new time; earlier than published, told beforehand: Club E and Club W");
        assertThat(day.event().order().told(2)).extracting(ClubId::code).containsExactlyInAnyOrder("E", "W");
    }

    @Test
    void who_is_to_be_told_is_the_same_before_the_press_and_after_it() {
        Days day = planned()
                .fact(new DrawFact.TieArranged(
                        TieId.of("F"),
                        Stage.KNOCKOUT,
                        Optional.empty(),
                        1,
                        Slot.from(SlotSource.place("A", 1)),
                        Slot.of(ClubId.of("N"))))
                .does(plan(on(TieId.of("F"), "11:00", "1")));
        PublishPlan later = plan(on(A2, "10:20", "1", "2", "3", "4"), on(TieId.of("F"), "11:20", "1"));
        List<ClubId> before = later.concerned(day.event());
        assertThat(before)
                .as("whoever may come to the final has to know when it is")
                .extracting(ClubId::code)
                .containsExactly("E", "N", "S", "W");
        assertThat(day.does(later).event().order().concerned(3)).containsExactlyElementsOf(before);
    }

    @Test
    void a_plan_can_be_published_some_minutes_after_its_first_start_for_it_is_read_first() {
        assertThat(day().at("10:12").codes(plan(on(A1, "10:00", "1")))).isEmpty();
        assertThat(day().at("10:16").codes(plan(on(A1, "10:00", "1")))).containsExactly("desk.plan-in-the-past");
    }

    @Test
    void refuses_a_start_in_the_past_and_a_court_that_is_gone() {
        assertThat(day().at("10:30").codes(plan(on(A1, "10:00", "1")))).containsExactly("desk.plan-in-the-past");
        assertThat(day().codes(plan(on(A1, "10:00", "9")))).containsExactly("desk.plan-court-gone");
    }

    @Test
    void a_tie_that_is_called_off_is_gone_from_the_draw_with_a_ruling_and_its_sheets() {
        Days day = planned().does(cutting(new PublishPlan.Cuts(List.of(A2), List.of(), List.of())));
        assertThat(day.event().tie(A2)).isEmpty();
        assertThat(day.event().rulings()).singleElement().satisfies(ruling -> {
            assertThat(Days.said(ruling.ruling())).isEqualTo("Not played and counted nowhere: A2.");
            assertThat(ruling.by()).isEqualTo("Ines");
        });
        assertThat(day.event().order().under(2)).singleElement().satisfies(change -> {
            assertThat(change.calledOff()).isTrue();
            assertThat(change.before().start()).contains(LocalTime.of(10, 20));
            assertThat(change.clubs()).extracting(ClubId::code).containsExactly("E", "W");
        });
        assertThat(day.notes())
                .filteredOn(note -> note instanceof PrivateNote.SheetDropped)
                .hasSize(4);
    }

    @Test
    void shared_points_leave_a_drawn_tie_and_another_day_leaves_one_without_a_time() {
        Days shared = planned().does(cutting(new PublishPlan.Cuts(List.of(), List.of(A2), List.of())));
        assertThat(shared.event().progress(shared.tie("A2")).finished()).isTrue();
        assertThat(shared.event().progress(shared.tie("A2")).winner()).isEmpty();
        assertThat(shared.tie("A2").start()).isEmpty();
        Days later = planned().does(cutting(new PublishPlan.Cuts(List.of(), List.of(), List.of(A2))));
        assertThat(later.tie("A2").start()).isEmpty();
        assertThat(later.event().progress(later.tie("A2")).finished()).isFalse();
        assertThat(later.event().rulings())
                .singleElement()
                .satisfies(ruling -> assertThat(Days.said(ruling.ruling())).contains("another day: A2"));
    }

    @Test
    void other_conditions_come_with_the_plan_and_with_a_ruling_once_they_are_frozen() {
        Days free = planned();
        Conditions shorter = free.event().conditions().with(Setting.SCORING, "side-out-7");
        PublishPlan plan = new PublishPlan(
                List.of(on(A2, "10:40", "1", "2", "3", "4")),
                PublishPlan.Cuts.NONE,
                Optional.of(shorter),
                14,
                "7",
                "rain",
                "Ines");
        assertThat(free.does(plan).event().rulings()).isEmpty();
        assertThat(free.event().conditions().scoring().target()).isEqualTo(7);
        Days frozen = planned().opened("A1");
        frozen.does(plan);
        assertThat(frozen.event().rulings())
                .singleElement()
                .satisfies(ruling -> assertThat(Days.said(ruling.ruling()))
                        .isEqualTo("From now on: scoring side-out-7 instead of side-out-11."));
        assertThat(frozen.event().conditionsVersion()).isEqualTo(2);
        assertThat(frozen.event().notices()).as("one press, one notice").hasSize(2);
    }

    @Test
    void other_times_courts_or_conditions_make_the_form_stale_and_a_card_does_not() {
        Days day = planned().opened("A1").card("A1", "1", "11-5");
        PublishPlan plan = plan(on(A2, "10:40", "1"));
        assertThat(day.facts().stream()
                        .map(Recorded::fact)
                        .filter(plan::isStaledBy)
                        .map(Fact::kind)
                        .distinct())
                .containsExactly(
                        FactKind.CONDITIONS_PUBLISHED, FactKind.COURT_SET, FactKind.PLAN_PUBLISHED, FactKind.TIE_TIMED);
    }
}
