package tiewright.conditions;

import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import tiewright.desk.MedicalClock;
import tiewright.desk.Objections;
import tiewright.desk.PublishPlan;
import tiewright.desk.RecordCard;
import tiewright.desk.StopPlay;
import tiewright.event.Days;
import tiewright.event.How;
import tiewright.event.OrderOfPlay;
import tiewright.event.PlayFact;
import tiewright.event.RubberNo;
import tiewright.event.TieId;
import tiewright.timetable.Lateness;

/** How a rubber is written down, when a tie is over, which clocks run on court. */
final class PlaySituations {
    private static final TieId A1 = TieId.of("A1");

    private PlaySituations() {}

    static void addTo(Map<Setting, Function<Conditions, Object>> all) {
        all.put(Setting.RUBBERS, conditions -> {
            Days day = Situations.tie(conditions);
            return day.event().progress(day.tie("A1")).left();
        });
        all.put(Setting.STOP_WHEN_DECIDED, PlaySituations::stops);
        all.put(Setting.SCORING, conditions -> List.of(said(conditions, "1"), Situations.budget(conditions)));
        all.put(Setting.DECIDER_SCORING, conditions -> List.of(said(conditions, "D"), Situations.budget(conditions)));
        all.put(
                Setting.BEST_OF,
                conditions -> Stream.of("11-5", "11-5 11-5", "11-5 11-5 11-5")
                        .map(games -> SheetSituations.codes(opened(conditions).refusals(card("1", games, How.PLAYED))))
                        .toList());
        all.put(
                Setting.RETIREMENT_SCORE,
                conditions -> opened(conditions)
                        .does(card("1", "8-6", How.RETIRED_HOME))
                        .tie("A1")
                        .card(RubberNo.of(1))
                        .score(RubberNo.of(1)));
        all.put(Setting.LATE_MINUTES, conditions -> late(conditions.with(Setting.CLOCK_STARTS, "call"), "A1", "1"));
        all.put(Setting.LATE_LOSS, conditions -> late(conditions.with(Setting.CLOCK_STARTS, "call"), "A1", "1"));
        all.put(Setting.CLOCK_STARTS, conditions -> List.of(late(conditions, "A1", "1"), late(conditions, "A2", "1")));
        all.put(
                Setting.MEDICAL_MINUTES,
                conditions -> MedicalClock.of(
                        opened(conditions)
                                .does(new StopPlay(A1, RubberNo.of(1)))
                                .tie("A1"),
                        conditions));
        all.put(Setting.FREEZE_MINUTES, PlaySituations::frozen);
        all.put(
                Setting.OBJECTION_MINUTES,
                conditions -> Objections.until(
                        opened(conditions)
                                .at("11:00")
                                .cards("A1", "11-5", "11-5", "11-5", "5-11")
                                .event(),
                        "A"));
    }

    private static Days opened(Conditions conditions) {
        return Situations.tie(conditions).opened("A1");
    }

    private static RecordCard card(String rubber, String games, How how) {
        return new RecordCard(A1, RubberNo.parse(rubber).orElseThrow(), Days.games(games), how);
    }

    /** A tie of the pool and one of the knockout after three rubbers of four for one club: is anything left to play? */
    private static List<Boolean> stops(Conditions conditions) {
        Days day = Situations.tie(conditions).knockoutTie("F", 1, "N", "S");
        for (String tie : List.of("A1", "F")) {
            day.opened(tie).cards(tie, "11-5", "11-5", "11-5");
        }
        return Stream.of("A1", "F")
                .map(tie -> day.event().progress(day.tie(tie)).finished())
                .toList();
    }

    /** What is said of cards that end in these scores. */
    private static List<List<String>> said(Conditions conditions, String rubber) {
        Days level = opened(conditions);
        if (rubber.equals("D")) {
            level.cards("A1", "11-5", "11-5", "5-11", "5-11")
                    .opened(
                            tiewright.event.ExchangeId.decider(A1),
                            tiewright.event.Sheet.decider(tiewright.event.Pair.of("N1", "N2")),
                            tiewright.event.Sheet.decider(tiewright.event.Pair.of("S1", "S2")));
        }
        return Stream.of("11-9", "15-13", "21-19", "30-29", "31-29")
                .map(games -> SheetSituations.codes(level.refusals(card(rubber, games, How.PLAYED))))
                .toList();
    }

    /** A1 and A2 have the same court at 10:00; a rubber of this one was called there at 10:05. The clocks at 10:30. */
    private static List<Lateness.Late> late(Conditions conditions, String called, String court) {
        Days day = Situations.tie(conditions)
                .clubs("E", "W")
                .poolTie("A2", "A", 1, "E", "W")
                .timed("A2", "10:00", "1")
                .opened("A1")
                .opened("A2")
                .at("10:05")
                .fact(new PlayFact.CourtCalled(TieId.of(called), Optional.of(RubberNo.of(1)), court));
        return Lateness.of(day.event(), Days.moment("10:30"));
    }

    /** How many minutes before a published start the next plan can still move it. */
    private static int frozen(Conditions conditions) {
        Days day = Situations.tie(conditions).by(Days.organiser()).at("06:00").does(plan("10:00"));
        return Situations.border(
                200,
                minutes -> SheetSituations.codes(
                                day.at(LocalTime.of(10, 0).minusMinutes(minutes).toString())
                                        .refusals(plan("10:30")))
                        .contains("desk.plan-moves-frozen"));
    }

    private static PublishPlan plan(String start) {
        TreeMap<RubberNo, OrderOfPlay.Place> places = new TreeMap<>();
        places.put(RubberNo.of(1), new OrderOfPlay.Place(LocalTime.parse(start), "1"));
        return new PublishPlan(
                List.of(new PublishPlan.Placed(A1, places)),
                PublishPlan.Cuts.NONE,
                Optional.empty(),
                20,
                "7",
                "a plan",
                "Ines");
    }
}
