package tiewright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tiewright.lineup.game.MatrixGame;

@Command(
        name = "game",
        description = "Solves a zero-sum game of the row player's chances.",
        mixinStandardHelpOptions = true)
final class GameCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "MATRIX.csv")
    private Path file = Path.of("");

    @Option(names = "--csv", description = "Print kind,name,weight.")
    private boolean csv;

    @Override
    public Integer call() {
        NumberTable table = NumberTable.read(file);
        MatrixGame game = MatrixGame.solve(table.numbers());
        Printed printed = new Printed("kind", "name", "weight");
        printed.row("value", "", game.value());
        for (int i = 0; i < table.rows().size(); i++) {
            printed.row("row", table.rows().get(i), game.row()[i]);
        }
        for (int i = 0; i < table.columns().size(); i++) {
            printed.row("column", table.columns().get(i), game.column()[i]);
        }
        printed.to(spec.commandLine().getOut(), csv);
        return 0;
    }
}
