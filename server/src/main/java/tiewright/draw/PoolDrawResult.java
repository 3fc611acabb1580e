package tiewright.draw;

import java.util.List;
import java.util.stream.Stream;

/** What became of a draw of pools. */
public sealed interface PoolDrawResult {
    /**
     * The pools, how they were drawn, and which towns could not be kept apart.
     *
     * @param seed the spoken seed as it was hashed
     * @param intoPools the steps that put each club into a pool, in order
     * @param numbers the steps that gave each club its number, pool by pool
     * @param sharedTowns empty where all towns were kept apart, or were not asked to be
     */
    record Drawn(
            String seed,
            List<Pool> pools,
            List<DrawStep> intoPools,
            List<DrawStep> numbers,
            List<SharedTown> sharedTowns)
            implements PoolDrawResult {
        public Drawn {
            pools = List.copyOf(pools);
            intoPools = List.copyOf(intoPools);
            numbers = List.copyOf(numbers);
            sharedTowns = List.copyOf(sharedTowns);
        }

        public List<DrawStep> steps() {
            return Stream.concat(intoPools.stream(), numbers.stream()).toList();
        }
    }

    /** No draw was made, for all these reasons. */
    record Refused(List<DrawFault> faults) implements PoolDrawResult {
        public Refused {
            faults = List.copyOf(faults);
        }
    }
}
