package tiewright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import tiewright.plainfiles.EventFolder;
import tiewright.plainfiles.FolderFault;

/** Opens what a command was pointed at, or says why it cannot. */
final class Folders {
  private Folders() {}

  /** The folder without faults. */
  static EventFolder sound(Path folder) {
    EventFolder read = any(folder);
    if (!read.faults().isEmpty()) {
      throw new BadInput(read.faults().stream().map(FolderFault::toString).toList());
    }
    return read;
  }

  static EventFolder any(Path folder) {
    if (!Files.isDirectory(folder)) {
      throw new BadInput("There is no folder " + folder + ": give the folder that holds event.csv.");
    }
    return EventFolder.read(folder);
  }

  static Path folder(Path folder) {
    if (!Files.isDirectory(folder)) {
      throw new BadInput("There is no folder " + folder + ".");
    }
    return folder;
  }

  static Path file(Path file) {
    if (!Files.isRegularFile(file)) {
      throw new BadInput("There is no file " + file + ".");
    }
    return file;
  }
}
