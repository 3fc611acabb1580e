package tiewright.plainfiles;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.UnaryOperator;
import tiewright.conditions.Conditions;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote.FilmKept;
import tiewright.event.TieId;
import tiewright.film.Detail;
import tiewright.film.FilmGame;
import tiewright.film.RallyNote;
import tiewright.film.Start;
import tiewright.rating.FilmedGame;
import tiewright.scoring.Score;

/**
 * What a club noted from film, given as the text of games.csv and rallies.csv: the games, or everything that is wrong.
 *
 * @param games in the order of games.csv; without meaning when there are faults
 * @param faults by file, then by line
 */
public record FilmNotes(List<Game> games, List<FolderFault> faults) {
    public FilmNotes {
        games = List.copyOf(games);
        faults = List.copyOf(faults);
    }

    /** What the notes may name. */
    public record Known(Collection<PlayerId> players, Collection<TieId> ties, Conditions conditions) {
        public static Known of(Event event) {
            return new Known(event.players().keySet(), event.ties().keySet(), event.conditions());
        }
    }

    /**
     * One filmed game.
     *
     * @param about header and row of games.csv, in the order of {@link PlainFile}
     * @param rallies header and rows of rallies.csv, by number
     * @param film what they say
     */
    public record Game(String about, String rallies, FilmGame film) {
        public String code() {
            return film.code();
        }

        public FilmKept keptFor(ClubId club) {
            return new FilmKept(club, code(), about, rallies);
        }
    }

    /** Reads both texts against the event they belong to. */
    public static FilmNotes read(String games, String rallies, Known event) {
        Tables tables = new Tables();
        tables.takeGiven(PlainFile.GAMES, games);
        tables.takeGiven(PlainFile.RALLIES, rallies);
        Reading reading = Reading.beside(event, tables.readable());
        FilmRows rows = new FilmRows(reading);
        rows.read();
        return new FilmNotes(
                rows.films().stream().map(FilmNotes::game).toList(),
                tables.faults(reading.cells().faults()));
    }

    /**
     * Reads a game without its rallies.
     *
     * @param cells what stands in a column of games.csv, empty for nothing
     * @return one game, or what is wrong, by column
     */
    public static FilmNotes ofCells(UnaryOperator<String> cells, Known event) {
        CsvText about = new CsvText(PlainFile.GAMES);
        about.row(PlainFile.GAMES.columns().stream().map(cells).toArray());
        return read(about.toString(), new CsvText(PlainFile.RALLIES).toString(), event);
    }

    /** A game as its files would have it. */
    public static Game written(FilmGame film) {
        return new Game(about(film), rallies(film), film);
    }

    private static String about(FilmGame film) {
        Start start = film.start();
        CsvText about = new CsvText(PlainFile.GAMES);
        about.row(
                film.code(),
                film.tie(),
                film.rubber(),
                start.format().code(),
                start.firstServer(),
                start.right1(),
                start.left1(),
                start.right2(),
                start.left2(),
                film.card().map(Score::home),
                film.card().map(Score::away));
        return about.toString();
    }

    private static String rallies(FilmGame film) {
        CsvText rallies = new CsvText(PlainFile.RALLIES);
        for (RallyNote rally : film.rallies()) {
            Detail detail = rally.detail();
            rallies.row(
                    film.code(),
                    rally.number(),
                    rally.server(),
                    rally.ending().code(),
                    rally.player(),
                    detail.where(),
                    detail.serve(),
                    detail.returned(),
                    detail.third(),
                    detail.thirdTo(),
                    detail.signal(),
                    detail.call(),
                    detail.callBy(),
                    detail.callEnd(),
                    detail.mark(),
                    detail.filmTime());
        }
        return rallies.toString();
    }

    /** Reads again what was kept; somebody who has left the event since is still who played. */
    public static List<Game> kept(Collection<FilmKept> kept, Conditions conditions) {
        List<Game> games = new ArrayList<>();
        for (FilmKept film : kept) {
            Tables tables = new Tables();
            tables.takeGiven(PlainFile.GAMES, film.about());
            tables.takeGiven(PlainFile.RALLIES, film.rallies());
            Reading reading = new Reading(tables.readable());
            reading.conditions(conditions);
            FilmRows rows = new FilmRows(reading);
            rows.read();
            rows.films().forEach(game -> games.add(game(game)));
        }
        return games;
    }

    /** What was kept, as far as it tells of strengths. */
    public static List<FilmedGame> counted(Collection<FilmKept> kept, Conditions conditions) {
        return kept(kept, conditions).stream()
                .map(game -> game.film().counted())
                .toList();
    }

    /** The two files that a club's notes make together, by name; none without a game. */
    static List<CsvText> files(Collection<FilmKept> kept) {
        CsvText games = new CsvText(PlainFile.GAMES);
        CsvText rallies = new CsvText(PlainFile.RALLIES);
        for (FilmKept film : kept) {
            CsvTable.of(PlainFile.GAMES.fileName(), film.about())
                    .rows()
                    .forEach(row -> copy(PlainFile.GAMES, row, games));
            CsvTable.of(PlainFile.RALLIES.fileName(), film.rallies())
                    .rows()
                    .forEach(row -> copy(PlainFile.RALLIES, row, rallies));
        }
        return List.of(games, rallies);
    }

    /** The file of that name as a club's notes make it. */
    public static String file(PlainFile file, Collection<FilmKept> kept) {
        return files(kept).get(file == PlainFile.GAMES ? 0 : 1).toString();
    }

    private static Game game(FilmRows.Film film) {
        CsvText about = new CsvText(PlainFile.GAMES);
        copy(PlainFile.GAMES, film.row(), about);
        CsvText rallies = new CsvText(PlainFile.RALLIES);
        film.rows().forEach(row -> copy(PlainFile.RALLIES, row, rallies));
        return new Game(about.toString(), rallies.toString(), film.game());
    }

    private static void copy(PlainFile file, CsvTable.Row row, CsvText text) {
        text.row(file.columns().stream().map(row::cell).toArray());
    }
}
