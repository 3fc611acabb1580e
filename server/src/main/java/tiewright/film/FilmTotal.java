package tiewright.film;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.scoring.Share;
import tiewright.scoring.SideNo;

/**
 * A count over all filmed games of a player or pair.
 *
 * @param who one player, or the two of a pair
 * @param value how many
 * @param outOf of how many, at least 1
 * @param against the pairs on the other side, each with the number of games
 */
public record FilmTotal(List<PlayerId> who, Measure measure, int value, int outOf, Map<Pair, Integer> against) {
    /** What a total is good for. */
    public enum Worth {
        NOT_ENOUGH,
        FIRST_LOOK,
        ENOUGH
    }

    public FilmTotal {
        who = List.copyOf(who);
        against = Collections.unmodifiableMap(new LinkedHashMap<>(against));
    }

    public int games() {
        return against.values().stream().mapToInt(Integer::intValue).sum();
    }

    public Worth worth() {
        return outOf < measure.shownFrom()
                ? Worth.NOT_ENOUGH
                : outOf < measure.actedOnFrom() ? Worth.FIRST_LOOK : Worth.ENOUGH;
    }

    /** Nothing while there is not enough film. */
    public Optional<Share> share() {
        return worth() == Worth.NOT_ENOUGH ? Optional.empty() : Optional.of(new Share(value, outOf));
    }

    /** The totals of players and pairs who are all in the squad, by measure; players and pairs in the order in which they first played. */
    public static List<FilmTotal> of(List<CardCheck> games, Predicate<PlayerId> inSquad) {
        Map<Key, Sum> sums = new LinkedHashMap<>();
        for (CardCheck game : games) {
            Start start = game.game().start();
            for (Counted count : GameCounts.of(game)) {
                if (count.measure().shownFrom() > 0
                        && count.outOf().orElse(0) > 0
                        && count.who().stream().allMatch(inSquad)) {
                    SideNo other = start.side(count.who().get(0)).other();
                    sums.computeIfAbsent(new Key(count.who(), count.measure()), any -> new Sum())
                            .add(count, start.pair(other));
                }
            }
        }
        Set<List<PlayerId>> order = new LinkedHashSet<>();
        sums.keySet().forEach(key -> order.add(key.who()));
        List<List<PlayerId>> places = new ArrayList<>(order);
        return sums.entrySet().stream()
                .map(sum -> sum.getValue().total(sum.getKey()))
                .sorted(Comparator.comparing(FilmTotal::measure).thenComparing(total -> places.indexOf(total.who())))
                .toList();
    }

    private record Key(List<PlayerId> who, Measure measure) {}

    /** Adds up. */
    private static final class Sum {
        private final Map<Pair, Integer> against = new LinkedHashMap<>();
        private int value;
        private int outOf;

        private void add(Counted count, Pair other) {
            value += count.value();
            outOf += count.outOf().orElse(0);
            against.merge(other, 1, Integer::sum);
        }

        private FilmTotal total(Key key) {
            return new FilmTotal(key.who(), key.measure(), value, outOf, against);
        }
    }
}
