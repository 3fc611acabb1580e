package tiewright.lineup.decider;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.conditions.DeciderKind;
import tiewright.event.Pair;
import tiewright.lineup.Belief;
import tiewright.lineup.DrawnChance;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Meetings;
import tiewright.lineup.Wishes;

/**
 * Our chance in the decider, should the rubbers finish level: our best pair against theirs as fresh as each would be, which is
 * what this blind game is worth as long as a stronger pair is stronger against everybody. Without a decider there is none.
 */
public final class LevelWorth {
    private final Optional<Closers> ours;
    private final int[] first; // of each pair of ours, as the closers number players; below 0 = never sent
    private final int[] second;
    private final List<Optional<Sent>> theirPair = new ArrayList<>(); // by sheet of theirs
    private final int[] theirs; // by sheet of theirs: which of the different pairs that they may send
    private final List<Optional<Sent>> different = new ArrayList<>();
    private final Meetings meetings;
    private final Map<Optional<Sent>, DrawnChance[]> chances =
            new HashMap<>(); // by whom we send: for each sheet of theirs
    private final DrawnChance[] without; // where there is no decider

    public LevelWorth(LineupProblem problem, Meetings meetings, List<Pair> pairs) {
        this.meetings = meetings;
        DeciderKind kind = problem.rules().decider();
        List<Belief.Expected> expected = problem.belief().sheets();
        this.theirs = new int[expected.size()];
        this.without = new DrawnChance[expected.size()];
        Arrays.fill(without, DrawnChance.surely(0));
        if (kind == DeciderKind.NONE) {
            this.ours = Optional.empty();
            this.first = this.second = new int[0];
            expected.forEach(sheet -> theirPair.add(Optional.empty()));
            return;
        }
        List<Pair> sent = DeciderPairs.all(problem.ours()).stream()
                .filter(pair -> Wishes.allowInDecider(problem, pair))
                .toList();
        Closers own = new Closers(kind, problem.strengths(), problem.freshness(), sent);
        this.ours = Optional.of(own);
        this.first = pairs.stream().mapToInt(pair -> own.player(pair.first())).toArray();
        this.second = pairs.stream().mapToInt(pair -> own.player(pair.second())).toArray();
        theirs(
                expected,
                new Closers(kind, problem.strengths(), problem.freshness(), DeciderPairs.all(problem.theirs())));
    }

    /** Who plays it for them after each of their sheets. */
    private void theirs(List<Belief.Expected> expected, Closers closers) {
        for (int i = 0; i < theirs.length; i++) {
            Optional<Sent> sent = closers.sent(closers.rubbers(expected.get(i).sheet()));
            theirPair.add(sent);
            if (!different.contains(sent)) {
                different.add(sent);
            }
            theirs[i] = different.indexOf(sent);
        }
    }

    /**
     * Our chance after this sheet of ours, for each sheet of theirs; 0 where there is no decider.
     *
     * @param line the numbers of its pairs, rubber 1 first; below 0 = nobody
     */
    public DrawnChance[] of(int[] line) {
        return ours.isEmpty() ? without : chances.computeIfAbsent(ourPair(line), this::against);
    }

    private DrawnChance[] against(Optional<Sent> own) {
        DrawnChance[] each = different.stream()
                .map(other -> own.isEmpty() || other.isEmpty()
                        ? DrawnChance.surely(own.isEmpty() ? 0 : 1)
                        : meetings.decider(
                                own.get().pair(),
                                own.get().loss(),
                                other.get().pair(),
                                other.get().loss()))
                .toArray(DrawnChance[]::new);
        return Arrays.stream(theirs).mapToObj(place -> each[place]).toArray(DrawnChance[]::new);
    }

    private int[] rubbers(int[] line) {
        int[] rubbers = new int[ours.orElseThrow().players()];
        for (int rubber = 0; rubber < line.length; rubber++) {
            if (line[rubber] >= 0) {
                mark(rubbers, first[line[rubber]], rubber);
                mark(rubbers, second[line[rubber]], rubber);
            }
        }
        return rubbers;
    }

    private static void mark(int[] rubbers, int player, int rubber) {
        if (player >= 0) {
            rubbers[player] |= 1 << rubber;
        }
    }

    /**
     * A pair in the decider.
     *
     * @param loss how much of their strength the two have lost by then, in rallies per 100
     */
    public record Sent(Pair pair, double loss) {}

    /** Who would play it for us after this sheet; empty where no pair is named for it. */
    public Optional<Sent> ourPair(int[] line) {
        return ours.flatMap(closers -> closers.sent(rubbers(line)));
    }

    /** Who would play it for them after that sheet of theirs. */
    public Optional<Sent> theirPair(int sheet) {
        return theirPair.get(sheet);
    }
}
