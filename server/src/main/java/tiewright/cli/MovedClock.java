package tiewright.cli;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;

/** The clock of a rehearsal: it goes on from where it was set to. */
final class MovedClock extends Clock {
    private final ZonedDateTime day;
    private volatile Duration ahead;

    MovedClock(ZonedDateTime start) {
        this.day = start;
        this.ahead = Duration.between(Clock.systemUTC().instant(), start.toInstant());
    }

    /** Another time of the same day. */
    void goTo(LocalTime time) {
        ahead = Duration.between(Clock.systemUTC().instant(), day.with(time).toInstant());
    }

    /** To the minute, in the event's zone. */
    LocalTime now() {
        return instant().atZone(day.getZone()).toLocalTime().truncatedTo(ChronoUnit.MINUTES);
    }

    @Override
    public Instant instant() {
        return Clock.systemUTC().instant().plus(ahead);
    }

    @Override
    public ZoneId getZone() {
        return day.getZone();
    }

    @Override
    public Clock withZone(ZoneId zone) {
        MovedClock other = new MovedClock(day.withZoneSameInstant(zone));
        other.ahead = ahead;
        return other;
    }
}
