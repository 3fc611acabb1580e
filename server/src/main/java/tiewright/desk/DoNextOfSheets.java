package tiewright.desk;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import tiewright.desk.DoNext.Item;
import tiewright.desk.DoNext.Kind;
import tiewright.event.ClubId;
import tiewright.event.Deadlines;
import tiewright.event.Event;
import tiewright.event.Exchange;
import tiewright.event.ExchangeId;
import tiewright.event.SheetKind;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.sheet.Exchanges;

/** What waits in the blind exchange, from in and not in alone. */
final class DoNextOfSheets {
    /** So long before the deadline a missing sheet is worth a word to its captain. */
    private static final Duration NEAR = Duration.ofMinutes(30);

    private final Event event;
    private final Instant now;
    private final List<ExchangeId> due;
    private final List<Item> items = new ArrayList<>();

    DoNextOfSheets(Event event, Instant now) {
        this.event = event;
        this.now = now;
        this.due = Exchanges.due(event, now);
    }

    List<Item> items() {
        for (Tie tie : event.ties().values()) {
            boolean gone = Stream.of(Side.values()).anyMatch(side -> Walkovers.hasWithdrawn(event, tie, side));
            for (SheetKind kind : SheetKind.values()) {
                ExchangeId exchange = new ExchangeId(tie.id(), kind);
                if (!gone && Exchanges.isWanted(event, exchange)) {
                    add(tie, exchange);
                }
            }
        }
        return items;
    }

    private void add(Tie tie, ExchangeId exchange) {
        boolean decider = exchange.kind() == SheetKind.DECIDER;
        if (due.contains(exchange)) {
            items.add(Item.of(decider ? Kind.DECIDER_TO_OPEN : Kind.SHEETS_TO_OPEN)
                    .with("tie", tie.id()));
            return;
        }
        Optional<Instant> deadline = Deadlines.of(event, exchange);
        boolean past = deadline.filter(at -> !now.isBefore(at)).isPresent();
        boolean near = deadline.filter(at -> !now.isBefore(at.minus(NEAR))).isPresent();
        List<ClubId> missing = clubs(tie, exchange, side -> !side.isIn());
        if (past) {
            item(Kind.SHEET_LATE, tie, missing, deadline);
            item(Kind.SHEET_ON_PHONE, tie, clubs(tie, exchange, side -> side.isIn() && !side.atDesk()), deadline);
        } else if (decider) {
            item(Kind.DECIDER_NEEDED, tie, missing, deadline);
        } else if (near) {
            item(Kind.SHEET_MISSING, tie, missing, deadline);
        }
    }

    private void item(Kind kind, Tie tie, List<ClubId> clubs, Optional<Instant> deadline) {
        if (!clubs.isEmpty() && deadline.isPresent()) {
            items.add(Item.of(kind).with("tie", tie.id()).with("clubs", clubs).with("at", deadline.get()));
        }
    }

    private List<ClubId> clubs(Tie tie, ExchangeId exchange, Predicate<Exchange.SideOfExchange> which) {
        Exchange state = event.exchange(exchange);
        return Stream.of(Side.values())
                .filter(side -> state.side(side).ruled().isEmpty() && which.test(state.side(side)))
                .flatMap(side -> tie.club(side).stream())
                .toList();
    }
}
