package tiewright.plainfiles;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.TieId;
import tiewright.rating.FilmRally;
import tiewright.rating.FilmedGame;
import tiewright.scoring.Format;
import tiewright.scoring.Score;
import tiewright.scoring.SideNo;

/** The notes of a film: games.csv and rallies.csv. Looked at for their form, and as far as they tell who won which rally. */
final class FilmRows {
  private static final List<String> PLACES = List.of("right_1", "left_1", "right_2", "left_2");
  private final Reading reading;
  private final Cells cells;
  private final PairCells pairs;
  private final Map<String, Map<String, SideNo>> playersOfGame = new HashMap<>();
  private final Map<String, CsvTable.Row> rowOfGame = new LinkedHashMap<>();
  private final Map<String, FilmedGame.About> sound = new LinkedHashMap<>();
  private final Map<String, SortedMap<Integer, Noted>> ralliesOfGame = new HashMap<>();
  private final Set<String> rallies = new HashSet<>();

  private record Noted(CsvTable.Row row, FilmRally rally) {}

  FilmRows(Reading reading) {
    this.reading = reading;
    this.cells = reading.cells();
    this.pairs = new PairCells(reading);
  }

  void read() {
    reading.rows(PlainFile.GAMES).forEach(this::game);
    reading.rows(PlainFile.RALLIES).forEach(this::rally);
    films().forEach(film -> reading.films().add(film.counted()));
  }

  /**
   * A filmed game as it was read.
   *
   * @param rows of its rallies, in the order in which they were played
   */
  record Film(String code, CsvTable.Row row, List<CsvTable.Row> rows, FilmedGame counted, Score ledTo, Optional<Score> card) {}

  /** The games without a fault in their own row, in the order of the file. */
  List<Film> films() {
    return sound.entrySet().stream().map(game -> film(game.getKey(), game.getValue())).toList();
  }

  private Film film(String code, FilmedGame.About about) {
    List<Noted> noted = List.copyOf(ralliesOfGame.getOrDefault(code, new TreeMap<>()).values());
    List<FilmRally> played = noted.stream().map(Noted::rally).toList();
    return new Film(
        code, rowOfGame.get(code), noted.stream().map(Noted::row).toList(), FilmedGame.of(about, played),
        FilmedGame.ledTo(about, played), about.card());
  }

  private void game(CsvTable.Row row) {
    Optional<String> code = cells.code(row, "game");
    Optional<TieId> tie = reading.tie(row, "tie");
    Optional<RubberNo> rubber = row.cell("rubber").flatMap(any -> pairs.rubber(row));
    if (row.cell("rubber").isPresent() && tie.isEmpty() && row.cell("tie").isEmpty()) {
      cells.fault(row, "tie", "a rubber is one of a tie: name the tie");
    }
    Optional<Format> format = cells.needed(row, "format").flatMap(Format::parse);
    if (format.isEmpty() && row.cell("format").isPresent()) {
      cells.fault(row, "format", "\"" + row.cell("format").get() + "\" is no scoring format such as side-out-11");
    }
    Map<String, SideNo> players = players(row);
    Optional<SideNo> first = onCourt(row, "first_server", players, true);
    OptionalInt one = cells.whole(row, "card_1", 0, 999);
    OptionalInt two = cells.whole(row, "card_2", 0, 999);
    if (code.isPresent() && playersOfGame.putIfAbsent(code.get(), players) != null) {
      cells.fault(row, "game", "the game " + code.get() + " stands here twice");
    } else if (code.isPresent() && format.isPresent() && first.isPresent() && players.size() == PLACES.size()) {
      Optional<Score> card =
          one.isPresent() && two.isPresent() ? Optional.of(Score.of(one.getAsInt(), two.getAsInt())) : Optional.empty();
      rowOfGame.put(code.get(), row);
      sound.put(code.get(), new FilmedGame.About(
          tie, rubber, format.get(), first.get(), pair(players, SideNo.ONE), pair(players, SideNo.TWO), card));
    }
  }

  /** The four by their sides. */
  private Map<String, SideNo> players(CsvTable.Row row) {
    Map<String, SideNo> players = new LinkedHashMap<>();
    for (String place : PLACES) {
      reading.playerNeeded(row, place).ifPresent(player -> {
        if (players.putIfAbsent(player.code(), place.endsWith("1") ? SideNo.ONE : SideNo.TWO) != null) {
          cells.fault(row, place, player + " stands on the court twice");
        }
      });
    }
    return players;
  }

  private static Pair pair(Map<String, SideNo> players, SideNo side) {
    List<PlayerId> two = players.entrySet().stream()
        .filter(player -> player.getValue() == side).map(player -> PlayerId.of(player.getKey())).toList();
    return Pair.of(two.get(0), two.get(1));
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
    Map<String, SideNo> players = game.map(playersOfGame::get).orElse(Map.of());
    Optional<FilmRally.Ending> ending = cells.needed(row, "ending")
        .flatMap(any -> cells.choice(row, "ending", List.of("earned", "forced", "gave", "replay", "unsure")))
        .flatMap(FilmRally.Ending::parse);
    Optional<SideNo> serving = onCourt(row, "server", players, false);
    Optional<SideNo> side = onCourt(row, "player", players, ending.filter(one -> !one.namesPlayer()).isEmpty());
    cells.choice(row, "third", List.of("soft", "hard", "lob", "none"));
    cells.choice(row, "signal", List.of("stay", "switch", "crossed"));
    List.of("where", "serve", "return", "third_to", "call", "call_by", "call_end", "mark", "film_time")
        .forEach(column -> cells.text(row, column));
    if (game.isPresent() && number.isPresent() && ending.isPresent()) {
      ralliesOfGame.computeIfAbsent(game.get(), any -> new TreeMap<>())
          .put(number.getAsInt(), new Noted(row, new FilmRally(ending.get(), side, serving)));
    }
  }

  /** The side of a player who must be one of the four, as far as these are known. */
  private Optional<SideNo> onCourt(CsvTable.Row row, String column, Map<String, SideNo> players, boolean needed) {
    Optional<String> player = needed ? cells.code(row, column) : cells.codeIfAny(row, column);
    if (player.isPresent() && players.size() == PLACES.size() && !players.containsKey(player.get())) {
      cells.fault(row, column, player.get() + " does not play this game");
    }
    return player.map(players::get);
  }
}
