package tiewright.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import tiewright.scoring.Chain;
import tiewright.scoring.Format;
import tiewright.scoring.SideNo;

@Command(
        name = "rubber-chance",
        description = "The chance to win a game and its length, from rally chances.",
        mixinStandardHelpOptions = true)
final class RubberChanceCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--format", required = true, paramLabel = "F")
    private String format = "";

    @Option(
            names = "--serve-1",
            required = true,
            paramLabel = "P",
            description = "Chance that side 1 wins a rally it serves.")
    private double serve1;

    @Option(
            names = "--serve-2",
            required = true,
            paramLabel = "P",
            description = "Chance that side 2 wins a rally it serves.")
    private double serve2;

    @Option(names = "--csv", description = "Print first_server,win_1,rallies.")
    private boolean csv;

    @Override
    public Integer call() {
        Format parsed = Format.parse(format)
                .orElseThrow(() -> new BadInput(
                        "\"" + format + "\" is not a scoring format: write side-out-11, rally-15 or rally-21-cap-30."));
        if (!(serve1 >= 0 && serve1 <= 1 && serve2 >= 0 && serve2 <= 1)) {
            throw new BadInput("A chance is a number from 0 to 1.");
        }
        if (!Chain.ends(parsed, serve1, serve2)) {
            spec.commandLine()
                    .getErr()
                    .println("With these chances the game never ends: nobody wins a rally on serve.");
            return 4;
        }
        Chain chain = Chain.of(parsed, serve1, serve2);
        Printed printed = new Printed("first_server", "win_1", "rallies");
        printed.row(1, chain.winChance(SideNo.ONE), chain.rallies(SideNo.ONE).mean());
        printed.row(2, chain.winChance(SideNo.TWO), chain.rallies(SideNo.TWO).mean());
        printed.to(spec.commandLine().getOut(), csv);
        return 0;
    }
}
