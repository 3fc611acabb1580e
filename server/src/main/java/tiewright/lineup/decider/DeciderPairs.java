package tiewright.lineup.decider;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.conditions.DeciderKind;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.lineup.Squad;

/** Which pairs may play the decider? */
public final class DeciderPairs {
    private DeciderPairs() {}

    public static List<Pair> all(Squad squad) {
        List<Squad.Member> present = squad.present();
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < present.size(); i++) {
            for (int j = i + 1; j < present.size(); j++) {
                pairs.add(Pair.of(present.get(i).id(), present.get(j).id()));
            }
        }
        return pairs;
    }

    /**
     * One from each: two players of this sheet who did not only play with each other; without a sheet, any two. The rule is
     * that of the decider's own sheet, see {@link tiewright.sheet.SheetRules}.
     */
    static List<Pair> allowed(DeciderKind kind, Squad squad, Optional<Sheet> sheet) {
        if (kind != DeciderKind.ONE_FROM_EACH || sheet.isEmpty()) {
            return all(squad);
        }
        return all(squad).stream().filter(pair -> isSplit(sheet.get(), pair)).toList();
    }

    private static boolean isSplit(Sheet sheet, Pair pair) {
        List<RubberNo> one = rubbers(sheet, pair.first());
        List<RubberNo> other = rubbers(sheet, pair.second());
        return !one.isEmpty() && !other.isEmpty() && !(one.equals(other) && one.size() == 1);
    }

    private static List<RubberNo> rubbers(Sheet sheet, PlayerId player) {
        return sheet.pairs().entrySet().stream()
                .filter(rubber ->
                        rubber.getValue().filter(pair -> pair.has(player)).isPresent())
                .map(Map.Entry::getKey)
                .toList();
    }
}
