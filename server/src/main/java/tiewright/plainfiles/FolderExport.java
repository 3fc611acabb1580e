package tiewright.plainfiles;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.PrivateNote;
import tiewright.event.SetUpFact;

/**
 * An event as a folder of plain files. What was exported and brought in again exports the same, byte for byte.
 *
 * <p>Sealed sheets are in no export, nor are calls, notices, rulings, links and the log. Form, chemistry, film and
 * a club's own earlier games are there only as far as {@link OwnNotes} brings them.
 */
public final class FolderExport {
    private FolderExport() {}

    /**
     * The files by name, in the order of {@link PlainFile}; a file that would have no row is left out, but for the first five.
     *
     * @throws IllegalArgumentException if the event was never described: there is nothing to export
     */
    public static Map<String, String> files(
            Event event, Directory directory, OwnNotes own, List<PrivateNote.PastGame> past) {
        SetUpFact.EventDescribed about =
                event.about().orElseThrow(() -> new IllegalArgumentException("the event has no name and date yet"));
        Map<String, String> files = new LinkedHashMap<>();
        SquadExport squads = new SquadExport(event, directory, own);
        PlayExport play = new PlayExport(event, about.zone());
        always(files, PlainFile.EVENT, about(about));
        always(files, PlainFile.CONDITIONS, conditions(event));
        always(files, PlainFile.CLUBS, squads.clubs());
        always(files, PlainFile.PLAYERS, squads.players());
        unlessEmpty(files, PlainFile.CHEMISTRY, squads.chemistry());
        unlessEmpty(files, PlainFile.COURTS, squads.courts());
        always(files, PlainFile.TIES, play.ties());
        unlessEmpty(files, PlainFile.SHEETS, play.sheets());
        unlessEmpty(files, PlainFile.RUBBERS, play.rubbers());
        unlessEmpty(files, PlainFile.RESULTS, play.results());
        unlessEmpty(files, PlainFile.WITHDRAWALS, play.withdrawals());
        unlessEmpty(files, PlainFile.LOTS, play.lots());
        notes(files, own, past);
        return files;
    }

    private static void notes(Map<String, String> files, OwnNotes own, List<PrivateNote.PastGame> past) {
        List<CsvText> film = FilmNotes.files(own.films());
        unlessEmpty(files, PlainFile.GAMES, film.get(0));
        unlessEmpty(files, PlainFile.RALLIES, film.get(1));
        unlessEmpty(files, PlainFile.PAST_RESULTS, PastNotes.text(PlainFile.PAST_RESULTS, past));
        unlessEmpty(files, PlainFile.OWN_PAST_RESULTS, PastNotes.text(PlainFile.OWN_PAST_RESULTS, own.games()));
    }

    /** Writes the files into a folder, which is made if it is not there; files of these names are replaced. */
    public static void write(
            Event event, Directory directory, OwnNotes own, List<PrivateNote.PastGame> past, Path folder)
            throws IOException {
        Map<String, String> files = files(event, directory, own, past);
        Files.createDirectories(folder);
        for (Map.Entry<String, String> file : files.entrySet()) {
            Files.writeString(folder.resolve(file.getKey()), file.getValue());
        }
    }

    private static void always(Map<String, String> files, PlainFile file, CsvText text) {
        files.put(file.fileName(), text.toString());
    }

    private static void unlessEmpty(Map<String, String> files, PlainFile file, CsvText text) {
        if (!text.isEmpty()) {
            always(files, file, text);
        }
    }

    private static CsvText about(SetUpFact.EventDescribed about) {
        CsvText text = new CsvText(PlainFile.EVENT);
        text.row("name", about.name());
        text.row("date", about.date());
        text.row("venue", about.venue());
        text.row("time_zone", about.zone().getId());
        text.row("starts", about.starts());
        about.venueCloses().ifPresent(closes -> text.row("venue_closes", closes));
        return text;
    }

    private static CsvText conditions(Event event) {
        CsvText text = new CsvText(PlainFile.CONDITIONS);
        text.row("preset", event.conditions().base().printed());
        event.conditions().differences().forEach((setting, value) -> text.row(setting.code(), value));
        return text;
    }
}
