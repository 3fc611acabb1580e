package tiewright.saturday;

import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import java.util.Set;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.PlayerId;
import tiewright.http.Served;

/**
 * One moment of a day, at which promises are looked at.
 *
 * @param clock the time in the hall, such as {@code 10:35}
 * @param hurt who is marked so
 * @param log what the last step did
 * @param sights pages that somebody has before the eyes now or had during the step
 * @param looked what promises met so far; they add to it
 */
record Moment(
        Instant now,
        String clock,
        Event event,
        Directory directory,
        Set<PlayerId> hurt,
        Log log,
        List<Sight> sights,
        Set<Looked> looked) {
    /** As it is now. */
    static Moment of(Served served, Log log, List<Sight> sights, Set<Looked> looked) {
        Instant now = served.clock.instant();
        return new Moment(
                now,
                LocalTime.ofInstant(now, Scene.ZONE).toString().substring(0, 5),
                served.ledger.event(),
                served.ledger.directory(),
                served.ledger.hurt(),
                log,
                sights,
                looked);
    }

    void met(Looked what) {
        looked.add(what);
    }

    /** Pages as they are now, after the last step; those before may have been seen before something was sent. */
    List<Sight> fresh() {
        return sights.subList(log.seen().size(), sights.size());
    }

    List<Sight> at(String path) {
        return sights.stream()
                .filter(sight -> sight.isRead() && sight.path().equals(path))
                .toList();
    }
}
