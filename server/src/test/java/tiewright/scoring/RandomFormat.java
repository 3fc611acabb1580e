package tiewright.scoring;

import java.util.OptionalInt;
import java.util.Random;

/** Formats for randomised tests. */
final class RandomFormat {
    private RandomFormat() {}

    /** Any format to at most {@code most} points, all kinds and endings. */
    static Format of(Random random, int most) {
        int target = 1 + random.nextInt(most);
        OptionalInt cap = random.nextInt(3) == 0 ? OptionalInt.of(target + random.nextInt(8)) : OptionalInt.empty();
        Format.Kind kind = random.nextBoolean() ? Format.Kind.RALLY : Format.Kind.SIDE_OUT;
        return new Format(kind, target, random.nextInt(4) == 0, cap, random.nextInt(3) == 0);
    }
}
