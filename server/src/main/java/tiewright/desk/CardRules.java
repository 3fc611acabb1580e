package tiewright.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.Actor;
import tiewright.event.Card;
import tiewright.event.Event;
import tiewright.event.How;
import tiewright.event.Refusal;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieProgress;

/** Who may write a card for a rubber, and whether that rubber is there to be written. */
final class CardRules {
    private final Event event;
    private final Tie tie;
    private final RubberNo rubber;
    private final TieProgress progress;

    CardRules(Event event, Tie tie, RubberNo rubber) {
        this.event = event;
        this.tie = tie;
        this.rubber = rubber;
        this.progress = event.progress(tie);
    }

    /** Every reason why this person may not enter a card that ended so. */
    List<Refusal> who(Actor by, How how) {
        if (by.role().isOfficial()) {
            return List.of();
        }
        if (how == How.VOID) {
            return List.of(Refusal.of("desk.void-by-officials").at("how"));
        }
        if (by.role() == Role.VOLUNTEER) {
            return List.of();
        }
        Optional<Side> own = by.club().filter(any -> by.role() == Role.CAPTAIN).flatMap(tie::sideOf);
        if (own.isEmpty()) {
            return List.of(Refusal.of("desk.not-your-card").with("tie", tie.id()));
        }
        boolean takesIt = how.isWalkover() && !how.missing().equals(own);
        return takesIt ? List.of(Refusal.of("desk.walkover-by-desk").at("how")) : List.of();
    }

    /** Every reason why there is no such rubber to write a card for, now. */
    List<Refusal> place(How how) {
        if (!tie.isReady()) {
            return List.of(
                    Refusal.of("desk.clubs-not-known").with("tie", tie.id()).at("tie"));
        }
        List<Refusal> reasons = new ArrayList<>(rubber.isDecider() ? decider() : numbered());
        if (reasons.isEmpty() && tie.card(rubber).standing() == Card.Standing.EMPTY) {
            reasons.addAll(unneeded());
        }
        if (reasons.isEmpty() && !how.isWalkover() && how != How.VOID) {
            reasons.addAll(pairs());
        }
        if (reasons.isEmpty() && how.isWalkover()) {
            how.missing().map(Side::other).filter(this::isEmpty).ifPresent(side -> reasons.add(empty(side)));
        }
        return reasons;
    }

    private List<Refusal> numbered() {
        int rubbers = event.conditions().rubbers();
        return rubber.number() <= rubbers
                ? List.of()
                : List.of(Refusal.of("desk.no-such-rubber")
                        .with("rubbers", rubbers)
                        .at("rubber"));
    }

    /** A decider that was opened or written before is there, whatever became of the rubbers since. */
    private List<Refusal> decider() {
        if (progress.deciderNeeded()
                || tie.isDeciderOpened()
                || !tie.card(rubber).entries().isEmpty()) {
            return List.of();
        }
        Refusal reason = !event.conditions().hasDecider()
                ? Refusal.of("desk.no-decider")
                : !progress.held().isEmpty()
                        ? Refusal.of("desk.decider-waits-for-held").with("rubbers", progress.held())
                        : !progress.left().isEmpty()
                                ? Refusal.of("desk.decider-not-yet").with("rubbers", progress.left())
                                : Refusal.of("desk.decider-not-needed")
                                        .with("home", progress.won(Side.HOME))
                                        .with("away", progress.won(Side.AWAY));
        return List.of(reason.at("rubber"));
    }

    /** The tie had its winner before, and the conditions stop it there. */
    private List<Refusal> unneeded() {
        return progress.winner()
                .flatMap(tie::club)
                .map(club -> List.of(Refusal.of("desk.rubber-not-needed")
                        .with("club", club)
                        .with("won", Math.max(progress.weightWon(Side.HOME), progress.weightWon(Side.AWAY)))
                        .with("weighed", progress.weights().areEqual() ? "no" : "yes")
                        .with("toWin", progress.toWin())
                        .at("rubber")))
                .orElse(List.of());
    }

    private List<Refusal> pairs() {
        Optional<Tie.OpenedRubber> opened = Optional.ofNullable(tie.opened().get(rubber));
        if (opened.isEmpty()) {
            String code = rubber.isDecider() ? "desk.decider-not-opened" : "desk.sheets-not-opened";
            return List.of(Refusal.of(code).with("tie", tie.id()).at("tie"));
        }
        List<Refusal> reasons = new ArrayList<>();
        for (Side side : Side.values()) {
            if (isEmpty(side)) {
                reasons.add(empty(side));
            }
        }
        return reasons;
    }

    /** The sheets are open and this side has nobody in the rubber. */
    private boolean isEmpty(Side side) {
        return Optional.ofNullable(tie.opened().get(rubber))
                .filter(opened -> opened.pair(side).isEmpty())
                .isPresent();
    }

    private Refusal empty(Side side) {
        return Refusal.of("desk.side-empty")
                .with("club", tie.club(side).orElseThrow())
                .with("rubber", rubber)
                .at("how");
    }
}
