package tiewright.timetable;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import tiewright.event.Event;
import tiewright.event.TieId;

/**
 * When will the ties begin that have not begun: as ranges that move with the pace of today, never before what was published.
 *
 * @param ties by start; only ties with a published start that nobody has been called for yet
 * @param pace how long a rubber takes today, 1 = as reckoned; empty before any was finished
 */
public record ExpectedTimes(Map<TieId, Expected> ties, Optional<Double> pace) {
  public ExpectedTimes {
    ties = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(ties));
  }

  public static ExpectedTimes of(Event event, Instant now) {
    return of(event, now, Pace.USUAL);
  }

  public static ExpectedTimes of(Event event, Instant now, Pace pace) {
    throw new UnsupportedOperationException("not built yet");
  }
}
