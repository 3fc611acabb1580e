package tiewright.event;

import java.time.Instant;
import java.util.Optional;

/**
 * A fact as the ledger holds it.
 *
 * @param seq 1, 2, … in the order of receipt at the desk, which is the order that counts
 * @param deviceTime what the device's clock said: a note only, clocks may be wrong
 */
public record Recorded(long seq, Fact fact, Actor by, Optional<Instant> deviceTime, Instant receivedAt) {}
