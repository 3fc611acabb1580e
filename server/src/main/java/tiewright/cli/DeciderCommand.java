package tiewright.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.club.LineupInputs;
import tiewright.lineup.decider.DeciderAdvice;
import tiewright.wording.LineupWords;

@Command(name = "decider", description = "Who should play the decider.", mixinStandardHelpOptions = true)
final class DeciderCommand implements Callable<Integer> {
    private static final int IMPOSSIBLE = 4;

    @Spec
    private CommandSpec spec;

    @Mixin
    private TieAdvice asked = new TieAdvice();

    @Option(names = "--csv", description = "Print rank,player_1,player_2,weight,chance,low,high,verdict.")
    private boolean csv;

    @Override
    public Integer call() {
        LineupInputs inputs = asked.inputs(LineupProblem.Against.STRAIGHT, 1);
        DeciderAdvice advice = inputs.decider();
        PrintWriter err = spec.commandLine().getErr();
        LineupWords words = LineupWords.ofCodes();
        if (advice.candidates().isEmpty()) {
            advice.notes().forEach(note -> err.println(words.sentence(note)));
            return IMPOSSIBLE;
        }
        Printed printed = printed(advice);
        printed.to(spec.commandLine().getOut(), csv);
        TieAdvice.say(err, inputs);
        if (!csv) {
            err.println(words.restsOn(inputs.basis()));
            advice.notes().forEach(note -> err.println(words.sentence(note)));
        }
        return 0;
    }

    private static Printed printed(DeciderAdvice advice) {
        Printed printed = new Printed("rank", "player_1", "player_2", "weight", "chance", "low", "high", "verdict");
        for (DeciderAdvice.Candidate each : advice.candidates()) {
            printed.row(
                    each.rank(),
                    each.pair().first(),
                    each.pair().second(),
                    each.weight(),
                    each.chance(),
                    each.low(),
                    each.high(),
                    each.verdict().code());
        }
        return printed;
    }
}
