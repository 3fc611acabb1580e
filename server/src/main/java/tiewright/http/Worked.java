package tiewright.http;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import tiewright.standings.NeedsReport;

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
}
