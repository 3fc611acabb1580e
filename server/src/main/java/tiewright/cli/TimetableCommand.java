package tiewright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tiewright.event.Event;
import tiewright.plainfiles.PlainFile;
import tiewright.timetable.Budget;
import tiewright.timetable.Cut;
import tiewright.timetable.DoubleBookings;
import tiewright.timetable.Infeasible;
import tiewright.timetable.Plan;
import tiewright.timetable.PlanAsked;
import tiewright.timetable.PlanProblem;
import tiewright.timetable.Planned;
import tiewright.timetable.Planner;
import tiewright.timetable.Replan;
import tiewright.timetable.ReplanOption;
import tiewright.wording.TimetableWords;

@Command(
        name = "timetable",
        description = "The order of play of what is left, or the options when the day no longer fits.",
        mixinStandardHelpOptions = true)
final class TimetableCommand implements Callable<Integer> {
    private static final int BAD_INPUT = 2;
    private static final int IMPOSSIBLE = 4;
    private static final int MOST_FREEZE = 180;
    static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FOLDER")
    private Path folder = Path.of("");

    @Option(
            names = "--slot-minutes",
            paramLabel = "N",
            description = "A rubber and its turnover; as the scoring says unless given.")
    private Optional<Integer> slotMinutes = Optional.empty();

    @Option(
            names = "--replan",
            paramLabel = "NOW",
            description = "Plan what is left from this time on (HH:MM), and show every option.")
    private Optional<String> replan = Optional.empty();

    @Option(names = "--options", description = "One line for each option instead of its plan.")
    private boolean options;

    @Option(
            names = "--courts-per-tie",
            paramLabel = "N",
            description = "Courts that a tie takes at once; as many as make the day shortest unless given.")
    private Optional<Integer> courtsPerTie = Optional.empty();

    @Option(names = "--lost", paramLabel = "COURT", split = ",", description = "Courts that can no longer be used.")
    private List<String> lost = new ArrayList<>();

    @Option(
            names = "--freeze",
            paramLabel = "N",
            description = "A published start within this many minutes stays; as the conditions say unless given.")
    private Optional<Integer> freeze = Optional.empty();

    @Option(names = "--earlier", description = "With --replan: ties may begin before their published starts.")
    private boolean earlier;

    @Option(names = "--umpires", description = "A club that does not play umpires each tie.")
    private boolean umpires;

    @Option(names = "--seed", paramLabel = "N", description = "Seed of the search; ${DEFAULT-VALUE} unless given.")
    private long seed = 1;

    @Option(
            names = "--csv",
            description =
                    "Print option,tie,rubber,slot,court,start,end; with --options option,finish,lower_bound,feasible,cost,people_to_tell.")
    private boolean csv;

    private final TimetableWords words = TimetableWords.ofCodes();

    @Override
    public Integer call() {
        Event event = Folders.sound(folder, PlainFile.TIES, PlainFile.COURTS).event();
        PlanAsked asked = asked(event);
        DoubleBookings.of(event).ifPresent(twice -> {
            throw new BadInput(words.sentence(twice));
        });
        err().println("seed " + seed);
        return replan.isPresent() || options ? options(event, asked) : plan(PlanProblem.of(event, asked));
    }

    private PlanAsked asked(Event event) {
        int frozen = freeze.map(minutes -> within("--freeze", minutes, 0, MOST_FREEZE))
                .orElse(event.conditions().freezeMinutes());
        PlanAsked asked = replan.map(now -> PlanAsked.from(time(now), frozen)).orElseGet(PlanAsked::wholeDay);
        if (slotMinutes.isPresent()) {
            asked = asked.withSlot(within("--slot-minutes", slotMinutes.get(), 1, 600));
        }
        if (courtsPerTie.isPresent()) {
            asked = asked.withCourtsPerTie(within("--courts-per-tie", courtsPerTie.get(), 1, PlanProblem.MOST_COURTS));
        }
        asked = asked.withoutCourts(lost(event));
        asked = earlier ? asked.withEarlierStarts() : asked;
        return umpires ? asked.withUmpires() : asked;
    }

    private List<String> lost(Event event) {
        for (String court : lost) {
            if (!event.courts().containsKey(court)) {
                throw new BadInput("There is no court " + court + " in courts.csv that could be lost; the courts are "
                        + String.join(", ", event.courts().keySet()) + ".");
            }
        }
        return lost;
    }

    private static int within(String option, int number, int least, int most) {
        if (number < least || number > most) {
            throw new BadInput(option + " is a number from " + least + " to " + most + ".");
        }
        return number;
    }

    private static LocalTime time(String text) {
        try {
            return LocalTime.parse(text, CLOCK);
        } catch (DateTimeParseException wrong) {
            throw new BadInput("--replan is a time such as 14:30, not \"" + text + "\".");
        }
    }

    private int plan(PlanProblem problem) {
        Planned planned = Planner.plan(problem, Budget.usual(problem, seed));
        return switch (planned.kind()) {
            case FOUND -> print(((Planned.Found) planned).plan(), 0);
            case BROKEN -> print(((Planned.Broken) planned).plan(), IMPOSSIBLE);
            case IMPOSSIBLE -> impossible((Planned.Impossible) planned);
        };
    }

    private int impossible(Planned.Impossible impossible) {
        err().println(words.sentence(impossible.why().because()));
        impossible.asIs().ifPresent(plan -> print(plan, IMPOSSIBLE));
        return impossible.why().isInput() ? BAD_INPUT : IMPOSSIBLE;
    }

    private int print(Plan plan, int exit) {
        Printed printed = TimetableRows.lines();
        TimetableRows.add(printed, Cut.AS_IS.code(), plan);
        printed.to(spec.commandLine().getOut(), csv);
        if (csv) {
            plan.moved().forEach(reason -> err().println(words.sentence(reason)));
        }
        plan.breaches().forEach(breach -> err().println(words.sentence(breach)));
        if (!csv) {
            plan.explained().forEach(reason -> err().println(words.sentence(reason)));
        }
        return exit;
    }

    private int options(Event event, PlanAsked asked) {
        Optional<Infeasible> fault = Replan.fault(event, asked);
        if (fault.isPresent()) {
            err().println(words.sentence(fault.get().because()));
            return fault.get().isInput() ? BAD_INPUT : IMPOSSIBLE;
        }
        PlanProblem problem = PlanProblem.of(event, asked);
        List<ReplanOption> found = Replan.options(event, asked, Budget.usual(problem, seed));
        if (options) {
            TimetableRows.summary(found).to(spec.commandLine().getOut(), csv);
        } else {
            Printed printed = TimetableRows.lines();
            found.forEach(option -> TimetableRows.add(printed, option.cut().code(), option.plan()));
            printed.to(spec.commandLine().getOut(), csv);
        }
        say(found);
        return found.stream().anyMatch(ReplanOption::isFeasible) ? 0 : IMPOSSIBLE;
    }

    /** What each option does to the contest; on standard error, for the rows alone are the result. */
    private void say(List<ReplanOption> found) {
        ReplanOption asIs = found.get(0);
        if (!asIs.isFeasible()) {
            err().println("Impossible as it is: it would end at " + CLOCK.format(asIs.finish()) + ". "
                    + words.sentence(asIs.plan().bound().because()));
            asIs.plan().breaches().forEach(breach -> err().println(words.sentence(breach)));
        }
        for (ReplanOption option : found) {
            option.fairness().forEach(reason -> err().println(option.cut().code() + ": " + words.sentence(reason)));
        }
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
