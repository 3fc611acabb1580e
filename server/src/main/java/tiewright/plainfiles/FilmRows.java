package tiewright.plainfiles;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.TieId;
import tiewright.film.FilmGame;
import tiewright.film.RallyNote;
import tiewright.film.Start;
import tiewright.scoring.Format;
import tiewright.scoring.Score;

/** The notes of a film: games.csv and rallies.csv. */
final class FilmRows {
    private static final List<String> PLACES = List.of("right_1", "left_1", "right_2", "left_2");
    private final Reading reading;
    private final Cells cells;
    private final PairCells pairs;
    private final RallyCells rallyCells;
    private final Map<String, Map<String, PlayerId>> playersOfGame = new HashMap<>();
    private final Map<String, CsvTable.Row> rowOfGame = new LinkedHashMap<>();
    private final Map<String, FilmGame> sound = new LinkedHashMap<>();
    private final Map<String, SortedMap<Integer, Noted>> ralliesOfGame = new HashMap<>();
    private final Set<String> rallies = new HashSet<>();

    private record Noted(CsvTable.Row row, RallyNote rally) {}

    FilmRows(Reading reading) {
        this.reading = reading;
        this.cells = reading.cells();
        this.pairs = new PairCells(reading);
        this.rallyCells = new RallyCells(cells);
    }

    void read() {
        reading.rows(PlainFile.GAMES).forEach(this::game);
        reading.rows(PlainFile.RALLIES).forEach(this::rally);
        films().forEach(film -> reading.films().add(film.game()));
    }

    /**
     * A filmed game as it was read.
     *
     * @param row of games.csv
     * @param rows of its rallies, in the order in which they were played
     */
    record Film(FilmGame game, CsvTable.Row row, List<CsvTable.Row> rows) {}

    /** The games without a fault in their own row, in the order of the file. */
    List<Film> films() {
        return sound.values().stream().map(this::film).toList();
    }

    private Film film(FilmGame game) {
        List<Noted> noted = List.copyOf(
                ralliesOfGame.getOrDefault(game.code(), new TreeMap<>()).values());
        return new Film(
                new FilmGame(
                        game.code(),
                        game.tie(),
                        game.rubber(),
                        game.start(),
                        game.card(),
                        noted.stream().map(Noted::rally).toList()),
                Objects.requireNonNull(rowOfGame.get(game.code())),
                noted.stream().map(Noted::row).toList());
    }

    private void game(CsvTable.Row row) {
        Optional<String> code = cells.code(row, "game");
        Optional<TieId> tie = reading.tie(row, "tie");
        Optional<RubberNo> rubber = row.cell("rubber").flatMap(any -> pairs.rubber(row));
        if (row.cell("rubber").isPresent() && tie.isEmpty() && row.cell("tie").isEmpty()) {
            cells.fault(row, "tie", "files.rubber-without-tie");
        }
        Optional<Format> format = cells.needed(row, "format").flatMap(any -> cells.format(row));
        Map<String, PlayerId> players = players(row);
        Optional<PlayerId> first = rallyCells.onCourtNeeded(row, "first_server", players.values());
        OptionalInt one = cells.whole(row, "card_1", 0, 999);
        OptionalInt two = cells.whole(row, "card_2", 0, 999);
        if (code.isPresent() && playersOfGame.putIfAbsent(code.get(), players) != null) {
            cells.fault(row, "game", "files.game-twice", "game", code.get());
        } else if (code.isPresent() && format.isPresent() && first.isPresent() && players.size() == PLACES.size()) {
            Optional<Score> card = one.isPresent() && two.isPresent()
                    ? Optional.of(Score.of(one.getAsInt(), two.getAsInt()))
                    : Optional.empty();
            rowOfGame.put(code.get(), row);
            sound.put(
                    code.get(),
                    new FilmGame(code.get(), tie, rubber, start(format.get(), first.get(), players), card, List.of()));
        }
    }

    /** The four by where they stand; fewer after a fault. */
    private Map<String, PlayerId> players(CsvTable.Row row) {
        Map<String, PlayerId> players = new LinkedHashMap<>();
        for (String place : PLACES) {
            reading.playerNeeded(row, place).ifPresent(player -> {
                if (players.containsValue(player)) {
                    cells.fault(row, place, "files.player-on-court-twice", "player", player);
                } else {
                    players.put(place, player);
                }
            });
        }
        return players;
    }

    private static Start start(Format format, PlayerId first, Map<String, PlayerId> players) {
        return new Start(
                format,
                first,
                Objects.requireNonNull(players.get("right_1")),
                Objects.requireNonNull(players.get("left_1")),
                Objects.requireNonNull(players.get("right_2")),
                Objects.requireNonNull(players.get("left_2")));
    }

    private void rally(CsvTable.Row row) {
        Optional<String> game = cells.code(row, "game");
        if (game.isPresent() && reading.has(PlainFile.GAMES) && !playersOfGame.containsKey(game.get())) {
            cells.fault(row, "game", "files.no-game", "game", game.get());
        }
        OptionalInt number = cells.wholeNeeded(row, "rally", 1, 9999);
        if (game.isPresent() && number.isPresent() && !rallies.add(game.get() + "," + number.getAsInt())) {
            cells.fault(row, "rally", "files.rally-twice", "rally", number.getAsInt(), "game", game.get());
        }
        Map<String, PlayerId> players = game.map(playersOfGame::get).orElse(Map.of());
        rallyCells
                .note(row, number.orElse(1), players.values())
                .filter(any -> number.isPresent())
                .ifPresent(note -> ralliesOfGame
                        .computeIfAbsent(game.orElse(""), any -> new TreeMap<>())
                        .put(note.number(), new Noted(row, note)));
    }
}
