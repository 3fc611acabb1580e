package tiewright.timetable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.DrawFact;
import tiewright.event.Event;
import tiewright.event.RubberNo;
import tiewright.event.SetUpFact;
import tiewright.event.TieId;

/**
 * A day worked out by hand: six clubs, three full rounds left, four rubbers each, slots of 20 minutes (15 of play and 5 of
 * turnover). At 14:30 two of six courts are flooded; the venue shuts at 17:00; no club plays in consecutive slots; a tie takes
 * the four courts at once. 9 slots, 180 minutes, 17:30.
 */
class RainDayTest {
    private static final LocalTime NOW = LocalTime.of(14, 30);
    private static final Event DAY = day(3, 4, 5);
    private static final PlanAsked ASKED = PlanAsked.from(NOW, 0).withSlot(20).withoutCourts(List.of("5", "6"));
    private static List<ReplanOption> options;

    private static Days started() {
        return days(3, 4, 5).timed("A-F", "14:00", "1").timed("B-E", "14:00", "2");
    }

    private static Event day(int first, int second, int third) {
        return days(first, second, third).event();
    }

    private static Days days(int first, int second, int third) {
        return Days.empty()
                .fact(new SetUpFact.EventDescribed(
                        "Rain day",
                        Days.DATE,
                        "Long Hall",
                        Days.ZONE,
                        LocalTime.of(9, 0),
                        Optional.of(LocalTime.of(17, 0))))
                .conditions(tiewright.conditions.Conditions.of(tiewright.conditions.Preset.CLUB_DAY))
                .clubs("A", "B", "C", "D", "E", "F")
                .courts("1", "2", "3", "4", "5", "6")
                .poolTie("A-F", "P", first, "A", "F")
                .poolTie("B-E", "P", first, "B", "E")
                .poolTie("C-D", "P", first, "C", "D")
                .poolTie("F-D", "P", second, "F", "D")
                .poolTie("E-C", "P", second, "E", "C")
                .poolTie("A-B", "P", second, "A", "B")
                .poolTie("B-F", "P", third, "B", "F")
                .poolTie("C-A", "P", third, "C", "A")
                .poolTie("D-E", "P", third, "D", "E");
    }

    @BeforeAll
    static void workOut() {
        options = Replan.options(DAY, ASKED, Budget.ofSteps(6_000, 1));
    }

    private static ReplanOption option(Cut cut) {
        return options.stream()
                .filter(option -> option.cut() == cut)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void takes_nine_slots_and_cannot_be_held_as_it_is() {
        Planned planned = Planner.plan(PlanProblem.of(DAY, ASKED), Budget.ofSteps(6_000, 1));
        assertThat(planned.kind()).isEqualTo(Planned.Kind.IMPOSSIBLE);
        Infeasible why = ((Planned.Impossible) planned).why();
        Plan plan = ((Planned.Impossible) planned).asIs().orElseThrow();
        assertThat(plan.slots()).isEqualTo(9);
        assertThat(plan.finish()).isEqualTo("17:30");
        assertThat(plan.bound().minutes()).isEqualTo(180);
        assertThat(plan.bound().finish()).isEqualTo("17:30");
        assertThat(plan.endsAtTheBound()).isTrue();
        assertThat(plan.isPlayable()).isFalse();
        assertThat(why.isInput()).isFalse();
        assertThat(why.because().code()).isEqualTo("timetable.cannot-hold-together");
    }

    @Test
    void no_club_plays_twice_running_and_each_tie_has_the_four_courts() {
        Plan plan = option(Cut.AS_IS).plan();
        List<TieId> order = plan.assignments().stream().map(Assignment::tie).toList();
        for (int i = 1; i < order.size(); i++) {
            String before = order.get(i - 1).code();
            String now = order.get(i).code();
            assertThat(now.chars().filter(c -> c != '-').noneMatch(c -> before.indexOf(c) >= 0))
                    .as(before + " then " + now)
                    .isTrue();
        }
        assertThat(plan.assignments())
                .allSatisfy(tie -> assertThat(tie.courts()).containsExactly("1", "2", "3", "4"));
        assertThat(plan.lines()).hasSize(36);
    }

    @Test
    void the_order_worked_out_by_hand_breaks_nothing() {
        PlanProblem problem = PlanProblem.of(DAY, ASKED);
        Board board = new Board(problem);
        List<String> byHand = List.of("A-F", "B-E", "C-D", "A-B", "F-D", "E-C", "B-F", "C-A", "D-E");
        Spot[] spots = new Spot[9];
        for (Piece piece : board.pieces()) {
            spots[piece.number()] = board.spots(
                            byHand.indexOf(board.tie(piece).id().code()), 4, 20)
                    .get(0);
        }
        Judge judge = Judge.of(board, spots, Placing.nobody(board));
        assertThat(judge.breaches()).isEmpty();
        assertThat(judge.score().of(Part.LENGTH)).isEqualTo(180);
    }

    @Test
    void games_to_seven_end_at_16_36() {
        ReplanOption option = option(Cut.SHORTER_GAMES);
        assertThat(option.conditions().orElseThrow().value(Setting.SCORING)).isEqualTo("side-out-7");
        assertThat(option.plan().problem().slotMinutes()).isEqualTo(14);
        assertThat(option.finish()).isEqualTo("16:36");
        assertThat(option.isFeasible()).isTrue();
    }

    @Test
    void rally_scoring_to_fifteen_ends_at_16_45() {
        ReplanOption option = option(Cut.RALLY_SCORING);
        assertThat(option.conditions().orElseThrow().value(Setting.SCORING)).isEqualTo("rally-15");
        assertThat(option.plan().problem().slotMinutes()).isEqualTo(15);
        assertThat(option.finish()).isEqualTo("16:45");
        assertThat(option.isFeasible()).isTrue();
    }

    @Test
    void without_the_last_round_it_ends_at_16_30_and_opponents_are_unequal() {
        ReplanOption option = option(Cut.FEWER_ROUNDS);
        assertThat(option.notPlayed()).extracting(TieId::code).containsExactlyInAnyOrder("B-F", "C-A", "D-E");
        assertThat(option.finish()).isEqualTo("16:30");
        assertThat(option.fairness())
                .extracting(Reason::code)
                .containsExactly("timetable.fair-opponents-unequal", "timetable.fair-ties-fewer");
        assertThat(option.cost()).isEqualTo(12);
    }

    @Test
    void what_does_not_fit_is_shared_or_played_on_the_next_day() {
        assertThat(option(Cut.SHARED_POINTS).notPlayed()).hasSize(2); // seven slots end at 16:50
        assertThat(option(Cut.SHARED_POINTS).finish()).isEqualTo("16:50");
        assertThat(option(Cut.NEXT_DAY).plan().assignments()).hasSize(7);
        Plan next = option(Cut.NEXT_DAY).nextDay().orElseThrow();
        assertThat(next.problem().start()).isEqualTo("09:00");
        assertThat(next.assignments()).hasSize(2);
        assertThat(option(Cut.NEXT_DAY).cost())
                .isEqualTo(option(Cut.SHARED_POINTS).cost() / 2);
    }

    @Test
    void without_a_decider_it_is_still_too_long() {
        assertThat(option(Cut.NO_DECIDER).isFeasible()).isFalse();
        assertThat(option(Cut.NO_DECIDER).cost()).isCloseTo(9 * 0.375, within(0.05));
    }

    @Test
    void deciders_to_be_expected_are_counted_as_each_tie_stands() {
        // 2-0 after two of four: level if the other club wins both others, one in four. 3-0: never. Each of the seven
        // others: 6 of 16.
        Days begun = started().cards("A-F", "11-3", "11-4").cards("B-E", "11-3", "11-4", "11-5");
        ReplanOption without = Replan.options(begun.event(), ASKED, Budget.ofSteps(500, 1)).stream()
                .filter(one -> one.cut() == Cut.NO_DECIDER)
                .findFirst()
                .orElseThrow();
        assertThat(without.cost()).isEqualTo(2.9); // 0.25 + 7 * 0.375 = 2.875
        assertThat(without.fairness().get(0).data()).containsEntry("count", 2.9);
        Event event = begun.event();
        assertThat(without.plan()
                        .expectedDeciders(tie -> event.tie(tie).map(event::progress))
                        .orElseThrow()
                        .data())
                .containsEntry("count", 2.9);
    }

    @Test
    void shows_the_plan_as_it_is_first_then_what_is_feasible_from_the_cheapest_on() {
        assertThat(options.get(0).cut()).isEqualTo(Cut.AS_IS);
        List<ReplanOption> rest = options.subList(1, options.size());
        assertThat(rest).filteredOn(ReplanOption::isFeasible).hasSizeGreaterThanOrEqualTo(3);
        for (int i = 1; i < rest.size(); i++) {
            ReplanOption before = rest.get(i - 1);
            assertThat(before.isFeasible() || !rest.get(i).isFeasible()).isTrue();
            assertThat(before.isFeasible() == rest.get(i).isFeasible()
                            && before.cost() > rest.get(i).cost())
                    .isFalse();
        }
        assertThat(options)
                .allSatisfy(option -> assertThat(option.people()).isEqualTo(48)); // nothing was published before
    }

    @Test
    void with_a_second_court_lost_even_games_to_seven_no_longer_fit() {
        PlanAsked fewer = ASKED.withoutCourts(List.of("4", "5", "6"));
        List<ReplanOption> left = Replan.options(DAY, fewer, Budget.ofSteps(4_000, 1));
        assertThat(left).filteredOn(option -> option.cut() == Cut.SHORTER_GAMES).allSatisfy(option -> {
            assertThat(option.isFeasible()).isFalse();
            assertThat(option.plan().bound().finish()).isAfter("17:00");
        });
    }

    /** Every order that keeps rounds and rest, one tie a slot, tried: the search is as good as the best of them. */
    @Test
    void no_order_is_better() {
        PlanProblem problem = PlanProblem.of(DAY, ASKED);
        Board board = new Board(problem);
        List<PlanScore> best = new ArrayList<>();
        tryAll(board, new Spot[9], 0, best);
        assertThat(option(Cut.AS_IS).plan().score()).isEqualTo(best.get(0));
    }

    private static void tryAll(Board board, Spot[] spots, int slot, List<PlanScore> best) {
        if (slot == 9) {
            PlanScore score = Judge.of(board, spots, Placing.nobody(board)).score();
            if (best.isEmpty() || score.compareTo(best.get(0)) < 0) {
                best.clear();
                best.add(score);
            }
            return;
        }
        for (int piece = slot / 3 * 3; piece < slot / 3 * 3 + 3; piece++) { // rounds in order: three slots each
            if (spots[piece] == null) {
                spots[piece] = board.spots(slot, 4, 20).get(0);
                tryAll(board, spots, slot + 1, best);
                spots[piece] = null;
            }
        }
    }

    /** The same day on time: two rounds, one tie after the other, published from 15:00 on. */
    private static Event published() {
        Days day = Days.empty()
                .fact(new SetUpFact.EventDescribed(
                        "Dry day",
                        Days.DATE,
                        "Long Hall",
                        Days.ZONE,
                        LocalTime.of(9, 0),
                        Optional.of(LocalTime.of(18, 0))))
                .clubs("A", "B", "C", "D")
                .courts("1", "2", "3", "4")
                .poolTie("A-B", "P", 1, "A", "B")
                .poolTie("C-D", "P", 1, "C", "D")
                .poolTie("A-C", "P", 2, "A", "C")
                .poolTie("B-D", "P", 2, "B", "D");
        return day.timed("A-B", "15:00", "1")
                .timed("C-D", "15:20", "1")
                .timed("A-C", "16:00", "1")
                .timed("B-D", "16:20", "1")
                .event();
    }

    @Test
    void as_planned_nothing_begins_before_its_published_start_and_a_day_on_time_keeps_every_start() {
        PlanAsked asked = PlanAsked.from(LocalTime.of(14, 33), 0).withSlot(20);
        List<ReplanOption> ways = Replan.options(published(), asked, Budget.ofSteps(3_000, 1));
        for (ReplanOption way : ways) {
            for (PlanTie tie : way.plan().problem().ties()) {
                assertThat(way.plan().start(tie.id()).orElseThrow())
                        .as(way.cut() + " " + tie.id())
                        .isAfterOrEqualTo(
                                published().tie(tie.id()).orElseThrow().start().orElseThrow());
            }
        }
        assertThat(ways.get(0).finish()).isEqualTo("16:40");
        assertThat(ways.get(0).plan().bound().finish()).isEqualTo("16:40");
        assertThat(ways.get(0).plan().bound().because().code()).isEqualTo("timetable.bound-published");
        assertThat(ways.get(0).plan().why(TieId.of("A-B")))
                .extracting(Reason::code)
                .containsExactly("timetable.why-kept");
        Replan.options(published(), asked.withEarlierStarts(), Budget.ofSteps(3_000, 1)).stream()
                .filter(way -> way.cut() == Cut.AS_IS)
                .forEach(way -> assertThat(way.finish()).isEqualTo("16:03"));
    }

    /** Two ties side by side on two courts each, twice; rain to 14:50 makes nobody wait, so nobody moves. */
    private static Days onPairsOfCourts() {
        Days day = Days.aDay()
                .with(Setting.RUBBERS, "2")
                .clubs("A", "B", "C", "D")
                .courts("1", "2", "3", "4")
                .poolTie("A-B", "P", 1, "A", "B")
                .poolTie("C-D", "P", 1, "C", "D")
                .poolTie("A-C", "P", 2, "A", "C")
                .poolTie("B-D", "P", 2, "B", "D");
        onCourts(day, "A-B", "15:00", 3, 4);
        onCourts(day, "C-D", "15:00", 1, 2);
        onCourts(day, "A-C", "15:40", 3, 4);
        onCourts(day, "B-D", "15:40", 1, 2);
        return day;
    }

    private static void onCourts(Days day, String tie, String start, int... courts) {
        day.timed(tie, start, "" + courts[0]);
        for (int rubber = 1; rubber <= courts.length; rubber++) {
            day.fact(new DrawFact.RubberTimed(
                    TieId.of(tie),
                    RubberNo.of(rubber),
                    LocalTime.parse(start),
                    "" + courts[rubber - 1],
                    Optional.empty()));
        }
    }

    private static List<String> places(ReplanOption option) {
        return option.plan().assignments().stream()
                .map(one -> one.tie() + " " + one.start() + " " + one.courts())
                .sorted()
                .toList();
    }

    @Test
    void as_planned_no_tie_changes_turn_or_court_and_nobody_is_told_where_nothing_forces_it() {
        Event day = onPairsOfCourts().event();
        for (long seed = 1; seed <= 5; seed++) {
            PlanAsked asked = PlanAsked.from(LocalTime.of(14, 50), 0).withSlot(20);
            ReplanOption asIs =
                    Replan.options(day, asked, Budget.ofSteps(500, seed)).get(0);
            assertThat(asIs.cut()).isEqualTo(Cut.AS_IS);
            assertThat(places(asIs))
                    .containsExactly("A-B 15:00 [3, 4]", "A-C 15:40 [3, 4]", "B-D 15:40 [1, 2]", "C-D 15:00 [1, 2]");
            assertThat(asIs.people()).isZero();
        }
    }

    /** As a list of ties names them, with the first court alone: four ties at one time leave each other no second court. */
    @Test
    void ties_that_begin_together_stay_beside_each_other_where_their_first_courts_alone_were_published() {
        Days day = Days.aDay().clubs("A", "B", "C", "D", "E", "F", "G", "H").courts("1", "2", "3", "4", "5", "6");
        day.poolTie("A-B", "P", 1, "A", "B").poolTie("C-D", "P", 1, "C", "D");
        day.poolTie("E-F", "Q", 1, "E", "F").poolTie("G-H", "Q", 1, "G", "H");
        day.timed("A-B", "11:30", "1").timed("C-D", "11:30", "3");
        day.timed("E-F", "11:30", "4").timed("G-H", "11:30", "6");
        PlanAsked asked = PlanAsked.from(LocalTime.of(11, 45), 0).withSlot(20);
        assertThat(places(Replan.options(day.event(), asked, Budget.ofSteps(500, 1))
                        .get(0)))
                .containsExactly("A-B 11:45 [1]", "C-D 11:45 [3]", "E-F 11:45 [4]", "G-H 11:45 [6]");
    }

    @Test
    void rain_until_after_a_start_makes_it_later_on_its_own_courts_and_what_follows_only_as_late_as_it_must() {
        Event day = onPairsOfCourts().event();
        PlanAsked asked = PlanAsked.from(LocalTime.of(15, 25), 0).withSlot(20);
        ReplanOption asIs = Replan.options(day, asked, Budget.ofSteps(500, 1)).get(0);
        assertThat(places(asIs))
                .as("the rest of 10 minutes after 15:45")
                .containsExactly("A-B 15:25 [3, 4]", "A-C 15:55 [3, 4]", "B-D 15:55 [1, 2]", "C-D 15:25 [1, 2]");
    }

    @Test
    void a_lost_court_moves_the_ties_that_were_on_it_and_no_others() {
        Event day = onPairsOfCourts().courts("5").event();
        PlanAsked asked = PlanAsked.from(LocalTime.of(14, 50), 0).withSlot(20).withoutCourts(List.of("4"));
        ReplanOption asIs = Replan.options(day, asked, Budget.ofSteps(500, 1)).get(0);
        assertThat(places(asIs))
                .containsExactly("A-B 15:00 [3, 5]", "A-C 15:40 [3, 5]", "B-D 15:40 [1, 2]", "C-D 15:00 [1, 2]");
    }

    @Test
    void another_order_is_offered_beside_it_where_it_ends_earlier() {
        Days day = Days.aDay()
                .with(Setting.RUBBERS, "2")
                .clubs("A", "B", "C", "D")
                .courts("1", "2", "3", "4")
                .poolTie("A-B", "P", 1, "A", "B")
                .poolTie("C-D", "Q", 1, "C", "D");
        onCourts(day, "A-B", "15:00", 1, 2);
        onCourts(day, "C-D", "15:20", 1, 2);
        PlanAsked asked = PlanAsked.from(LocalTime.of(16, 0), 0).withSlot(20);
        List<ReplanOption> ways = Replan.options(day.event(), asked, Budget.ofSteps(500, 1));
        assertThat(places(ways.get(0))).containsExactly("A-B 16:00 [1, 2]", "C-D 16:20 [1, 2]");
        ReplanOption other = ways.stream()
                .filter(way -> way.cut() == Cut.ANOTHER_ORDER)
                .findFirst()
                .orElseThrow();
        assertThat(other.finish()).isEqualTo("16:20");
        assertThat(Replan.options(
                        onPairsOfCourts().event(),
                        PlanAsked.from(LocalTime.of(14, 50), 0).withSlot(20),
                        Budget.ofSteps(500, 1)))
                .extracting(ReplanOption::cut)
                .doesNotContain(Cut.ANOTHER_ORDER);
    }

    @Test
    void a_frozen_tie_keeps_the_courts_of_its_rubbers_whatever_a_tie_takes_in_the_rest_of_the_plan() {
        Days day = Days.aDay().clubs("A", "B").courts("1", "2", "3", "4").poolTie("A-B", "P", 1, "A", "B");
        day.timed("A-B", "15:00", "1");
        for (RubberNo rubber : RubberNo.upTo(4)) {
            day.fact(new DrawFact.RubberTimed(
                    TieId.of("A-B"), rubber, LocalTime.of(15, 0), rubber.toString(), Optional.empty()));
        }
        PlanAsked asked = PlanAsked.from(LocalTime.of(14, 50), 20).withSlot(20).withCourtsPerTie(2);
        assertThat(PlanProblem.of(day.event(), asked).pins()).singleElement().satisfies(pin -> {
            assertThat(pin.courts()).containsExactly("1", "2", "3", "4");
            assertThat(pin.end()).isEqualTo("15:20");
        });
    }

    @Test
    void a_tie_in_play_and_a_frozen_one_stay() {
        Event later = Days.empty()
                .fact(new SetUpFact.EventDescribed(
                        "Rain day",
                        Days.DATE,
                        "Long Hall",
                        Days.ZONE,
                        LocalTime.of(9, 0),
                        Optional.of(LocalTime.of(17, 0))))
                .clubs("A", "B", "C", "D")
                .courts("1", "2")
                .with(Setting.RUBBERS, "2")
                .poolTie("A-B", "P", 1, "A", "B")
                .poolTie("C-D", "P", 1, "C", "D")
                .poolTie("A-C", "P", 2, "A", "C")
                .timed("A-B", "14:15", "1")
                .timed("C-D", "14:40", "1")
                .timed("A-C", "15:30", "1")
                .opened("A-B")
                .at("14:20")
                .fact(
                        new tiewright.event.PlayFact.CourtCalled(
                                TieId.of("A-B"), Optional.of(tiewright.event.RubberNo.of(1)), "1"),
                        new tiewright.event.PlayFact.CourtCalled(
                                TieId.of("A-B"), Optional.of(tiewright.event.RubberNo.of(2)), "2"))
                .event();
        Plan plan =
                Problems.plan(PlanProblem.of(later, PlanAsked.from(NOW, 15).withSlot(20)), Budget.ofSteps(2_000, 1));
        Map<String, String> starts = new java.util.TreeMap<>();
        plan.assignments()
                .forEach(tie -> starts.put(
                        tie.tie().code(),
                        tie.start() + " " + tie.pinned().map(Enum::name).orElse("free")));
        assertThat(starts).containsEntry("A-B", "14:15 IN_PLAY").containsEntry("C-D", "14:40 FROZEN");
        assertThat(starts.get("A-C")).endsWith("free").isGreaterThan("15:00"); // after C-D and its rest
        assertThat(plan.why(TieId.of("A-B"))).extracting(Reason::code).containsExactly("timetable.why-in-play");
        assertThat(plan.why(TieId.of("A-C"))).isNotEmpty();
        assertThat(plan.longestWait(ClubId.of("B"))).isZero();
    }
}
