package tiewright.lineup.order;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import tiewright.event.Pair;
import tiewright.event.Sheet;
import tiewright.lineup.LineupProblem;

/**
 * Both clubs name a sheet without seeing the other's: what is that worth, and how should ours be drawn?
 *
 * <p>A zero-sum game over every legal sheet of ours that grants the captain's wishes and every legal sheet of theirs, payoff
 * the captain's aim. Where rubbers are interchangeable only who plays together is chosen, and the order is a fair draw: a
 * pairing against a pairing is worth the mean over all orders, which is exact (every order of fixed pairs meets the same
 * numbers: Ferguson, Game Theory, II.2.5). Solved by the double oracle of McMahan, Gordon and Blum (2003, from memory); both
 * sides' guarantees are worked out against every sheet of the other.
 *
 * @param guarantee what our draw makes sure of at least, on average, whatever they name
 * @param gap what is left open: they can hold us to {@code guarantee + gap} at most
 * @param interchangeable only the pairs are chosen, the order is drawn evenly
 * @param mix sheets to draw from; weights add up to 1
 * @param theirMix the draw that holds us down
 */
public record BlindGame(
        double guarantee,
        double gap,
        boolean interchangeable,
        List<Weighted> mix,
        List<Weighted> theirMix,
        int ourSheets,
        int theirSheets) {
    /** More sheets than this on either side are not gone into. */
    static final int MOST_SHEETS = 6_000;

    public BlindGame {
        mix = List.copyOf(mix);
        theirMix = List.copyOf(theirMix);
    }

    /** A sheet and how often to name it. */
    public record Weighted(Sheet sheet, double weight) {}

    /** Empty where one of the clubs has no legal sheet, or either has too many to go through. */
    public static Optional<BlindGame> of(LineupProblem problem) {
        return SheetGame.of(problem).map(SheetGame::solve);
    }

    public double value() {
        return guarantee + gap / 2;
    }

    /** One sheet by the weights, in an order by lot where order is free: the same one for the same seed. */
    public Sheet draw(long seed) {
        Random random = new Random(seed);
        double left = random.nextDouble();
        Sheet drawn = mix.get(mix.size() - 1).sheet();
        for (Weighted one : mix) {
            left -= one.weight();
            if (left < 0) {
                drawn = one.sheet();
                break;
            }
        }
        if (!interchangeable) {
            return drawn;
        }
        List<Optional<Pair>> pairs = new ArrayList<>(drawn.pairs().values());
        Collections.shuffle(pairs, random);
        return Sheet.of(pairs);
    }
}
