package tiewright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tiewright.event.Event;
import tiewright.plainfiles.PlainFile;
import tiewright.standings.PoolTables;
import tiewright.standings.Row;
import tiewright.standings.Standings;
import tiewright.wording.StandingsWords;

@Command(
        name = "standings",
        description = "Every pool's table, each place with its reason.",
        mixinStandardHelpOptions = true)
final class StandingsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FOLDER")
    private Path folder = Path.of("");

    @Option(names = "--csv", description = "Print CSV.")
    private boolean csv;

    @Override
    public Integer call() {
        Event event = Folders.sound(folder, PlainFile.TIES).event();
        boolean draws = PoolTables.rules(event.conditions()).shape().canBeDrawn();
        Printed printed = new Printed(header(draws));
        for (String pool : event.pools().keySet()) {
            Standings.of(PoolTables.input(event, pool))
                    .rows()
                    .forEach(row -> printed.row(cells(pool, row, draws).toArray()));
        }
        printed.to(spec.commandLine().getOut(), csv);
        return 0;
    }

    private static List<String> header(boolean draws) {
        List<String> header = new ArrayList<>(List.of(
                "pool",
                "place",
                "club",
                "ties_won",
                "ties_lost",
                "rubbers_won",
                "rubbers_lost",
                "points_for",
                "points_against",
                "decided_by",
                "points"));
        if (draws) {
            header.add("ties_drawn");
        }
        return header;
    }

    private static List<Object> cells(String pool, Row row, boolean draws) {
        List<Object> cells = new ArrayList<>(List.of(
                pool,
                row.place(),
                row.club(),
                row.tiesWon(),
                row.tiesLost(),
                row.rubbersWon(),
                row.rubbersLost(),
                row.pointsFor(),
                row.pointsAgainst(),
                StandingsWords.withCodes().reason(row.club(), row.decidedBy()),
                row.tiePoints()));
        if (draws) {
            cells.add(row.tiesDrawn());
        }
        return cells;
    }
}
