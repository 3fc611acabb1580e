package tiewright.sheet;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.conditions.DeciderKind;
import tiewright.event.Event;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;

/**
 * Who may play the decider beyond being here: any two, or one player each from two pairs of the tie. Singles in turns
 * are played by the two who are named, in the order that the official on court sees to.
 */
final class Deciders {
    private Deciders() {}

    /** The pairs of the tie are open, so that one can be taken from each. */
    static boolean pairsAreKnown(Event event, ExchangeId exchange) {
        return event.tie(exchange.tie()).filter(Tie::isOpened).isPresent();
    }

    static List<Refusal> whyNot(Event event, ExchangeId exchange, Squad squad, Pair pair) {
        if (event.conditions().decider() != DeciderKind.ONE_FROM_EACH) {
            return List.of();
        }
        List<RubberNo> first = rubbers(event, exchange, pair.first());
        List<RubberNo> second = rubbers(event, exchange, pair.second());
        List<Refusal> reasons = new java.util.ArrayList<>();
        for (PlayerId player : pair.players()) {
            if (rubbers(event, exchange, player).isEmpty()) {
                reasons.add(
                        Why.NO_RUBBER_PLAYED.refusal().with("player", player).with("tie", exchange.tie()));
            }
        }
        if (reasons.isEmpty() && first.size() == 1 && first.equals(second)) {
            reasons.add(Why.SAME_RUBBER.refusal().with("pair", pair).with("rubber", first.get(0)));
        }
        return reasons;
    }

    /** Somebody can be named at all. */
    static boolean canFill(Event event, ExchangeId exchange, Squad squad) {
        List<PlayerId> here = squad.here();
        for (int one = 0; one < here.size(); one++) {
            for (int other = one + 1; other < here.size(); other++) {
                if (whyNot(event, exchange, squad, Pair.of(here.get(one), here.get(other)))
                        .isEmpty()) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The rubbers of the tie in which the player was named. */
    private static List<RubberNo> rubbers(Event event, ExchangeId exchange, PlayerId player) {
        return event.tie(exchange.tie()).stream()
                .flatMap(tie -> tie.opened().entrySet().stream())
                .filter(opened -> !opened.getKey().isDecider())
                .filter(opened -> has(opened.getValue().pair(Side.HOME), player)
                        || has(opened.getValue().pair(Side.AWAY), player))
                .map(Map.Entry::getKey)
                .toList();
    }

    private static boolean has(Optional<Pair> pair, PlayerId player) {
        return pair.filter(p -> p.has(player)).isPresent();
    }
}
