package tiewright.saturday;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.OrderOfPlay;

/** No start lies before what was published, unless each of its clubs was ticked as told under the notice that says so. */
final class NothingBeforeItsTime implements Promise {
    @Override
    public List<Broken> broken(Moment moment) {
        List<Broken> broken = new ArrayList<>();
        for (OrderOfPlay.Change change : moment.event().order().changes()) {
            boolean earlier = change.before().start().isPresent()
                    && change.after()
                            .start()
                            .filter(change.before().start().get()::isAfter)
                            .isPresent();
            if (earlier) {
                moment.met(Looked.EARLIER_THAN_PUBLISHED);
            }
            if (earlier && !told(moment.event(), change).containsAll(change.clubs())) {
                broken.add(new Broken(13, change + " is earlier than published and not everybody was told"));
            }
        }
        return broken;
    }

    /** A club that goes home later is asked for nothing any more. */
    private static Set<ClubId> told(Event event, OrderOfPlay.Change change) {
        Set<ClubId> told = new java.util.HashSet<>(event.withdrawals().keySet());
        change.notice().ifPresent(notice -> told.addAll(event.order().told(notice)));
        return told;
    }
}
