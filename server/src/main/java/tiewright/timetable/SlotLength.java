package tiewright.timetable;

import java.util.Random;
import java.util.stream.IntStream;
import tiewright.conditions.Conditions;

/**
 * How long a slot is planned: one rubber and the turnover after it.
 *
 * <p>One game is reckoned at its mean, for its spread goes into the turnover. A rubber of several games takes as few games or as
 * many as it happens to, and its mean lies between the two where hardly any rubber ends; so a slot holds nine of ten that are
 * drawn, as the simulated days draw them (nine of ten: as everywhere in the budget of time, our reading).
 */
final class SlotLength {
    private static final int DRAWS = 20_000;
    private static final double HELD = 0.9;
    private static final long SEED = 1;

    private SlotLength() {}

    /** In minutes. */
    static int of(Conditions conditions, Pace pace) {
        int mean = RubberTime.of(conditions, pace).minutes() + pace.turnoverMinutes();
        return conditions.bestOf() == 1 ? mean : Math.max(mean, (int) Math.ceil(held(conditions, pace)));
    }

    /** What nine of ten rubbers do not pass. */
    private static double held(Conditions conditions, Pace pace) {
        Random random = new Random(SEED);
        RubberDraws draws = new RubberDraws(conditions.scoring(), conditions.bestOf(), pace);
        double[] minutes = IntStream.range(0, DRAWS)
                .mapToDouble(i -> draws.draw(random))
                .sorted()
                .toArray();
        return minutes[(int) (HELD * DRAWS)];
    }
}
