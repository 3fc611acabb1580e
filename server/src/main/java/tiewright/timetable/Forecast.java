package tiewright.timetable;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import tiewright.event.Event;
import tiewright.event.Tie;

/** Plays the rest of the day in the published order, with rubbers of random length at the pace of today. Minutes of the day. */
final class Forecast {
    /** However often it is drawn anew: a rubber that has lasted longer than all of them ends soon. */
    private static final int REDRAWS = 20;

    private final RestOfDay rest;
    private final int restMinutes;
    private final Pace pace;
    private final Random random;
    private final TodayPace today;
    private final RubberDraws draws;
    private final double[] courtFree;
    /** When each tie ends in this way of the day; before all time while it is not played. */
    private final double[] over;

    Forecast(Event event, Instant now, Pace pace, Random random) {
        this.rest = new RestOfDay(event, now);
        this.restMinutes = event.conditions().restMinutes();
        this.pace = pace;
        this.random = random;
        this.draws =
                new RubberDraws(event.conditions().scoring(), event.conditions().bestOf(), pace);
        double slot = RubberTime.of(event.conditions(), pace).mean() + pace.turnoverMinutes();
        this.today = TodayPace.of(event, slot);
        this.courtFree = new double[rest.courts()];
        this.over = new double[rest.ties()];
    }

    /** The ties that have not begun, by start. */
    List<Tie> waiting() {
        return rest.waiting();
    }

    TodayPace today() {
        return today;
    }

    /** One way in which the day may go on: when each waiting tie begins. */
    double[] starts() {
        Arrays.fill(courtFree, 0);
        Arrays.fill(over, Double.NEGATIVE_INFINITY);
        rest.going().forEach(this::finish);
        return rest.coming().stream().mapToDouble(this::play).toArray();
    }

    private void finish(RestOfDay.Going tie) {
        double end = tie.lastCard();
        for (RestOfDay.Rubber rubber : tie.left()) {
            double begun = Math.max(courtFree[rubber.court()], rubber.from());
            double done = begun + longerThan(rest.now() - begun) + rest.stoppedFor();
            courtFree[rubber.court()] = done;
            end = Math.max(end, done);
        }
        over[tie.tie()] = end;
    }

    private double longerThan(double elapsed) {
        for (int i = 0; i < REDRAWS; i++) {
            double minutes = rubber();
            if (minutes > elapsed) {
                return minutes;
            }
        }
        return Math.max(0, elapsed) + pace.turnoverMinutes();
    }

    private double rubber() {
        return (draws.draw(random) + pace.turnoverMinutes()) * today.factor();
    }

    /** @return when its first rubber begins */
    private double play(RestOfDay.Coming tie) {
        double ready = tie.earliest();
        for (int other : tie.after()) {
            ready = Math.max(ready, over[other] + restMinutes);
        }
        double start = Double.MAX_VALUE;
        double end = ready;
        for (RestOfDay.Rubber rubber : tie.left()) {
            double begins = Math.max(Math.max(ready, rubber.from()) + today.startDelay(), courtFree[rubber.court()]);
            double done = begins + rubber();
            courtFree[rubber.court()] = done;
            start = Math.min(start, begins);
            end = Math.max(end, done);
        }
        over[tie.tie()] = end;
        return tie.left().isEmpty() ? ready : start;
    }
}
