package tiewright.sheet;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Exchange;
import tiewright.event.ExchangeId;
import tiewright.event.Refusal;
import tiewright.event.Role;
import tiewright.event.SheetKind;
import tiewright.event.Side;
import tiewright.event.Tie;

/**
 * What several decisions of this room ask before anything else. Gates stand one behind the other: who asks comes first,
 * so that nobody learns from a refusal what is not theirs to know.
 */
final class Gate {
    private Gate() {}

    /** The reasons of the first gate that refuses; empty when all let pass. */
    @SafeVarargs
    static List<Refusal> first(Supplier<List<Refusal>>... gates) {
        for (Supplier<List<Refusal>> gate : gates) {
            List<Refusal> reasons = gate.get();
            if (!reasons.isEmpty()) {
                return reasons;
            }
        }
        return List.of();
    }

    static List<Refusal> when(boolean refused, Refusal why) {
        return refused ? List.of(why) : List.of();
    }

    static List<Refusal> captainOf(ClubId club, Actor by) {
        boolean own =
                by.role() == Role.CAPTAIN && by.club().filter(club::equals).isPresent();
        return when(!own, Why.NOT_YOURS.refusal());
    }

    static List<Refusal> official(Actor by) {
        return when(!by.role().isOfficial(), Why.OFFICIALS_ONLY.refusal());
    }

    /** Those who give rulings. */
    static List<Refusal> ruler(Actor by) {
        return when(by.role() != Role.REFEREE && by.role() != Role.ORGANISER, Why.RULERS_ONLY.refusal());
    }

    /** The tie exists and both its clubs are known. */
    static List<Refusal> tie(Event event, ExchangeId exchange) {
        Optional<Tie> tie = event.tie(exchange.tie());
        if (tie.isEmpty()) {
            return List.of(Why.NO_TIE.refusal().with("tie", exchange.tie()).at("exchange"));
        }
        return when(
                !tie.get().isReady(),
                Why.OTHER_CLUB_UNKNOWN.refusal().with("tie", exchange.tie()).at("exchange"));
    }

    /** The same, and this club plays in it. */
    static List<Refusal> place(Event event, ExchangeId exchange, ClubId club) {
        return first(
                () -> tie(event, exchange),
                () -> when(
                        !event.tie(exchange.tie()).orElseThrow().has(club),
                        Why.NOT_IN_TIE
                                .refusal()
                                .with("club", club)
                                .with("tie", exchange.tie())
                                .at("club")));
    }

    /** Sheets can still go in: nothing is opened, nobody withdrew, the tie goes on, the conditions know such a decider. */
    static List<Refusal> unopened(Event event, ExchangeId exchange) {
        Tie tie = event.tie(exchange.tie()).orElseThrow();
        return first(
                () -> when(
                        event.exchange(exchange).isOpened(),
                        Why.OPENED.refusal().with("tie", tie.id()).at("exchange")),
                () -> withdrawn(event, tie),
                () -> when(
                        event.progress(tie).finished(),
                        Why.TIE_FINISHED.refusal().with("tie", tie.id()).at("exchange")),
                () -> when(
                        exchange.kind() == SheetKind.DECIDER
                                && !event.progress(tie).canComeToDecider(),
                        Why.NO_DECIDER.refusal().with("tie", tie.id()).at("exchange")));
    }

    private static List<Refusal> withdrawn(Event event, Tie tie) {
        for (Side side : Side.values()) {
            Optional<ClubId> gone = tie.club(side).filter(event.withdrawals()::containsKey);
            if (gone.isPresent()) {
                return List.of(Why.WITHDRAWN
                        .refusal()
                        .with("club", gone.get())
                        .with("tie", tie.id())
                        .at("exchange"));
            }
        }
        return List.of();
    }

    static Side sideOf(Event event, ExchangeId exchange, ClubId club) {
        return event.tie(exchange.tie()).flatMap(tie -> tie.sideOf(club)).orElseThrow();
    }

    static Exchange.SideOfExchange stateOf(Event event, ExchangeId exchange, ClubId club) {
        return event.exchange(exchange).side(sideOf(event, exchange, club));
    }

    /** Only a link that shows the sheet may tell it or ask for its opening: others could be anybody's. */
    static List<Refusal> reads(Event event, ExchangeId exchange, Decision.Given given) {
        boolean newer = event.entries()
                .link(given.by())
                .filter(link -> !event.mayRead(link, exchange, given.now()))
                .isPresent();
        return when(newer, Why.NEWER_LINK.refusal().at("exchange"));
    }

    static List<Refusal> reason(String reason) {
        return when(reason.isBlank(), Why.REASON.refusal().at("reason"));
    }

    static List<Refusal> name(String name, String field) {
        return when(name.isBlank(), Why.NAME.refusal().at(field));
    }
}
