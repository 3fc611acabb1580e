package tiewright.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tiewright.event.SlotSource;

/** Who goes into a bracket, in the order of the draw: seeds, byes beyond the seeds, then everyone else by place and pool. */
final class BracketMembers {
    /** One draw of a line; a bye beyond the seeds has no source. */
    record Entry(Optional<SlotSource> source, SpreadState.Member member, boolean withBye, int tag) {
        String name() {
            return source.map(SlotSource::code).orElse("bye");
        }
    }

    private final KnockoutDraw.Shape shape;
    private final List<List<Integer>> seedLines;
    private final int seeds;
    private final int byes;
    private final List<SpreadState.Kind> kinds = new ArrayList<>();
    private final List<Entry> entries = new ArrayList<>();

    BracketMembers(KnockoutDraw.Shape shape) {
        this.shape = shape;
        this.seedLines = SeedLines.groups(shape.lines(), shape.seeding());
        int pools = shape.pools().size();
        int most = shape.lines() / 2;
        this.seeds = pools > most ? most : Math.min(shape.fromEach(), most / pools) * pools;
        this.byes = shape.lines() - shape.qualifiers();
        for (int number = 1; number <= shape.qualifiers(); number++) {
            if (number == seeds + 1) {
                addByesBeyondTheSeeds();
            }
            add(number);
        }
    }

    List<Entry> entries() {
        return entries;
    }

    SpreadState start() {
        int matches = shape.lines() / 2;
        List<SpreadState.Bin> bins = IntStream.range(0, matches)
                .mapToObj(m -> new SpreadState.Bin(2, m < matches / 2 ? 0 : 1, tag(m), false))
                .toList();
        return SpreadState.start(
                kinds,
                bins,
                shape.pools().size() + 1,
                entries.stream().map(Entry::member).toList());
    }

    /** The lines of a match, from 0, that an entry may take: a seed or bye the line of its group, others any open one. */
    List<Integer> openLines(Entry entry, int match, boolean[] used) {
        return Stream.of(2 * match, 2 * match + 1)
                .filter(line -> !used[line])
                .filter(line -> entry.tag() < 0
                        || seedLines.get(entry.tag()).contains(line + 1)
                                == entry.source().isPresent())
                .toList();
    }

    private void add(int number) {
        int pool = (number - 1) % shape.pools().size();
        int place = (number - 1) / shape.pools().size() + 1;
        boolean seed = number <= seeds;
        int tag = seed ? SeedLines.groupOf(number) : -1;
        boolean withBye = seed && number <= byes;
        boolean avoidsFirst = place == 2 && shape.lines() > 2;
        boolean byeTaker = seed || place == seeds / shape.pools().size() + 1;
        int kind = kind(new SpreadState.Kind(
                tag, withBye ? 2 : 1, false, place == 1 && shape.fromEach() > 1, avoidsFirst, byeTaker, false));
        Optional<SlotSource> source = Optional.of(SlotSource.place(shape.pools().get(pool), place));
        entries.add(new Entry(source, new SpreadState.Member(pool, kind), withBye, tag));
    }

    private void addByesBeyondTheSeeds() {
        for (int number = seeds + 1; number <= byes; number++) {
            int tag = SeedLines.groupOf(number);
            int kind = kind(new SpreadState.Kind(tag, 1, true, false, false, true, false));
            entries.add(new Entry(
                    Optional.empty(), new SpreadState.Member(shape.pools().size(), kind), false, tag));
        }
    }

    private int kind(SpreadState.Kind kind) {
        if (!kinds.contains(kind)) {
            kinds.add(kind);
        }
        return kinds.indexOf(kind);
    }

    private int tag(int match) {
        return IntStream.range(0, seedLines.size())
                .filter(g -> seedLines.get(g).stream().anyMatch(line -> (line - 1) / 2 == match))
                .findFirst()
                .orElse(-1);
    }
}
