package tiewright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tiewright.event.ClubId;
import tiewright.event.Pair;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.TieId;
import tiewright.plainfiles.CsvTable;
import tiewright.plainfiles.FolderFault;
import tiewright.sheet.Receipt;

@Command(
        name = "receipt",
        description = "The receipt of a sheet, to compare with the published one.",
        mixinStandardHelpOptions = true)
final class ReceiptCommand implements Callable<Integer> {
    private static final List<String> NEEDED = List.of("tie", "club", "rubber");

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "SHEET.csv")
    private Path file = Path.of("");

    @Option(names = "--secret", required = true, paramLabel = "S", description = "64 lower-case hex digits.")
    private String secret = "";

    @Option(names = "--csv", description = "Print receipt.")
    private boolean csv;

    @Override
    public Integer call() {
        if (!Receipt.isSecret(secret)) {
            throw new BadInput(
                    "A secret has 64 lower-case hex digits; this one has " + secret.length() + " characters.");
        }
        CsvTable table = CsvTable.read(Folders.file(file));
        if (!table.faults().isEmpty()) {
            throw new BadInput(
                    table.faults().stream().map(FolderFault::toString).toList());
        }
        if (!table.header().containsAll(NEEDED) || table.rows().isEmpty()) {
            throw new BadInput(table.file()
                    + ":1: a sheet needs the columns tie, club, rubber, player_1, player_2 and a row for each rubber.");
        }
        CsvTable.Row first = table.rows().get(0);
        SortedMap<RubberNo, Optional<Pair>> pairs = new TreeMap<>();
        table.rows().forEach(row -> add(row, first, pairs));
        String receipt = receipt(first, new Sheet(pairs));
        Printed printed = new Printed("receipt");
        printed.row(receipt);
        printed.to(spec.commandLine().getOut(), csv);
        return 0;
    }

    private String receipt(CsvTable.Row first, Sheet sheet) {
        try {
            return Receipt.of(
                    secret,
                    TieId.of(first.cell("tie").orElse("")),
                    ClubId.of(first.cell("club").orElse("")),
                    sheet);
        } catch (IllegalArgumentException noCode) {
            throw new BadInput(
                    first.fault("", String.valueOf(noCode.getMessage())).toString());
        }
    }

    private static void add(CsvTable.Row row, CsvTable.Row first, SortedMap<RubberNo, Optional<Pair>> pairs) {
        if (!row.cell("tie").equals(first.cell("tie")) || !row.cell("club").equals(first.cell("club"))) {
            throw new BadInput(row.fault("tie", "one file holds the sheet of one club for one tie")
                    .toString());
        }
        RubberNo rubber = row.cell("rubber")
                .flatMap(RubberNo::parse)
                .orElseThrow(() -> new BadInput(
                        row.fault("rubber", "a rubber is 1, 2, … or D").toString()));
        if (pairs.containsKey(rubber)) {
            throw new BadInput(row.fault("rubber", "rubber " + rubber + " stands here twice")
                    .toString());
        }
        Optional<String> one = row.cell("player_1");
        Optional<String> other = row.cell("player_2");
        if (one.isPresent() != other.isPresent() || one.isPresent() && one.equals(other)) {
            throw new BadInput(row.fault("player_2", "a pair has two different players, an empty rubber none")
                    .toString());
        }
        pairs.put(rubber, one.map(code -> Pair.of(code, other.orElseThrow())));
    }
}
