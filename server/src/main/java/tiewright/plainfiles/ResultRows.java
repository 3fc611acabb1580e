package tiewright.plainfiles;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import tiewright.conditions.Conditions;
import tiewright.event.Fact;
import tiewright.event.How;
import tiewright.event.PlayFact;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.TieId;
import tiewright.scoring.Format;
import tiewright.scoring.Legality;
import tiewright.scoring.Score;
import tiewright.scoring.ScoreFault;
import tiewright.scoring.SideNo;
import tiewright.wording.ScoreWords;

/** The rows of results.csv: one a game, gathered to one card a rubber. */
final class ResultRows {
  private final Conditions conditions;
  private final Cells cells;
  private final Optional<Set<String>> ties;
  private final List<Fact> facts;

  ResultRows(Conditions conditions, Cells cells, Optional<Set<String>> ties, List<Fact> facts) {
    this.conditions = conditions;
    this.cells = cells;
    this.ties = ties;
    this.facts = facts;
  }

  private record Key(TieId tie, RubberNo rubber) {}

  private record Game(CsvTable.Row row, int number, Score score, How how) {}

  void read(List<CsvTable.Row> rows) {
    Map<Key, List<Game>> games = new LinkedHashMap<>();
    for (CsvTable.Row row : rows) {
      Optional<Key> key = key(row);
      Optional<Game> game = game(row);
      if (key.isPresent() && game.isPresent()) {
        games.computeIfAbsent(key.get(), any -> new ArrayList<>()).add(game.get());
      }
    }
    games.forEach(this::card);
  }

  private Optional<Key> key(CsvTable.Row row) {
    Optional<String> tie = cells.code(row, "tie");
    Optional<RubberNo> rubber = cells.needed(row, "rubber").flatMap(RubberNo::parse);
    if (tie.isPresent() && ties.isPresent() && !ties.get().contains(tie.get())) {
      cells.fault(row, "tie", "there is no tie " + tie.get() + " in ties.csv");
      return Optional.empty();
    }
    if (row.cell("rubber").isPresent()
        && rubber.filter(no -> no.isDecider() || no.number() <= conditions.rubbers()).isEmpty()) {
      cells.fault(row, "rubber", "a rubber is 1 to " + conditions.rubbers() + ", or D for the decider");
      return Optional.empty();
    }
    return tie.isEmpty() || rubber.isEmpty() ? Optional.empty() : Optional.of(new Key(TieId.of(tie.get()), rubber.get()));
  }

  private Optional<Game> game(CsvTable.Row row) {
    OptionalInt home = cells.wholeNeeded(row, "home", 0, 999);
    OptionalInt away = cells.wholeNeeded(row, "away", 0, 999);
    OptionalInt number = cells.whole(row, "game", 1, 5);
    Optional<How> how = cells.needed(row, "how").flatMap(How::parse);
    if (row.cell("how").isPresent() && how.isEmpty()) {
      cells.fault(row, "how", "\"" + row.cell("how").get()
          + "\" is none of played, retired-home, retired-away, walkover-home, walkover-away, void");
    }
    return home.isEmpty() || away.isEmpty() || how.isEmpty()
        ? Optional.empty()
        : Optional.of(new Game(row, number.orElse(0), Score.of(home.getAsInt(), away.getAsInt()), how.get()));
  }

  private void card(Key key, List<Game> games) {
    games.sort(java.util.Comparator.comparingInt(Game::number));
    for (int i = 1; i < games.size(); i++) {
      if (games.get(i).number() == games.get(i - 1).number()) {
        cells.fault(games.get(i).row(), "rubber", "rubber " + key.rubber() + " of tie " + key.tie() + " has this game twice");
        return;
      }
    }
    Game last = games.get(games.size() - 1);
    List<Score> scores = games.stream().map(Game::score).toList();
    List<ScoreFault> wrong = faults(key.rubber(), scores, last.how());
    wrong.forEach(fault -> cells.fault(last.row(), "home", ScoreWords.sentence(fault)));
    if (wrong.isEmpty()) {
      facts.add(new PlayFact.CardEntered(key.tie(), key.rubber(), scores, last.how()));
    }
  }

  private List<ScoreFault> faults(RubberNo rubber, List<Score> scores, How how) {
    Format format = rubber.isDecider() ? conditions.deciderScoring() : conditions.scoring();
    int bestOf = rubber.isDecider() ? 1 : conditions.bestOf();
    if (how == How.PLAYED) {
      return Legality.rubber(format, bestOf, scores);
    }
    if (how.isRetirement()) {
      SideNo retirer = how.missing().orElseThrow() == Side.HOME ? SideNo.ONE : SideNo.TWO;
      return Legality.retiredForTheTable(format, bestOf, scores, retirer);
    }
    return List.of();
  }
}
