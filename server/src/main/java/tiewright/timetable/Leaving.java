package tiewright.timetable;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import tiewright.event.Event;
import tiewright.event.Side;
import tiewright.event.SlotSource;
import tiewright.event.TieId;

/** Which ties to leave out so that the rest fits. What is in play, frozen or put by hand is never left out. */
final class Leaving {
    private static final int TRIES = 10;

    private final Event event;
    private final PlanProblem problem;

    Leaving(Event event, PlanProblem problem) {
        this.event = event;
        this.problem = problem;
    }

    /** The last round of each pool, and the one before, until it fits; at least one round, and never everything. */
    List<TieId> lastRounds() {
        PlanProblem shorter = problem;
        List<TieId> out = new ArrayList<>();
        while (out.isEmpty() || !fits(shorter)) {
            List<TieId> last = lastRounds(shorter);
            if (last.isEmpty() || last.size() == shorter.ties().size()) {
                break;
            }
            out.addAll(last);
            shorter = without(problem, out);
        }
        return out;
    }

    /** Every tie of the last round of its pool; none of a pool where something of that round is in play or frozen. */
    private List<TieId> lastRounds(PlanProblem of) {
        Set<String> pools = new LinkedHashSet<>();
        of.ties().forEach(tie -> tie.pool().ifPresent(pools::add));
        List<TieId> last = new ArrayList<>();
        for (String pool : pools) {
            List<PlanTie> ties = of.ties().stream()
                    .filter(tie -> tie.pool().filter(pool::equals).isPresent())
                    .toList();
            int round = ties.stream().mapToInt(PlanTie::round).max().orElse(0);
            List<TieId> its = ties.stream()
                    .filter(tie -> tie.round() == round)
                    .map(PlanTie::id)
                    .toList();
            if (its.stream().noneMatch(this::isPinned)) {
                last.addAll(its);
            }
        }
        return last;
    }

    /** Of the ties asked for those that would end last, one by one, until the rest fits; none if that is not enough. */
    List<TieId> lastThatDoNotFit(Predicate<PlanTie> which) {
        List<TieId> out = new ArrayList<>();
        PlanProblem rest = problem;
        while (!rest.ties().isEmpty() && !fits(rest)) {
            Board board = new Board(rest);
            Spot[] spots = Starts.best(board, TRIES, 1).orElseThrow();
            Optional<TieId> last = board.pieces().stream()
                    .filter(piece -> piece.pin().isEmpty() && which.test(board.tie(piece)))
                    .max(Comparator.comparingInt(piece -> spots[piece.number()].end()))
                    .map(piece -> board.tie(piece).id());
            if (last.isEmpty()) {
                return List.of();
            }
            out.add(last.get());
            rest = without(problem, out);
        }
        return out;
    }

    /** Ties between clubs that have lost before, both of them. */
    List<TieId> forPlaces() {
        return problem.ties().stream()
                .map(PlanTie::id)
                .filter(this::isForPlaces)
                .filter(tie -> !isPinned(tie))
                .toList();
    }

    private boolean isForPlaces(TieId id) {
        return event.tie(id).stream()
                .allMatch(tie -> Arrays.stream(Side.values())
                        .allMatch(side -> tie.slot(side)
                                .from()
                                .filter(from -> from.kind() == SlotSource.Kind.LOSER)
                                .isPresent()));
    }

    private boolean isPinned(TieId tie) {
        return problem.pins().stream().anyMatch(pin -> pin.tie().equals(tie));
    }

    /** There is a plan, though not the best, that ends in time. */
    private boolean fits(PlanProblem what) {
        Board board = new Board(what);
        return !what.ties().isEmpty()
                && Starts.best(board, TRIES, 1)
                        .filter(spots -> Judge.of(board, spots, Placing.nobody(board))
                                        .score()
                                        .of(Part.OVERRUN)
                                == 0)
                        .isPresent();
    }

    static PlanProblem without(PlanProblem of, List<TieId> out) {
        return of.withTies(
                of.ties().stream().filter(tie -> !out.contains(tie.id())).toList());
    }
}
