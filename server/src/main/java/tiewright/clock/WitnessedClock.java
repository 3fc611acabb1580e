package tiewright.clock;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.function.LongSupplier;

/**
 * The clock by which sheets open, forms close and private data are deleted. It believes the machine's clock as long as that agrees with a
 * counter that nobody can set, and with the last thing that was written down; otherwise it stands still and says so. Safe for
 * any number of threads.
 */
public final class WitnessedClock implements InstantSource {
    /** A machine that was started for a moment with a wrong date deletes nothing. */
    static final Duration QUIET = Duration.ofHours(1);

    /** An afternoon of play has no longer pause than a night. */
    private static final Duration LONGEST_PAUSE = Duration.ofHours(12);

    private final InstantSource wall;
    private final LongSupplier nanos;
    private final boolean isBelieved;
    private long quietSeq = -1;
    private long quietSince;
    private Pace pace;

    /**
     * Two times of which a person must say which is right.
     *
     * @param stoodAt where time stands still meanwhile
     * @param machine what the machine's clock says now
     * @param counted what time it is if only the counter is asked, from the last agreed time on
     */
    public record Doubt(Instant stoodAt, Instant machine, Instant counted) {}

    private WitnessedClock(InstantSource wall, LongSupplier nanos, boolean isBelieved) {
        this.wall = wall;
        this.nanos = nanos;
        this.isBelieved = isBelieved;
        this.pace = Pace.from(wall.instant(), nanos.getAsLong());
    }

    /** @param nanos counts on evenly whatever is set, as {@link System#nanoTime} does; its start means nothing */
    public static WitnessedClock of(InstantSource wall, LongSupplier nanos) {
        return new WitnessedClock(wall, nanos, false);
    }

    /** Believes whatever the clock says, for a clock that is not the machine's: that of a rehearsal or of a test. */
    public static WitnessedClock believing(InstantSource clock) {
        return new WitnessedClock(clock, System::nanoTime, true);
    }

    /**
     * At the start, what was written down before: the clock cannot be earlier, and while play goes on not very much later.
     *
     * @param last when the last fact came in
     */
    public synchronized void remember(Instant last, boolean playGoesOn) {
        Instant now = instant();
        boolean earlier = now.isBefore(last.minus(Pace.MOST));
        boolean muchLater = playGoesOn && now.isAfter(last.plus(LONGEST_PAUSE));
        if (!isBelieved && (earlier || muchLater)) {
            pace = pace.doubted(last);
        }
    }

    /** It is not the machine's clock, and nobody need hold it against another. */
    public boolean isBelieved() {
        return isBelieved;
    }

    @Override
    public synchronized Instant instant() {
        if (isBelieved) {
            return wall.instant();
        }
        pace = pace.seen(wall.instant(), nanos.getAsLong());
        return pace.time();
    }

    /** Empty while all witnesses agree. */
    public synchronized Optional<Doubt> doubt() {
        instant();
        return pace.doubt().map(one -> new Doubt(one.stoodAt(), pace.wall(), pace.counted(pace.nanos())));
    }

    /** A person said which time is right; time goes on from there. */
    public synchronized void decide(boolean machineIsRight) {
        instant();
        pace = machineIsRight ? pace.machineIsRight() : pace.countedIsRight();
    }

    /**
     * Whether what is due may be deleted by the clock alone: there is no doubt, the service has run for an hour in which nothing was
     * written down, and nothing was written down on this day.
     *
     * @param seq how much is written down; the hour begins when it is first asked with this number
     */
    public synchronized boolean mayErase(long seq, Optional<Instant> lastFact, ZoneId zone) {
        if (isBelieved) {
            return true;
        }
        if (seq != quietSeq) {
            quietSeq = seq;
            quietSince = nanos.getAsLong();
        }
        LocalDate today = LocalDate.ofInstant(instant(), zone);
        boolean quiet = nanos.getAsLong() - quietSince >= QUIET.toNanos();
        boolean aDayWithout = lastFact.filter(
                        last -> !LocalDate.ofInstant(last, zone).isBefore(today))
                .isEmpty();
        return pace.doubt().isEmpty() && quiet && aDayWithout;
    }
}
