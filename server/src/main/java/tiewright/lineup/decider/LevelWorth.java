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
    private final Theirs theirs;
    private final Meetings meetings;
    private final Map<Optional<Sent>, DrawnChance[]> chances =
            new HashMap<>(); // by whom we send: for each sheet of theirs
    private final DrawnChance[] without; // where there is no decider

    public LevelWorth(LineupProblem problem, Meetings meetings, List<Pair> pairs) {
        this(problem, meetings, pairs, Theirs.of(problem));
    }

    private LevelWorth(LineupProblem problem, Meetings meetings, List<Pair> pairs, Theirs theirs) {
        this.meetings = meetings;
        this.theirs = theirs;
        this.without = new DrawnChance[problem.belief().sheets().size()];
        Arrays.fill(without, DrawnChance.surely(0));
        DeciderKind kind = problem.rules().decider();
        if (kind == DeciderKind.NONE) {
            this.ours = Optional.empty();
            this.first = this.second = new int[0];
            return;
        }
        List<Pair> sent = DeciderPairs.all(problem.ours()).stream()
                .filter(pair -> Wishes.allowInDecider(problem, pair))
                .toList();
        Closers own = new Closers(kind, problem.strengths(), problem.freshness(), sent);
        this.ours = Optional.of(own);
        this.first = pairs.stream().mapToInt(pair -> own.player(pair.first())).toArray();
        this.second = pairs.stream().mapToInt(pair -> own.player(pair.second())).toArray();
    }

    /** The same tie where other players of ours are here: whom they send does not hang on that. */
    public LevelWorth where(LineupProblem problem, List<Pair> pairs) {
        return new LevelWorth(problem, meetings, pairs, theirs);
    }

    /**
     * Who plays it for them after each of their sheets.
     *
     * @param different whom they may send, each once
     * @param places by sheet of theirs: which of these
     */
    private record Theirs(List<Optional<Sent>> different, int[] places) {
        static Theirs of(LineupProblem problem) {
            List<Belief.Expected> expected = problem.belief().sheets();
            DeciderKind kind = problem.rules().decider();
            if (kind == DeciderKind.NONE) {
                return new Theirs(List.of(Optional.empty()), new int[expected.size()]);
            }
            Closers closers =
                    new Closers(kind, problem.strengths(), problem.freshness(), DeciderPairs.all(problem.theirs()));
            List<Optional<Sent>> different = new ArrayList<>();
            int[] places = new int[expected.size()];
            for (int i = 0; i < places.length; i++) {
                Optional<Sent> sent =
                        closers.sent(closers.rubbers(expected.get(i).sheet()));
                if (!different.contains(sent)) {
                    different.add(sent);
                }
                places[i] = different.indexOf(sent);
            }
            return new Theirs(different, places);
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
        DrawnChance[] each = theirs.different().stream()
                .map(other -> own.isEmpty() || other.isEmpty()
                        ? DrawnChance.surely(own.isEmpty() ? 0 : 1)
                        : meetings.decider(
                                own.get().pair(),
                                own.get().loss(),
                                other.get().pair(),
                                other.get().loss()))
                .toArray(DrawnChance[]::new);
        return Arrays.stream(theirs.places()).mapToObj(place -> each[place]).toArray(DrawnChance[]::new);
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
        return theirs.different().get(theirs.places()[sheet]);
    }
}
