package tiewright.plainfiles;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tiewright.event.Refusal;

/** Files that are read together: those that can be read as tables, and what is wrong with the form of any. */
final class Tables {
    private final Map<PlainFile, CsvTable> readable = new EnumMap<>(PlainFile.class);
    private final List<FolderFault> faults = new ArrayList<>();

    /** A file that cannot be read as a table counts as absent, so that what refers to it is not called wrong as well. */
    void take(PlainFile file, CsvTable table) {
        faults.addAll(table.faults());
        faults.addAll(columnFaults(file, table));
        if (table.isWhole() && table.header().containsAll(file.required())) {
            readable.put(file, table);
        }
    }

    /** The text of a file that was given by itself, and that this needs. */
    void takeGiven(PlainFile file, String text) {
        if (text.isBlank()) {
            fault(new FolderFault(file.fileName(), 1, "", Refusal.of("files.no-file-needed")));
        } else {
            take(file, CsvTable.of(file.fileName(), text));
        }
    }

    void fault(FolderFault fault) {
        faults.add(fault);
    }

    Map<PlainFile, CsvTable> readable() {
        return readable;
    }

    /** Every fault by file and line; a row that is broken as a whole is not called wrong again value by value. */
    List<FolderFault> faults(List<FolderFault> ofValues) {
        List<String> order =
                Arrays.stream(PlainFile.values()).map(PlainFile::fileName).toList();
        List<FolderFault> all = new ArrayList<>(faults);
        ofValues.stream()
                .filter(fault -> faults.stream().noneMatch(form -> form.isOfTheRowOf(fault)))
                .forEach(all::add);
        all.sort(Comparator.<FolderFault>comparingInt(fault -> order.indexOf(fault.file()))
                .thenComparingLong(FolderFault::line));
        return all;
    }

    private static List<FolderFault> columnFaults(PlainFile file, CsvTable table) {
        List<FolderFault> faults = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (String column : table.header()) {
            if (!file.columns().contains(column) && !file.readOver().contains(column)) {
                faults.add(new FolderFault(
                        file.fileName(),
                        1,
                        column,
                        Refusal.of(column.isEmpty() ? "files.nameless-column" : "files.unknown-column")));
            } else if (!seen.add(column)) {
                faults.add(new FolderFault(file.fileName(), 1, column, Refusal.of("files.column-twice")));
            }
        }
        if (!table.header().isEmpty()) {
            file.required().stream()
                    .filter(column -> !table.header().contains(column))
                    .forEach(column ->
                            faults.add(new FolderFault(file.fileName(), 1, column, Refusal.of("files.no-column"))));
        }
        return faults;
    }
}
