package tiewright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import tiewright.event.Player;
import tiewright.plainfiles.EventFolder;
import tiewright.plainfiles.FolderFault;
import tiewright.plainfiles.PlainFile;

/** Opens what a command was pointed at, or says why it cannot. */
final class Folders {
    private Folders() {}

    /** The folder without faults, and with the files that the command cannot do without. */
    static EventFolder sound(Path folder, PlainFile... needed) {
        EventFolder read = any(folder);
        List<FolderFault> faults = new ArrayList<>(read.missing(needed));
        faults.addAll(read.faults());
        if (!faults.isEmpty()) {
            throw new BadInput(faults.stream().map(FolderFault::toString).toList());
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

    /** The players of a club who are here. Nobody is bad input. */
    static List<Player> present(EventFolder read, String club) {
        List<Player> here = read.event().players().values().stream()
                .filter(player -> player.club().code().equals(club))
                .filter(player -> !read.away().contains(player.id()))
                .toList();
        if (here.isEmpty()) {
            throw new BadInput("players.csv has nobody present for the club " + club + ".");
        }
        return here;
    }
}
