package tiewright.event;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;

/**
 * The blind exchanges: receipts, never names.
 *
 * @param firstSealedAt when the first sheet of the event was sealed, which freezes the conditions
 */
public record Envelopes(Map<ExchangeId, Exchange> exchanges, Optional<Instant> firstSealedAt) {
    static final Envelopes NONE = new Envelopes(Map.of(), Optional.empty());

    public Envelopes {
        exchanges = Frozen.copy(exchanges);
    }

    public Exchange exchange(ExchangeId id) {
        return exchanges.getOrDefault(id, Exchange.begun(id));
    }
}
