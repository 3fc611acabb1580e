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
import tiewright.event.Codes;
import tiewright.event.Pair;
import tiewright.event.Refusal;
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
        return Receipt.of(secret, TieId.of(code(first, "tie")), ClubId.of(code(first, "club")), sheet);
    }

    private static String code(CsvTable.Row row, String column) {
        return row.cell(column)
                .filter(Codes::isCode)
                .orElseThrow(() -> wrong(
                        row,
                        column,
                        Refusal.of("files.no-code")
                                .with("value", row.cell(column).orElse(""))
                                .with("most", Codes.LONGEST)));
    }

    private static BadInput wrong(CsvTable.Row row, String column, Refusal reason) {
        return new BadInput(row.fault(column, reason).toString());
    }

    private static void add(CsvTable.Row row, CsvTable.Row first, SortedMap<RubberNo, Optional<Pair>> pairs) {
        if (!row.cell("tie").equals(first.cell("tie")) || !row.cell("club").equals(first.cell("club"))) {
            throw wrong(row, "tie", Refusal.of("files.two-sheets"));
        }
        RubberNo rubber = row.cell("rubber")
                .flatMap(RubberNo::parse)
                .orElseThrow(() -> wrong(row, "rubber", Refusal.of("files.no-rubber-number")));
        if (pairs.containsKey(rubber)) {
            throw wrong(row, "rubber", Refusal.of("files.rubber-of-sheet-twice").with("rubber", rubber));
        }
        Optional<String> one = row.cell("player_1");
        Optional<String> other = row.cell("player_2");
        if (one.isPresent() != other.isPresent() || one.isPresent() && one.equals(other)) {
            throw wrong(row, "player_2", Refusal.of("files.half-pair-of-rubber"));
        }
        pairs.put(rubber, one.map(code -> Pair.of(code, other.orElseThrow())));
    }
}
