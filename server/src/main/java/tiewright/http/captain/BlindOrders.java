package tiewright.http.captain;

import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import tiewright.http.visit.Visit;

/** Which pair plays which rubber when the captain leaves it to chance: nobody else can draw the same. */
final class BlindOrders {
    private BlindOrders() {}

    /** @return a permutation of the places 0 to {@code rubbers} - 1 */
    static List<Integer> drawn(Visit visit, int rubbers) {
        List<Integer> order = IntStream.range(0, rubbers).boxed().collect(Collectors.toList());
        long chance = Long.parseUnsignedLong(visit.hall().tokens().secret().substring(0, 16), 16);
        Collections.shuffle(order, new Random(chance));
        return List.copyOf(order);
    }
}
