package tiewright.lineup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import tiewright.conditions.DeciderKind;
import tiewright.event.Pair;
import tiewright.event.Sheet;

/** Which pairs may play the decider? */
final class DeciderPairs {
  private DeciderPairs() {}

  static List<Pair> all(Squad squad) {
    List<Squad.Member> present = squad.present();
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < present.size(); i++) {
      for (int j = i + 1; j < present.size(); j++) {
        pairs.add(Pair.of(present.get(i).id(), present.get(j).id()));
      }
    }
    return pairs;
  }

  /** One from each: two players of this sheet who did not play together on it; without a sheet, any two. */
  static List<Pair> allowed(DeciderKind kind, Squad squad, Optional<Sheet> sheet) {
    if (kind != DeciderKind.ONE_FROM_EACH || sheet.isEmpty()) {
      return all(squad);
    }
    Set<Pair> together = sheet.get().pairs().values().stream().flatMap(Optional::stream).collect(Collectors.toSet());
    return all(squad).stream()
        .filter(pair -> sheet.get().players().contains(pair.first()) && sheet.get().players().contains(pair.second()))
        .filter(pair -> !together.contains(pair))
        .toList();
  }
}
