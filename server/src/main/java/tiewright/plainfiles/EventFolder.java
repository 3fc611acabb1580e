package tiewright.plainfiles;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tiewright.event.Actor;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.Recorded;
import tiewright.event.Refusal;
import tiewright.event.Role;
import tiewright.film.FilmGame;
import tiewright.rating.Earlier;
import tiewright.rating.FilmedGame;

/**
 * An event folder: what it says, or everything that is wrong with it.
 *
 * @param files those that are there
 * @param facts what the files say, in an order in which it can be folded; without meaning when there are faults
 * @param notes names, forms, chemistry and earlier games, which lie beside the ledger
 * @param ownGames earlier games that the club which gave the folder keeps for itself
 * @param films filmed games as they were charted, in the order of games.csv
 * @param faults by file in the order of {@link PlainFile}, then by line
 */
public record EventFolder(
        Set<PlainFile> files,
        List<Fact> facts,
        List<PrivateNote> notes,
        List<PrivateNote.PastGame> ownGames,
        List<FilmGame> films,
        List<FolderFault> faults) {
    private static final List<PlainFile> ALWAYS = List.of(PlainFile.EVENT, PlainFile.CONDITIONS);

    private static final Map<PlainFile, List<PlainFile>> REFERS_TO = Map.of(
            PlainFile.PLAYERS, List.of(PlainFile.CLUBS),
            PlainFile.CHEMISTRY, List.of(PlainFile.PLAYERS),
            PlainFile.TIES, List.of(PlainFile.CLUBS),
            PlainFile.SHEETS, List.of(PlainFile.CLUBS, PlainFile.PLAYERS, PlainFile.TIES),
            PlainFile.RUBBERS, List.of(PlainFile.PLAYERS, PlainFile.TIES),
            PlainFile.RESULTS, List.of(PlainFile.TIES),
            PlainFile.WITHDRAWALS, List.of(PlainFile.CLUBS, PlainFile.TIES),
            PlainFile.LOTS, List.of(PlainFile.CLUBS, PlainFile.TIES));

    public EventFolder {
        files = Set.copyOf(files);
        facts = List.copyOf(facts);
        notes = List.copyOf(notes);
        ownGames = List.copyOf(ownGames);
        films = List.copyOf(films);
        faults = List.copyOf(faults);
    }

    /** Reads whatever of the folder's files is there; only event.csv and conditions.csv have to be. */
    public static EventFolder read(Path folder) {
        Tables tables = new Tables();
        Set<PlainFile> there = new HashSet<>();
        for (PlainFile file : PlainFile.values()) {
            Path path = folder.resolve(file.fileName());
            if (Files.isRegularFile(path)) {
                there.add(file);
                tables.take(file, CsvTable.read(path));
            } else if (ALWAYS.contains(file)) {
                tables.fault(new FolderFault(file.fileName(), 1, "", Refusal.of("files.no-file")));
            }
        }
        Reading reading = read(tables.readable());
        return new EventFolder(
                there,
                reading.facts(),
                reading.notes(),
                reading.ownGames(),
                reading.films(),
                tables.faults(reading.cells().faults()));
    }

    private static Reading read(Map<PlainFile, CsvTable> tables) {
        Reading reading = new Reading(tables);
        new EventRows(reading).read();
        new SquadRows(reading).read();
        new TieRows(reading).read();
        new OpenedRows(reading).read();
        new ResultRows(reading).read();
        new EndRows(reading).read();
        new FilmRows(reading).read();
        reading.notes().addAll(new PastRows(reading, PlainFile.PAST_RESULTS).read());
        reading.ownGames().addAll(new PastRows(reading, PlainFile.OWN_PAST_RESULTS).read());
        return reading;
    }

    /** What ratings rest on besides the cards: games for everybody and of the own club, each once, and film. */
    public Earlier earlier() {
        return Earlier.of(notes(PrivateNote.PastGame.class), ownGames, counted());
    }

    /** The event that the files describe: the fold of the facts; an empty one when there are faults. */
    public Event event() {
        if (!faults.isEmpty()) {
            return Event.empty();
        }
        Actor reader = Actor.of(Role.ORGANISER, "plain files");
        List<Recorded> recorded = new ArrayList<>();
        for (Fact fact : facts) {
            recorded.add(new Recorded(recorded.size() + 1, fact, reader, Optional.empty(), Instant.EPOCH));
        }
        return Event.of(recorded);
    }

    /** Players whom {@code present} says are not here. */
    public List<PlayerId> away() {
        return event().players().values().stream()
                .filter(Player::absent)
                .map(Player::id)
                .toList();
    }

    /** The names behind the codes. */
    public Directory directory() {
        Map<PlayerId, Directory.Person> people = new LinkedHashMap<>();
        notes(PrivateNote.PersonNamed.class).forEach(named -> people.put(named.player(), named.person()));
        return new Directory(people);
    }

    /** The notes of one kind, in the order of their file. */
    public <N extends PrivateNote> List<N> notes(Class<N> kind) {
        return notes.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /** The filmed games as far as they tell of strengths. */
    public List<FilmedGame> counted() {
        return films.stream().map(FilmGame::counted).toList();
    }

    /** A fault for each file that another one refers to and that is not there: half an event cannot be brought in. */
    public List<FolderFault> missingForImport() {
        Set<PlainFile> needed = EnumSet.noneOf(PlainFile.class);
        REFERS_TO.forEach((file, others) -> {
            if (files.contains(file)) {
                needed.addAll(others);
            }
        });
        return missing(needed.toArray(PlainFile[]::new));
    }

    /** A fault for each of these files that is not there. */
    public List<FolderFault> missing(PlainFile... needed) {
        return java.util.Arrays.stream(needed)
                .filter(file -> !files.contains(file))
                .map(file -> new FolderFault(file.fileName(), 1, "", Refusal.of("files.no-file-needed")))
                .toList();
    }
}
