package tiewright.timetable;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tiewright.event.Event;

/** The day no longer fits: what could be done, each with its end, its price and who must be told. Nobody decides but the organiser. */
public final class Replan {
    private Replan() {}

    /**
     * First the plan as it is, then every way to shorten it that changes something here: those that end in time first, of these the
     * cheapest.
     *
     * @param asked with the moment from which on is planned, the courts that are lost, the freeze window
     * @param budget for each option
     * @return empty if there is nothing to plan, or what was given contradicts itself: ask {@link #fault}
     */
    public static List<ReplanOption> options(Event event, PlanAsked asked, Budget budget) {
        if (fault(event, asked).isPresent()) {
            return List.of();
        }
        Cuts cuts = new Cuts(event, asked, budget);
        List<ReplanOption> options = new ArrayList<>();
        for (Cut cut : Cut.values()) {
            if (cut != Cut.AS_IS) {
                cuts.option(cut).ifPresent(options::add);
            }
        }
        options.sort(Comparator.comparing((ReplanOption option) -> !option.isFeasible())
                .thenComparing(ReplanOption::cost));
        cuts.option(Cut.AS_IS).ifPresent(asIs -> options.add(0, asIs));
        return List.copyOf(options);
    }

    /** What keeps anything from being planned; empty if options can be worked out. */
    public static Optional<Infeasible> fault(Event event, PlanAsked asked) {
        PlanProblem problem = PlanProblem.of(event, asked);
        Optional<Infeasible> nonsense = InputFaults.of(problem);
        if (nonsense.isPresent()) {
            return nonsense;
        }
        Board board = new Board(FrozenStarts.of(problem).problem());
        return Starts.best(board, Starts.USUAL_TRIES, 1).isPresent()
                ? Optional.empty()
                : Optional.of(Conflicts.withoutRoom(board));
    }
}
