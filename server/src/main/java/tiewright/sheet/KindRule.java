package tiewright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.conditions.Plays;
import tiewright.conditions.RubberKind;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.RubberNo;

/** Who may stand in a rubber of a kind. Its refusals say what a player has not stated, and never what a player has. */
final class KindRule {
    private KindRule() {}

    /** Why this player may not stand in the rubber with anybody. */
    static Optional<Refusal> whyNot(Squad squad, PlayerId player, RubberNo rubber) {
        RubberKind kind = squad.kind(rubber);
        return mayStand(kind, squad.plays(player))
                ? Optional.empty()
                : Optional.of(Why.NOT_OF_KIND
                        .refusal()
                        .with("player", player)
                        .with("rubber", rubber.number())
                        .with("kind", kind.code()));
    }

    private static boolean mayStand(RubberKind kind, Optional<Plays> plays) {
        return switch (kind) {
            case OPEN -> true;
            case WOMEN -> plays.equals(Optional.of(Plays.WOMEN));
            case MEN -> plays.equals(Optional.of(Plays.MEN));
            case MIXED -> plays.isPresent();
        };
    }

    /** Every reason why the two may not stand in the rubber together. */
    static List<Refusal> whyNot(Squad squad, Pair pair, RubberNo rubber) {
        List<Refusal> reasons = new ArrayList<>();
        pair.players().forEach(player -> whyNot(squad, player, rubber).ifPresent(reasons::add));
        if (reasons.isEmpty() && !squad.kind(rubber).admits(squad.plays(pair.first()), squad.plays(pair.second()))) {
            reasons.add(Why.NOT_MIXED.refusal().with("rubber", rubber.number()));
        }
        return reasons;
    }
}
