package tiewright.cli;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import tiewright.event.ClubId;
import tiewright.event.Codes;
import tiewright.event.Event;
import tiewright.plainfiles.PlainFile;
import tiewright.standings.Needs;
import tiewright.standings.NeedsReport;
import tiewright.standings.PoolTables;
import tiewright.wording.NeedsWords;

@Command(name = "needs", description = "What the club needs in the ties left.", mixinStandardHelpOptions = true)
final class NeedsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private ClubOfFolder asked = new ClubOfFolder();

    @Option(names = "--csv", description = "Print club,statement,places.")
    private boolean csv;

    @Override
    public Integer call() {
        Event event = Folders.sound(asked.folder, PlainFile.TIES).event();
        if (!Codes.isCode(asked.club)) {
            throw new BadInput("\"" + asked.club + "\" is not a club's code.");
        }
        ClubId id = ClubId.of(asked.club);
        String pool = event.pools().entrySet().stream()
                .filter(each -> each.getValue().contains(id))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow(() ->
                        new BadInput("No pool has the club " + asked.club + "; the clubs are " + names(event) + "."));
        NeedsReport report = Needs.of(PoolTables.input(event, pool), id, OptionalInt.empty())
                .orElseThrow(() ->
                        new BadInput("The club " + asked.club + " has no row in the table: its results are annulled."));
        NeedsWords words = NeedsWords.withCodes();
        Printed printed = new Printed("club", "statement", "places");
        printed.row(asked.club, words.overall(report), report.places());
        report.cases().forEach(one -> printed.row(asked.club, words.statement(one), one.places()));
        printed.to(spec.commandLine().getOut(), csv);
        return 0;
    }

    private static String names(Event event) {
        return String.join(
                ", ",
                event.pools().values().stream()
                        .flatMap(List::stream)
                        .map(ClubId::code)
                        .toList());
    }
}
