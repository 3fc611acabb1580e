package tiewright.cli;

import java.util.List;
import tiewright.timetable.Assignment;
import tiewright.timetable.Plan;
import tiewright.timetable.ReplanOption;

/** Plans and options as rows, for people and as CSV. */
final class TimetableRows {
    private TimetableRows() {}

    static Printed lines() {
        return new Printed("option", "tie", "rubber", "slot", "court", "start", "end");
    }

    static void add(Printed printed, String option, Plan plan) {
        for (Assignment.Line line : plan.lines()) {
            printed.row(
                    option,
                    line.tie(),
                    line.rubber(),
                    line.slot(),
                    line.court(),
                    TimetableCommand.CLOCK.format(line.start()),
                    TimetableCommand.CLOCK.format(line.end()));
        }
    }

    static Printed summary(List<ReplanOption> found) {
        Printed printed = new Printed("option", "finish", "lower_bound", "feasible", "cost", "people_to_tell");
        for (ReplanOption option : found) {
            printed.row(
                    option.cut().code(),
                    TimetableCommand.CLOCK.format(option.finish()),
                    TimetableCommand.CLOCK.format(option.plan().bound().finish()),
                    option.isFeasible() ? "yes" : "no",
                    Math.round(option.cost() * 1e9) / 1e9,
                    option.people());
        }
        return printed;
    }
}
