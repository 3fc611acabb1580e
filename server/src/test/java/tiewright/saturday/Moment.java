package tiewright.saturday;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.PlayerId;

/**
 * One moment of a day, at which promises are looked at.
 *
 * @param clock the time in the hall, such as {@code 10:35}
 * @param hurt who is marked so
 * @param log what the last step did
 * @param sights pages that somebody has before the eyes now or had during the step
 */
record Moment(
        Instant now, String clock, Event event, Directory directory, Set<PlayerId> hurt, Log log, List<Sight> sights) {
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
