package tiewright.draw;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tiewright.event.SlotSource;

/** One shape of knockout with its allowed brackets counted; draws one of them for each spoken seed. */
final class BracketDraw {
    private final KnockoutDraw.Shape shape;
    private final BracketMembers members;
    private final Spread spread = new Spread(KnockoutDraw.MOST_STATES);
    private final SpreadState start;
    /** What could be chosen after these lines: the same for every seed, and dear to count. */
    private final Map<List<Integer>, List<DrawStep.Choice>> open = new HashMap<>();

    BracketDraw(KnockoutDraw.Shape shape) {
        this.shape = shape;
        this.members = new BracketMembers(shape);
        this.start = spread.cheapest(members.start());
    }

    KnockoutPlan drawn(String spokenSeed) {
        PublicLot lot = new PublicLot(spokenSeed, KnockoutDraw.KNOCKOUT);
        List<Optional<SlotSource>> lines = new ArrayList<>(Collections.nCopies(shape.lines(), Optional.empty()));
        List<DrawStep> steps = new ArrayList<>();
        List<Integer> chosen = new ArrayList<>();
        boolean[] used = new boolean[shape.lines()];
        SpreadState state = start;
        for (BracketMembers.Entry entry : members.entries()) {
            SpreadState now = state;
            List<DrawStep.Choice> choices = open.computeIfAbsent(List.copyOf(chosen), any -> choices(entry, now, used));
            DrawStep step = DrawStep.draw(entry.name(), KnockoutDraw.KNOCKOUT, choices, lot);
            steps.add(step);
            int line = Integer.parseInt(step.chosen()) - 1;
            chosen.add(line);
            state = state.put(entry.member(), line / 2);
            used[line] = true;
            entry.source().ifPresent(source -> lines.set(line, Optional.of(source)));
            if (entry.withBye()) {
                used[line ^ 1] = true;
            }
        }
        List<PlannedTie> ties = BracketTies.of(lines, shape.thirdPlace());
        return new KnockoutPlan(
                PublicLot.spoken(spokenSeed), lines, ties, steps, samePoolFirst(lines), sameHalf(lines));
    }

    /** A match has one weight; where two of its lines are open, each has half of it, so all weights are doubled. */
    private List<DrawStep.Choice> choices(BracketMembers.Entry entry, SpreadState state, boolean[] used) {
        List<DrawStep.Choice> choices = new ArrayList<>();
        for (int match = 0; match < state.bins(); match++) {
            if (state.allows(entry.member(), match)) {
                BigInteger ways = spread.count(state.put(entry.member(), match)).shiftLeft(1);
                List<Integer> lines = members.openLines(entry, match, used);
                for (int line : lines) {
                    choices.add(new DrawStep.Choice("" + (line + 1), ways.divide(BigInteger.valueOf(lines.size()))));
                }
            }
        }
        return choices;
    }

    private static List<String> samePoolFirst(List<Optional<SlotSource>> lines) {
        return IntStream.range(0, lines.size() / 2)
                .filter(m ->
                        lines.get(2 * m).isPresent() && lines.get(2 * m + 1).isPresent())
                .filter(m -> lines.get(2 * m)
                        .get()
                        .of()
                        .equals(lines.get(2 * m + 1).get().of()))
                .mapToObj(m -> lines.get(2 * m).get().of())
                .toList();
    }

    private List<String> sameHalf(List<Optional<SlotSource>> lines) {
        Stream<String> pools = lines.size() > 2 && shape.fromEach() > 1 ? shape.pools().stream() : Stream.of();
        return pools.filter(pool -> half(lines, pool, 1) == half(lines, pool, 2))
                .toList();
    }

    private static int half(List<Optional<SlotSource>> lines, String pool, int place) {
        return lines.indexOf(Optional.of(SlotSource.place(pool, place))) / (lines.size() / 2);
    }
}
