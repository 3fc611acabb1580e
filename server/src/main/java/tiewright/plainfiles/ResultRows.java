package tiewright.plainfiles;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.conditions.Conditions;
import tiewright.event.How;
import tiewright.event.PlayFact;
import tiewright.event.RubberNo;
import tiewright.event.RubberScore;
import tiewright.event.Side;
import tiewright.event.TieId;
import tiewright.event.TieProgress;
import tiewright.scoring.Format;
import tiewright.scoring.Legality;
import tiewright.scoring.Score;
import tiewright.scoring.ScoreFault;
import tiewright.scoring.SideNo;

/** The rows of results.csv: one a game, gathered to one card a rubber. */
final class ResultRows {
    private static final List<String> HOWS =
            Arrays.stream(How.values()).map(How::code).toList();
    private final Reading reading;
    private final Conditions conditions;
    private final Cells cells;
    private final PairCells pairs;

    ResultRows(Reading reading) {
        this.reading = reading;
        this.conditions = reading.conditions();
        this.cells = reading.cells();
        this.pairs = new PairCells(reading);
    }

    private record Game(CsvTable.Row row, int number, Score score, How how) {}

    private record Card(CsvTable.Row row, RubberScore score) {}

    void read() {
        Map<TieId, Map<RubberNo, List<Game>>> games = new LinkedHashMap<>();
        for (CsvTable.Row row : reading.rows(PlainFile.RESULTS)) {
            Optional<TieId> tie = reading.tieNeeded(row, "tie").filter(id -> reading.isUnderWay(row, id));
            Optional<RubberNo> rubber = pairs.rubber(row);
            Optional<Game> game = game(row);
            if (tie.isPresent() && rubber.isPresent() && game.isPresent()) {
                games.computeIfAbsent(tie.get(), any -> new LinkedHashMap<>())
                        .computeIfAbsent(rubber.get(), any -> new ArrayList<>())
                        .add(game.get());
            }
        }
        games.forEach(this::tie);
    }

    private Optional<Game> game(CsvTable.Row row) {
        OptionalInt home = cells.wholeNeeded(row, "home", 0, 999);
        OptionalInt away = cells.wholeNeeded(row, "away", 0, 999);
        OptionalInt number = cells.whole(row, "game", 1, 5);
        Optional<How> how = cells.needed(row, "how")
                .flatMap(any -> cells.choice(row, "how", HOWS))
                .flatMap(How::parse);
        return home.isEmpty() || away.isEmpty() || how.isEmpty()
                ? Optional.empty()
                : Optional.of(new Game(row, number.orElse(0), Score.of(home.getAsInt(), away.getAsInt()), how.get()));
    }

    private void tie(TieId tie, Map<RubberNo, List<Game>> games) {
        Map<RubberNo, Card> cards = new LinkedHashMap<>();
        int before = cells.faults().size();
        games.forEach((rubber, ofRubber) -> card(tie, rubber, ofRubber).ifPresent(card -> cards.put(rubber, card)));
        if (cells.faults().size() == before) {
            decider(cards);
        }
        cards.forEach((rubber, card) -> reading.facts()
                .add(new PlayFact.CardEntered(
                        tie, rubber, card.score().games(), card.score().how())));
    }

    private Optional<Card> card(TieId tie, RubberNo rubber, List<Game> games) {
        games.sort(Comparator.comparingInt(Game::number));
        Game last = games.get(games.size() - 1);
        if (standsTwice(tie, rubber, games) || endsInTwoWays(games, last.how())) {
            return Optional.empty();
        }
        List<Score> scores = games.stream().map(Game::score).toList();
        int before = cells.faults().size();
        faults(rubber, scores, last.how())
                .forEach(fault -> cells.fault(
                        games.get(Math.min(fault.game(), games.size()) - 1).row(),
                        "home",
                        "files.score",
                        "fault",
                        fault));
        games.stream()
                .filter(game -> isWonByMissing(game.score(), last.how()))
                .forEach(game -> cells.fault(game.row(), "how", "files.missing-side-won"));
        boolean unplayed = last.how() == How.VOID && scores.stream().allMatch(score -> score.equals(Score.of(0, 0)));
        return cells.faults().size() > before
                ? Optional.empty()
                : Optional.of(new Card(last.row(), new RubberScore(rubber, unplayed ? List.of() : scores, last.how())));
    }

    private boolean standsTwice(TieId tie, RubberNo rubber, List<Game> inOrder) {
        for (int i = 1; i < inOrder.size(); i++) {
            Game game = inOrder.get(i);
            if (game.number() == inOrder.get(i - 1).number()) {
                String twice = game.number() == 0 ? "files.rubber-twice" : "files.game-of-rubber-twice";
                cells.fault(game.row(), "rubber", twice, "rubber", rubber, "tie", tie);
                return true;
            }
        }
        return false;
    }

    private boolean endsInTwoWays(List<Game> games, How last) {
        Optional<Game> other = games.stream()
                .filter(game -> game.how() != How.PLAYED && game.how() != last)
                .findFirst();
        other.ifPresent(game -> cells.fault(game.row(), "how", "files.ways-differ", "how", last.code()));
        return other.isPresent();
    }

    private static boolean isWonByMissing(Score score, How how) {
        return how.isWalkover()
                && (how.missing().orElseThrow() == Side.HOME
                        ? score.home() > score.away()
                        : score.away() > score.home());
    }

    private List<ScoreFault> faults(RubberNo rubber, List<Score> scores, How how) {
        Format format = rubber.isDecider() ? conditions.deciderScoring() : conditions.scoring();
        int bestOf = rubber.isDecider() ? 1 : conditions.bestOf();
        if (how == How.PLAYED) {
            return Legality.rubber(format, bestOf, scores);
        }
        if (how.isRetirement()) {
            SideNo retirer = how.missing().orElseThrow() == Side.HOME ? SideNo.ONE : SideNo.TWO;
            boolean likeUnplayed = scores.equals(conditions.walkover(rubber.isDecider(), retirer));
            return likeUnplayed ? List.of() : Legality.retiredForTheTable(format, bestOf, scores, retirer);
        }
        return List.of();
    }

    /** A decider stands only where the conditions have one and the rubbers finished level. */
    private void decider(Map<RubberNo, Card> cards) {
        Card decider = cards.get(RubberNo.DECIDER);
        if (decider == null) {
            return;
        }
        List<RubberScore> rubbers = cards.values().stream()
                .map(Card::score)
                .filter(score -> !score.rubber().isDecider())
                .toList();
        int home = weightWon(rubbers, Side.HOME);
        int away = weightWon(rubbers, Side.AWAY);
        if (!TieProgress.canComeToDecider(conditions, rubbers)) {
            cells.fault(decider.row(), "rubber", "files.no-decider");
        } else if (rubbers.size() < conditions.rubbers()) {
            cells.fault(decider.row(), "rubber", "files.decider-early", "rubbers", conditions.rubbers());
        } else if (home != away) {
            cells.fault(decider.row(), "rubber", "files.not-level", "home", home, "away", away);
        }
    }

    private int weightWon(List<RubberScore> rubbers, Side side) {
        return rubbers.stream()
                .filter(score -> score.winner().filter(side::equals).isPresent())
                .mapToInt(score -> score.rubber().weight(conditions.tieRubbers().weights()))
                .sum();
    }
}
