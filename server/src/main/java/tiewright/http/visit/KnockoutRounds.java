package tiewright.http.visit;

import java.util.Collections;
import java.util.List;
import tiewright.event.Stage;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;

/** How far from the final a round of the knockout is, byes or not. */
public final class KnockoutRounds {
    private KnockoutRounds() {}

    /** {@code final}, {@code semi} or {@code quarter} for the words of a round, {@code other} for an earlier one. */
    public static String code(VisibleEvent event, int round) {
        return switch (full(event, round)) {
            case 1 -> "final";
            case 2 -> "semi";
            case 4 -> "quarter";
            default -> "other";
        };
    }

    /** Ties that this round has where nobody has a bye: 1 is the final, 2 are semi-finals. */
    public static int full(VisibleEvent event, int round) {
        List<Integer> rounds = event.ties().stream()
                .filter(tie -> tie.stage() == Stage.KNOCKOUT && !tie.isOfLosers())
                .map(Tie::round)
                .toList();
        int last = rounds.stream().mapToInt(Integer::intValue).max().orElse(round);
        // a knockout that is not laid out to its final says by its ties alone how far it has come
        return Collections.frequency(rounds, last) == 1 ? 1 << (last - round) : Collections.frequency(rounds, round);
    }
}
