package tiewright.plainfiles;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import tiewright.event.TieId;
import tiewright.scoring.Format;

/** The notes of a film, looked at for their form only: games.csv and rallies.csv. What they add up to is another question. */
final class FilmRows {
  private static final List<String> PLACES = List.of("right_1", "left_1", "right_2", "left_2");
  private static final List<String> WITHOUT_PLAYER = List.of("replay", "unsure");
  private final Reading reading;
  private final Cells cells;
  private final PairCells pairs;
  private final Map<String, Set<String>> playersOfGame = new HashMap<>();
  private final Set<String> rallies = new HashSet<>();

  FilmRows(Reading reading) {
    this.reading = reading;
    this.cells = reading.cells();
    this.pairs = new PairCells(reading);
  }

  void read() {
    reading.rows(PlainFile.GAMES).forEach(this::game);
    reading.rows(PlainFile.RALLIES).forEach(this::rally);
  }

  private void game(CsvTable.Row row) {
    Optional<String> code = cells.code(row, "game");
    Optional<TieId> tie = reading.tie(row, "tie");
    if (row.cell("rubber").isPresent()) {
      pairs.rubber(row);
      if (tie.isEmpty() && row.cell("tie").isEmpty()) {
        cells.fault(row, "tie", "a rubber is one of a tie: name the tie");
      }
    }
    Optional<String> format = cells.needed(row, "format");
    if (format.isPresent() && Format.parse(format.get()).isEmpty()) {
      cells.fault(row, "format", "\"" + format.get() + "\" is no scoring format such as side-out-11");
    }
    Set<String> players = new HashSet<>();
    for (String place : PLACES) {
      reading.playerNeeded(row, place).ifPresent(player -> {
        if (!players.add(player.code())) {
          cells.fault(row, place, player + " stands on the court twice");
        }
      });
    }
    onCourt(row, "first_server", players, true);
    cells.whole(row, "card_1", 0, 999);
    cells.whole(row, "card_2", 0, 999);
    if (code.isPresent() && playersOfGame.putIfAbsent(code.get(), players) != null) {
      cells.fault(row, "game", "the game " + code.get() + " stands here twice");
    }
  }

  private void rally(CsvTable.Row row) {
    Optional<String> game = cells.code(row, "game");
    if (game.isPresent() && reading.has(PlainFile.GAMES) && !playersOfGame.containsKey(game.get())) {
      cells.fault(row, "game", "there is no game " + game.get() + " in games.csv");
    }
    OptionalInt number = cells.wholeNeeded(row, "rally", 1, 9999);
    if (game.isPresent() && number.isPresent() && !rallies.add(game.get() + "," + number.getAsInt())) {
      cells.fault(row, "rally", "rally " + number.getAsInt() + " of game " + game.get() + " stands here twice");
    }
    Set<String> players = game.map(playersOfGame::get).orElse(Set.of());
    Optional<String> ending = cells.needed(row, "ending")
        .flatMap(any -> cells.choice(row, "ending", List.of("earned", "forced", "gave", "replay", "unsure")));
    onCourt(row, "server", players, false);
    onCourt(row, "player", players, ending.filter(WITHOUT_PLAYER::contains).isEmpty());
    cells.choice(row, "third", List.of("soft", "hard", "lob", "none"));
    cells.choice(row, "signal", List.of("stay", "switch", "crossed"));
    List.of("where", "serve", "return", "third_to", "call", "call_by", "call_end", "mark", "film_time")
        .forEach(column -> cells.text(row, column));
  }

  /** A player who must be one of the four, as far as these are known. */
  private void onCourt(CsvTable.Row row, String column, Set<String> players, boolean needed) {
    Optional<String> player = needed ? cells.code(row, column) : cells.codeIfAny(row, column);
    if (player.isPresent() && players.size() == PLACES.size() && !players.contains(player.get())) {
      cells.fault(row, column, player.get() + " does not play this game");
    }
  }
}
