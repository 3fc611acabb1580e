package tiewright.bench;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import tiewright.event.Event;
import tiewright.event.FactKind;
import tiewright.event.Recorded;
import tiewright.standings.PoolTables;
import tiewright.standings.Standings;
import tiewright.standings.Table;

/** Fold of 20,000 facts and the tables of 64 clubs; beside it the least a fold could do: sorting the facts by their kind. */
final class FoldBench {
    private static final int FACTS = 20_000;
    private static final int WARM_UP = 150;
    private static final int RUNS = 201;

    /** What the timed work gave, so that none of it can be left out as useless. */
    private static long kept;

    private FoldBench() {}

    static void run() {
        List<Recorded> facts = BusyDay.facts(FACTS, 1);
        Event event = Event.of(facts);
        System.out.printf(
                "  %d facts, %d clubs, %d ties, %d pools, %d clubs placed%n",
                facts.size(),
                event.clubs().size(),
                event.ties().size(),
                event.pools().size(),
                tables(event).stream().mapToInt(table -> table.rows().size()).sum());
        Timings sorting = Timings.of(WARM_UP, RUNS, run -> kept += byKind(facts).size())
                .print("the same facts sorted into lists by kind");
        Timings fold =
                Timings.of(WARM_UP, RUNS, run -> kept += Event.of(facts).seq()).print("fold");
        Timings all =
                Timings.of(WARM_UP, RUNS, run -> kept += tables(event).size()).print("all tables of the folded event");
        Timings both = Timings.of(
                        WARM_UP, RUNS, run -> kept += tables(Event.of(facts)).size())
                .print("fold and all tables");
        Timings.of(
                        WARM_UP,
                        RUNS,
                        run -> kept += event.then(List.of(next(event, facts))).seq())
                .print("one more fact on the folded event");
        fold.printRatio("fold / sorting by kind", sorting);
        both.printRatio("fold and tables / fold", fold);
        all.printRatio("tables / fold", fold);
    }

    private static Recorded next(Event event, List<Recorded> facts) {
        Recorded last = facts.get(facts.size() - 1);
        return new Recorded(event.seq() + 1, last.fact(), last.by(), last.deviceTime(), last.receivedAt());
    }

    private static List<Table> tables(Event event) {
        return event.pools().keySet().stream()
                .map(pool -> Standings.of(PoolTables.input(event, pool)))
                .toList();
    }

    private static Map<FactKind, List<Recorded>> byKind(List<Recorded> facts) {
        Map<FactKind, List<Recorded>> kinds = new EnumMap<>(FactKind.class);
        facts.forEach(fact -> kinds.computeIfAbsent(fact.fact().kind(), kind -> new ArrayList<>())
                .add(fact));
        return kinds;
    }
}
