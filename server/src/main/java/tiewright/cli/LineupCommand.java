package tiewright.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import tiewright.lineup.Aim;
import tiewright.lineup.Budget;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.club.LineupInputs;
import tiewright.lineup.tie.Proposal;
import tiewright.lineup.tie.Proposals;
import tiewright.lineup.tie.ProposedSheet;
import tiewright.lineup.tie.WhatIf;
import tiewright.rating.Basis;
import tiewright.wording.LineupWords;

@Command(name = "lineup", description = "Proposed sheets for a tie, the best first.", mixinStandardHelpOptions = true)
final class LineupCommand implements Callable<Integer> {
    private static final int IMPOSSIBLE = 4;

    @Spec
    private CommandSpec spec;

    @Mixin
    private TieAdvice asked = new TieAdvice();

    @Option(names = "--top", paramLabel = "N", description = "Sheets to show; ${DEFAULT-VALUE} unless given.")
    private int top = Proposals.USUAL_COUNT;

    @Option(
            names = "--seed",
            paramLabel = "N",
            description = "Seed of everything that is drawn; ${DEFAULT-VALUE} unless given.")
    private long seed = 1;

    @Option(
            names = "--against",
            paramLabel = "straight|unknown",
            description = "The other club: strongest pair first (straight), or in any order (unknown).")
    private String against = LineupProblem.Against.STRAIGHT.code();

    @Option(
            names = "--aim",
            paramLabel = "win|rubbers|qualify",
            description =
                    "Win the tie, be many rubbers ahead for the count-back, or go through; ${DEFAULT-VALUE} unless given.")
    private String aim = Aim.Kind.WIN.code();

    @Option(
            names = "--learn",
            description = "Among sheets that are equal to a tenth of a point, the one that teaches most.")
    private boolean learn;

    @Option(
            names = "--floor",
            paramLabel = "N",
            description = "Rubbers promised to everybody by the end of this tie; 0 unless given.")
    private int floor;

    @Option(
            names = "--what-if",
            description = "Also say, on standard error, what fewer players and each absence would cost.")
    private boolean whatIf;

    @Option(
            names = "--csv",
            description = "Print rank,rubber,player_1,player_2,rubber_chance,tie_chance,low,high,cost.")
    private boolean csv;

    @Override
    public Integer call() {
        if (top < 1) {
            throw new BadInput("--top is a number of sheets, 1 or more.");
        }
        if (floor < 0) {
            throw new BadInput("--floor is a number of rubbers, 0 or more.");
        }
        LineupInputs inputs = asked.inputs(expectation(), seed).promising(floor);
        LineupProblem problem = problem(inputs);
        Proposal proposal = Proposals.propose(problem, Budget.usual(seed), top);
        if (whatIf) {
            WhatIf.of(problem).ifPresent(this::say);
        }
        return switch (proposal.kind()) {
            case PROPOSED -> print((Proposal.Proposed) proposal, inputs);
            case IMPOSSIBLE -> refuse((Proposal.Impossible) proposal);
        };
    }

    private LineupProblem problem(LineupInputs inputs) {
        LineupProblem aimed = inputs.problem().aimingAt(asked.aim(aim, seed));
        return learn ? aimed.learning() : aimed;
    }

    private void say(WhatIf what) {
        PrintWriter err = spec.commandLine().getErr();
        LineupWords words = LineupWords.ofCodes();
        Aim.Kind kind = Aim.Kind.parse(aim).orElseThrow();
        what.sizes().forEach(size -> err.println(words.size(size, kind)));
        what.absences().forEach(absence -> err.println(words.absence(absence, kind)));
    }

    private LineupProblem.Against expectation() {
        for (LineupProblem.Against each : LineupProblem.Against.values()) {
            if (each.code().equals(against)) {
                return each;
            }
        }
        throw new BadInput("--against is straight or unknown, not \"" + against + "\".");
    }

    private int print(Proposal.Proposed proposal, LineupInputs inputs) {
        Printed printed = new Printed(
                "rank", "rubber", "player_1", "player_2", "rubber_chance", "tie_chance", "low", "high", "cost");
        for (ProposedSheet sheet : proposal.sheets()) {
            for (ProposedSheet.Line line : sheet.lines()) {
                printed.row(
                        sheet.rank(),
                        line.rubber(),
                        line.pair().map(pair -> pair.first().code()).orElse(""),
                        line.pair().map(pair -> pair.second().code()).orElse(""),
                        line.chance().<Object>map(chance -> chance).orElse(""),
                        sheet.chance(),
                        sheet.low(),
                        sheet.high(),
                        sheet.cost());
            }
        }
        printed.to(spec.commandLine().getOut(), csv);
        TieAdvice.say(spec.commandLine().getErr(), inputs);
        say(proposal, inputs.basis());
        return 0;
    }

    /** What stands behind the numbers; on standard error, for the rows alone are the result. */
    private void say(Proposal.Proposed proposal, Basis basis) {
        PrintWriter err = spec.commandLine().getErr();
        LineupWords words = LineupWords.ofCodes();
        err.println("seed " + seed);
        if (!csv) {
            err.println(words.restsOn(basis));
            proposal.promises().forEach(reason -> err.println(words.sentence(reason)));
            proposal.sheets().get(0).reasons().forEach(reason -> err.println(words.sentence(reason)));
            proposal.notes().forEach(reason -> err.println(words.sentence(reason)));
        }
    }

    private int refuse(Proposal.Impossible impossible) {
        LineupWords words = LineupWords.ofCodes();
        impossible.reasons().forEach(reason -> spec.commandLine().getErr().println(words.sentence(reason)));
        return IMPOSSIBLE;
    }
}
