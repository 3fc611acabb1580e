package tiewright.clock;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * What time it is as far as two witnesses agree: the machine's clock, which somebody may set, and a counter of nanoseconds that nobody
 * can. A small difference is followed, for no two clocks agree quite; a jump makes time stand still until the two agree again or a
 * person has said which of them is right.
 *
 * @param wall what the machine's clock said last
 * @param nanos what the counter said last; its start means nothing
 * @param offset what is added to the machine's clock, because a person said that it is wrong
 * @param drift how far small corrections have already taken it from the counter; forgotten slowly, as quartz errs
 */
record Pace(Instant wall, long nanos, Duration offset, Duration drift, Optional<Doubt> doubt) {
    /** Less than the two seconds that would open a sheet early and be noticed by nobody. */
    static final Duration MOST = Duration.ofSeconds(1);

    /** Quartz errs by less than this share of the time; what corrects it must not be taken for a jump. */
    private static final long QUARTZ = 1000;

    static Pace from(Instant wall, long nanos) {
        return new Pace(wall, nanos, Duration.ZERO, Duration.ZERO, Optional.empty());
    }

    /** What the service goes by: it stands still while there is doubt. */
    Instant time() {
        return doubt.map(Doubt::stoodAt).orElseGet(() -> wall.plus(offset));
    }

    /** What the service would go by if only the counter were asked. */
    Instant counted(long nanosNow) {
        return doubt.map(one -> one.countedFrom().plusNanos(nanosNow - one.nanos()))
                .orElseGet(() -> wall.plus(offset).plusNanos(nanosNow - nanos));
    }

    /** After another look at both. */
    Pace seen(Instant wallNow, long nanosNow) {
        Duration difference = Duration.between(counted(nanosNow), wallNow.plus(offset));
        if (doubt.isPresent()) {
            return new Pace(wallNow, nanosNow, offset, drift, doubt.filter(stays -> isJump(difference)));
        }
        Duration known = forgotten(nanosNow - nanos);
        Duration all = known.plus(difference);
        if (isJump(all)) {
            Doubt found = new Doubt(time(), counted(nanosNow).minus(known), nanosNow);
            return new Pace(wallNow, nanosNow, offset, Duration.ZERO, Optional.of(found));
        }
        return new Pace(wallNow, nanosNow, offset, all, doubt);
    }

    private static boolean isJump(Duration difference) {
        return difference.abs().compareTo(MOST) > 0;
    }

    /** The drift less what quartz may err by in this time. */
    private Duration forgotten(long passed) {
        Duration less = Duration.ofNanos(passed / QUARTZ);
        if (drift.abs().compareTo(less) <= 0) {
            return Duration.ZERO;
        }
        return drift.isNegative() ? drift.plus(less) : drift.minus(less);
    }

    /** It cannot be what the machine's clock says, because of what is known from before: time stands there. */
    Pace doubted(Instant known) {
        return new Pace(wall, nanos, offset, drift, Optional.of(new Doubt(known, known, nanos)));
    }

    /** A person said that the machine's clock is right. */
    Pace machineIsRight() {
        return new Pace(wall, nanos, Duration.ZERO, Duration.ZERO, Optional.empty());
    }

    /** A person said that the time counted on from before is right, and the machine's clock is not. */
    Pace countedIsRight() {
        return new Pace(wall, nanos, Duration.between(wall, counted(nanos)), Duration.ZERO, Optional.empty());
    }

    /**
     * @param stoodAt where time stands still
     * @param countedFrom what time it was at {@code nanos} by the counter alone
     */
    record Doubt(Instant stoodAt, Instant countedFrom, long nanos) {}
}
