package tiewright.plainfiles;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.OptionalInt;
import tiewright.event.OfRubber;
import tiewright.event.PrivateNote.PastGame;

/**
 * Earlier games that a club gives for itself, as the text of past-results.csv: the games, or everything that is wrong.
 *
 * @param games in the order of the file; without meaning when there are faults
 * @param faults by line
 */
public record PastNotes(List<PastGame> games, List<FolderFault> faults) {
    public PastNotes {
        games = List.copyOf(games);
        faults = List.copyOf(faults);
    }

    public static PastNotes read(String text) {
        Tables tables = new Tables();
        tables.takeGiven(PlainFile.PAST_RESULTS, text);
        Reading reading = new Reading(tables.readable());
        List<PastGame> games = new PastRows(reading, PlainFile.PAST_RESULTS).read();
        return new PastNotes(games, tables.faults(reading.cells().faults()));
    }

    /** The file that these games make, in their order. */
    public static String file(Collection<PastGame> games) {
        return text(PlainFile.PAST_RESULTS, games).toString();
    }

    /** One game as the row that it has in the file. */
    public static String row(PastGame game) {
        return file(List.of(game)).lines().skip(1).findFirst().orElseThrow();
    }

    /** The columns about rubbers are left out where no game names one. */
    static CsvText text(PlainFile file, Collection<PastGame> games) {
        boolean named = games.stream().anyMatch(game -> game.rubber().isPresent());
        CsvText text = new CsvText(named ? file.columns() : file.required());
        games.forEach(game -> text.row(cells(game, named)));
        return text;
    }

    private static Object[] cells(PastGame game, boolean named) {
        List<Object> cells = new ArrayList<>(List.of(
                game.date(),
                game.home1(),
                game.home2(),
                game.away1(),
                game.away2(),
                game.score().home(),
                game.score().away(),
                game.format().code()));
        if (named) {
            cells.add(game.rubber().map(OfRubber::match));
            cells.add(game.rubber().map(OfRubber::bestOf).orElse(OptionalInt.empty()));
        }
        return cells.toArray();
    }
}
