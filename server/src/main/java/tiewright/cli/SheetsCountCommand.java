package tiewright.cli;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import tiewright.conditions.OrderOfStrength;
import tiewright.conditions.Plays;
import tiewright.event.Directory;
import tiewright.event.Player;
import tiewright.plainfiles.EventFolder;
import tiewright.plainfiles.PlainFile;
import tiewright.sheet.SheetCount;

@Command(
        name = "sheets-count",
        description = "How many sheets are legal under the conditions.",
        mixinStandardHelpOptions = true)
final class SheetsCountCommand implements Callable<Integer> {
    private static final int IMPOSSIBLE = 4;

    @Spec
    private CommandSpec spec;

    @Mixin
    private ClubOfFolder asked = new ClubOfFolder();

    @Option(names = "--csv", description = "Print legal,all.")
    private boolean csv;

    @Override
    public Integer call() {
        EventFolder read = Folders.sound(asked.folder, PlainFile.PLAYERS);
        List<Player> here = Folders.present(read, asked.club);
        List<OptionalInt> ranks = here.stream().map(Player::rank).toList();
        if (read.event().conditions().orderOfStrength() != OrderOfStrength.NONE
                && ranks.stream().anyMatch(OptionalInt::isEmpty)) {
            throw new BadInput(
                    "The conditions ask for an order of strength: give every player of " + asked.club + " a rank.");
        }
        Optional<SheetCount> count =
                SheetCount.of(ranks, plays(read, here), read.event().conditions());
        if (count.isEmpty()) {
            spec.commandLine()
                    .getErr()
                    .println("With " + here.size()
                            + " players of different ranks there are too many cases to count: leave"
                            + " players out with \"no\" in the column present, or count without an order of strength.");
            return IMPOSSIBLE;
        }
        Printed printed = new Printed("legal", "all");
        printed.row(count.get().legal(), count.get().all());
        printed.to(spec.commandLine().getOut(), csv);
        return 0;
    }

    private static List<Optional<Plays>> plays(EventFolder read, List<Player> here) {
        Directory directory = read.directory();
        return here.stream().map(player -> directory.plays(player.id())).toList();
    }
}
