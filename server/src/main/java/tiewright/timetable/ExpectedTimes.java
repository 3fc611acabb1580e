package tiewright.timetable;

import java.time.Instant;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import tiewright.event.Event;
import tiewright.event.Tie;
import tiewright.event.TieId;

/**
 * When will the ties begin that have not begun: as ranges that move with the pace of today, never before what was published.
 *
 * @param ties by start; only ties with a published start of which nothing was called yet
 * @param pace what is measured today
 */
public record ExpectedTimes(Map<TieId, Expected> ties, TodayPace pace) {
    private static final int DRAWS = 400;
    private static final long SEED = 1;
    private static final int STEP = 5;

    public ExpectedTimes {
        ties = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(ties));
    }

    public static ExpectedTimes of(Event event, Instant now) {
        return of(event, now, Pace.USUAL);
    }

    /** The same event, moment and pace give the same ranges. */
    public static ExpectedTimes of(Event event, Instant now, Pace pace) {
        Forecast forecast = new Forecast(event, now, pace, new Random(SEED));
        List<Tie> waiting = forecast.waiting();
        double[][] starts = new double[waiting.size()][DRAWS];
        for (int draw = 0; draw < DRAWS; draw++) {
            double[] one = forecast.starts();
            for (int tie = 0; tie < one.length; tie++) {
                starts[tie][draw] = one[tie];
            }
        }
        Map<TieId, Expected> ranges = new LinkedHashMap<>();
        for (int tie = 0; tie < starts.length; tie++) {
            Arrays.sort(starts[tie]);
            ranges.put(waiting.get(tie).id(), range(waiting.get(tie).start().orElseThrow(), starts[tie]));
        }
        return new ExpectedTimes(ranges, forecast.today());
    }

    public Optional<Expected> of(TieId tie) {
        return Optional.ofNullable(ties.get(tie));
    }

    private static Expected range(LocalTime published, double[] sorted) {
        int early = (int) Math.floor(sorted[DRAWS / 10]) / STEP * STEP;
        int late = Clock.roundedUp((long) Math.floor(sorted[DRAWS - 1 - DRAWS / 10]), STEP) * STEP;
        int from = Math.max(Clock.minute(published), early);
        return new Expected(published, published, Clock.time(from), Clock.time(Math.max(from, late)));
    }
}
