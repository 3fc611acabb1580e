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
        Board board = new Board(problem);
        return best(board).map(all -> new WhatIf(sizes(board, all), absences(board, all)));
    }

    private static List<Size> sizes(Board board, double all) {
        LineupProblem problem = board.problem();
        List<PlayerId> here = problem.ours().present().stream()
                .map(Squad.Member::id)
                .sorted(Comparator.comparingDouble(
                                (PlayerId id) -> problem.strengths().meanForm(id))
                        .thenComparing(Comparator.naturalOrder()))
                .toList();
        List<Size> sizes = new ArrayList<>();
        int most = Math.min(here.size(), 2 * problem.rules().rubbers());
        for (int players = Math.max(2, most - FEWER); players < most; players++) {
            size(board, here, here.size() - players, all).ifPresent(sizes::add);
        }
        sizes.add(new Size(here.size(), all, 0, List.of(), true));
        return sizes;
    }

    /** @param here the weakest first */
    private static Optional<Size> size(Board board, List<PlayerId> here, int out, double all) {
        List<Set<PlayerId>> choices = new ArrayList<>();
        boolean every = choose(here, 0, out, new ArrayList<>(), choices);
        if (!every) {
            choices = List.of(new HashSet<>(here.subList(0, out)));
        }
        Optional<Size> best = Optional.empty();
        for (Set<PlayerId> without : choices) {
            Optional<Double> worth = best(board.withOnly(id -> !without.contains(id)));
            if (worth.isPresent() && (best.isEmpty() || worth.get() > best.get().worth() + 1e-12)) {
                List<PlayerId> named = without.stream().sorted().toList();
                best = Optional.of(
                        new Size(here.size() - out, worth.get(), Math.max(0, all - worth.get()), named, every));
            }
        }
        return best;
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

    private static List<Absence> absences(Board board, double all) {
        List<Absence> absences = new ArrayList<>();
        for (Squad.Member member : board.problem().ours().present()) {
            best(board.withOnly(id -> !id.equals(member.id())))
                    .ifPresent(worth -> absences.add(new Absence(member.id(), Math.max(0, all - worth))));
        }
        absences.sort(Comparator.comparingDouble(Absence::cost).reversed().thenComparing(Absence::player));
        return absences;
    }

    private static Optional<Double> best(Board board) {
        if (board.filled() == 0) {
            return Optional.empty();
        }
        return Ranking.of(board, board.orderMatters(), 1).best().stream()
                .findFirst()
                .map(best -> board.worth().of(best.line()));
    }
}
