package tiewright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import tiewright.event.Refusal;
import tiewright.plainfiles.CsvTable;
import tiewright.plainfiles.FolderFault;

/** A table of numbers with names for rows and columns; the first cell is any word. */
record NumberTable(List<String> columns, List<String> rows, double[][] numbers) {

    static NumberTable read(Path path) {
        CsvTable table = CsvTable.read(Folders.file(path));
        List<FolderFault> faults = new ArrayList<>(table.faults());
        List<String> names = new ArrayList<>();
        List<double[]> lines = new ArrayList<>();
        for (CsvTable.Row row : table.rows()) {
            names.add(row.inOrder().get(0));
            lines.add(numbers(row, table.header(), faults));
        }
        if (faults.isEmpty() && (lines.isEmpty() || table.header().size() < 2)) {
            faults.add(new FolderFault(table.file(), 1, "", Refusal.of("files.empty-table")));
        }
        if (!faults.isEmpty()) {
            throw new BadInput(faults.stream().map(FolderFault::toString).toList());
        }
        return new NumberTable(
                List.copyOf(table.header().subList(1, table.header().size())),
                List.copyOf(names),
                lines.toArray(new double[0][]));
    }

    private static double[] numbers(CsvTable.Row row, List<String> header, List<FolderFault> faults) {
        double[] numbers = new double[Math.max(0, Math.min(row.inOrder().size(), header.size()) - 1)];
        for (int i = 0; i < numbers.length; i++) {
            String text = row.inOrder().get(i + 1);
            try {
                numbers[i] = Double.parseDouble(text);
            } catch (NumberFormatException none) {
                numbers[i] = Double.NaN;
            }
            if (!Double.isFinite(numbers[i])) {
                faults.add(row.fault(
                        header.get(i + 1), Refusal.of("files.no-number").with("value", text)));
            }
        }
        return numbers;
    }
}
