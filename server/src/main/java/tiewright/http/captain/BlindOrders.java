package tiewright.http.captain;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import tiewright.event.Pair;
import tiewright.event.Sheet;
import tiewright.event.TieId;
import tiewright.http.answers.ClubAnswers;
import tiewright.http.visit.Visit;

/** Which pair plays which rubber when the captain leaves it to chance: nobody else can draw the same. */
final class BlindOrders {
    private BlindOrders() {}

    /**
     * These in the order of this draw, from the club's own secret: the same number draws the same again, for this club alone. A
     * link that the club has not let in learns nothing of its draws: for it chance is thrown afresh.
     *
     * @param sorted the same, however they stood before
     */
    static <T> List<T> drawn(Visit visit, TieId tie, int draw, List<T> sorted) {
        long chance = visit.event().isLetIn()
                ? visit.ask(ClubAnswers::new).shuffle(tie, draw)
                : Long.parseUnsignedLong(visit.hall().tokens().secret().substring(0, 16), 16);
        List<T> order = new ArrayList<>(sorted);
        Collections.shuffle(order, new Random(chance));
        return order;
    }

    /** The sheet in the order that the club's own draw gives it, where the conditions leave the order free. */
    static Sheet drawn(Visit visit, TieId tie, Sheet sheet) {
        List<Optional<Pair>> pairs = new ArrayList<>(sheet.pairs().values());
        boolean free =
                visit.event().conditions().isOrderFree() && pairs.stream().allMatch(Optional::isPresent);
        if (free) {
            Collections.shuffle(pairs, new Random(visit.ask(ClubAnswers::new).chance(tie, 1)));
        }
        return Sheet.of(pairs);
    }
}
