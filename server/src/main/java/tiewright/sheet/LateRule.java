package tiewright.sheet;

import java.time.Instant;
import java.util.Optional;
import tiewright.conditions.LateSheet;
import tiewright.event.Deadlines;
import tiewright.event.Event;
import tiewright.event.Exchange;
import tiewright.event.ExchangeId;
import tiewright.event.Refusal;
import tiewright.event.Side;

/** What the clock allows, see {@link Deadlines}. */
final class LateRule {
    private LateRule() {}

    /** The deadline has come: what is in can be opened. */
    static boolean isDue(Event event, ExchangeId exchange, Instant now) {
        return Deadlines.of(event, exchange)
                .filter(deadline -> !now.isBefore(deadline))
                .isPresent();
    }

    /** From this moment on a first sheet is late; empty while there is no deadline. */
    static Optional<Instant> closes(Event event, ExchangeId exchange) {
        return Deadlines.of(event, exchange).map(deadline -> Deadlines.closes(deadline, event.conditions()));
    }

    /**
     * Why this side cannot seal any more because of the clock. A first sheet is late after the deadline (and the grace).
     * One that is in may be replaced until the opening, but not once the rival's side is ruled or can be foreseen because
     * the conditions name its sheet: that would be a choice with open eyes.
     */
    static Optional<Refusal> whyNot(Event event, ExchangeId exchange, Side side, Instant now) {
        Optional<Instant> deadline = Deadlines.of(event, exchange);
        if (deadline.isEmpty() || now.isBefore(closes(event, exchange).orElseThrow())) {
            return Optional.empty();
        }
        Exchange state = event.exchange(exchange);
        if (!state.side(side).isIn()) {
            return Optional.of(late(event.conditions().lateSheet())
                    .with("deadline", deadline.get())
                    .with("minutes", event.conditions().graceMinutes()));
        }
        boolean foreseen = state.side(side.other()).ruled().isPresent()
                || namesTheSheet(event.conditions().lateSheet());
        return foreseen ? Optional.of(Why.REPLACE_CLOSED.refusal().with("deadline", deadline.get())) : Optional.empty();
    }

    private static boolean namesTheSheet(LateSheet rule) {
        return switch (rule) {
            case LAST_LEGAL, STRENGTH_ORDER, FORFEIT -> true;
            case GRACE, DESK_RECEIPT, SHOWN_RECEIPT, REFEREE_FILLS -> false;
        };
    }

    /** The rule of the conditions, in so many words. */
    static Refusal late(LateSheet rule) {
        Why why =
                switch (rule) {
                    case GRACE -> Why.LATE_GRACE;
                    case DESK_RECEIPT -> Why.LATE_DESK_RECEIPT;
                    case SHOWN_RECEIPT -> Why.LATE_SHOWN_RECEIPT;
                    case LAST_LEGAL -> Why.LATE_LAST_LEGAL;
                    case STRENGTH_ORDER -> Why.LATE_STRENGTH_ORDER;
                    case REFEREE_FILLS -> Why.LATE_REFEREE_FILLS;
                    case FORFEIT -> Why.LATE_FORFEIT;
                };
        return why.refusal();
    }
}
