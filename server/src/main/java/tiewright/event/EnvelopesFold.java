package tiewright.event;

import java.time.Instant;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Folds how far the blind exchanges have come. */
final class EnvelopesFold {
    private final Envelopes from;
    private final Draft<ExchangeId, Exchange> exchanges;
    private Optional<Instant> firstSealedAt;

    EnvelopesFold(Envelopes from) {
        this.from = from;
        this.exchanges = new Draft<>(from.exchanges());
        this.firstSealedAt = from.firstSealedAt();
    }

    Envelopes done() {
        boolean same = !exchanges.isWritten() && firstSealedAt.equals(from.firstSealedAt());
        return same ? from : new Envelopes(exchanges.asRead(), firstSealedAt);
    }

    Exchange exchange(ExchangeId id) {
        return exchanges.asRead().getOrDefault(id, Exchange.begun(id));
    }

    void sealedAt(Instant at) {
        firstSealedAt = firstSealedAt.isPresent() ? firstSealedAt : Optional.of(at);
    }

    void change(ExchangeId id, Side side, UnaryOperator<Exchange.SideOfExchange> change) {
        Exchange exchange = exchange(id);
        exchanges.toWrite().put(id, exchange.with(side, change.apply(exchange.side(side))));
    }

    void opened(ExchangeFact.SheetsOpened fact, Instant at) {
        exchanges.toWrite().put(fact.exchange(), exchange(fact.exchange()).opened(fact, at));
    }

    void replaced(ExchangeFact.PairReplaced fact, Instant at) {
        Exchange.Replacement replacement = new Exchange.Replacement(fact, at);
        exchanges.toWrite().put(fact.exchange(), exchange(fact.exchange()).replaced(replacement));
    }

    /** Another club takes this side of the tie: what is not opened begins anew for it. */
    void left(TieId tie, Side side) {
        for (SheetKind kind : SheetKind.values()) {
            ExchangeId id = new ExchangeId(tie, kind);
            if (exchanges.asRead().containsKey(id) && !exchange(id).isOpened()) {
                change(id, side, before -> Exchange.SideOfExchange.NOTHING);
            }
        }
    }

    /** The tie begins again, and so do both its exchanges. */
    void restarted(TieId tie) {
        exchanges.toWrite().remove(ExchangeId.sheets(tie));
        exchanges.toWrite().remove(ExchangeId.decider(tie));
    }
}
