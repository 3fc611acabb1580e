package tiewright.http;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import tiewright.event.TieId;
import tiewright.standings.NeedsReport;
import tiewright.timetable.Expected;

/**
 * What takes a second to work out and is the same for everybody: kept as long as nothing has happened that everybody may
 * notice, so that a hall full of phones asks for it once.
 */
final class Worked {
  private static final int KEPT = 64;

  /** @param seq the last fact that everybody may notice */
  private record Key(long seq, String pool) {}

  private final Map<Key, List<NeedsReport>> needs = new ConcurrentHashMap<>();

  /**
   * What each club of the pool still needs, in draw order.
   *
   * @param now the last fact that everybody may notice
   * @param work how it is worked out, asked once for each {@code now}
   */
  List<NeedsReport> needs(long now, String pool, Supplier<List<NeedsReport>> work) {
    if (needs.size() >= KEPT) {
      needs.keySet().removeIf(key -> key.seq() != now);
    }
    return needs.computeIfAbsent(new Key(now, pool), key -> work.get());
  }

  /** @param minute the expected times move with the clock, once a minute */
  private record Moment(long seq, long minute) {}

  private volatile Map<Moment, Map<TieId, Expected>> expected = Map.of();

  /**
   * When ties are likely to begin: the same for everybody within a minute.
   *
   * @param now the last fact that everybody may notice
   */
  Map<TieId, Expected> expected(long now, Instant at, Supplier<Map<TieId, Expected>> work) {
    Moment moment = new Moment(now, at.getEpochSecond() / 60);
    Map<TieId, Expected> known = expected.get(moment);
    if (known == null) {
      known = work.get();
      expected = Map.of(moment, known);
    }
    return known;
  }
}
