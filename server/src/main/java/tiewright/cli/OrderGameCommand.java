package tiewright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tiewright.lineup.order.OrderGame;

@Command(name = "order-game", description = "The blind order of fixed pairs.", mixinStandardHelpOptions = true)
final class OrderGameCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "CHANCES.csv")
    private Path file = Path.of("");

    @Option(names = "--to-win", required = true, paramLabel = "N", description = "Rubbers that win the tie.")
    private int toWin;

    @Option(
            names = "--decider",
            paramLabel = "P",
            description = "Our chance in the decider when the rubbers finish level.")
    private double decider = Double.NaN;

    @Option(names = "--csv", description = "Print kind,order,chance,weight.")
    private boolean csv;

    @Override
    public Integer call() {
        NumberTable table = NumberTable.read(file);
        OrderGame game = solve(table);
        Printed printed = new Printed("kind", "order", "chance", "weight");
        printed.row("value", "", game.value(), "");
        game.orders().forEach(order -> printed.row("mix", name(table, order), order.ifStraight(), order.weight()));
        printed.row("straight", name(table, game.straight()), game.straight().ifStraight(), "");
        printed.row(
                "best-reply", name(table, game.bestReply()), game.bestReply().ifStraight(), "");
        printed.to(spec.commandLine().getOut(), csv);
        return 0;
    }

    private OrderGame solve(NumberTable table) {
        boolean given = !Double.isNaN(decider);
        if (!given && OrderGame.canBeLevel(table.rows().size(), toWin)) {
            throw new BadInput(
                    "These rubbers can finish level: give --decider, our chance in the decider (0 if a draw is not a win).");
        }
        try {
            return OrderGame.of(table.numbers(), toWin, given ? decider : 0);
        } catch (IllegalArgumentException wrong) {
            throw new BadInput("This order game cannot be solved: " + wrong.getMessage() + ".");
        }
    }

    private static String name(NumberTable table, OrderGame.Ordered order) {
        return order.pairs().stream().map(table.rows()::get).collect(Collectors.joining("-"));
    }
}
