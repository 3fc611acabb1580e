package tiewright.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import tiewright.conditions.TiePlay;
import tiewright.event.Event;
import tiewright.event.OrderOfPlay;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.TieId;

/**
 * Which rubbers can be called now, and to which court: rubber by rubber or side by side as the conditions say, on the courts of
 * the order of play, never two on one court and nobody on two. The list of what to do and the pages of the desk read it here.
 */
public final class NextCalls {
    private final Event event;
    private final Courts courts;
    private final List<String> free;
    private final Set<PlayerId> wanted = new HashSet<>();

    private NextCalls(Event event) {
        this.event = event;
        this.courts = Courts.of(event);
        this.free = new ArrayList<>(courts.free());
    }

    /**
     * A rubber that can be called.
     *
     * @param court where it belongs by the order of play, else a free one; empty while that court is taken or none is free
     */
    public record Next(RubberNo rubber, Optional<String> court) {}

    /** By tie, the tie that starts first has its courts first; no entry for a tie of which nothing can be called. */
    public static Map<TieId, List<Next>> of(Event event) {
        NextCalls calls = new NextCalls(event);
        Map<TieId, List<Next>> next = new LinkedHashMap<>();
        event.ties().values().stream()
                .filter(tie -> tie.isOpened() && event.goesOn(tie))
                .sorted(Comparator.comparing(tie -> tie.start().orElse(java.time.LocalTime.MAX)))
                .forEach(tie -> next.put(tie.id(), calls.next(tie)));
        next.values().removeIf(List::isEmpty);
        return next;
    }

    private List<Next> next(Tie tie) {
        List<RubberNo> left = event.progress(tie).left();
        long room = atOnce(tie) - left.stream().filter(tie.calls()::containsKey).count();
        List<Next> next = new ArrayList<>();
        for (RubberNo rubber : left) {
            boolean waits = tie.opened().containsKey(rubber) && !tie.calls().containsKey(rubber);
            if (waits && next.size() < room && isHere(tie, rubber)) {
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

    /** Nobody of the rubber is on court, or wanted there before it. */
    private boolean isHere(Tie tie, RubberNo rubber) {
        List<PlayerId> players = Stream.of(tie.opened().get(rubber))
                .flatMap(pairs -> Stream.of(pairs.home(), pairs.away()))
                .flatMap(Optional::stream)
                .flatMap((Pair pair) -> pair.players().stream())
                .toList();
        return !courts.isBusy(tie, rubber)
                && players.stream().noneMatch(wanted::contains)
                && (players.isEmpty() || wanted.addAll(players));
    }

    private Optional<String> court(Tie tie, RubberNo rubber) {
        Optional<String> planned =
                Optional.ofNullable(event.order().rubbers(tie.id()).get(rubber)).map(OrderOfPlay.Place::court);
        List<String> ofTie = event.order().courts(tie);
        List<String> mine = planned.map(List::of).orElse(ofTie.isEmpty() ? List.copyOf(free) : ofTie);
        Optional<String> court = mine.stream().filter(free::contains).findFirst();
        court.ifPresent(free::remove);
        return court;
    }
}
