package tiewright.event;

import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;

/**
 * How a tie went so far, by rubber.
 *
 * @param opened the pairs, empty until the sheets are opened; the decider's pairs join after their own opening
 * @param calls the court each rubber was called to and when; a call of the whole tie stands under each of its rubbers
 * @param cards what was entered
 * @param stopped what stands still, and since when
 */
public record Course(
        SortedMap<RubberNo, Tie.OpenedRubber> opened,
        SortedMap<RubberNo, Tie.Call> calls,
        SortedMap<RubberNo, Card> cards,
        SortedMap<RubberNo, Instant> stopped) {
    static final Course NOTHING = new Course(new TreeMap<>(), new TreeMap<>(), new TreeMap<>(), new TreeMap<>());

    public Course {
        opened = frozen(opened);
        calls = frozen(calls);
        cards = frozen(cards);
        stopped = frozen(stopped);
    }

    Course opened(ExchangeFact.SheetsOpened fact) {
        SortedMap<RubberNo, Tie.OpenedRubber> pairs = new TreeMap<>(opened);
        TreeSet<RubberNo> rubbers = new TreeSet<>(fact.home().pairs().keySet());
        rubbers.addAll(fact.away().pairs().keySet());
        rubbers.forEach(no -> pairs.put(
                no, new Tie.OpenedRubber(fact.home().pair(no), fact.away().pair(no))));
        return new Course(pairs, calls, cards, stopped);
    }

    Course replaced(ExchangeFact.PairReplaced fact, Side side) {
        SortedMap<RubberNo, Tie.OpenedRubber> pairs = new TreeMap<>(opened);
        pairs.computeIfPresent(fact.rubber(), (no, both) -> both.with(side, fact.pair()));
        return new Course(pairs, calls, cards, stopped);
    }

    Course called(PlayFact.CourtCalled fact, int rubbers, Instant at) {
        SortedMap<RubberNo, Tie.Call> now = new TreeMap<>(calls);
        each(fact.rubber(), rubbers, no -> now.put(no, new Tie.Call(fact.court(), at)));
        return new Course(opened, now, cards, stopped);
    }

    Course takenBack(PlayFact.CallTakenBack fact, int rubbers) {
        SortedMap<RubberNo, Tie.Call> now = new TreeMap<>(calls);
        each(fact.rubber(), rubbers, now::remove);
        return new Course(opened, now, cards, stopped);
    }

    private static void each(Optional<RubberNo> one, int rubbers, Consumer<RubberNo> what) {
        one.map(List::of).orElseGet(() -> RubberNo.upTo(rubbers)).forEach(what);
    }

    Course stopped(RubberNo rubber, Instant at) {
        SortedMap<RubberNo, Instant> now = new TreeMap<>(stopped);
        now.put(rubber, at);
        return new Course(opened, calls, cards, now);
    }

    Course resumed(RubberNo rubber) {
        SortedMap<RubberNo, Instant> now = new TreeMap<>(stopped);
        now.remove(rubber);
        return new Course(opened, calls, cards, now);
    }

    /** As it stood at this moment, as far as cards go. */
    Course until(Instant at) {
        SortedMap<RubberNo, Card> then = new TreeMap<>();
        cards.forEach((rubber, card) -> then.put(rubber, card.until(at)));
        return new Course(opened, calls, then, stopped);
    }

    /** What is written on its card ends a rubber, also one that stood still. */
    Course written(RubberNo rubber, Card.Entry entry) {
        SortedMap<RubberNo, Card> now = new TreeMap<>(cards);
        now.put(rubber, now.getOrDefault(rubber, Card.NONE).with(entry));
        return new Course(opened, calls, now, stopped).resumed(rubber);
    }

    private static <V> SortedMap<RubberNo, V> frozen(SortedMap<RubberNo, V> map) {
        return Collections.unmodifiableSortedMap(new TreeMap<>(map));
    }
}
