package tiewright.desk;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import tiewright.conditions.TiePlay;
import tiewright.event.Event;
import tiewright.event.OrderOfPlay;
import tiewright.event.RubberNo;
import tiewright.event.Tie;

/**
 * Which rubbers of a tie can be called now, and to which court: rubber by rubber or side by side as the conditions say, on the
 * courts of the order of play, never two on one court. The list of what to do and the pages of the desk read it here.
 */
public final class NextCalls {
    private final Event event;
    private final Courts courts;
    private final Set<String> given = new TreeSet<>();

    private NextCalls(Event event) {
        this.event = event;
        this.courts = Courts.of(event);
    }

    /**
     * A rubber that can be called.
     *
     * @param court where it belongs by the order of play, else a free one; empty while that court is taken or none is free
     */
    public record Next(RubberNo rubber, Optional<String> court) {}

    /** In the order in which they are played; empty while the sheets are closed or the rubbers on court are all there is. */
    public static List<Next> of(Event event, Tie tie) {
        return new NextCalls(event).next(tie);
    }

    private List<Next> next(Tie tie) {
        if (!tie.isOpened() || !event.goesOn(tie)) {
            return List.of();
        }
        List<RubberNo> left = event.progress(tie).left();
        int onCourt = (int) left.stream().filter(tie.calls()::containsKey).count();
        List<Next> next = new ArrayList<>();
        for (RubberNo rubber : left) {
            boolean waits = tie.opened().containsKey(rubber) && !tie.calls().containsKey(rubber);
            if (waits && next.size() < atOnce(tie) - onCourt && !courts.isBusy(tie, rubber)) {
                next.add(new Next(rubber, court(tie, rubber)));
            }
        }
        return List.copyOf(next);
    }

    /** How many rubbers of the tie may be on court together: one, or one for each court that it was given. */
    private int atOnce(Tie tie) {
        if (event.conditions().tiePlay() == TiePlay.RUBBER_BY_RUBBER) {
            return 1;
        }
        int given = event.order().courts(tie).size();
        return given == 0 ? event.conditions().rubbers() : given;
    }

    private Optional<String> court(Tie tie, RubberNo rubber) {
        Optional<String> planned =
                Optional.ofNullable(event.order().rubbers(tie.id()).get(rubber)).map(OrderOfPlay.Place::court);
        List<String> ofTie = event.order().courts(tie);
        Collection<String> wanted = planned.map(List::of).orElse(ofTie.isEmpty() ? courts.free() : ofTie);
        Optional<String> free = wanted.stream()
                .filter(courts.free()::contains)
                .filter(court -> !given.contains(court))
                .findFirst();
        free.ifPresent(given::add);
        return free;
    }
}
