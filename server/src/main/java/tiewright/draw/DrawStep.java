package tiewright.draw;

import java.math.BigInteger;
import java.util.List;

/**
 * One step of a draw, complete enough to be done again in public.
 *
 * <p>The choices are laid end to end in their order, each as long as its weight; the number drawn (0 to the sum of the
 * weights less 1) falls into the one that was chosen. A weight is the number of allowed draws that begin so, in lowest
 * terms, which makes every allowed draw equally likely.
 *
 * @param subject what was placed: the code of a club, a slot such as {@code A-1}, or {@code bye}
 * @param purpose the middle line of the hashed text
 * @param hash the index of the first number asked for; -1 where there was nothing to draw
 */
public record DrawStep(
        How how, String subject, String purpose, long hash, List<Choice> choices, BigInteger drawn, String chosen) {

    /** Why a step went as it did. */
    public enum How {
        /** Placed by the rule for seeds. */
        SEEDED,
        /** Only one choice was left. */
        ONLY_CHOICE,
        DRAWN
    }

    /** Something that could have been chosen, with its weight of at least 1. */
    public record Choice(String name, BigInteger weight) {}

    public DrawStep {
        choices = List.copyOf(choices);
    }

    static DrawStep seeded(String subject, String chosen) {
        Choice only = new Choice(chosen, BigInteger.ONE);
        return new DrawStep(How.SEEDED, subject, "", -1, List.of(only), BigInteger.ZERO, chosen);
    }

    /** Draws one of the choices; those of weight 0 are left out. */
    static DrawStep draw(String subject, String purpose, List<Choice> all, PublicLot lot) {
        List<Choice> open =
                inLowestTerms(all.stream().filter(c -> c.weight().signum() > 0).toList());
        if (open.size() == 1) {
            return new DrawStep(
                    How.ONLY_CHOICE,
                    subject,
                    purpose,
                    -1,
                    open,
                    BigInteger.ZERO,
                    open.get(0).name());
        }
        long hash = lot.next();
        BigInteger sum = open.stream().map(Choice::weight).reduce(BigInteger.ZERO, BigInteger::add);
        BigInteger drawn = lot.below(sum);
        return new DrawStep(How.DRAWN, subject, purpose, hash, open, drawn, at(open, drawn));
    }

    private static List<Choice> inLowestTerms(List<Choice> choices) {
        BigInteger common = choices.stream().map(Choice::weight).reduce(BigInteger.ZERO, BigInteger::gcd);
        return choices.stream()
                .map(c -> new Choice(c.name(), c.weight().divide(common)))
                .toList();
    }

    private static String at(List<Choice> choices, BigInteger drawn) {
        BigInteger left = drawn;
        for (Choice choice : choices) {
            if (left.compareTo(choice.weight()) < 0) {
                return choice.name();
            }
            left = left.subtract(choice.weight());
        }
        throw new IllegalStateException("drew past the last choice");
    }
}
