package tiewright.draw;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import tiewright.event.ClubId;

/** Finds the towns that share a pool after a draw that kept them apart as far as possible, and says why. */
final class SharedTowns {
    private final int pools;
    private final Map<ClubId, String> towns;
    private final Collection<ClubId> seeded;

    SharedTowns(int pools, Map<ClubId, String> towns, Collection<ClubId> seeded) {
        this.pools = pools;
        this.towns = towns;
        this.seeded = seeded;
    }

    List<SharedTown> in(List<Pool> drawn) {
        List<SharedTown> shared = new ArrayList<>();
        for (Pool pool : drawn) {
            Map<String, List<ClubId>> byTown = new TreeMap<>();
            pool.clubs().stream()
                    .filter(towns::containsKey)
                    .forEach(c -> byTown.computeIfAbsent(towns.get(c), t -> new ArrayList<>())
                            .add(c));
            byTown.forEach((town, clubs) -> {
                if (clubs.size() > 1) {
                    shared.add(new SharedTown(cause(town, clubs), pool.name(), town, clubs, rounds(pool, clubs)));
                }
            });
        }
        return shared;
    }

    private SharedTown.Cause cause(String town, List<ClubId> clubs) {
        if (Collections.frequency(towns.values(), town) > pools) {
            return SharedTown.Cause.MORE_CLUBS_THAN_POOLS;
        }
        return clubs.stream().filter(seeded::contains).count() > 1
                ? SharedTown.Cause.SEEDS
                : SharedTown.Cause.NO_DRAW_WITHOUT;
    }

    private static List<Integer> rounds(Pool pool, List<ClubId> clubs) {
        List<Integer> rounds = new ArrayList<>();
        for (int one = 0; one < clubs.size(); one++) {
            for (int other = one + 1; other < clubs.size(); other++) {
                rounds.add(Berger.roundOf(
                        1 + pool.clubs().indexOf(clubs.get(one)),
                        1 + pool.clubs().indexOf(clubs.get(other)),
                        pool.clubs().size()));
            }
        }
        return rounds.stream().sorted().toList();
    }
}
