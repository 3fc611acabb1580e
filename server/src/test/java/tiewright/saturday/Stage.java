package tiewright.saturday;

import java.util.function.UnaryOperator;
import tiewright.conditions.Setting;
import tiewright.conditions.Withdrawal;
import tiewright.desk.CallToCourt;
import tiewright.desk.MakeProtest;
import tiewright.desk.SignEvent;
import tiewright.desk.SignTable;
import tiewright.desk.WithdrawClub;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.RubberNo;
import tiewright.event.TieId;

/** How far a day has come: each stage is the one before and a little more, but the broken one. */
enum Stage {
    EMPTY("08:00", day -> day),
    ENTERED("08:10", Stage::entered),
    DRAWN("08:30", Stage::drawn),
    RUNNING("10:05", Stage::running),
    LEVEL("10:50", Stage::level),
    BROKEN("11:00", Stage::broken),
    SIGNED("13:00", Stage::signed);

    private final String clock;
    private final UnaryOperator<Days> day;

    Stage(String clock, UnaryOperator<Days> day) {
        this.clock = clock;
        this.day = day;
    }

    String clock() {
        return clock;
    }

    Days day() {
        return day.apply(this == EMPTY ? Days.empty() : Days.aDay().with(Setting.BEST_OF, "1"));
    }

    private static Days entered(Days day) {
        return day.clubs("N", "S", "E").courts("1", "2");
    }

    private static Days drawn(Days day) {
        return entered(day)
                .poolTie("A1", "A", 1, "N", "S")
                .poolTie("A2", "A", 2, "S", "E")
                .poolTie("A3", "A", 3, "N", "E")
                .knockoutTie("F", 1, "A-1", "A-2")
                .timed("A1", "10:00", "1")
                .timed("A2", "11:00", "2")
                .timed("A3", "12:00", "1")
                .timed("F", "13:00", "1");
    }

    private static Days running(Days day) {
        return drawn(day).at("10:01").opened("A1").does(new CallToCourt(TieId.of("A1"), RubberNo.of(1), "1"));
    }

    private static Days level(Days day) {
        return running(day).at("10:40").cards("A1", "11-5", "11-6", "3-11", "4-11");
    }

    /** A held card, a protest and a club that went home. */
    private static Days broken(Days day) {
        return level(day)
                .at("10:45")
                .card("A1", "1", "5-11")
                .does(new MakeProtest(
                        ClubId.of("S"),
                        java.util.Optional.of(TieId.of("A1")),
                        "The pair of rubber 2.",
                        java.util.Optional.empty(),
                        "S. Weir"))
                .by(Days.referee())
                .does(new WithdrawClub(ClubId.of("E"), Withdrawal.ANNUL, "They went home.", "R. Heath"));
    }

    private static Days signed(Days day) {
        return running(day)
                .at("12:00")
                .cards("A1", "11-5", "11-6", "3-11", "11-4")
                .opened("A2")
                .cards("A2", "11-5", "11-6", "3-11", "11-4")
                .opened("A3")
                .cards("A3", "11-5", "11-6", "3-11", "11-4")
                .by(Days.referee())
                .does(new SignTable("A", "R. Heath"))
                .opened("F")
                .cards("F", "11-5", "11-6", "3-11", "11-4")
                .at("12:55")
                .does(new SignEvent("R. Heath"));
    }
}
