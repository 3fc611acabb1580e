package tiewright.sheet;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.Exchange;
import tiewright.event.ExchangeId;
import tiewright.event.PrivateNote;
import tiewright.event.Role;
import tiewright.event.SheetKind;
import tiewright.event.Side;
import tiewright.event.Tie;

/** How the blind exchanges of an event stand: which are wanted, which can be opened, which are no longer needed. */
public final class Exchanges {
    /** The tool itself, when it opens by the clock or because both captains asked. */
    public static final Actor AUTOMATIC = Actor.of(Role.REFEREE, "automatic opening");

    private Exchanges() {}

    /**
     * Exchanges that can be opened now without a person: wanted, both sides at the desk or ruled, and the deadline has come
     * or both captains ask.
     */
    public static List<ExchangeId> due(Event event, Instant now) {
        List<ExchangeId> due = new ArrayList<>();
        for (Tie tie : event.ties().values()) {
            for (SheetKind kind : SheetKind.values()) {
                ExchangeId exchange = new ExchangeId(tie.id(), kind);
                if (canOpen(event, exchange) && isTime(event, exchange, now)) {
                    due.add(exchange);
                }
            }
        }
        return List.copyOf(due);
    }

    /** The tool opens what is due; false where a neutral person was named for it, who then presses. */
    public static boolean openByThemselves(Event event) {
        return Openers.neutral(event).isEmpty();
    }

    /**
     * Somebody waits for these sheets: those of a tie with both clubs and a start that goes on, or the decider pairs of a
     * level tie. False once they are opened.
     */
    public static boolean isWanted(Event event, ExchangeId exchange) {
        Optional<Tie> tie = event.tie(exchange.tie());
        if (tie.isEmpty() || !takesSheets(event, exchange)) {
            return false;
        }
        return exchange.kind() == SheetKind.RUBBERS
                ? tie.get().start().isPresent()
                : event.progress(tie.get()).awaitsDecider();
    }

    /** A club of the tie can seal here by the state of things; the clock and the sheet are asked elsewhere. */
    public static boolean takesSheets(Event event, ExchangeId exchange) {
        return Gate.tie(event, exchange).isEmpty()
                && Gate.unopened(event, exchange).isEmpty();
    }

    /** From this moment on a first sheet is late, grace included; empty while there is no deadline. */
    public static Optional<Instant> closes(Event event, ExchangeId exchange) {
        return LateRule.closes(event, exchange);
    }

    /**
     * Sheets kept for what will not be played after all, such as pairs for the decider of a tie that has its winner: those that
     * were still wanted before. They are dropped unseen.
     */
    public static List<PrivateNote.SheetDropped> unneeded(Event before, Event after) {
        List<PrivateNote.SheetDropped> already = unneeded(before);
        return unneeded(after).stream().filter(drop -> !already.contains(drop)).toList();
    }

    private static List<PrivateNote.SheetDropped> unneeded(Event event) {
        List<PrivateNote.SheetDropped> drop = new ArrayList<>();
        for (Exchange exchange : event.exchanges().values()) {
            Optional<Tie> over = event.tie(exchange.id().tie())
                    .filter(tie -> !exchange.isOpened() && event.progress(tie).finished());
            for (Side side : Side.values()) {
                Optional<ClubId> club = over.flatMap(tie -> tie.club(side))
                        .filter(c -> exchange.side(side).isIn());
                club.ifPresent(c -> drop.add(new PrivateNote.SheetDropped(exchange.id(), c)));
            }
        }
        return drop;
    }

    /** The deadline has come, or both captains ask. */
    static boolean isTime(Event event, ExchangeId exchange, Instant now) {
        Exchange state = event.exchange(exchange);
        boolean bothAsk = state.home().openingAsked() && state.away().openingAsked();
        return bothAsk || LateRule.isDue(event, exchange, now);
    }

    private static boolean canOpen(Event event, ExchangeId exchange) {
        Exchange state = event.exchange(exchange);
        return isReady(state.home())
                && isReady(state.away())
                && takesSheets(event, exchange)
                && !isEarly(event, exchange);
    }

    /** A decider whose tie is not level yet: its sheets wait. */
    static boolean isEarly(Event event, ExchangeId exchange) {
        return exchange.kind() == SheetKind.DECIDER
                && event.tie(exchange.tie())
                        .filter(tie -> event.progress(tie).awaitsDecider())
                        .isEmpty();
    }

    /** The side's sheet lies at the desk, or a ruling stands in for it. */
    static boolean isReady(Exchange.SideOfExchange side) {
        return side.ruled().isPresent() || side.isIn() && side.atDesk();
    }
}
