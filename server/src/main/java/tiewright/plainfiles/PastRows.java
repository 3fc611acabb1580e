package tiewright.plainfiles;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.event.OfRubber;
import tiewright.event.PrivateNote;
import tiewright.scoring.Format;
import tiewright.scoring.Legality;
import tiewright.scoring.Score;

/** Earlier games that feed the ratings, everybody's or those of one club. Players may be strangers to the event. */
final class PastRows {
    private static final List<String> PLAYERS = List.of("home_1", "home_2", "away_1", "away_2");
    private static final int MOST_GAMES = 9;

    private final List<CsvTable.Row> rows;
    private final Cells cells;

    PastRows(Reading reading, PlainFile file) {
        this.rows = reading.rows(file);
        this.cells = reading.cells();
    }

    /** In the order of the file, as far as a row can be read. */
    List<PrivateNote.PastGame> read() {
        return rows.stream().flatMap(row -> game(row).stream()).toList();
    }

    private Optional<PrivateNote.PastGame> game(CsvTable.Row row) {
        Optional<LocalDate> date = cells.needed(row, "date").flatMap(any -> cells.date(row, "date"));
        List<String> players = players(row);
        OptionalInt home = cells.wholeNeeded(row, "home", 0, 999);
        OptionalInt away = cells.wholeNeeded(row, "away", 0, 999);
        Optional<Format> format = cells.needed(row, "format").flatMap(any -> cells.format(row));
        if (date.isEmpty() || players.size() < PLAYERS.size() || home.isEmpty() || away.isEmpty() || format.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new PrivateNote.PastGame(
                date.get(),
                players.get(0),
                players.get(1),
                players.get(2),
                players.get(3),
                ended(row, format.get(), Score.of(home.getAsInt(), away.getAsInt())),
                format.get(),
                rubber(row)));
    }

    /** Each once; fewer than four where a cell holds none. */
    private List<String> players(CsvTable.Row row) {
        List<String> players = new ArrayList<>();
        for (String column : PLAYERS) {
            cells.code(row, column).ifPresent(player -> {
                if (players.contains(player)) {
                    cells.fault(row, column, "files.player-in-game-twice", "player", player);
                }
                players.add(player);
            });
        }
        return players;
    }

    /** The score, with a fault where no game of this format ends so. */
    private Score ended(CsvTable.Row row, Format format, Score score) {
        Legality.game(format, score).ifPresent(fault -> cells.fault(row, "home", "files.score", "fault", fault));
        return score;
    }

    /** How many games it is best of says nothing where no rubber is named. */
    private Optional<OfRubber> rubber(CsvTable.Row row) {
        OptionalInt bestOf = cells.whole(row, "best_of", 1, MOST_GAMES);
        bestOf.ifPresent(games -> {
            if (games % 2 == 0) {
                cells.fault(row, "best_of", "files.best-of-even", "games", games);
            }
        });
        return cells.text(row, "match").map(match -> new OfRubber(match, bestOf));
    }
}
