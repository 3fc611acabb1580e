package tiewright.rating;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.OptionalInt;

/**
 * How much an older game counts: half as much after each half-life, the whole of it where there is none.
 *
 * @param today the day from which the age is counted; a later game counts whole
 * @param halfLife days, 1 to {@value #MOST_DAYS}
 */
public record Ageing(LocalDate today, OptionalInt halfLife) {
    public static final int MOST_DAYS = 36500;

    private static final Ageing NONE = new Ageing(LocalDate.EPOCH, OptionalInt.empty());

    public Ageing {
        if (halfLife.isPresent() && !isHalfLife(halfLife.getAsInt())) {
            throw new IllegalArgumentException(
                    "a half-life is 1 to " + MOST_DAYS + " days, not " + halfLife.getAsInt());
        }
    }

    /** Every game counts the same. */
    public static Ageing none() {
        return NONE;
    }

    public static boolean isHalfLife(int days) {
        return days >= 1 && days <= MOST_DAYS;
    }

    /** 0 to 1. */
    double weight(LocalDate played) {
        if (halfLife.isEmpty()) {
            return 1;
        }
        long days = Math.max(0, ChronoUnit.DAYS.between(played, today));
        return Math.pow(0.5, (double) days / halfLife.getAsInt());
    }
}
