package tiewright.lineup.day;

import java.util.List;
import tiewright.event.Sheet;

/**
 * A legal sheet for one tie of the day, with all that the plan needs to judge it.
 *
 * @param number among the sheets of its tie, for these are compared millions of times
 * @param worth of the captain's aim in this tie, everybody rested
 * @param bits what it would teach
 * @param rubbers by player number
 * @param slopes by player number: what the worth loses when the player is one rally in 100 weaker, to first order
 */
record DaySheet(
        int tie, int number, Sheet sheet, double worth, double bits, List<Integer> rubbers, List<Double> slopes) {
    DaySheet {
        rubbers = List.copyOf(rubbers);
        slopes = List.copyOf(slopes);
    }

    boolean names(int player) {
        return rubbers.get(player) > 0;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof DaySheet sheet && sheet.tie == tie && sheet.number == number;
    }

    @Override
    public int hashCode() {
        return 65_537 * tie + number;
    }

    @Override
    public String toString() {
        return "sheet " + number + " of tie " + tie;
    }
}
