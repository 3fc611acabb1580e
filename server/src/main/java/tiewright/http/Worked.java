package tiewright.http;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.concurrent.ConcurrentHashMap;
import tiewright.event.Event;
import tiewright.standings.Needs;
import tiewright.standings.NeedsReport;
import tiewright.standings.PoolTables;

/**
 * What takes a second to work out and is the same for everybody: kept as long as nothing has happened that everybody may
 * notice, so that a hall full of phones asks for it once.
 */
final class Worked {
  private static final int KEPT = 64;

  /** @param seq the last fact that everybody may notice */
  private record Key(long seq, String pool) {}

  private final Map<Key, List<NeedsReport>> needs = new ConcurrentHashMap<>();

  /** What each club of the pool still needs, in draw order. */
  List<NeedsReport> needs(Event event, String pool) {
    long now = event.reach().everybody();
    if (needs.size() >= KEPT) {
      needs.keySet().removeIf(key -> key.seq() != now);
    }
    return needs.computeIfAbsent(new Key(now, pool), key -> event.pools().getOrDefault(pool, List.of()).stream()
        .flatMap(club -> Needs.of(PoolTables.input(event, pool), club, OptionalInt.empty()).stream())
        .toList());
  }
}
