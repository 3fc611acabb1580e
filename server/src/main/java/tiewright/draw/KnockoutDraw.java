package tiewright.draw;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import tiewright.conditions.Seeding;
import tiewright.event.SlotSource;

/**
 * Draws the places of the pools into a knockout of 2, 4, 8, 16 or 32 lines, before anyone knows who will hold them.
 *
 * <p>Seeds are the firsts in the order of the pools, then the seconds and so on, whole places only and no more than half
 * of the lines (common practice, no source); each group of seeds is drawn for its {@linkplain SeedLines lines}. Byes go
 * to the seeds in order and the rest of them to lines for the seeds that would come next, so that they are evenly
 * spread; clubs of the next place are drawn for those. Every arrangement is equally likely among those with, first, the
 * fewest first-round ties inside a pool and, second, the fewest pools whose second is in the half of its first.
 */
public final class KnockoutDraw {
    public static final int MOST_FROM_A_POOL = 4;
    public static final int MOST_QUALIFIERS = 32;
    static final String KNOCKOUT = "knockout";
    /** Enough for two of each of sixteen pools or three of each of eight; reached in seconds. */
    static final int MOST_STATES = 12_000;

    /**
     * What is to be drawn.
     *
     * @param pools in their order: the first of pool 1 is seed 1
     * @param fromEach how many of each pool go on, 1 to {@value #MOST_FROM_A_POOL}
     * @param thirdPlace whether the losers of the semifinals play for third place
     */
    public record Shape(List<String> pools, int fromEach, Seeding seeding, boolean thirdPlace) {
        public Shape {
            pools = List.copyOf(pools);
        }

        int qualifiers() {
            return pools.size() * fromEach;
        }

        int lines() {
            return Math.max(2, Integer.highestOneBit(2 * qualifiers() - 1));
        }
    }

    private KnockoutDraw() {}

    /** The bracket, or every reason why it cannot be drawn so. */
    public static KnockoutResult draw(Shape shape, String spokenSeed) {
        List<DrawFault> faults = faults(shape, spokenSeed);
        if (!faults.isEmpty()) {
            return new KnockoutResult.Refused(faults);
        }
        try {
            return new KnockoutResult.Planned(new BracketDraw(shape).drawn(spokenSeed));
        } catch (Spread.TooManyCases tooMany) {
            return new KnockoutResult.Refused(
                    List.of(DrawFault.of(DrawFault.Code.TOO_MANY_CASES, shape.qualifiers(), MOST_STATES)));
        }
    }

    private static List<DrawFault> faults(Shape shape, String spokenSeed) {
        List<DrawFault> faults = new ArrayList<>();
        if (PublicLot.spoken(spokenSeed).isEmpty()) {
            faults.add(DrawFault.of(DrawFault.Code.NO_SPOKEN_SEED, ""));
        }
        HashSet<String> names = new HashSet<>();
        for (String pool : shape.pools()) {
            if (!SlotSource.isPoolName(pool)) {
                faults.add(DrawFault.of(DrawFault.Code.NOT_A_POOL_NAME, pool));
            } else if (!names.add(pool)) {
                faults.add(DrawFault.of(DrawFault.Code.POOL_TWICE, pool));
            }
        }
        number(shape).ifPresent(faults::add);
        return faults;
    }

    /** What is wrong with how many go on. */
    private static Optional<DrawFault> number(Shape shape) {
        if (shape.pools().isEmpty()) {
            return Optional.of(DrawFault.of(DrawFault.Code.NO_POOL, 0, 1));
        }
        if (shape.fromEach() < 1) {
            return Optional.of(DrawFault.of(DrawFault.Code.NO_QUALIFIER, shape.fromEach(), 1));
        }
        if (shape.fromEach() > MOST_FROM_A_POOL) {
            return Optional.of(DrawFault.of(DrawFault.Code.TOO_MANY_FROM_A_POOL, shape.fromEach(), MOST_FROM_A_POOL));
        }
        if (shape.qualifiers() < 2) {
            return Optional.of(DrawFault.of(DrawFault.Code.TOO_FEW_QUALIFIERS, shape.qualifiers(), 2));
        }
        if (shape.qualifiers() > MOST_QUALIFIERS) {
            return Optional.of(DrawFault.of(DrawFault.Code.TOO_MANY_QUALIFIERS, shape.qualifiers(), MOST_QUALIFIERS));
        }
        return Optional.empty();
    }
}
