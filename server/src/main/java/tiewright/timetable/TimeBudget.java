package tiewright.timetable;

import java.time.LocalTime;
import tiewright.conditions.Conditions;
import tiewright.draw.Berger;

/**
 * Does a day of this shape fit its courts and hours? Before entries close, so nothing is drawn yet.
 *
 * @param rubbers of the whole day, deciders not included
 * @param deciders to be expected, of even clubs
 * @param rubberMinutes play of one rubber, mean
 * @param rubberSd its standard deviation, in minutes
 * @param slotMinutes a rubber and its turnover, as planned with
 * @param courtsPerTie courts that a tie takes at once in the plan that was tried
 * @param neededMinutes length of a plan that keeps rounds and rests, if every rubber takes its slot and no tie needs a decider
 * @param availableMinutes from the start to the closing of the venue
 * @param daysThatFit of {@code simulatedDays}
 * @param early the end on one day in ten is before this; likewise half the days, nine in ten
 */
public record TimeBudget(
        int rubbers,
        double deciders,
        double rubberMinutes,
        double rubberSd,
        int slotMinutes,
        int courtsPerTie,
        int neededMinutes,
        int availableMinutes,
        int daysThatFit,
        int simulatedDays,
        LocalTime early,
        LocalTime middle,
        LocalTime late) {
    public static final int USUAL_DAYS = 1_000;

    /** More clubs do not meet all the others of their pool in a day. */
    public static final int MOST_IN_A_POOL = Berger.LARGEST;

    /** What the days say. */
    public enum Verdict {
        FITS("fits"),
        /** some of the days fit */
        FITS_SOMETIMES("fits-sometimes"),
        DOES_NOT_FIT("does-not-fit");

        private final String code;

        Verdict(String code) {
            this.code = code;
        }

        public String code() {
            return code;
        }
    }

    /**
     * The shape of a day.
     *
     * @param clubs that play
     * @param pools in which every club meets every other, at most {@value #MOST_IN_A_POOL} clubs in each; 0 = none
     * @param knockoutTies after the pools
     * @param courts that can be used all day
     */
    public record Shape(int clubs, int pools, int knockoutTies, int courts, LocalTime starts, LocalTime closes) {
        public Shape {
            if (clubs < 2
                    || pools < 0
                    || pools > clubs / 2
                    || pools > 0 && clubs > pools * MOST_IN_A_POOL
                    || pools == 0 && knockoutTies == 0
                    || knockoutTies < 0
                    || courts < 1
                    || !closes.isAfter(starts)) {
                throw new IllegalArgumentException("no day has this shape");
            }
        }
    }

    /** Works the budget out, with {@link #USUAL_DAYS} simulated days. The same seed gives the same days. */
    public static TimeBudget of(Shape shape, Conditions conditions, Pace pace, long seed) {
        return BudgetDays.budget(shape, conditions, pace, seed);
    }

    /** Nine days in ten are enough to say that it fits; fewer than one in ten that it does not (our reading). */
    public Verdict verdict() {
        if (10 * daysThatFit >= 9 * simulatedDays) {
            return Verdict.FITS;
        }
        return 10 * daysThatFit < simulatedDays ? Verdict.DOES_NOT_FIT : Verdict.FITS_SOMETIMES;
    }
}
