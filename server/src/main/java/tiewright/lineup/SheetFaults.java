package tiewright.lineup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;

/** Why the conditions do not allow a sheet; nothing is said of the captain's wishes. */
final class SheetFaults {
  private final TieRules rules;
  private final Squad squad;
  private final Sheet sheet;
  private final List<Refusal> faults = new ArrayList<>();

  private SheetFaults(TieRules rules, Squad squad, Sheet sheet) {
    this.rules = rules;
    this.squad = squad;
    this.sheet = sheet;
  }

  static List<Refusal> of(TieRules rules, Squad squad, Sheet sheet) {
    return new SheetFaults(rules, squad, sheet).all();
  }

  private List<Refusal> all() {
    sheet.pairs().keySet().stream()
        .filter(rubber -> rubber.isDecider() || rubber.number() > rules.rubbers())
        .forEach(rubber -> faults.add(Refusal.of("lineup.no-such-rubber").with("rubber", rubber)));
    for (PlayerId player : sheet.players()) {
      presence(player);
    }
    gaps();
    if (faults.isEmpty()) {
      order();
    }
    return List.copyOf(faults);
  }

  private void presence(PlayerId player) {
    if (squad.member(player).isEmpty()) {
      faults.add(Refusal.of("lineup.not-in-squad").with("player", player));
    } else if (!squad.isPresent(player)) {
      faults.add(Refusal.of("lineup.not-present").with("player", player));
    }
    long times = sheet.pairs().values().stream().flatMap(Optional::stream).filter(pair -> pair.has(player)).count();
    if (times > rules.mostPerPlayer()) {
      faults.add(
          Refusal.of("lineup.too-often").with("player", player).with("times", times).with("most", rules.mostPerPlayer()));
    }
  }

  private void gaps() {
    int named = (int) sheet.pairs().values().stream().filter(Optional::isPresent).count();
    int fillable = rules.fillable(squad.present().size());
    if (named < fillable) {
      faults.add(Refusal.of("lineup.not-full").with("named", named).with("fillable", fillable));
    }
    for (int rubber = 2; rubber <= rules.rubbers(); rubber++) {
      if (pair(rubber).isPresent() && pair(rubber - 1).isEmpty()) {
        faults.add(Refusal.of("lineup.gap").with("rubber", rubber - 1));
      }
    }
  }

  private void order() {
    for (int upper = 1; upper < rules.rubbers(); upper++) {
      for (int lower = upper + 1; lower <= rules.rubbers(); lower++) {
        if (pair(upper).isPresent() && pair(lower).isPresent()) {
          order(upper, pair(upper).get(), lower, pair(lower).get());
        }
      }
    }
  }

  private void order(int upper, Pair upperPair, int lower, Pair lowerPair) {
    int upperSum = squad.rank(upperPair.first()) + squad.rank(upperPair.second());
    int lowerSum = squad.rank(lowerPair.first()) + squad.rank(lowerPair.second());
    if (RankOrder.breaks(rules.order(), upper - 1, upperSum, lowerSum)) {
      faults.add(
          Refusal.of("lineup.order-of-strength")
              .with("upper", upper).with("upperSum", upperSum).with("lower", lower).with("lowerSum", lowerSum));
    }
  }

  private Optional<Pair> pair(int rubber) {
    return sheet.pair(RubberNo.of(rubber));
  }
}
