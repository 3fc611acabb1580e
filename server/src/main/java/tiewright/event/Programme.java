package tiewright.event;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** What is played: the draws, the ties with all that happened in them, and the order of play. */
public record Programme(
        Optional<DrawFact.PoolsDrawn> draw,
        Optional<DrawFact.KnockoutDrawn> knockoutDraw,
        Map<TieId, Tie> ties,
        OrderOfPlay order) {
    static final Programme NONE = new Programme(Optional.empty(), Optional.empty(), Map.of(), OrderOfPlay.NONE);

    public Programme {
        ties = Frozen.copy(ties);
    }

    public Optional<Tie> tie(TieId id) {
        return Optional.ofNullable(ties.get(id));
    }

    public List<Tie> tiesOfPool(String pool) {
        return ties.values().stream()
                .filter(tie -> tie.pool().filter(pool::equals).isPresent())
                .toList();
    }

    /** The clubs of each pool in draw order, whether drawn here or brought in with the ties. */
    public Map<String, List<ClubId>> pools() {
        Map<String, Set<ClubId>> pools = new TreeMap<>();
        draw.ifPresent(drawn -> drawn.pools().forEach((pool, clubs) -> pools.put(pool, new LinkedHashSet<>(clubs))));
        for (Tie tie : ties.values()) {
            tie.pool()
                    .ifPresent(pool -> pools.computeIfAbsent(pool, any -> new LinkedHashSet<>())
                            .addAll(tie.clubs()));
        }
        Map<String, List<ClubId>> inOrder = new LinkedHashMap<>();
        pools.forEach((pool, clubs) -> inOrder.put(pool, List.copyOf(clubs)));
        return inOrder;
    }
}
