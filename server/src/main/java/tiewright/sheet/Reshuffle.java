package tiewright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import tiewright.conditions.Conditions;
import tiewright.conditions.RubberKinds;
import tiewright.conditions.ShortSquad;
import tiewright.event.Card;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.Pair;
import tiewright.event.PlayFact;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;

/** Which rubbers of a side change when one pair is replaced, and what becomes of their cards. */
final class Reshuffle {
    private final ReplacePair asked;
    private final Tie tie;
    private final Side side;
    private final Conditions conditions;

    Reshuffle(Event event, ReplacePair asked) {
        this.asked = asked;
        this.tie = asked.tie(event);
        this.side = Gate.sideOf(event, asked.exchange(), asked.club());
        this.conditions = event.conditions();
    }

    /** The new pair of every rubber that changes, top down. */
    SortedMap<RubberNo, Optional<Pair>> changes() {
        SortedMap<RubberNo, Optional<Pair>> changes = new TreeMap<>();
        changes.put(asked.rubber(), asked.pair());
        List<RubberNo> below = below();
        boolean moveUp = asked.pair().isEmpty()
                && conditions.shortSquad() == ShortSquad.MOVE_UP
                && !asked.rubber().isDecider();
        if (moveUp && below.stream().allMatch(this::isUntouched)) {
            RubberNo free = asked.rubber();
            for (RubberNo next : below) {
                changes.put(free, opened(tie, next).pair(side));
                changes.put(next, Optional.empty());
                free = next;
            }
        }
        return changes;
    }

    /** The rubbers below that have a pair and are of the same kind: only these pairs can move up. */
    private List<RubberNo> below() {
        return tie.opened().keySet().stream()
                .filter(rubber -> rubber.compareTo(asked.rubber()) > 0 && !rubber.isDecider())
                .filter(this::isOfTheSameKind)
                .filter(rubber -> opened(tie, rubber).pair(side).isPresent())
                .toList();
    }

    private boolean isOfTheSameKind(RubberNo rubber) {
        RubberKinds kinds = conditions.tieRubbers().kinds();
        return kinds.of(rubber.number()) == kinds.of(asked.rubber().number());
    }

    private static Tie.OpenedRubber opened(Tie tie, RubberNo rubber) {
        return Objects.requireNonNull(tie.opened().get(rubber));
    }

    /** Neither called to court nor carded, unless the card only says that the other side is empty. */
    private boolean isUntouched(RubberNo rubber) {
        boolean carded = tie.card(rubber).standing() != Card.Standing.EMPTY;
        return !tie.calls().containsKey(rubber)
                && (!carded || opened(tie, rubber).pair(side.other()).isEmpty());
    }

    /** A walkover that no longer holds is taken back; one that now holds is entered. */
    List<Fact> cards(RubberNo rubber, Optional<Pair> now) {
        Tie.OpenedRubber before = opened(tie, rubber);
        boolean home = side == Side.HOME;
        Tie.OpenedRubber after = new Tie.OpenedRubber(home ? now : before.home(), home ? before.away() : now);
        Optional<PlayFact.CardEntered> old = Empties.card(tie.id(), rubber, before, conditions);
        Optional<PlayFact.CardEntered> next = Empties.card(tie.id(), rubber, after, conditions);
        List<Fact> facts = new ArrayList<>();
        boolean carded = tie.card(rubber).standing() != Card.Standing.EMPTY;
        if (!old.equals(next) && carded && (old.isPresent() || next.isPresent())) {
            facts.add(new PlayFact.CardTakenBack(tie.id(), rubber, asked.door()));
        }
        next.filter(card -> !next.equals(old)).ifPresent(facts::add);
        return facts;
    }
}
