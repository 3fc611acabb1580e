package tiewright.lineup.tie;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tiewright.event.PlayerId;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Squad;

/**
 * What if we say six, seven, eight players? And what would it cost if one of those here could not play?
 *
 * @param sizes from few to all who are here
 * @param absences of everybody who is here, the dearest first
 */
public record WhatIf(List<Size> sizes, List<Absence> absences) {
    /** Ways to leave players out that are all tried; beyond, only the strongest by form are kept. */
    private static final int MOST_CHOICES = 130;

    /** Two rubbers fewer than a full sheet is the least that is shown. */
    private static final int FEWER = 4;

    public WhatIf {
        sizes = List.copyOf(sizes);
        absences = List.copyOf(absences);
    }

    /**
     * The best that so many players can do.
     *
     * @param worth of the captain's aim
     * @param cost against everybody who is here
     * @param without whom it then goes best
     * @param everyChoiceTried false: only the strongest by form were tried
     */
    public record Size(int players, double worth, double cost, List<PlayerId> without, boolean everyChoiceTried) {}

    /** One player away. */
    public record Absence(PlayerId player, double cost) {}

    /** Empty where even those who are here can name no sheet that grants every wish. */
    public static Optional<WhatIf> of(LineupProblem problem) {
        return new Everybody(new Board(problem)).asked();
    }

    /** Everybody who is here, the weakest first. */
    private record Everybody(Board board, List<PlayerId> here) {
        Everybody(Board board) {
            this(board, weakestFirst(board.problem()));
        }

        private static List<PlayerId> weakestFirst(LineupProblem problem) {
            return problem.ours().present().stream()
                    .map(Squad.Member::id)
                    .sorted(Comparator.comparingDouble(
                                    (PlayerId id) -> problem.strengths().meanForm(id))
                            .thenComparing(Comparator.naturalOrder()))
                    .toList();
        }

        Optional<WhatIf> asked() {
            return best(List.of(board)).map(all -> {
                List<Absence> absences = absences(all.worth());
                return new WhatIf(
                        sizes(all.worth(), absences),
                        absences.stream()
                                .sorted(Comparator.comparingDouble(Absence::cost)
                                        .reversed()
                                        .thenComparing(Absence::player))
                                .toList());
            });
        }

        /** The weakest first. */
        private List<Absence> absences(double all) {
            List<Absence> absences = new ArrayList<>();
            for (PlayerId away : here) {
                best(without(List.of(Set.of(away))))
                        .ifPresent(best -> absences.add(new Absence(away, Math.max(0, all - best.worth()))));
            }
            return absences;
        }

        private List<Size> sizes(double all, List<Absence> absences) {
            List<Size> sizes = new ArrayList<>();
            int most = Math.min(here.size(), 2 * board.rules().rubbers());
            for (int players = Math.max(2, most - FEWER); players < most; players++) {
                int out = here.size() - players;
                (out == 1 ? oneOut(all, absences) : size(out, all)).ifPresent(sizes::add);
            }
            sizes.add(new Size(here.size(), all, 0, List.of(), true));
            return sizes;
        }

        /** What was worked out for the absences already. */
        private Optional<Size> oneOut(double all, List<Absence> absences) {
            return absences.stream()
                    .min(Comparator.comparingDouble(Absence::cost))
                    .map(one -> new Size(here.size() - 1, all - one.cost(), one.cost(), List.of(one.player()), true));
        }

        private Optional<Size> size(int out, double all) {
            List<Set<PlayerId>> choices = new ArrayList<>();
            boolean every = choose(here, 0, out, new ArrayList<>(), choices);
            if (!every) {
                choices = List.of(Set.copyOf(here.subList(0, out)));
            }
            return best(without(choices)).map(best -> {
                List<PlayerId> named = here.stream()
                        .filter(id -> !best.board().players().contains(id))
                        .sorted()
                        .toList();
                return new Size(here.size() - out, best.worth(), Math.max(0, all - best.worth()), named, every);
            });
        }

        private List<Board> without(List<Set<PlayerId>> choices) {
            return choices.stream()
                    .map(away -> board.withOnly(id -> !away.contains(id)))
                    .toList();
        }
    }

    /** @param worth of the captain's aim, as it is */
    private record Best(Board board, double worth) {}

    private static Optional<Best> best(List<Board> boards) {
        return Ranking.bestOf(boards.stream()
                        .filter(board -> board.seating().count() > 0)
                        .toList())
                .map(best -> new Best(
                        best.board(), best.board().worth().of(best.sheet().line())));
    }

    /** Every set of so many, the weakest first; false if there are too many. */
    private static boolean choose(
            List<PlayerId> from, int at, int more, List<PlayerId> chosen, List<Set<PlayerId>> choices) {
        if (more == 0) {
            choices.add(new HashSet<>(chosen));
            return choices.size() <= MOST_CHOICES;
        }
        for (int i = at; i <= from.size() - more; i++) {
            chosen.add(from.get(i));
            boolean on = choose(from, i + 1, more - 1, chosen, choices);
            chosen.remove(chosen.size() - 1);
            if (!on) {
                return false;
            }
        }
        return true;
    }
}
