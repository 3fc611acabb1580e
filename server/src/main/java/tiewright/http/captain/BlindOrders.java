package tiewright.http.captain;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import tiewright.conditions.OrderOfStrength;
import tiewright.event.Pair;
import tiewright.event.Sheet;
import tiewright.event.TieId;
import tiewright.http.answers.ClubAnswers;
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

    /** The sheet in the order that the club's own draw gives it, where the conditions leave the order free. */
    static Sheet drawn(Visit visit, TieId tie, Sheet sheet) {
        List<Optional<Pair>> pairs = new ArrayList<>(sheet.pairs().values());
        boolean free = visit.event().conditions().orderOfStrength() == OrderOfStrength.NONE
                && pairs.stream().allMatch(Optional::isPresent);
        if (free) {
            Collections.shuffle(pairs, new Random(visit.ask(ClubAnswers::new).chance(tie, 1)));
        }
        return Sheet.of(pairs);
    }
}
