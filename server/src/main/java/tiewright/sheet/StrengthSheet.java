package tiewright.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import tiewright.conditions.Plays;
import tiewright.conditions.RubberKind;
import tiewright.event.Event;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.SheetKind;

/**
 * A sheet by strength alone: rubber by rubber the strongest two who may stand there and leave the rest to be filled. Who was
 * named less often goes first, so that it starts again at the top where players may play more than once.
 */
final class StrengthSheet {
    private final Squad squad;
    private final int most;
    private final List<PlayerId> players;
    private final List<Optional<Plays>> plays;
    private final List<Integer> named;
    private final List<RubberNo> filled;
    private final List<RubberKind> kinds;
    private final SortedMap<RubberNo, Optional<Pair>> sheet = new TreeMap<>();

    private StrengthSheet(SheetOf whose) {
        Event event = whose.event();
        boolean decides = whose.exchange().kind() == SheetKind.DECIDER;
        this.squad = new Squad(whose);
        this.most = decides ? 1 : event.conditions().maxRubbersPerPlayer();
        this.players = squad.here().stream()
                .sorted(Comparator.comparingInt(
                        (PlayerId player) -> squad.rank(player) == 0 ? Integer.MAX_VALUE : squad.rank(player)))
                .toList();
        this.plays = players.stream().map(squad::plays).toList();
        this.named = new ArrayList<>(Collections.nCopies(players.size(), 0));
        SheetRules.rubbers(event, whose.exchange()).forEach(rubber -> sheet.put(rubber, Optional.empty()));
        this.filled = sheet.keySet().stream()
                .filter(rubber ->
                        decides ? players.size() > 1 : squad.fillable().contains(rubber.number()))
                .toList();
        this.kinds = filled.stream().map(squad::kind).toList();
    }

    static Sheet of(SheetOf whose) {
        return new StrengthSheet(whose).sheet();
    }

    private Sheet sheet() {
        List<Pair> pairs = new ArrayList<>();
        for (int rubber = 0; rubber < filled.size(); rubber++) {
            pairs.add(strongest(rubber));
        }
        for (RubberKind kind : RubberKind.values()) {
            List<RubberNo> alike =
                    filled.stream().filter(rubber -> squad.kind(rubber) == kind).toList();
            List<Pair> inOrder = alike.stream()
                    .map(rubber -> pairs.get(filled.indexOf(rubber)))
                    .sorted(Comparator.comparingInt(pair -> squad.rank(pair.first()) + squad.rank(pair.second())))
                    .toList();
            for (int i = 0; i < alike.size(); i++) {
                sheet.put(alike.get(i), Optional.of(inOrder.get(i)));
            }
        }
        return new Sheet(sheet);
    }

    private Pair strongest(int rubber) {
        List<Integer> inTurn = java.util.stream.IntStream.range(0, players.size())
                .boxed()
                .sorted(Comparator.comparing(named::get))
                .toList();
        for (int first = 0; first < inTurn.size(); first++) {
            for (int second = first + 1; second < inTurn.size(); second++) {
                if (isNamed(inTurn.get(first), inTurn.get(second), rubber)) {
                    return Pair.of(players.get(inTurn.get(first)), players.get(inTurn.get(second)));
                }
            }
        }
        throw new IllegalStateException("what can be filled was filled until rubber " + filled.get(rubber));
    }

    /** Names the two, unless they may not stand there or the rest could not be filled any more. */
    private boolean isNamed(int one, int other, int rubber) {
        if (!kinds.get(rubber).admits(plays.get(one), plays.get(other))) {
            return false;
        }
        count(one, other, 1);
        boolean goesOn = named.get(one) <= most
                && named.get(other) <= most
                && Fillable.canFill(plays, named, most, kinds.subList(rubber + 1, kinds.size()));
        if (!goesOn) {
            count(one, other, -1);
        }
        return goesOn;
    }

    private void count(int one, int other, int more) {
        named.set(one, named.get(one) + more);
        named.set(other, named.get(other) + more);
    }
}
