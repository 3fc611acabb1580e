package tiewright.plainfiles;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.event.Actor;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.PlayerId;
import tiewright.event.Recorded;
import tiewright.event.Role;

/**
 * An event folder: the event it describes, or everything that is wrong with it.
 *
 * @param event the fold of the facts in the files; meaningful only when there are no faults
 * @param away players whom {@code present} says are not here
 */
public record EventFolder(Event event, List<PlayerId> away, List<FolderFault> faults) {
  public EventFolder {
    away = List.copyOf(away);
    faults = List.copyOf(faults);
  }

  /** Reads whatever of the folder's files is there; only event.csv has to be. */
  public static EventFolder read(Path folder) {
    List<FolderFault> faults = new ArrayList<>();
    Map<PlainFile, CsvTable> tables = new EnumMap<>(PlainFile.class);
    for (PlainFile file : PlainFile.values()) {
      Path path = folder.resolve(file.fileName());
      if (Files.isRegularFile(path)) {
        CsvTable table = CsvTable.read(path);
        faults.addAll(table.faults());
        faults.addAll(columnFaults(file, table));
        tables.put(file, table);
      }
    }
    if (!tables.containsKey(PlainFile.EVENT)) {
      faults.add(new FolderFault(PlainFile.EVENT.fileName(), 1, "", "the file is missing; every event folder has one"));
    }
    if (!faults.isEmpty()) {
      return new EventFolder(Event.empty(), List.of(), faults);
    }
    FolderFacts facts = new FolderFacts(tables);
    facts.collect();
    return new EventFolder(
        facts.faults().isEmpty() ? Event.of(recorded(facts.facts())) : Event.empty(), facts.away(), facts.faults());
  }

  private static List<FolderFault> columnFaults(PlainFile file, CsvTable table) {
    List<FolderFault> faults = new ArrayList<>();
    for (String column : table.header()) {
      if (!file.has(column)) {
        faults.add(new FolderFault(file.fileName(), 1, column, "unknown column"));
      }
    }
    for (String column : file.required()) {
      if (!table.header().contains(column)) {
        faults.add(new FolderFault(file.fileName(), 1, column, "this column is missing"));
      }
    }
    return faults;
  }

  private static List<Recorded> recorded(List<Fact> facts) {
    Actor reader = Actor.of(Role.ORGANISER, "plain files");
    List<Recorded> recorded = new ArrayList<>();
    for (Fact fact : facts) {
      recorded.add(new Recorded(recorded.size() + 1, fact, reader, Optional.empty(), Instant.EPOCH));
    }
    return recorded;
  }
}
