package tiewright.event;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Who stands in which pool. */
final class Pools {
    private Pools() {}

    static Map<String, List<ClubId>> of(Event event) {
        Map<String, Set<ClubId>> pools = new TreeMap<>();
        event.draw()
                .ifPresent(draw -> draw.pools().forEach((pool, clubs) -> pools.put(pool, new LinkedHashSet<>(clubs))));
        for (Tie tie : event.ties().values()) {
            tie.pool().ifPresent(pool -> {
                Set<ClubId> clubs = pools.computeIfAbsent(pool, any -> new LinkedHashSet<>());
                tie.home().club().ifPresent(clubs::add);
                tie.away().club().ifPresent(clubs::add);
            });
        }
        Map<String, List<ClubId>> inOrder = new LinkedHashMap<>();
        pools.forEach((pool, clubs) -> inOrder.put(pool, List.copyOf(clubs)));
        return inOrder;
    }
}
